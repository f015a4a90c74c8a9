// SPDX-License-Identifier: Apache-2.0
// Purpose: another helmet for one athlete, or the first: which can be given now, why others are not, and the one act that sees to the old
// one, gives the new one and begins its first fit (core/book/acts_dock.h, core/season/spares.h). Nothing is preselected: why the old one
// comes off is touched first, unless the records know it or there is none, and where it is now.
// Errors: a refused act is `trouble`, one sentence, and nothing is written. Thread: GUI thread.
#pragma once

#include <optional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include "choices.h"
#include "core/season/spares.h"
#include "core/season/standing.h"
#include "desk.h"
#include "last_act.h"

namespace snugline::models {

class SwapModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of Shell")
  Q_PROPERTY(QString athleteId READ athleteId NOTIFY changed)
  Q_PROPERTY(QString who READ who NOTIFY changed)                       // jersey and name
  Q_PROPERTY(QString oldWords READ oldWords NOTIFY changed)             // "A1-M-00012, Alder A1, size M"; empty without a helmet
  Q_PROPERTY(QStringList oldHolds READ oldHolds NOTIFY changed)         // what holds it already, or will
  Q_PROPERTY(QVariantList whereabouts READ whereabouts NOTIFY changed)  // {name, text, chosen}: where the old one is now; empty without one
  Q_PROPERTY(bool needsWhere READ needsWhere NOTIFY changed)            // that was not touched yet
  Q_PROPERTY(bool needsReason READ needsReason NOTIFY changed)          // no reason touched yet, and one is wanted
  Q_PROPERTY(QVariantList reasons READ reasons NOTIFY changed)          // {name, text, chosen}; empty where none is wanted
  Q_PROPERTY(QVariantList offers READ offers NOTIFY changed)            // {unit, title, detail, odds, isTryOn}
  Q_PROPERTY(QString sizeWords READ sizeWords NOTIFY changed)           // what the head asks for, or that it was never taped
  Q_PROPERTY(QString none READ none NOTIFY changed)                     // says that there is no spare; empty where there is one
  Q_PROPERTY(QStringList notOffered READ notOffered NOTIFY changed)     // why the others are not offered
  Q_PROPERTY(QVariantList shelves READ shelves NOTIFY changed)          // {name, text, chosen}: where one may stand; empty below two
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
 public:
  SwapModel(Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void open(const QString& athlete);
  Q_INVOKABLE void chooseReason(const QString& name);
  Q_INVOKABLE void sayWhere(const QString& name);  // "hands" or "athlete"
  Q_INVOKABLE void sayWhat(const QString& words);  // in the finder's words, beside the reason
  Q_INVOKABLE void standAt(const QString& shelf);  // kept on this device
  Q_INVOKABLE void take(const QString& unit);      // `swapped` follows, or `trouble` says why not

  void useLast(LastAct* last) { m_last = last; }

  [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete); }
  [[nodiscard]] QString who() const;
  [[nodiscard]] QString oldWords() const;
  [[nodiscard]] QStringList oldHolds() const;
  [[nodiscard]] bool needsReason() const;
  [[nodiscard]] bool needsWhere() const;
  [[nodiscard]] QVariantList whereabouts() const;
  [[nodiscard]] QVariantList reasons() const;
  [[nodiscard]] QVariantList offers() const;
  [[nodiscard]] QString sizeWords() const;
  [[nodiscard]] QString none() const;
  [[nodiscard]] QStringList notOffered() const;
  [[nodiscard]] QVariantList shelves() const;
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void swapped(const QString& athlete);  // on disk: the check of the new helmet stands open

 private:
  [[nodiscard]] const season::UnitRecord* worn() const;
  [[nodiscard]] bool isReasonWanted() const;
  [[nodiscard]] std::optional<season::HoldCause> knownCause() const;
  [[nodiscard]] std::vector<const season::UnitRecord*> old() const;
  void refresh();

  Desk* m_desk;
  Choices* m_choices;
  LastAct* m_last = nullptr;  // of the athlete's pages
  std::string m_athlete;
  std::optional<season::SpareAnswer> m_spares;
  QString m_reason, m_what, m_trouble;
  std::optional<bool> m_isOldWithAthlete;
  bool m_isBusy = false;
};

}  // namespace snugline::models
