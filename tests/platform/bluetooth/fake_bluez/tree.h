// SPDX-License-Identifier: Apache-2.0
// Purpose: the objects that a Bluetooth service shows on D-Bus (an adapter, gauges with their services), and how they answer. Enough of
// org.bluez for Qt's low energy client; written from the D-Bus interfaces as published with BlueZ 5.66.
// Thread: one.
#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusObjectPath>
#include <QDBusVirtualObject>
#include <QMap>
#include <QVariantMap>

namespace snugline::fake {

using Interfaces = QMap<QString, QVariantMap>;
using Objects = QMap<QDBusObjectPath, Interfaces>;

// What a gauge is like; each key of a scene's line has its field.
struct Gauge {
  QString address, name, serial;
  QByteArray pressure = QByteArray::fromHex("845D0F00"), battery, temperature;  // 1007.03 hPa
  QString service = QStringLiteral("181A");
  QStringList flags{QStringLiteral("read"), QStringLiteral("notify")};
  QString twins;  // empty, "bare" (no descriptors) or "alike" (the same descriptor twice)
  QByteArray measurement;
  bool resolves = true, isBusy = false, refusesReads = false, sendsEarly = false;
};

class Tree final : public QDBusVirtualObject {
 public:
  explicit Tree(QDBusConnection bus) : m_bus(std::move(bus)) {}
  void addAdapter(bool isPowered);
  void setPowered(bool isPowered);
  void removeAdapter();
  void addGauge(const Gauge& gauge);
  void removeGauge(const QString& address);
  void drop(const QString& address);                           // the connection is gone
  void send(const QString& address, const QByteArray& value);  // a notification, whether asked for or not
  void setPressure(const QString& address, const QByteArray& value);
  [[nodiscard]] bool hasAdapter() const;

  bool handleMessage(const QDBusMessage& message, const QDBusConnection& connection) override;
  [[nodiscard]] QString introspect(const QString&) const override { return {}; }

 private:
  void reply(const QDBusMessage& message, const QVariantList& values = {}) { m_bus.send(message.createReply(values)); }
  void refuse(const QDBusMessage& message, const char* error, const char* why) {
    m_bus.send(message.createErrorReply(QLatin1String(error), QLatin1String(why)));
  }
  void change(const QString& path, const char* interface, const QVariantMap& values);
  void properties(const QDBusMessage& message);
  void connectDevice(const QDBusMessage& message);
  void showServices(const Gauge& gauge);
  QString addService(const Gauge& gauge, int number, const QString& uuid);
  QString addCharacteristic(const QString& service, int number, const QString& uuid, const QStringList& flags, const QByteArray& value);
  void addDescriptor(const QString& characteristic, int number, const QString& uuid, const QByteArray& value);
  void emitAdded(const QString& path);
  void emitRemoved(const QString& path);
  [[nodiscard]] Gauge* gaugeAt(const QString& path);

  QDBusConnection m_bus;
  QMap<QString, Interfaces> m_objects;
  QMap<QString, Gauge> m_gauges;  // by the path of the device
};

}  // namespace snugline::fake

Q_DECLARE_METATYPE(snugline::fake::Interfaces)
Q_DECLARE_METATYPE(snugline::fake::Objects)
