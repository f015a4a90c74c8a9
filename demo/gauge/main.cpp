// SPDX-License-Identifier: Apache-2.0
// Plays a pressure gauge as a Bluetooth peripheral, for a second machine: its pressure follows a slow wave around a bladder's, or what is
// typed (kilopascals above the open air, "0" for the needle in the air, "wave" to go on by itself, "quit"). Battery, temperature and Device
// Information are there too. Ends with 2 where Bluetooth is missing or off or takes no advertisement.
#include <QBluetoothLocalDevice>
#include <QBluetoothUuid>
#include <QCommandLineParser>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QLowEnergyAdvertisingData>
#include <QLowEnergyAdvertisingParameters>
#include <QLowEnergyCharacteristicData>
#include <QLowEnergyController>
#include <QLowEnergyDescriptorData>
#include <QLowEnergyServiceData>
#include <QSocketNotifier>
#include <QTimer>

#include <unistd.h>
#include <cmath>
#include <cstdio>
#include <memory>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

namespace {

using Characteristic = QBluetoothUuid::CharacteristicType;
using Service = QBluetoothUuid::ServiceClassUuid;

constexpr double kOpenAirPa = 101'325.0;  // U.S. Standard Atmosphere 1976, sea level
constexpr double kMiddlePa = 20'000.0, kSwingPa = 3'000.0, kWaveSeconds = 20.0;
constexpr int kSendMs = 100;
constexpr double kMostKpa = 400.0;
constexpr int kNoBluetooth = 2;

QByteArray littleEndian(quint32 value, int bytes) {
  QByteArray out;
  for (int i = 0; i < bytes; ++i) out.append(static_cast<char>((value >> (8 * i)) & 0xFFU));
  return out;
}
QByteArray pressureBytes(double gaugePa) { return littleEndian(static_cast<quint32>(std::llround((kOpenAirPa + gaugePa) * 10.0)), 4); }

QLowEnergyCharacteristicData value(Characteristic type, const QByteArray& bytes, bool isSent) {
  QLowEnergyCharacteristicData data;
  data.setUuid(QBluetoothUuid(type));
  data.setValue(bytes);
  data.setProperties(QLowEnergyCharacteristic::Read);
  if (isSent) {
    data.setProperties(QLowEnergyCharacteristic::Read | QLowEnergyCharacteristic::Notify);
    data.addDescriptor({QBluetoothUuid(QBluetoothUuid::DescriptorType::ClientCharacteristicConfiguration), QByteArray(2, '\0')});
  }
  return data;
}

QLowEnergyServiceData service(Service type, const QList<QLowEnergyCharacteristicData>& values) {
  QLowEnergyServiceData data;
  data.setType(QLowEnergyServiceData::ServiceTypePrimary);
  data.setUuid(QBluetoothUuid(type));
  data.setCharacteristics(values);
  return data;
}

int refuse(const char* why) {
  std::fprintf(stderr, "%s\n", why);
  return kNoBluetooth;
}

class PlayedGauge final : public QObject {
 public:
  PlayedGauge(QString name, QByteArray serial) : m_name(std::move(name)), m_serial(std::move(serial)) {
    m_since.start();
    connect(&m_send, &QTimer::timeout, this, [this] { send(); });
    connect(m_controller.get(), &QLowEnergyController::connected, this, [] { std::puts("Connected."); });
    connect(m_controller.get(), &QLowEnergyController::disconnected, this, [this] {
      std::puts("The other side went away; calling again.");
      offer();
    });
    connect(m_controller.get(), &QLowEnergyController::errorOccurred, this, [this](QLowEnergyController::Error) {
      if (!std::exchange(m_isRefused, true))
        std::fprintf(stderr, "Bluetooth refuses to play a gauge here: %s\n", qPrintable(m_controller->errorString()));
      QCoreApplication::exit(kNoBluetooth);
    });
  }
  void begin() {
    offer();
    if (m_controller->state() == QLowEnergyController::UnconnectedState) return;  // refused, and said
    m_send.start(kSendMs);
    std::printf("Playing the gauge \"%s\". Type kilopascals, \"wave\" or \"quit\".\n", qPrintable(m_name));
  }
  void type(const QString& line) {
    if (line == QLatin1String("quit")) return QCoreApplication::quit();
    if (line == QLatin1String("wave")) {
      m_isWave = true;
      return;
    }
    bool isNumber = false;
    const double kpa = line.toDouble(&isNumber);
    if (!isNumber || kpa < -kOpenAirPa / 1000.0 || kpa > kMostKpa) {
      std::printf("\"%s\" is no pressure from -101 to %.0f kPa.\n", qPrintable(line), kMostKpa);
      return;
    }
    m_isWave = false;
    m_gaugePa = kpa * 1000.0;
  }

