// SPDX-License-Identifier: Apache-2.0
#include "core/book/roster.h"

#include <algorithm>
#include <set>

#include "core/book/roster_columns.h"
#include "core/book/roster_text.h"
#include "core/book/written.h"

namespace snugline::book {

namespace {

constexpr std::size_t kSniffBytes = 64 * 1024;
constexpr std::size_t kSniffRows = 20;
constexpr std::size_t kHeaderWithin = 10;  // titles and blank rows may stand above the header
constexpr std::size_t kRowsMost = 20000;   // ours
constexpr std::size_t kQuoteCell = 60;     // characters of a cell shown in a note

struct Layout {
  char delimiter = ',';
  std::size_t headerRow = 0, width = 0;
  RosterColumns columns;
  std::size_t alike = 0;  // rows as wide as the header
};

// The header is the first row near the top that names at least a person, or a number and something else.
std::optional<Layout> layoutOf(const std::vector<CellRow>& rows, char delimiter) {
  for (std::size_t i = 0; i < std::min(rows.size(), kHeaderWithin); ++i) {
    if (rows[i].isBadQuote) continue;
    const RosterColumns columns = columnsOf(rows[i].cells);
    if (!columns.hasName()) continue;
    Layout layout{delimiter, i, rows[i].cells.size(), columns, 0};
    for (std::size_t j = i + 1; j < rows.size(); ++j) layout.alike += !rows[j].isBadQuote && rows[j].cells.size() == layout.width ? 1U : 0U;
    return layout;
  }
  return std::nullopt;
}

Result<Layout> sniff(std::string_view text, const std::string& file) {
  std::optional<Layout> best;
  std::string first;
  for (char delimiter : {',', ';', '\t'}) {
    const std::size_t end = text.size() <= kSniffBytes ? text.size() : text.find_last_of("\r\n", kSniffBytes);
    const auto rows = parseCells(text.substr(0, end), delimiter, file, kSniffRows);
    if (!rows) continue;
    if (first.empty() && !rows->empty() && !rows->front().cells.empty()) first = rows->front().cells.front();
    const auto layout = layoutOf(*rows, delimiter);
    if (!layout) continue;
    const bool isBetter = !best || layout->columns.known() > best->columns.known() ||
                          (layout->columns.known() == best->columns.known() && layout->alike > best->alike);
    if (isBetter) best = layout;
  }
  if (best) return *best;
  return fail(ErrorCode::badRow, file + ":1",
              text.empty() ? "the file is empty" : "no header with a name column: " + first.substr(0, kQuoteCell));
}

// Some spreadsheets say their delimiter in a line of its own: sep=;
std::size_t skipSeparatorLine(std::string_view text) {
  if (!text.starts_with("sep=") || text.size() < 6) return 0;
  return text[5] == '\r' || text[5] == '\n' ? 5 : 0;  // the line's end stays, so that lines keep their numbers
}

class RosterRows {
 public:
  RosterRows(const Layout& layout, RosterRead& read) : m_columns(layout.columns), m_width(layout.width), m_read(read) {}

  void take(const CellRow& row) {
    if (row.isBadQuote) return refuse(row, RowDoubt::badQuote, row.cells.front());
    const bool isBlank = std::all_of(row.cells.begin(), row.cells.end(), [](const auto& c) { return trimmed(c).empty(); });
    if (isBlank) return;
    for (std::size_t i = m_width; i < row.cells.size(); ++i) {
      if (!trimmed(row.cells[i]).empty()) return refuse(row, RowDoubt::tooManyCells, row.cells[i]);
    }
    if (row.cells.size() < m_width && row.cells.size() <= m_columns.last()) return refuse(row, RowDoubt::tooFewCells, row.cells.back());
    RosterRow out;
    out.line = row.line;
    if (!takeName(row, out)) return;
    if (!takeNumbers(row, out)) return;
    if (!m_seen.insert(out.jersey + '\n' + out.family + '\n' + out.given).second) return refuse(row, RowDoubt::repeated, out.family);
    m_read.rows.push_back(std::move(out));
  }

