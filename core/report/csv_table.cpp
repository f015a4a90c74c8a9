// SPDX-License-Identifier: Apache-2.0
#include "core/report/csv_table.h"

#include <algorithm>
#include <array>

#include "core/book/shown_text.h"

namespace snugline::report {

namespace {

constexpr std::string_view kMark = "\xEF\xBB\xBF";
constexpr std::array<std::string_view, 11> kFormula{
    "=", "+", "-", "@", "\t", "\r", "\n", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};

}  // namespace

std::string csvCell(std::string_view text) {
  const bool isFormula = std::any_of(kFormula.begin(), kFormula.end(), [&](std::string_view begin) { return text.starts_with(begin); });
  std::string cell = "\"";
  if (isFormula) cell += '\'';
  for (const char c : book::shownText(text, 0, book::Lines::several)) {
    if (c == '"') cell += '"';
    cell += c;
  }
  return cell + '"';
}

std::string csvRow(const std::vector<std::string>& cells) {
  std::string row;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (i != 0) row += ',';
    row += csvCell(cells[i]);
  }
  return row + "\r\n";
}

std::string csvTable(const std::vector<std::vector<std::string>>& rows) {
  std::string table(kMark);
  for (const auto& row : rows) table += csvRow(row);
  return table;
}

}  // namespace snugline::report
