// SPDX-License-Identifier: Apache-2.0
// Purpose: a whole check written down as JSON (the answers file of `snug guide`), read into a setup and the answers in their
// order, and folded by the guide. Keys: today (required), season_end, certified_until (last good day; missing = not known),
// label_missing, hair_wet, cold (false when missing), fitted, points, kind ("first" when missing), steps, questions, says, unwell.
// Order of folding: hair, cold, fitted, points, steps, questions, says, unwell: a word of the athlete counts as later than every
// step. A step is {"mark":…,"found":…}, with side, how (hold) and mm (brow; found may then be missing);
// {"did":…} with port or part and pumps, kpa or to, or {"did":"warm"} alone; or {"read":port,"kpa":…}, with on_head.
// Errors: those of strict_json.h, of quantities and dates, unknownWord, unknownPort, inconsistent, outOfRange, notAllowed;
// place is "file#/path/to/key", detail names what was read and what was expected. Thread: plain values.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/fit/guide.h"

namespace snugline::fit {

// Refuses more than this much, so that a wrong file is not swallowed whole (ours).
inline constexpr std::size_t kAnswersLimitBytes = 1024 * 1024;

struct WrittenCheck {
  Setup setup;                  // setup.sheet is the sheet handed in, which outlives this
  std::vector<Answer> answers;  // in the order folded
  State state;                  // their fold
};

// name stands before the path in errors.
[[nodiscard]] Result<WrittenCheck> parseAnswers(std::string_view text, const std::string& name, const gear::ModelSheet& sheet);
[[nodiscard]] Result<WrittenCheck> readAnswersFile(const std::string& path, const gear::ModelSheet& sheet);

}  // namespace snugline::fit
