// SPDX-License-Identifier: Apache-2.0
#include "tree.h"

#include <QDBusVariant>

namespace snugline::fake {

namespace {
const QString kAdapterPath = QStringLiteral("/org/bluez/hci0");
constexpr const char* kAdapter = "org.bluez.Adapter1";
constexpr const char* kDevice = "org.bluez.Device1";
constexpr const char* kService = "org.bluez.GattService1";
constexpr const char* kCharacteristic = "org.bluez.GattCharacteristic1";
constexpr const char* kDescriptor = "org.bluez.GattDescriptor1";
constexpr const char* kFailed = "org.bluez.Error.Failed";

QString longUuid(const QString& number) { return QStringLiteral("0000%1-0000-1000-8000-00805f9b34fb").arg(number.toLower()); }
QString deviceAt(const QString& address) {
  return kAdapterPath + QStringLiteral("/dev_") + QString(address).replace(QLatin1Char(':'), QLatin1Char('_'));
}
QVariant pathValue(const QString& path) { return QVariant::fromValue(QDBusObjectPath(path)); }
QString pressureOf(const QString& device) { return device + QStringLiteral("/service0010/char0011"); }
}  // namespace

void Tree::addAdapter(bool isPowered) {
  m_objects[kAdapterPath][QLatin1String(kAdapter)] = {{QStringLiteral("Address"), QStringLiteral("00:11:22:33:44:55")},
                                                      {QStringLiteral("Name"), QStringLiteral("bench")},
                                                      {QStringLiteral("Alias"), QStringLiteral("bench")},
                                                      {QStringLiteral("Class"), 0U},
                                                      {QStringLiteral("Powered"), isPowered},
                                                      {QStringLiteral("Discoverable"), false},
                                                      {QStringLiteral("Pairable"), true},
                                                      {QStringLiteral("Discovering"), false}};
  emitAdded(kAdapterPath);
}

void Tree::setPowered(bool isPowered) { change(kAdapterPath, kAdapter, {{QStringLiteral("Powered"), isPowered}}); }
void Tree::removeAdapter() { emitRemoved(kAdapterPath); }

void Tree::addGauge(const Gauge& gauge) {
  const QString path = deviceAt(gauge.address);
  m_gauges[path] = gauge;
  m_objects[path][QLatin1String(kDevice)] = {{QStringLiteral("Address"), gauge.address},
                                             {QStringLiteral("Name"), gauge.name},
                                             {QStringLiteral("Alias"), gauge.name},
                                             {QStringLiteral("Adapter"), pathValue(kAdapterPath)},
                                             {QStringLiteral("UUIDs"), QStringList{longUuid(gauge.service)}},
                                             {QStringLiteral("RSSI"), QVariant::fromValue(short{-50})},
                                             {QStringLiteral("Connected"), false},
                                             {QStringLiteral("ServicesResolved"), false}};
  emitAdded(path);
}

void Tree::removeGauge(const QString& address) {
  const QString path = deviceAt(address);
  if (!m_gauges.contains(path)) return;
  drop(address);
  m_gauges.remove(path);
  for (const QString& one : m_objects.keys()) {
    if (one.startsWith(path + QLatin1Char('/'))) emitRemoved(one);
  }
  emitRemoved(path);
}

void Tree::drop(const QString& address) {
  change(deviceAt(address), kDevice, {{QStringLiteral("ServicesResolved"), false}, {QStringLiteral("Connected"), false}});
  const QString pressure = pressureOf(deviceAt(address));
  if (m_objects.contains(pressure)) m_objects[pressure][QLatin1String(kCharacteristic)][QStringLiteral("Notifying")] = false;
}

void Tree::send(const QString& address, const QByteArray& value) {
  change(pressureOf(deviceAt(address)), kCharacteristic, {{QStringLiteral("Value"), value}});
}

void Tree::setPressure(const QString& address, const QByteArray& value) {
  const QString path = deviceAt(address);
  if (m_gauges.contains(path)) m_gauges[path].pressure = value;
  const QString pressure = pressureOf(path);
  if (m_objects.contains(pressure)) m_objects[pressure][QLatin1String(kCharacteristic)][QStringLiteral("Value")] = value;
}

bool Tree::hasAdapter() const { return m_objects.contains(kAdapterPath); }

Gauge* Tree::gaugeAt(const QString& path) {
  for (auto it = m_gauges.begin(); it != m_gauges.end(); ++it) {
    if (path.startsWith(it.key())) return &it.value();
  }
  return nullptr;
}

void Tree::emitAdded(const QString& path) {
  QDBusMessage signal = QDBusMessage::createSignal(QStringLiteral("/"), QStringLiteral("org.freedesktop.DBus.ObjectManager"),
                                                   QStringLiteral("InterfacesAdded"));
  signal << QVariant::fromValue(QDBusObjectPath(path)) << QVariant::fromValue(m_objects[path]);
  m_bus.send(signal);
}

void Tree::emitRemoved(const QString& path) {
  const QStringList interfaces = m_objects.take(path).keys();
  QDBusMessage signal = QDBusMessage::createSignal(QStringLiteral("/"), QStringLiteral("org.freedesktop.DBus.ObjectManager"),
                                                   QStringLiteral("InterfacesRemoved"));
  signal << QVariant::fromValue(QDBusObjectPath(path)) << interfaces;
  m_bus.send(signal);
}

void Tree::change(const QString& path, const char* interface, const QVariantMap& values) {
  if (!m_objects.contains(path)) return;
  for (auto it = values.begin(); it != values.end(); ++it) m_objects[path][QLatin1String(interface)][it.key()] = it.value();
  QDBusMessage signal =
      QDBusMessage::createSignal(path, QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("PropertiesChanged"));
  signal << QLatin1String(interface) << values << QStringList();
  m_bus.send(signal);
}

QString Tree::addService(const Gauge& gauge, int number, const QString& uuid) {
  const QString device = deviceAt(gauge.address);
  const QString path = device + QStringLiteral("/service%1").arg(number, 4, 10, QLatin1Char('0'));
  m_objects[path][QLatin1String(kService)] = {
      {QStringLiteral("UUID"), longUuid(uuid)}, {QStringLiteral("Primary"), true}, {QStringLiteral("Device"), pathValue(device)}};
  return path;
}

QString Tree::addCharacteristic(const QString& service, int number, const QString& uuid, const QStringList& flags,
                                const QByteArray& value) {
  const QString path = service + QStringLiteral("/char%1").arg(number, 4, 10, QLatin1Char('0'));
  m_objects[path][QLatin1String(kCharacteristic)] = {{QStringLiteral("UUID"), longUuid(uuid)},
                                                     {QStringLiteral("Service"), pathValue(service)},
                                                     {QStringLiteral("Flags"), flags},
                                                     {QStringLiteral("Notifying"), false},
                                                     {QStringLiteral("Value"), value}};
  if (flags.contains(QStringLiteral("notify"))) addDescriptor(path, 90, QStringLiteral("2902"), QByteArray(2, '\0'));
  return path;
}

void Tree::addDescriptor(const QString& characteristic, int number, const QString& uuid, const QByteArray& value) {
  const QString path = characteristic + QStringLiteral("/desc%1").arg(number, 4, 10, QLatin1Char('0'));
  m_objects[path][QLatin1String(kDescriptor)] = {{QStringLiteral("UUID"), longUuid(uuid)},
                                                 {QStringLiteral("Characteristic"), pathValue(characteristic)},
                                                 {QStringLiteral("Value"), value}};
}

void Tree::showServices(const Gauge& gauge) {
  const QString main = addService(gauge, 10, gauge.service);
  const QStringList readOnly{QStringLiteral("read")};
  const QByteArray measurement = gauge.measurement.isEmpty() ? QByteArray(11, '\1') : gauge.measurement;
  for (int i = 0; i < (gauge.twins.isEmpty() ? 1 : 2); ++i) {
    const QString pressure = addCharacteristic(main, 11 + i, QStringLiteral("2A6D"), gauge.flags, gauge.pressure);
    if (gauge.twins == QLatin1String("alike") || !gauge.measurement.isEmpty())
      addDescriptor(pressure, 80, QStringLiteral("290C"), measurement);
  }
  if (!gauge.temperature.isEmpty()) addCharacteristic(main, 15, QStringLiteral("2A6E"), readOnly, gauge.temperature);
  if (!gauge.battery.isEmpty())
    addCharacteristic(addService(gauge, 20, QStringLiteral("180F")), 21, QStringLiteral("2A19"),
                      {QStringLiteral("read"), QStringLiteral("notify")}, gauge.battery);
  const QString about = addService(gauge, 30, QStringLiteral("180A"));
  addCharacteristic(about, 31, QStringLiteral("2A29"), readOnly, "Harrow Works");
  addCharacteristic(about, 32, QStringLiteral("2A24"), readOnly, "H1");
  if (!gauge.serial.isEmpty()) addCharacteristic(about, 33, QStringLiteral("2A25"), readOnly, gauge.serial.toUtf8());
}

void Tree::connectDevice(const QDBusMessage& message) {
  const Gauge* gauge = gaugeAt(message.path());
  if (gauge == nullptr || gauge->isBusy) return refuse(message, kFailed, "le-connection-abort-by-local");
  reply(message);
  showServices(*gauge);
  change(message.path(), kDevice, {{QStringLiteral("Connected"), true}});
  if (!gauge->resolves) return;
  change(message.path(), kDevice, {{QStringLiteral("ServicesResolved"), true}});
}

void Tree::properties(const QDBusMessage& message) {
  const Interfaces interfaces = m_objects.value(message.path());
  const QString interface = message.arguments().value(0).toString(), name = message.arguments().value(1).toString();
  if (!interfaces.contains(interface)) return refuse(message, "org.freedesktop.DBus.Error.UnknownObject", "no such object");
  if (message.member() == QLatin1String("GetAll")) return reply(message, {interfaces.value(interface)});
  if (message.member() == QLatin1String("Set")) {
    reply(message);
    return change(message.path(), interface.toLatin1().constData(), {{name, message.arguments().value(2).value<QDBusVariant>().variant()}});
  }
  const QVariant value = interfaces.value(interface).value(name);
  if (!value.isValid()) return refuse(message, "org.freedesktop.DBus.Error.InvalidArgs", "no such property");
  reply(message, {QVariant::fromValue(QDBusVariant(value))});
}

bool Tree::handleMessage(const QDBusMessage& message, const QDBusConnection&) {
  const QString member = message.member(), path = message.path();
  if (member == QLatin1String("GetManagedObjects")) {
    Objects all;
    for (auto it = m_objects.begin(); it != m_objects.end(); ++it) all[QDBusObjectPath(it.key())] = it.value();
    reply(message, {QVariant::fromValue(all)});
  } else if (message.interface() == QLatin1String("org.freedesktop.DBus.Properties")) {
    properties(message);
  } else if (!m_objects.contains(path)) {
    refuse(message, "org.freedesktop.DBus.Error.UnknownObject", "no such object");
  } else if (member == QLatin1String("StartDiscovery") || member == QLatin1String("StopDiscovery")) {
    reply(message);
    change(path, kAdapter, {{QStringLiteral("Discovering"), member == QLatin1String("StartDiscovery")}});
  } else if (member == QLatin1String("Connect")) {
    connectDevice(message);
  } else if (member == QLatin1String("Disconnect")) {
    reply(message);
    if (const Gauge* gauge = gaugeAt(path)) drop(gauge->address);
  } else if (member == QLatin1String("ReadValue")) {
    const Gauge* gauge = gaugeAt(path);
    const bool isPressure = gauge != nullptr && path == pressureOf(deviceAt(gauge->address));
    if (isPressure && gauge->sendsEarly) {
      send(gauge->address, QByteArray::fromHex("EFBEADDE"));
      setPressure(gauge->address, gauge->pressure);
    }
    if (isPressure && gauge->refusesReads) {
      refuse(message, kFailed, "Operation failed with ATT error: 0x0e");
    } else {
      const Interfaces interfaces = m_objects.value(path);
      reply(message, {interfaces.value(interfaces.firstKey()).value(QStringLiteral("Value")).toByteArray()});
    }
  } else if (member == QLatin1String("StartNotify") || member == QLatin1String("StopNotify")) {
    reply(message);
    change(path, kCharacteristic, {{QStringLiteral("Notifying"), member == QLatin1String("StartNotify")}});
  } else {
    reply(message);  // filters, agents and the like: taken and not minded
  }
  return true;
}

}  // namespace snugline::fake
