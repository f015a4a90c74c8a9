// SPDX-License-Identifier: Apache-2.0
// Purpose: words for equipment: the seven points and their faults, label spans, holds, places, roster rows; every error; and one line
// for each fact. Sentences name equipment and files only, never judge a person. Thread: GUI thread.
#pragma once

#include <optional>
#include <string>

#include <QString>
#include <QStringList>
#include <QVariantList>

#include "core/book/fact.h"
#include "core/book/roster.h"
#include "core/gear/certification.h"
#include "core/gear/points.h"
#include "core/quantity/result.h"
#include "core/season/record.h"

namespace snugline::models {

[[nodiscard]] QString text(std::string_view utf8);
[[nodiscard]] std::string utf8(const QString& words);

// A file dialog hands over a URL, people and tests a path.
[[nodiscard]] QString localPath(const QString& pathOrUrl);

[[nodiscard]] QString dayWords(Day day);  // "30 Dec 2027"

[[nodiscard]] QString pointName(gear::Point point);                        // "Warning label"
[[nodiscard]] QString pointAsk(gear::Point point, bool hasAir);            // what to look for, one short line; hasAir: the model has
[[nodiscard]] QStringList pointFaults(gear::Point point, bool hasAir);     // usual faults, in the trade's words, most usual first
[[nodiscard]] QString pointStateWords(const gear::PointFinding& finding);  // "Sound", "Not seen", "Fault: bare metal"
// The seven as a list for tiles and strips: {code, name, ask, state, words, faults}; state 0 unseen, 1 sound, 2 fault.
[[nodiscard]] QVariantList pointList(const gear::PointFindings& findings, const gear::ModelSheet* sheet);

// "Label 2025: good to between 31 Dec 2026 and 30 Dec 2027, judged by the earlier"
[[nodiscard]] QString labelWords(const gear::Label& label, const std::optional<gear::DaySpan>& lastGood, Day today);
[[nodiscard]] QString labelShort(const gear::Label& label);  // "label 2025", "maker's mark 2026", "certified 3 Mar 2025"
[[nodiscard]] QString labelWordsOf(const season::Views& views, const season::UnitRecord& unit, Day today);
[[nodiscard]] gear::LabelState labelStateOf(const season::Views& views, const season::UnitRecord& unit, Day today);

[[nodiscard]] QString holdReason(const std::string& reason);      // "Shell", "Label", "Fit", "Broke", "Held"
[[nodiscard]] QString holdWhat(const std::string& what);          // core's own words in the reader's language, others as written
[[nodiscard]] QString holdWords(const season::HoldRecord& hold);  // "Faceguard: bare metal. In our hands."
[[nodiscard]] QString placeWords(season::UnitPlace place, const std::string& where);
[[nodiscard]] QString kindOf(const season::Views& views, const season::UnitRecord& unit);  // "Alder A1, size L"

[[nodiscard]] QString rowDoubt(const book::RowNote& note);  // why, with the cell

[[nodiscard]] QString tagFaultWords(const std::string& detail);  // core/gear/tag_fault.h; sentences_tag.cpp
[[nodiscard]] QString errorSentence(const Error& error);         // any error, what and where

// One line of a timeline; empty for facts that say nothing to people.
[[nodiscard]] QString factWords(const season::Views& views, const book::Fact& fact);
[[nodiscard]] QString whoWords(const season::Views& views, const std::string& person);  // initials; empty when nobody was known
[[nodiscard]] QString timeWords(Instant at, Day today);                                 // "14 Oct, 15:04"

[[nodiscard]] QString athleteName(const season::AthleteRecord& athlete, bool isShort = false);  // "57 Okafor, Dele" or "57 D. O."
// Sorts "7" before "07" before "12", words after numbers.
[[nodiscard]] std::pair<int, std::string> jerseyOrder(const std::string& jersey);

}  // namespace snugline::models
