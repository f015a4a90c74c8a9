// SPDX-License-Identifier: Apache-2.0
// Purpose: which column of a roster holds what, by its header, and reading one cell. Common spellings in English and Spanish, any case,
// accents and points ignored, units in brackets or after the word. Thread: plain functions.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.h"

namespace snugline::book {

enum class LengthUnit : std::uint8_t { unsaid, millimetre, centimetre, inch };

struct RosterColumns {
  std::optional<std::size_t> jersey, family, given, fullName, birthYear, head;
  LengthUnit headUnit = LengthUnit::unsaid;
  [[nodiscard]] std::size_t known() const;
  [[nodiscard]] bool hasName() const { return family.has_value() || fullName.has_value() || given.has_value(); }
  [[nodiscard]] std::size_t last() const;  // highest column in use
};
[[nodiscard]] RosterColumns columnsOf(const std::vector<std::string>& header);

// Lower case, Latin accents and marks folded away, other signs as single blanks: "Año de Nac." -> "ano de nac".
[[nodiscard]] std::string folded(std::string_view text);

struct NameParts {
  std::string family, given;
};
// "Family, Given" or "Given Family"; small words before the last one belong to the family name ("de la Torre").
[[nodiscard]] NameParts splitName(std::string_view text);

// "07", "#7", "7.0" as a spreadsheet writes numbers; nothing when it is no number of 0..3 digits.
[[nodiscard]] std::optional<std::string> jerseyOf(std::string_view cell);
// A year, or a date with the year in it.
[[nodiscard]] std::optional<int> birthYearOf(std::string_view cell);
// With its own unit, else the header's, else by plausible size (ours): 400..700 mm, 40..70 cm, 15.7..27.6 in.
[[nodiscard]] std::optional<Length> headOf(std::string_view cell, LengthUnit unit);

}  // namespace snugline::book
