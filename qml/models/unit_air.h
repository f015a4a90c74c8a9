// SPDX-License-Identifier: Apache-2.0
// Purpose: the air of one helmet, port by port: readings as read and as carried to 20 C at sea level, refills, the slope of a leak with its
// band, the same as numbers, and a reading taken outside a check, typed or from the gauge. The arithmetic is core/air's.
// Errors: what is not taken is `trouble`, one sentence, and nothing is written. Thread: GUI thread.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>
#include <QVariantMap>

#include "core/air/leak.h"
#include "core/season/record.h"
#include "desk.h"
#include "last_act.h"

namespace snugline::models {

class Choices;
class GaugeModel;

class UnitAir : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of UnitsModel")
  Q_PROPERTY(QString title READ title NOTIFY changed)        // serial
  Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed)  // model and size
  Q_PROPERTY(bool hasAir READ hasAir NOTIFY changed)
  Q_PROPERTY(QVariantList ports READ ports NOTIFY changed)  // {name, text, chosen}
  Q_PROPERTY(
      QVariantMap plot READ plot NOTIFY changed)  // for AirPlot: raw, carried, refills, slopes, heights, times, unit, legend, description
  Q_PROPERTY(bool hasPlot READ hasPlot NOTIFY changed)  // two readings at least
  Q_PROPERTY(QString leakWords READ leakWords NOTIFY changed)
  Q_PROPERTY(bool isLeaking READ isLeaking NOTIFY changed)
  Q_PROPERTY(QString bandWords READ bandWords NOTIFY changed)                // "The sheet starts at 20.0 kPa and allows 14.0 to 28.0 kPa."
  Q_PROPERTY(QVariantList readings READ readings NOTIFY changed)             // {when, raw, carried, how, note}, latest first
  Q_PROPERTY(QVariantMap why READ why NOTIFY changed)                        // for WhyLines
  Q_PROPERTY(QVariantMap leakArithmetic READ leakArithmetic NOTIFY changed)  // likewise; empty without a reading to compare
  Q_PROPERTY(QString unitName READ unitName NOTIFY changed)                  // "kPa", of what is typed
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(QString doneWords READ doneWords NOTIFY changed)  // what was recorded last, for undo
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
 public:
  UnitAir(Desk* desk, const Choices* choices, QObject* parent = nullptr);
  void useGauge(GaugeModel* gauge) { m_gauge = gauge; }

  Q_INVOKABLE void open(const QString& unitId);
  Q_INVOKABLE void choosePort(const QString& port);
  Q_INVOKABLE void takeTyped(const QString& words, bool isOnHead, bool isRefill);
  Q_INVOKABLE void takeLive(bool isOnHead, bool isRefill);
  Q_INVOKABLE void undo() { m_last.undo(); }
  Q_INVOKABLE void dismissTrouble();

  [[nodiscard]] QString title() const;
  [[nodiscard]] QString subtitle() const;
  [[nodiscard]] bool hasAir() const;
  [[nodiscard]] QVariantList ports() const;
  [[nodiscard]] QVariantMap plot() const;
  [[nodiscard]] bool hasPlot() const { return m_history.readings.size() > 1; }
  [[nodiscard]] QString leakWords() const;
  [[nodiscard]] bool isLeaking() const { return m_leak.isLeaking; }
  [[nodiscard]] QString bandWords() const;
  [[nodiscard]] QVariantList readings() const;
  [[nodiscard]] QVariantMap why() const;
  [[nodiscard]] QVariantMap leakArithmetic() const;
  [[nodiscard]] QString unitName() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] QString doneWords() const { return m_last.wordsAbout(m_unit); }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void recorded();

 private:
  [[nodiscard]] const season::UnitRecord* unit() const;
  [[nodiscard]] const gear::ModelSheet* sheet() const;
  [[nodiscard]] const gear::AirPort* limits() const;
  void refresh();
  void take(Pressure gauge, bool isOnHead, bool isRefill, const season::AirSource& source);

  Desk* m_desk;
  const Choices* m_choices;
  GaugeModel* m_gauge = nullptr;
  std::string m_unit;
  gear::Port m_port = gear::Port::crown;
  std::vector<season::AirEvent> m_events;  // of the port since the last repair, as recorded; a leak names them by their place
  air::Leak m_history;                     // since the last repair: what the plot shows
  air::Leak m_leak;                        // the latest readings: what is judged, here and on the board
  LastAct m_last;
  QString m_trouble;
  bool m_isBusy = false;
};

}  // namespace snugline::models
