// SPDX-License-Identifier: Apache-2.0
// Purpose: taking a roster in from whatever a spreadsheet program writes. RFC 4180 and its usual breakages: comma, semicolon, tab;
// UTF-8 with or without a mark, UTF-16, Windows-1252; CRLF; quoted newlines; header names in any order and common spellings.
// A bad row is refused with its line and reason, the good ones go in; taking the same file in again changes nothing.
// Errors (whole file): cannotRead, notText, badRow (no header understood), tooLong.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/book/acts.h"

namespace snugline::book {

inline constexpr std::size_t kRosterLimitBytes = 8 * 1024 * 1024;

enum class RowDoubt : std::uint8_t {
  headTooLarge,
  headTooSmall,
  sameJersey,
  birthYearUnlikely,  // questioned
  noName,
  jerseyUnreadable,
  headUnreadable,
  birthYearUnreadable,
  tooFewCells,
  tooManyCells,
  badQuote,
  notPrintable,
  repeated,  // refused
  tagUnreadable,
  sheetUnknown,
  sizeUnknown,
  labelUnreadable,
  pointUnknown,
  unitRetired,  // refused at take-in
  unitAway      // in repair or sent out, and nobody said what was done
};
[[nodiscard]] std::string_view code(RowDoubt d);
struct RowNote {
  std::size_t line = 0;  // 1-based line of the file where the row starts
  RowDoubt doubt = RowDoubt::noName;
  std::string text;  // the cell in question
};
struct RosterRow {
  std::size_t line = 0;
  std::string jersey, family, given;
  std::optional<int> birthYear;
  std::optional<Length> head;
};
struct RosterRead {
  std::vector<RosterRow> rows;
  std::vector<RowNote> refused;
  std::string encoding;  // "UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"
  char delimiter = ',';
};
[[nodiscard]] Result<RosterRead> readRoster(std::string_view bytes, const std::string& file);

// What somebody said to the question of a row. For a head, a birth year or a number: it stands as written, or is left out (of two athletes
// with one number that row goes in without its number). A head beyond what a tape can read is never taken.
enum class RowAnswer : std::uint8_t { asWritten, leftOut };
using RowAnswers = std::map<std::pair<std::size_t, RowDoubt>, RowAnswer>;  // by line and question

struct RosterPlan {
  Drafts drafts;
  std::size_t added = 0, changed = 0, unchanged = 0;
  std::vector<RowNote> questioned, refused;  // questioned: the answered ones too
};
// An athlete is known by jersey and family name together, or by both names where the jersey changed. Without an answer a questioned head
// or birth year stays out and a number that two have goes in; the rest of the row goes in.
[[nodiscard]] RosterPlan planRoster(const season::Views&, const RosterRead&, Day today, const RowAnswers& = {});
// Whether a question can be answered with "as written".
[[nodiscard]] bool canStand(const RowNote& question);

// Scans, one a line ("take-in"): known units are noted as seen; a new one by its tag alone goes in on hold until sheet,
// size and label are said.
struct TakeInPlan {
  Drafts drafts;
  std::vector<std::string> known, added, held;  // serials
  std::vector<RowNote> refused;
};
// A line is a tag, or "tag,sheet id,size,label[,points]": label a year or "missing"; points "ok" or a list of faults
// "faceguard=bare metal;liner=torn" (points not listed stay unseen). A first line that starts with the word "tag" is a heading.
[[nodiscard]] Result<TakeInPlan> planTakeIn(const season::Views&, std::string_view bytes, const std::string& file, Day today);

}  // namespace snugline::book
