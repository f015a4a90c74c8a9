// SPDX-License-Identifier: Apache-2.0
// Purpose: from the bytes of a list to rows of cells with the line that each starts on. Encoding: by mark, by the pattern of NUL bytes,
// as UTF-8 where it is well formed, else Windows-1252. Parsing by libcsv. Errors: notText (detail: what it seems to be), tooLong.
// Thread: plain functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace snugline::book {

struct PlainText {
  std::string utf8;      // without a mark
  std::string encoding;  // "UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"
};
[[nodiscard]] Result<PlainText> decodeText(std::string_view bytes, const std::string& file, std::size_t limit);

struct CellRow {
  std::size_t line = 1;  // where the row starts
  std::vector<std::string> cells;
  bool isBadQuote = false;  // cells hold the raw line then
};
// At most `most` rows; blank lines are skipped but counted. A row with a stray or unclosed quote is one bad line: what follows it is read.
[[nodiscard]] Result<std::vector<CellRow>> parseCells(std::string_view utf8, char delimiter, const std::string& file, std::size_t most);

}  // namespace snugline::book