 private:
  // Services are made anew for each connection: they end with it.
  void offer() {
    m_services.clear();
    const auto add = [this](const QLowEnergyServiceData& data) {
      std::unique_ptr<QLowEnergyService> made(m_controller->addService(data));
      if (made) m_services.push_back(std::move(made));
    };
    add(service(Service::EnvironmentalSensing, {value(Characteristic::Pressure, pressureBytes(0.0), true),
                                                value(Characteristic::Temperature, littleEndian(2'150, 2), false)}));
    add(service(Service::BatteryService, {value(Characteristic::BatteryLevel, QByteArray(1, char(84)), true)}));
    add(service(Service::DeviceInformation,
                {value(Characteristic::ManufacturerNameString, "Snugline demo", false),
                 value(Characteristic::ModelNumberString, "played", false), value(Characteristic::SerialNumberString, m_serial, false)}));
    QLowEnergyAdvertisingData call;
    call.setDiscoverability(QLowEnergyAdvertisingData::DiscoverabilityGeneral);
    call.setLocalName(m_name);
    call.setServices({QBluetoothUuid(Service::EnvironmentalSensing)});
    m_controller->startAdvertising(QLowEnergyAdvertisingParameters(), call, call);
  }
  void send() {
    if (m_services.empty() || m_controller->state() != QLowEnergyController::ConnectedState) return;
    const double turn = static_cast<double>(m_since.elapsed()) / 1000.0 / kWaveSeconds * 2.0 * std::numbers::pi;
    const double gaugePa = m_isWave ? kMiddlePa + kSwingPa * std::sin(turn) : m_gaugePa;
    const QLowEnergyCharacteristic pressure = m_services.front()->characteristic(QBluetoothUuid(Characteristic::Pressure));
    if (pressure.isValid()) m_services.front()->writeCharacteristic(pressure, pressureBytes(gaugePa));
  }

  QString m_name;
  QByteArray m_serial;
  std::unique_ptr<QLowEnergyController> m_controller{QLowEnergyController::createPeripheral()};
  std::vector<std::unique_ptr<QLowEnergyService>> m_services;
  QElapsedTimer m_since;
  QTimer m_send;
  bool m_isWave = true, m_isRefused = false;
  double m_gaugePa = 0.0;
};

}  // namespace

int main(int argc, char** argv) {
  QCoreApplication app(argc, argv);
  std::setvbuf(stdout, nullptr, _IOLBF, 0);
  QCommandLineParser parser;
  parser.addHelpOption();
  const QCommandLineOption name(QStringLiteral("name"), QStringLiteral("What it calls itself."), QStringLiteral("name"),
                                QStringLiteral("Bench gauge"));
  const QCommandLineOption serial(QStringLiteral("serial"), QStringLiteral("Its serial number."), QStringLiteral("serial"),
                                  QStringLiteral("0142"));
  parser.addOptions({name, serial});
  parser.process(app);

  const QList<QBluetoothHostInfo> adapters = QBluetoothLocalDevice::allDevices();
  if (adapters.isEmpty()) return refuse("There is no Bluetooth adapter here, or its service does not run.");
  const QBluetoothLocalDevice adapter(adapters.first().address());
  if (adapter.hostMode() == QBluetoothLocalDevice::HostPoweredOff) return refuse("Bluetooth is off. Switch it on and start again.");

  PlayedGauge gauge(parser.value(name), parser.value(serial).toUtf8());
  std::string rest;
  QSocketNotifier input(STDIN_FILENO, QSocketNotifier::Read);
  QObject::connect(&input, &QSocketNotifier::activated, &app, [&] {
    char piece[256];
    const ssize_t length = read(STDIN_FILENO, piece, sizeof piece);
    if (length <= 0) return input.setEnabled(false);
    rest.append(piece, static_cast<std::size_t>(length));
    for (std::size_t end = rest.find('\n'); end != std::string::npos; end = rest.find('\n')) {
      gauge.type(QString::fromStdString(rest.substr(0, end)).trimmed());
      rest.erase(0, end + 1);
    }
  });
  QTimer::singleShot(0, &app, [&gauge] { gauge.begin(); });
  return QCoreApplication::exec();
}
