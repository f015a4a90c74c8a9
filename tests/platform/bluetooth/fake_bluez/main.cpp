// SPDX-License-Identifier: Apache-2.0
// Plays the system's Bluetooth service on the bus that it is started on: org.bluez on the "system" bus of DBUS_SYSTEM_BUS_ADDRESS. Scenes
// come line by line on stdin, and "done" answers each:
//   adapter on | adapter off | adapter gone
//   gauge ADDRESS NAME [serial=S] [pressure=HEX] [battery=HEX] [temperature=HEX] [service=181A] [flags=read,notify] [twins=bare|alike]
//         [measurement=HEX] [silent] [busy] [refuses] [early]
//   remove ADDRESS | drop ADDRESS | value ADDRESS HEX | send ADDRESS HEX | flood ADDRESS COUNT [FIRST] (one in a millisecond, counting up)
// Asked with --version it answers as Qt expects of that service.
#include <QCoreApplication>
#include <QDBusMetaType>
#include <QElapsedTimer>
#include <QSocketNotifier>
#include <QTimer>

#include <unistd.h>
#include <cstdio>
#include <string>

#include "tree.h"

namespace {

using namespace snugline;

fake::Gauge gaugeOf(const QStringList& words) {
  fake::Gauge gauge;
  gauge.address = words.value(1);
  gauge.name = QString(words.value(2)).replace(QLatin1Char('_'), QLatin1Char(' '));
  for (const QString& word : words.mid(3)) {
    const QString key = word.section(QLatin1Char('='), 0, 0), value = word.section(QLatin1Char('='), 1);
    const QByteArray bytes = QByteArray::fromHex(value.toLatin1());
    if (key == QLatin1String("serial")) gauge.serial = value;
    if (key == QLatin1String("pressure")) gauge.pressure = bytes;
    if (key == QLatin1String("battery")) gauge.battery = bytes;
    if (key == QLatin1String("temperature")) gauge.temperature = bytes;
    if (key == QLatin1String("service")) gauge.service = value;
    if (key == QLatin1String("flags")) gauge.flags = value.split(QLatin1Char(','));
    if (key == QLatin1String("twins")) gauge.twins = value;
    if (key == QLatin1String("measurement")) gauge.measurement = bytes;
    if (key == QLatin1String("silent")) gauge.resolves = false;
    if (key == QLatin1String("busy")) gauge.isBusy = true;
    if (key == QLatin1String("refuses")) gauge.refusesReads = true;
    if (key == QLatin1String("early")) gauge.sendsEarly = true;
  }
  return gauge;
}

// Counts up in little-endian bytes. Whatever the timer's grain, as many have gone out as milliseconds have passed.
class Flood final : public QObject {
 public:
  Flood(fake::Tree& tree, QString address, quint32 count, quint32 first)
      : m_tree(tree), m_address(std::move(address)), m_count(count), m_first(first) {
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, [this] { pour(); });
    m_since.start();
    m_timer.start(1);
  }

 private:
  void pour() {
    while (m_sent < m_count && m_sent < static_cast<quint32>(m_since.elapsed())) {
      QByteArray bytes(4, '\0');
      for (int i = 0; i < 4; ++i) bytes[i] = static_cast<char>(((m_first + m_sent) >> (8 * i)) & 0xFFU);
      m_tree.send(m_address, bytes);
      ++m_sent;
    }
    if (m_sent == m_count) deleteLater();
  }
  fake::Tree& m_tree;
  QString m_address;
  quint32 m_count, m_first, m_sent = 0;
  QElapsedTimer m_since;
  QTimer m_timer;
};

void play(fake::Tree& tree, const QStringList& words) {
  const QString what = words.value(0), address = words.value(1);
  const QByteArray bytes = QByteArray::fromHex(words.value(2).toLatin1());
  if (what == QLatin1String("adapter")) {
    if (address == QLatin1String("gone"))
      tree.removeAdapter();
    else if (!tree.hasAdapter())
      tree.addAdapter(address == QLatin1String("on"));
    else
      tree.setPowered(address == QLatin1String("on"));
  } else if (what == QLatin1String("gauge")) {
    tree.addGauge(gaugeOf(words));
  } else if (what == QLatin1String("remove")) {
    tree.removeGauge(address);
  } else if (what == QLatin1String("drop")) {
    tree.drop(address);
  } else if (what == QLatin1String("value")) {
    tree.setPressure(address, bytes);
  } else if (what == QLatin1String("send")) {
    tree.send(address, bytes);
  } else if (what == QLatin1String("flood")) {
    new Flood(tree, address, words.value(2).toUInt(), words.value(3).toUInt());
  }
}

}  // namespace

int main(int argc, char** argv) {
  if (argc > 1 && std::string(argv[1]) == "--version") {
    std::puts("5.66");
    return 0;
  }
  QCoreApplication app(argc, argv);
  qDBusRegisterMetaType<fake::Interfaces>();
  qDBusRegisterMetaType<fake::Objects>();
  QDBusConnection bus = QDBusConnection::systemBus();
  fake::Tree tree(bus);
  if (!bus.registerVirtualObject(QStringLiteral("/"), &tree, QDBusConnection::SubPath) ||
      !bus.registerService(QStringLiteral("org.bluez"))) {
    std::fprintf(stderr, "There is no bus to play on.\n");
    return 1;
  }
  std::string rest;
  QSocketNotifier input(STDIN_FILENO, QSocketNotifier::Read);
  QObject::connect(&input, &QSocketNotifier::activated, &app, [&] {
    char piece[4096];
    const ssize_t length = read(STDIN_FILENO, piece, sizeof piece);
    if (length <= 0) return QCoreApplication::quit();
    rest.append(piece, static_cast<std::size_t>(length));
    for (std::size_t end = rest.find('\n'); end != std::string::npos; end = rest.find('\n')) {
      play(tree, QString::fromStdString(rest.substr(0, end)).split(QLatin1Char(' '), Qt::SkipEmptyParts));
      rest.erase(0, end + 1);
      std::puts("done");
      std::fflush(stdout);
    }
  });
  std::puts("done");
  std::fflush(stdout);
  return QCoreApplication::exec();
}
