// SPDX-License-Identifier: Apache-2.0
// A gauge over the real Qt Bluetooth, against a separate process that plays the system's service, in the shipping app's window.
#include <algorithm>
#include <cstdint>
#include <string>

#include <QElapsedTimer>
#include <QProcess>
#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickView>
#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "field.h"
#include "platform/bluetooth/bluetooth_gauge.h"
#include "platform/system/system_clock.h"
#include "qml/models/choices.h"
#include "qml/models/gauge_model.h"
#include "qml/models/shell.h"

using namespace snugline;
using field::Field;

namespace {

constexpr int kPatienceMs = 30'000;
constexpr int kCount = 1'500;
constexpr const char* kOpenAir = "7e220f00";     // 991,870 tenths of a pascal, at about 180 m
constexpr std::uint32_t kInBladder = 1'192'170;  // 20.03 kPa more; after kCount it reads 20.18

class Service {
 public:
  Service() {
    m_process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    m_process.start(QStringLiteral(FAKE_BLUEZ), {});
    m_process.waitForReadyRead(kPatienceMs);
    m_process.readAll();
  }
  ~Service() {
    m_process.closeWriteChannel();
    m_process.waitForFinished(kPatienceMs);
  }
  void play(const std::string& line) {
    m_process.write((line + "\n").c_str());
    QByteArray answer;
    while (!answer.contains("done") && m_process.waitForReadyRead(kPatienceMs)) answer += m_process.readAll();
  }

 private:
  QProcess m_process;
};

// Something on the screen that moves all the time, so that every frame has something to draw.
std::unique_ptr<QQuickItem> mover(QQuickView& view) {
  QQmlComponent component(view.engine());
  component.setData(
      "import QtQuick\nRectangle { width: 4; height: 4; NumberAnimation on x { from: 0; to: 300; duration: 1000; loops: -1 } }", {});
  std::unique_ptr<QQuickItem> item(qobject_cast<QQuickItem*>(component.create()));
  if (item) item->setParentItem(view.contentItem());
  return item;
}

// Frames that the window showed in a second, until something is so.
double framesPerSecond(Field& field, const std::function<bool()>& isOver) {
  int frames = 0;
  const auto counting = QObject::connect(&field.app().view(), &QQuickWindow::frameSwapped, [&frames] { ++frames; });
  QElapsedTimer since;
  since.start();
  const bool isDone = field.until(isOver);
  const auto ms = static_cast<double>(std::max<qint64>(1, since.elapsed()));
  QObject::disconnect(counting);
  return isDone ? 1000.0 * frames / ms : 0.0;
}

}  // namespace

TEST_CASE("a thousand readings a second are shown as they come, and the window draws as many frames as without them") {
  const QTemporaryDir folder;
  field::makeColdBook(folder.path().toStdString());
  field::application();
  Service service;
  service.play("adapter on");
  service.play("gauge AA:00:00:00:00:01 Bench serial=0142 pressure=7e220f00");
  Field field(folder.path().toStdString(), [] {
    const auto clock = [] { return std::make_unique<platform::SystemClock>(); };
    return std::make_unique<bluetooth::BluetoothGauge>(clock, bluetooth::GaugePace::scaled(20));
  });
  field.app().choices().setUnits(UnitSystem::metric);
  field.app().choices().setGauge(QStringLiteral("Bench"), QStringLiteral("0142"));
  REQUIRE(field.open());
  REQUIRE(field.touch("door-book"));
  REQUIRE(field.touch("settings"));
  REQUIRE(field.touch("gauge"));
  models::GaugeModel& gauge = *field.app().shell().gauge();
  REQUIRE(field.until([&] { return gauge.stage() == "zero"; }));
  for (int i = 0; i < 100 && !gauge.canTake(); ++i) {
    service.play(std::string("send AA:00:00:00:00:01 ") + kOpenAir);
    QElapsedTimer sample;
    sample.start();
    REQUIRE(field.until([&] { return sample.elapsed() >= 100; }));
  }
  REQUIRE(field.touch("zero"));
  REQUIRE(field.until([&] { return gauge.stage() == "live"; }));
  const auto moves = mover(field.app().view());
  REQUIRE(moves != nullptr);

  double best = 0.0;  // share of a quiet time's frames; another program on the machine may take its part of one round
  for (int round = 0; round < 3 && best < 0.8; ++round) {
    QElapsedTimer quiet;
    quiet.start();
    const double still = framesPerSecond(field, [&] { return quiet.elapsed() >= 500; });
    REQUIRE(still > 0.0);
    const std::uint32_t first = kInBladder + 10'000U * static_cast<std::uint32_t>(round);
    const QString last = QString::number(20.2 + round, 'f', 1);
    service.play("flood AA:00:00:00:00:01 " + std::to_string(kCount) + " " + std::to_string(first));
    const double flooded = framesPerSecond(field, [&] { return gauge.value() == last; });
    WARN("frames a second, quiet and flooded: " << still << ", " << flooded);
    REQUIRE(flooded > 0.0);
    CHECK(field.reads(last));
    best = std::max(best, flooded / still);
  }
  CHECK(best >= 0.8);
}
