// SPDX-License-Identifier: Apache-2.0
// Purpose: the unit on the dock's table: what was scanned, chosen and touched so far, kept on disk after each touch (dock_draft.h), and
// the words and drafts that follow from it. No Qt objects, no rules: those are book::takeIn and book::outcomeOf. Thread: GUI thread.
#pragma once

#include <string>
#include <vector>

#include <QString>
#include <QStringList>

#include "core/book/acts.h"
#include "qml/models/dock_draft.h"

namespace snugline::models {

class DockTable {
 public:
  void open(const QString& path, const season::Views& views, Day today);
  [[nodiscard]] const DockDraft& draft() const { return m_draft; }
  [[nodiscard]] bool keep() const { return keepDraft(m_path, m_draft); }

  [[nodiscard]] const season::UnitRecord* unit(const season::Views& views) const;  // of the tag on the table, where known
  // Taken in by its tag alone, a unit is asked for its model and size as if it were new.
  [[nodiscard]] bool isKnown(const season::Views& views) const;
  [[nodiscard]] book::Arrival arrival(const season::Views& views) const;  // with sheet and size of a known unit
  [[nodiscard]] bool isTouched() const;
  [[nodiscard]] bool isWhatComplete(const season::Views& views) const;
  [[nodiscard]] QString kindWords(const season::Views& views) const;
  [[nodiscard]] QString labelWords(const season::Views& views, Day today) const;
  [[nodiscard]] bool isLabelGood(const season::Views& views, Day today) const;
  // "H-0101" and "Alder A1, size M, label 2025" of the one before in this sitting; empty where it would be a guess.
  [[nodiscard]] QString offerSerial(const season::Views& views, Instant now) const;
  [[nodiscard]] QString offerWords(const season::Views& views, Instant now) const;
  [[nodiscard]] int uncheckedCount() const;
  [[nodiscard]] int heldCount(const season::Views& views) const;

  // What was touched for the one on the table is kept until its tag comes again; untouched it is only gone. Its serial, empty for none.
  std::string setAside();
  // unit: which one, where the tag alone does not say; else empty. One that was set aside comes back as it was.
  void place(const std::string& scan, const gear::Tag& tag, const std::string& unit, const season::Views& views);
  void chooseSheet(const std::string& hash, const season::Views& views);
  void chooseSize(const std::string& name, const season::Views& views);
  // Nothing: looked for and missing, or there and not to be read.
  void chooseLabel(const std::optional<gear::Label>& label, const season::Views& views, bool isUnreadable = false);
  void takeUp(std::size_t aside);
  void copyLast(const season::Views& views, Instant now);  // model, size and label; never a point
  void sayBack(season::ReturnRecord returned);             // from repair or the firm
  [[nodiscard]] const std::optional<season::ReturnRecord>& lastReturn() const { return m_lastReturn; }
  void show(DockStage stage);
  bool touch(int point);  // true when it is now a fault
  void sayFault(int point, const std::string& what);
  void allSound();
  void finish(DockLast last, Instant now);
  void forgetLast();  // taken back
  void settleLast();  // it stands, and can be taken back no more
  void clear();

 private:
  [[nodiscard]] const season::UnitRecord* before(const season::Views& views, Instant now) const;
  void moveOn(bool wasComplete, const season::Views& views);

  QString m_path;
  DockDraft m_draft;
  std::optional<season::ReturnRecord> m_lastReturn;  // of this sitting
};

// What a hand scanner wraps around a tag (line ends, tabs, start and end of text) is taken off; "\x07" and its like become the
// characters they stand for, so that the tag is judged by what was sent.
[[nodiscard]] std::string bareScan(const QString& scanned);

// What stands open on a known unit, in words, worst first; empty when nothing does.
[[nodiscard]] QStringList dueOnUnit(const season::Views& views, const season::UnitRecord& unit, Day today);
[[nodiscard]] QString outcomeSentence(const book::Outcome& outcome, const book::Arrival& arrival);
// True when a hold would have no reason but the words asked for.
[[nodiscard]] bool isReasonOpen(const book::Outcome& outcome, const book::Arrival& arrival);
[[nodiscard]] Result<book::Drafts> draftsOfHold(const season::Views& views, const book::Arrival& arrival, const std::string& what,
                                                bool isWithAthlete, Day today);

}  // namespace snugline::models
