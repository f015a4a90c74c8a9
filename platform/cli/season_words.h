// SPDX-License-Identifier: Apache-2.0
// Purpose: the terminal's sentences for matching and for the plan of a season, in English, from core's codes. About equipment only.
// Thread: plain functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/season/matching.h"
#include "core/season/plan.h"
#include "core/season/spares.h"

namespace snugline::cli {

[[nodiscard]] std::string words(season::CostTerm term, int count);
[[nodiscard]] std::string words(const std::optional<season::Bar>& bar);  // what keeps a helmet off every head
[[nodiscard]] std::string words(season::LapseWhen when);
// "3 helmets on hold".
[[nodiscard]] std::string words(season::NotOffered why, int count);
// "odds 0.93; shelf 2; certified through 2027-02-01; 1 point not seen".
[[nodiscard]] std::string sentence(const season::Spare& spare);
// What the size of this head is taken from.
[[nodiscard]] std::string sizeSentence(const season::Views& views, const season::SpareAnswer& answer);
// "odds 0.93 by a fresh tape; the last helmet; cost 0.09: 0.07 size odds, 0.02 a point not seen".
[[nodiscard]] std::string sentence(const season::MatchPair& pair);
[[nodiscard]] std::string sentence(const season::UnmatchedHead& head);
[[nodiscard]] std::string sentence(const season::Order& order, double cover);

[[nodiscard]] std::string fixedText(double value, int decimals);
// "1 helmet", "3 helmets".
[[nodiscard]] std::string counted(long long n, const std::string& one);
// The sheet's id; its hash where the Book does not hold it.
[[nodiscard]] std::string sheetName(const season::Views& views, const std::string& hash);
// The serial, else the tag, else the id.
[[nodiscard]] std::string helmetName(const season::Views& views, const std::string& unit);
// Every helmet with this tag, else with this serial, by id.
[[nodiscard]] std::vector<const season::UnitRecord*> helmetsNamed(const season::Views& views, const std::string& serialOrTag);
[[nodiscard]] std::string athleteName(const season::AthleteRecord& athlete);

}  // namespace snugline::cli
