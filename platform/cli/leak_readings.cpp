// SPDX-License-Identifier: Apache-2.0
#include "platform/cli/leak_readings.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/book/roster_text.h"

namespace snugline::cli {
namespace {

enum class Column : std::uint8_t { time, kpa, psi, celsius, fahrenheit, elevationM, elevationFt, ambientKpa, refill, onHead };
constexpr std::array<std::string_view, 10> kHeadings{"time",        "kpa",          "psi",         "celsius", "fahrenheit",
                                                     "elevation_m", "elevation_ft", "ambient_kpa", "refill",  "on_head"};
using Columns = std::array<std::optional<std::size_t>, kHeadings.size()>;

std::string trimmed(std::string_view text) {
  const std::size_t from = text.find_first_not_of(" \t\u00A0");
  if (from == std::string_view::npos) return {};
  return std::string(text.substr(from, text.find_last_not_of(" \t") - from + 1));
}

std::string lowerCase(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return text;
}

char delimiterOf(std::string_view text) {
  const std::string_view first = text.substr(0, text.find_first_of("\r\n"));
  char best = ',';
  for (const char c : {';', '\t'})
    if (std::count(first.begin(), first.end(), c) > std::count(first.begin(), first.end(), best)) best = c;
  return best;
}

Result<Columns> columnsOf(const book::CellRow& row, const std::string& place) {
  Columns columns;
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    const std::string heading = lowerCase(trimmed(row.cells[i]));
    const auto known = std::find(kHeadings.begin(), kHeadings.end(), heading);
    if (known == kHeadings.end()) continue;
    auto& column = columns[static_cast<std::size_t>(known - kHeadings.begin())];
    if (column) return fail(ErrorCode::duplicateKey, place, "the heading " + heading);
    column = i;
  }
  const auto expectOneOf = [&](std::initializer_list<Column> some, const char* words) -> Result<void> {
    const auto count = std::count_if(some.begin(), some.end(), [&](Column c) { return columns[static_cast<std::size_t>(c)].has_value(); });
    if (count == 1) return {};
    if (count == 0) return fail(ErrorCode::missingKey, place, std::string("a heading ") + words);
    return fail(ErrorCode::inconsistent, place, std::string("more than one of the headings ") + words);
  };
  for (const Result<void>& one :
       {expectOneOf({Column::time}, "time"), expectOneOf({Column::kpa, Column::psi}, "kpa or psi"),
        expectOneOf({Column::celsius, Column::fahrenheit}, "celsius or fahrenheit"),
        expectOneOf({Column::elevationM, Column::elevationFt, Column::ambientKpa}, "elevation_m, elevation_ft or ambient_kpa")})
    if (!one) return tl::unexpected<Error>(one.error());
  return columns;
}

class Row {
 public:
  Row(const Columns& columns, const book::CellRow& row, std::string place) : m_columns(columns), m_row(row), m_place(std::move(place)) {}

  Result<air::LeakReading> read() const {
    air::LeakReading r;
    const Result<Instant> at = parseInstant(cell(Column::time), place(Column::time));
    if (!at) return tl::unexpected<Error>(at.error());
    r.at = *at;
    const Result<Temperature> temperature =
        has(Column::celsius) ? temperatureIn(Column::celsius, "C") : temperatureIn(Column::fahrenheit, "F");
    if (!temperature) return tl::unexpected<Error>(temperature.error());
    r.temperature = *temperature;
    const Result<Pressure> around = ambient();
    if (!around) return tl::unexpected<Error>(around.error());
    r.ambient = *around;
    const Column pressure = has(Column::kpa) ? Column::kpa : Column::psi;
    const Result<Pressure> gauge = parsePressure(with(pressure, pressure == Column::kpa ? "kPa" : "psi"), place(pressure));
    if (!gauge) return tl::unexpected<Error>(gauge.error());
    const Result<Pressure> credible = air::believedGauge(*gauge, *around, place(pressure));
    if (!credible) return tl::unexpected<Error>(credible.error());
    r.gauge = *credible;
    const Result<bool> refill = flag(Column::refill);
    if (!refill) return tl::unexpected<Error>(refill.error());
    r.isRefill = *refill;
    const Result<bool> onHead = flag(Column::onHead);
    if (!onHead) return tl::unexpected<Error>(onHead.error());
    r.isOnHead = *onHead;
    return r;
  }

