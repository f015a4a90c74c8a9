// SPDX-License-Identifier: Apache-2.0
#include "core/book/undo.h"

#include "core/book/fold.h"

namespace snugline::book {

namespace {

template <typename... Kinds>
bool isAny(const Body& body) {
  return (std::holds_alternative<Kinds>(body) || ...);
}

// Where a helmet is and who has it.
bool isMove(const Body& body) { return isAny<UnitPaired, UnitUnpaired, UnitMoved, UnitCollected>(body); }

// The check that a fact is part of; empty when of none.
std::string checkOf(const Fact& fact) {
  if (isAny<CheckBegun, CheckAnswered, CheckEnded>(fact.body)) return fact.about;
  if (const auto* points = std::get_if<PointsSeen>(&fact.body)) return points->check;
  return {};
}

bool opensSeason(const Body& body) {
  const auto* days = std::get_if<PracticeSet>(&body);
  return days != nullptr && !days->season.empty();
}

bool replaces(const Fact& later, const Fact& earlier) {
  const auto* next = std::get_if<SheetAdopted>(&later.body);
  const auto* sheet = std::get_if<SheetAdopted>(&earlier.body);
  return next != nullptr && sheet != nullptr && next->replaces == hashOf(sheet->sheet);
}

}  // namespace

Result<bool> restsOn(const Fact& later, const Fact& earlier) {
  // A hold that was released is gone either way.
  if (isAny<Corrected, HoldReleased>(later.body)) return false;
  const Body& before = earlier.body;
  const Body& after = later.body;
  if (isMove(before) && (isMove(after) || isAny<CheckBegun, LineSeen>(after))) return true;
  if (isAny<UnitHeld>(before) && isMove(after)) return true;
  if (isAny<CheckEnded>(before) && (isMove(after) || isAny<CheckBegun>(after))) return true;
  if (const std::string check = checkOf(later); !check.empty() && check == checkOf(earlier)) return true;
  if (isAny<SeasonClosed>(before) && opensSeason(after)) return true;
  if (opensSeason(before) && isAny<SeasonClosed>(after)) return true;
  if (replaces(later, earlier)) return true;
  const auto line = encode(later);
  if (!line) return tl::unexpected<Error>(line.error());
  return line->find('"' + earlier.id() + '"') != std::string::npos;
}

}  // namespace snugline::book