 private:
  static std::string cellAt(const CellRow& row, std::optional<std::size_t> column) {
    if (!column || *column >= row.cells.size()) return {};
    std::string text(trimmed(row.cells[*column]));
    // A line break inside a cell is a blank to everybody but the spreadsheet.
    for (std::size_t at = 0; (at = text.find_first_of("\r\n\t", at)) != std::string::npos;)
      text.replace(at, text.compare(at, 2, "\r\n") == 0 ? 2 : 1, " ");
    return text;
  }
  void refuse(const CellRow& row, RowDoubt doubt, const std::string& text) { m_read.refused.push_back({row.line, doubt, shown(text)}); }
  static std::string shown(const std::string& text) {
    std::string out;
    for (char c : text.substr(0, kQuoteCell)) out += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    while (!out.empty() && !printableLength(out)) out.pop_back();  // a character cut in half
    return out;
  }
  bool takeName(const CellRow& row, RosterRow& out) {
    out.family = cellAt(row, m_columns.family);
    out.given = cellAt(row, m_columns.given);
    if (m_columns.fullName && out.family.empty()) {
      const NameParts parts = splitName(cellAt(row, m_columns.fullName));
      out.family = parts.family;
      if (out.given.empty()) out.given = parts.given;
    }
    if (out.family.empty()) std::swap(out.family, out.given);
    for (const std::string& name : {out.family, out.given}) {
      const auto length = printableLength(name);
      if (!length) return refuse(row, RowDoubt::notPrintable, name), false;
      if (*length > kNameLimit) return refuse(row, RowDoubt::noName, name), false;
    }
    if (out.family.empty()) return refuse(row, RowDoubt::noName, row.cells.front()), false;
    return true;
  }
  bool takeNumbers(const CellRow& row, RosterRow& out) {
    if (const std::string cell = cellAt(row, m_columns.jersey); !cell.empty()) {
      const auto jersey = jerseyOf(cell);
      if (!jersey) return refuse(row, RowDoubt::jerseyUnreadable, cell), false;
      out.jersey = *jersey;
    }
    if (const std::string cell = cellAt(row, m_columns.birthYear); !cell.empty()) {
      out.birthYear = birthYearOf(cell);
      if (!out.birthYear) return refuse(row, RowDoubt::birthYearUnreadable, cell), false;
    }
    if (const std::string cell = cellAt(row, m_columns.head); !cell.empty()) {
      out.head = headOf(cell, m_columns.headUnit);
      if (!out.head) return refuse(row, RowDoubt::headUnreadable, cell), false;
    }
    return true;
  }

  const RosterColumns& m_columns;
  std::size_t m_width;
  RosterRead& m_read;
  std::set<std::string> m_seen;
};

}  // namespace

std::string_view code(RowDoubt d) {
  switch (d) {
    case RowDoubt::headTooLarge:
      return "head-too-large";
    case RowDoubt::headTooSmall:
      return "head-too-small";
    case RowDoubt::sameJersey:
      return "same-jersey";
    case RowDoubt::birthYearUnlikely:
      return "birth-year-unlikely";
    case RowDoubt::noName:
      return "no-name";
    case RowDoubt::jerseyUnreadable:
      return "jersey-unreadable";
    case RowDoubt::headUnreadable:
      return "head-unreadable";
    case RowDoubt::birthYearUnreadable:
      return "birth-year-unreadable";
    case RowDoubt::tooFewCells:
      return "too-few-cells";
    case RowDoubt::tooManyCells:
      return "too-many-cells";
    case RowDoubt::badQuote:
      return "bad-quote";
    case RowDoubt::notPrintable:
      return "not-printable";
    case RowDoubt::repeated:
      return "repeated";
    case RowDoubt::tagUnreadable:
      return "tag-unreadable";
    case RowDoubt::sheetUnknown:
      return "sheet-unknown";
    case RowDoubt::sizeUnknown:
      return "size-unknown";
    case RowDoubt::labelUnreadable:
      return "label-unreadable";
    case RowDoubt::pointUnknown:
      return "point-unknown";
    case RowDoubt::unitAway:
      return "unit-away";
    case RowDoubt::unitRetired:
      return "unit-retired";
  }
  return {};
}

Result<RosterRead> readRoster(std::string_view bytes, const std::string& file) {
  auto text = decodeText(bytes, file, kRosterLimitBytes);
  if (!text) return tl::unexpected(text.error());
  const std::string_view body = std::string_view(text->utf8).substr(skipSeparatorLine(text->utf8));
  const auto layout = sniff(body, file);
  if (!layout) return tl::unexpected(layout.error());
  const auto rows = parseCells(body, layout->delimiter, file, kRowsMost + layout->headerRow + 2);
  if (!rows) return tl::unexpected(rows.error());
  if (rows->size() > kRowsMost + layout->headerRow + 1) return fail(ErrorCode::tooLong, file, "rows, " + std::to_string(kRowsMost));
  RosterRead read;
  read.encoding = text->encoding;
  read.delimiter = layout->delimiter;
  RosterRows reader(*layout, read);
  for (std::size_t i = layout->headerRow + 1; i < rows->size(); ++i) reader.take((*rows)[i]);
  return read;
}

}  // namespace snugline::book