 private:
  [[nodiscard]] bool has(Column c) const { return m_columns[static_cast<std::size_t>(c)].has_value(); }
  [[nodiscard]] std::string place(Column c) const { return m_place + ' ' + std::string(kHeadings[static_cast<std::size_t>(c)]); }
  [[nodiscard]] std::string cell(Column c) const {
    const auto& column = m_columns[static_cast<std::size_t>(c)];
    return column && *column < m_row.cells.size() ? trimmed(m_row.cells[*column]) : std::string();
  }
  // The heading names the unit; a cell that names one as well is refused by the parser of quantities.
  [[nodiscard]] std::string with(Column c, const char* unit) const {
    const std::string text = cell(c);
    return text.empty() ? text : text + ' ' + unit;
  }
  Result<Temperature> temperatureIn(Column c, const char* unit) const {
    const Result<Temperature> read = parseTemperature(with(c, unit), place(c));
    return read ? air::believed(*read, place(c)) : read;
  }
  Result<Pressure> ambient() const {
    if (has(Column::ambientKpa)) {
      const Result<Pressure> read = parsePressure(with(Column::ambientKpa, "kPa"), place(Column::ambientKpa), PressureKind::absolute);
      return read ? air::believedAmbient(*read, place(Column::ambientKpa)) : read;
    }
    const Column c = has(Column::elevationM) ? Column::elevationM : Column::elevationFt;
    const Result<Elevation> read = parseElevation(with(c, c == Column::elevationM ? "m" : "ft"), place(c));
    if (!read) return tl::unexpected<Error>(read.error());
    return air::ambientAt(*read);
  }
  Result<bool> flag(Column c) const {
    const std::string text = cell(c);
    if (text.empty() || text == "0") return false;
    if (text == "1") return true;
    return fail(ErrorCode::wrongType, place(c), "0 or 1, not \"" + text.substr(0, 60) + '"');
  }

  const Columns& m_columns;
  const book::CellRow& m_row;
  std::string m_place;
};

}  // namespace

Result<ReadingsFile> parseReadings(std::string_view bytes, const std::string& file) {
  const Result<book::PlainText> text = book::decodeText(bytes, file, kReadingsLimitBytes);
  if (!text) return tl::unexpected<Error>(text.error());
  // One more than may be, and the row of headings: so that too many are noticed.
  const auto rows = book::parseCells(text->utf8, delimiterOf(text->utf8), file, air::kReadingsMost + 2);
  if (!rows) return tl::unexpected<Error>(rows.error());
  if (rows->empty()) return fail(ErrorCode::missingKey, file, "a row of headings: time, kpa, celsius, elevation_m");
  if (rows->size() > air::kReadingsMost + 1)
    return fail(ErrorCode::tooLong, file, "more readings than " + std::to_string(air::kReadingsMost));
  const auto placeOf = [&](const book::CellRow& row) { return file + ':' + std::to_string(row.line); };
  const Result<Columns> columns = columnsOf(rows->front(), placeOf(rows->front()));
  if (!columns) return tl::unexpected<Error>(columns.error());
  ReadingsFile out;
  for (std::size_t i = 0; i < rows->size(); ++i) {
    const book::CellRow& row = (*rows)[i];
    if (row.isBadQuote) return fail(ErrorCode::badRow, placeOf(row), "a quote is opened and not closed");
    if (i == 0) continue;
    const bool isBlank = std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& c) { return trimmed(c).empty(); });
    if (isBlank) continue;
    if (row.cells.size() > rows->front().cells.size())
      return fail(ErrorCode::wrongType, placeOf(row),
                  std::to_string(rows->front().cells.size()) + " cells as in the headings, and " + std::to_string(row.cells.size()) +
                      " stand here");
    Result<air::LeakReading> reading = Row(*columns, row, placeOf(row)).read();
    if (!reading) return tl::unexpected<Error>(reading.error());
    out.readings.push_back(*reading);
    out.lines.push_back(row.line);
  }
  return out;
}

}  // namespace snugline::cli
