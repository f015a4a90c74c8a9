// SPDX-License-Identifier: Apache-2.0
// Text of others, shown and put into tables: it stays text.
#include SNUGLINE_CATCH_HEADER

#include <random>

#include "core/book/shown_text.h"
#include "core/book/written.h"
#include "core/report/csv_table.h"

using namespace snugline;
using namespace snugline::book;
using namespace snugline::report;

TEST_CASE("Plain text, letters of any script and emoji are shown as they are") {
  for (const char* text : {"", "Marrow, Ash", "Ångström-Nuñez", "漢字", "👩‍🚀 ok", "Zoë"}) CHECK(shownText(text) == text);
}

TEST_CASE("Control characters and what turns the direction become signs that can be seen") {
  CHECK(shownText("a\tb\r\n") == "a\u2409b\u240d\u240a");
  CHECK(shownText(std::string("a\0b", 3)) == "a\u2400b");
  CHECK(shownText("\x1b[31mred\x7f") == "\u241b[31mred\u2421");
  CHECK(shownText("a\nb", 0, Lines::several) == "a\nb");
  for (const char* turn :
       {"\u202e", "\u202d", "\u2066", "\u2069", "\u200f", "\u061c", "\u2028", "\u200b", "\ufeff", "\u0085", "\U000E0041"})
    CHECK(shownText(std::string("a") + turn + "b") == "a\ufffdb");
  CHECK(shownText("a\xff\xc3") == "a\ufffd\ufffd");
}

TEST_CASE("Right-to-left text is set apart, so that what stands around it stays in its place") {
  CHECK(shownText("\u05d0\u05d1") == "\u2068\u05d0\u05d1\u2069");
  CHECK(shownText("12 \u0645\u062d") == "\u206812 \u0645\u062d\u2069");
}

TEST_CASE("What is too long ends in a sign, and a pile of marks is cut") {
  CHECK(shownText(std::string(10000, 'x')).size() == kShownMost + 3);
  CHECK(shownText(std::string(10000, 'x'), 0).size() == 10000);
  CHECK(shownText("\u05d0\u05d1\u05d2", 2) == "\u2068\u05d0\u05d1\u2069\u2026");
  std::string pile = "a";
  for (int i = 0; i < 500; ++i) pile += "\u0301";
  CHECK(shownText(pile, 0) == "a\u0301\u0301\u0301\u0301");
}

TEST_CASE("Whatever the bytes, what is shown is UTF-8 without a control character") {
  std::mt19937 chance(5);
  for (int round = 0; round < 5000; ++round) {
    std::string bytes(static_cast<std::size_t>(chance() % 40), ' ');
    for (char& c : bytes) c = static_cast<char>(chance() % 3 == 0 ? chance() % 128 : chance() % 256);
    const std::string shown = shownText(bytes);
    INFO(round);
    CHECK(printableLength(shown).has_value());
  }
}

// OWASP's page "CSV Injection" and ASVS 5.0, 1.2.10: = + - @, tab, carriage return; the page adds line feed and full-width forms.
TEST_CASE("A cell that a spreadsheet would run is defused, and others are not touched") {
  CHECK(csvCell("Marrow") == "\"Marrow\"");
  CHECK(csvCell("7") == "\"7\"");
  for (const char* bad : {"=1+1", "+1", "-1", "@SUM(A1)", "\uff1d1+1", "\uff0b1", "\uff0d1", "\uff201"})
    CHECK(csvCell(bad) == std::string("\"'") + bad + '"');
  CHECK(csvCell("\t=1") == "\"'\u2409=1\"");
  CHECK(csvCell("\r=1") == "\"'\u240d=1\"");
  CHECK(csvCell("\n=1") == "\"'\n=1\"");
  CHECK(csvCell("=cmd|' /C calc'!A0") == "\"'=cmd|' /C calc'!A0\"");
  CHECK(csvCell("a\",\"=1") == "\"a\"\",\"\"=1\"");  // no way out of the cell
}

TEST_CASE("A table has its mark, its line ends and a cell for a cell") {
  CHECK(csvTable({{"when", "what"}, {"2026", "a\nb"}}) == "\xEF\xBB\xBF\"when\",\"what\"\r\n\"2026\",\"a\nb\"\r\n");
}
