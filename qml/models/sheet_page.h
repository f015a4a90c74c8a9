// SPDX-License-Identifier: Apache-2.0
// Purpose: one model sheet as it stands in the Book: its drawing with figures at ports and pads, its size bands as a chart, limits, the
// helmets and athletes that go by it, and how it came to be so. A sheet that was replaced is shown too. Errors: a file that could not be
// written is `refusal`. Thread: GUI thread.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

#include "core/book/fact.h"
#include "core/gear/model_sheet.h"
#include "core/ports/outbox.h"

namespace snugline::models {

class Choices;
class Desk;

// Of any sheet, kept or not: what SheetEditor shows beside its fields, too.
[[nodiscard]] QVariantMap drawingOf(const gear::ModelSheet& sheet);  // {hasCrownAir, hasSideAir, hasJawAir, strapPoints, description}
// {place, title, figure, detail}: place as Snugline.Drawing names it.
[[nodiscard]] QVariantList callouts(const gear::ModelSheet& sheet, UnitSystem units);
// {name, words, join, isGap, isOverlap, from, to}: from and to as shares of the chart's width; join: how it meets the band before it.
[[nodiscard]] QVariantList sizeChart(const gear::ModelSheet& sheet, UnitSystem units);

class SheetPage : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SheetsModel")
  Q_PROPERTY(QString hash READ hash NOTIFY changed)
  Q_PROPERTY(QString name READ name NOTIFY changed)
  Q_PROPERTY(QString stateWords READ stateWords NOTIFY changed)  // "Counts since 14 Oct", "Replaced 3 Nov by Alder A1"
  Q_PROPERTY(bool isStanding READ isStanding NOTIFY changed)
  Q_PROPERTY(QString useWords READ useWords NOTIFY changed)  // "26 helmets, 22 with athletes"
  Q_PROPERTY(QVariantMap drawn READ drawn NOTIFY changed)
  Q_PROPERTY(QVariantList callouts READ callouts NOTIFY changed)
  Q_PROPERTY(QVariantList chart READ chart NOTIFY changed)
  Q_PROPERTY(QVariantList facts READ facts NOTIFY changed)  // {name, words}
  Q_PROPERTY(QVariantList questions READ questions NOTIFY changed)
  Q_PROPERTY(QString cautions READ cautions NOTIFY changed)
  Q_PROPERTY(QVariantList history READ history NOTIFY changed)  // {when, who, words, lines}, latest first
  Q_PROPERTY(QVariantList others READ others NOTIFY changed)    // of its line: {hash, title, detail}, the one that counts first
  Q_PROPERTY(bool canExport READ canExport NOTIFY changed)
  Q_PROPERTY(QString exported READ exported NOTIFY changed)  // where the file stands
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)

 public:
  SheetPage(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void open(const QString& hash);
  Q_INVOKABLE void writeOut();  // the sheet's own bytes, as a file
  void follow();                // goes on to the sheet that counts now
  void useOutbox(std::shared_ptr<ports::Outbox> outbox) { m_outbox = std::move(outbox); }

  [[nodiscard]] QString hash() const { return QString::fromStdString(m_hash); }
  [[nodiscard]] QString name() const;
  [[nodiscard]] QString stateWords() const;
  [[nodiscard]] bool isStanding() const;
  [[nodiscard]] QString useWords() const;
  [[nodiscard]] QVariantMap drawn() const;
  [[nodiscard]] QVariantList callouts() const;
  [[nodiscard]] QVariantList chart() const;
  [[nodiscard]] QVariantList facts() const;
  [[nodiscard]] QVariantList questions() const;
  [[nodiscard]] QString cautions() const;
  [[nodiscard]] QVariantList history() const { return m_history; }
  [[nodiscard]] QVariantList others() const;
  [[nodiscard]] bool canExport() const { return m_outbox != nullptr && sheet() != nullptr; }
  [[nodiscard]] QString exported() const { return m_exported; }
  [[nodiscard]] QString refusal() const { return m_refusal; }

 signals:
  void changed();

 private:
  [[nodiscard]] const gear::ModelSheet* sheet() const;
  void readHistory();
  void readOne(std::vector<std::string> hashes, std::vector<book::Fact> known, std::uint64_t asked);
  void tell(std::vector<book::Fact> facts);

  Desk* m_desk;
  const Choices* m_choices;
  std::shared_ptr<ports::Outbox> m_outbox;
  std::string m_hash;
  std::uint64_t m_asked = 0;  // which reading of the history is the last
  QVariantList m_history;
  QString m_exported, m_refusal;
};

}  // namespace snugline::models
