// SPDX-License-Identifier: Apache-2.0
// Purpose: the terminal's sentences, in English, made from core's codes. About equipment only, never about a person.
// Thread: plain functions.
#pragma once

#include <string>
#include <vector>

#include "core/book/roster.h"
#include "core/fit/guide.h"
#include "core/fit/size.h"
#include "core/quantity/result.h"
#include "core/season/board.h"

namespace snugline::cli {

// The maker's word and local rules stand above any advice; said wherever advice is given.
inline constexpr const char* kCaution = "Follow the helmet maker's instructions and local rules; they come first.";

// Control characters are written as \x1d, so that whatever was typed or read stays on one line.
[[nodiscard]] std::string oneLine(const std::string& text);

[[nodiscard]] std::string tagFaultWords(const std::string& detail);  // core/gear/tag_fault.h; tag_faults.cpp

// Names the file, line or option and what was expected; one line, no stop at its end.
[[nodiscard]] std::string sentence(const Error& error);

[[nodiscard]] std::string sentence(const season::DueReason& reason);
[[nodiscard]] std::string sentence(const book::RowNote& note);
[[nodiscard]] std::string sentence(const fit::Reason& reason);
[[nodiscard]] std::string sentence(const fit::Advice& advice);
[[nodiscard]] std::string sentence(const fit::SizeAnswer& answer);

[[nodiscard]] std::string words(season::Lane lane);
[[nodiscard]] std::string words(fit::Verdict verdict);
// "brow high", "jaw left presses".
[[nodiscard]] std::string words(fit::Mark mark, fit::Finding finding, fit::Side side = fit::Side::both);
[[nodiscard]] std::string words(gear::Point point);
// The strip as text, one sign a mark: o snug, ' over, . under, x fault, - not seen.
[[nodiscard]] std::string strip(const std::array<fit::Finding, fit::kMarkCount>& findings);

}  // namespace snugline::cli
