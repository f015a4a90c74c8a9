// SPDX-License-Identifier: Apache-2.0
// Purpose: the gauge for the screens: choosing and remembering one, its zero in open air, the read-out with trend and steady mark, and what
// goes into a fact with a reading: the gauge's name and both raw values. What bytes mean is core/air's; what happens on air is the port's.
// The gauge is spoken with only while a screen asks for it (attach, detach) and for a minute after, so that walking from step to step does
// not connect anew.
// Errors: never thrown; whatever is not taken as a value is `refusal`, one sentence, and `canTake` is false then.
// Thread: GUI thread. The port calls back on the thread that called it, which is this one.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QVariantList>

#include "core/air/gauge_packet.h"
#include "core/air/steady.h"
#include "core/ports/gauge_port.h"
#include "core/season/air_record.h"

namespace snugline::models {

class Choices;
class Desk;

class GaugeModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString stage READ stage NOTIFY changed)  // "none", "waiting", "zero", "live": see GaugeReadout.qml
  Q_PROPERTY(QString value READ value NOTIFY changed)
  Q_PROPERTY(QString unit READ unit NOTIFY changed)
  Q_PROPERTY(QString unitCode READ unitCode NOTIFY changed)        // "kpa", "psi"
  Q_PROPERTY(QString trend READ trend NOTIFY changed)              // "up", "down" or empty
  Q_PROPERTY(QString trendWords READ trendWords NOTIFY changed)    // "Rising", "Not steady yet"
  Q_PROPERTY(QString steadyWords READ steadyWords NOTIFY changed)  // empty while it moves
  Q_PROPERTY(QString gaugeName READ gaugeName NOTIFY changed)
  Q_PROPERTY(QString facts READ facts NOTIFY changed)  // battery, sensor
  Q_PROPERTY(QString state READ state NOTIFY changed)
  Q_PROPERTY(bool isTrouble READ isTrouble NOTIFY changed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString zeroHint READ zeroHint NOTIFY changed)
  Q_PROPERTY(QString zeroDoubt READ zeroDoubt NOTIFY changed)       // a zero that is asked about; zeroAnyway takes it
  Q_PROPERTY(bool canZeroAnyway READ canZeroAnyway NOTIFY changed)  // the doubt is one that people can settle
  Q_PROPERTY(QString zeroWords READ zeroWords NOTIFY changed)       // "Zeroed 15:02 at 99.2 kPa"
  Q_PROPERTY(bool canTake READ canTake NOTIFY changed)              // steady, and believed
  Q_PROPERTY(bool isChosen READ isChosen NOTIFY changed)
  Q_PROPERTY(bool isScanning READ isScanning NOTIFY changed)
  Q_PROPERTY(bool canTryAgain READ canTryAgain NOTIFY changed)
  Q_PROPERTY(QString remembered READ remembered NOTIFY changed)
  Q_PROPERTY(QVariantList found READ found NOTIFY foundChanged)  // {id, name, detail, isGauge}, likely ones first
 public:
  // port may be null: then there is no Bluetooth in this program, and typing is all there is.
  GaugeModel(std::unique_ptr<ports::PressureGauge> port, Desk* desk, Choices* choices, QObject* parent = nullptr);
  ~GaugeModel() override;

  Q_INVOKABLE void attach();  // a screen shows the read-out
  Q_INVOKABLE void detach();
  Q_INVOKABLE void scan();
  Q_INVOKABLE void stopScan();
  Q_INVOKABLE void choose(const QString& id);
  Q_INVOKABLE void forget();
  Q_INVOKABLE void tryAgain();
  Q_INVOKABLE void setUnit(const QString& code);
  Q_INVOKABLE void zero();
  Q_INVOKABLE void zeroAnyway();
  Q_INVOKABLE void zeroAgain();

  // The reading on the screen, for a fact; nothing unless canTake and zeroed.
  [[nodiscard]] std::optional<Pressure> reading() const;
  [[nodiscard]] season::AirSource source() const;

  [[nodiscard]] QString stage() const;
  [[nodiscard]] QString value() const { return m_value; }
  [[nodiscard]] QString unit() const;
  [[nodiscard]] QString unitCode() const;
  [[nodiscard]] QString trend() const;
  [[nodiscard]] QString trendWords() const;
  [[nodiscard]] QString steadyWords() const;
  [[nodiscard]] QString gaugeName() const;
  [[nodiscard]] QString facts() const;
  [[nodiscard]] QString state() const;
  [[nodiscard]] bool isTrouble() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString zeroHint() const;
  [[nodiscard]] QString zeroDoubt() const { return m_zeroDoubt; }
  [[nodiscard]] bool canZeroAnyway() const;
  [[nodiscard]] QString zeroWords() const;
  [[nodiscard]] bool canTake() const;
  [[nodiscard]] bool isChosen() const;
  [[nodiscard]] bool isScanning() const { return m_state.phase == ports::GaugePhase::scanning && m_isScanWanted; }
  [[nodiscard]] bool canTryAgain() const;
  [[nodiscard]] QString remembered() const;
  [[nodiscard]] QVariantList found() const { return m_foundList; }

 signals:
  void changed();
  void foundChanged();

 private:
  void onState(const ports::GaugeState& state);
  void onFound(const ports::FoundGauge& gauge);
  void onPackets(const std::vector<ports::GaugePacket>& packets);
  void onPacket(const ports::GaugePacket& packet);
  void onPressure(const air::GaugeValue& value, Instant at);
  void start();
  void takeZero();
  void forgetReading();
  void forgetZero();
  void showValue();
  void listFound();
  [[nodiscard]] ports::RememberedGauge rememberedGauge() const;
  [[nodiscard]] std::optional<Pressure> expectedAmbient() const;
  [[nodiscard]] UnitSystem units() const;

  std::unique_ptr<ports::PressureGauge> m_port;
  Desk* m_desk;
  Choices* m_choices;
  ports::GaugeState m_state;
  std::vector<ports::FoundGauge> m_found;
  QVariantList m_foundList;
  air::SteadyReading m_steady;
  std::optional<int> m_uncertaintyHalfPercent;
  std::optional<air::GaugeValue> m_latest;  // known and believed
  std::optional<air::GaugeValue> m_zero;
  std::optional<Instant> m_zeroAt;
  std::string m_zeroOf;  // label of the gauge that the zero belongs to
  std::optional<Temperature> m_sensor;
  std::optional<int> m_battery;
  QString m_value, m_refusal, m_zeroDoubt, m_callFailure;
  QTimer m_rest;  // after the last screen left
  int m_attached = 0;
  bool m_isScanWanted = false;
  bool m_isStarted = false;
};

}  // namespace snugline::models
