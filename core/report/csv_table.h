// SPDX-License-Identifier: Apache-2.0
// Purpose: tables as CSV (RFC 4180: every cell in quotes, quotes doubled, CRLF; UTF-8 with its mark, so that a spreadsheet reads names
// right). A cell that a spreadsheet would take for a formula - it begins with = + - @, a tab, a carriage return, a line feed or their
// full-width forms - gets an apostrophe before it (OWASP, "CSV Injection" page and ASVS 5.0, requirement 1.2.10). Control characters
// become visible signs (book/shown_text.h); line feeds stay. Thread: plain functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace snugline::report {

[[nodiscard]] std::string csvCell(std::string_view text);
[[nodiscard]] std::string csvRow(const std::vector<std::string>& cells);
[[nodiscard]] std::string csvTable(const std::vector<std::vector<std::string>>& rows);

}  // namespace snugline::report
