// SPDX-License-Identifier: Apache-2.0
// Files written by Python's csv module and by LibreOffice Calc; data/write_fixtures.py says how.
#include SNUGLINE_CATCH_HEADER

#include <fstream>
#include <sstream>

#include "core/book/roster.h"

using namespace snugline;
using namespace snugline::book;

namespace {

std::string read(const std::string& name) {
  std::ifstream in(std::string(SNUGLINE_SOURCE_DIR) + "/tests/core/roster/data/" + name, std::ios::binary);
  REQUIRE(in);
  std::ostringstream bytes;
  bytes << in.rdbuf();
  return bytes.str();
}

struct Written {
  std::string file, encoding;
  char delimiter;
};

}  // namespace

TEST_CASE("Every file that Python and LibreOffice write of one roster reads the same") {
  const auto written = GENERATE(values<Written>({{"python_excel.csv", "UTF-8", ','},
                                                 {"python_excel_tab.csv", "UTF-8", '\t'},
                                                 {"python_unix.csv", "UTF-8", ','},
                                                 {"python_semicolon.csv", "UTF-8", ';'},
                                                 {"python_all_quoted.csv", "UTF-8", ','},
                                                 {"python_utf8_mark.csv", "UTF-8", ','},
                                                 {"python_utf16.csv", "UTF-16LE", ','},
                                                 {"python_utf16be.csv", "UTF-16BE", ','},
                                                 {"python_windows1252.csv", "windows-1252", ','},
                                                 {"calc_comma_utf8.csv", "UTF-8", ','},
                                                 {"calc_semicolon_utf8.csv", "UTF-8", ';'},
                                                 {"calc_tab_utf8.csv", "UTF-8", '\t'},
                                                 {"calc_comma_windows1252.csv", "windows-1252", ','},
                                                 {"calc_tab_utf16.csv", "UTF-16LE", '\t'}}));
  INFO(written.file);
  const auto roster = readRoster(read(written.file), written.file);
  REQUIRE(roster);
  CHECK(roster->encoding == written.encoding);
  CHECK(roster->delimiter == written.delimiter);
  CHECK(roster->refused.empty());
  REQUIRE(roster->rows.size() == 6);
  const std::vector<std::string> jerseys{"07", "00", "7", "12", "33", ""};
  const std::vector<std::string> families{"Echevarrieta", "O'Brindle", "Núñezalde", "de la Cantalejos", "Hirasaki", "Yellandros"};
  const std::vector<std::string> given{"Beñat", "Cian", "Joaquín", "Gaël", "Kaito", "Zoran"};
  const std::vector<std::size_t> lines{2, 3, 4, 6, 7, 8};  // the third row's note has a line break in it
  for (std::size_t i = 0; i < 6; ++i) {
    INFO(i);
    CHECK(roster->rows[i].jersey == jerseys[i]);
    CHECK(roster->rows[i].family == families[i]);
    CHECK(roster->rows[i].given == given[i]);
    CHECK(roster->rows[i].line == lines[i]);
  }
  CHECK(roster->rows[0].birthYear == 2010);
  CHECK(roster->rows[0].head == Length::micrometres(562000));
  CHECK_FALSE(roster->rows[3].head.has_value());
  CHECK(roster->rows[4].head == Length::micrometres(650000));
  CHECK_FALSE(roster->rows[5].birthYear.has_value());
}

TEST_CASE("What is no text is refused with what it seems to be") {
  const std::string png("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16);
  const std::string zip("PK\x03\x04\x14\0\x06\0", 8);
  const std::string pdf = "%PDF-1.7\n%\xe2\xe3\xcf\xd3\n";
  const std::string nuls("No,Name\n1,Ab\0c\n2,De\0\0f\n", 23);
  for (const auto& [bytes, word] : {std::pair<std::string, std::string>{png, "PNG"}, {zip, "ZIP"}, {pdf, "PDF"}, {nuls, "NUL"}}) {
    const auto roster = readRoster(bytes, "team.csv");
    REQUIRE_FALSE(roster);
    CHECK(roster.error().code == ErrorCode::notText);
    CHECK(roster.error().place == "team.csv");
    CHECK(roster.error().detail.find(word) != std::string::npos);
  }
}

TEST_CASE("An empty file, a file without a header and a file of 9 MiB are refused whole") {
  CHECK(readRoster("", "a.csv").error().code == ErrorCode::badRow);
  CHECK(readRoster("\n\n\n", "a.csv").error().code == ErrorCode::badRow);
  const auto noHeader = readRoster("1,2,3\n4,5,6\n", "a.csv");
  REQUIRE_FALSE(noHeader);
  CHECK(noHeader.error().code == ErrorCode::badRow);
  CHECK(noHeader.error().place == "a.csv:1");
  const auto large = readRoster(std::string(9 * 1024 * 1024, 'x'), "a.csv");
  REQUIRE_FALSE(large);
  CHECK(large.error().code == ErrorCode::tooLong);
}

TEST_CASE("Bytes that are neither UTF-8 nor Windows-1252 are refused") {
  const auto roster = readRoster(
      "Name\nAb\x81"
      "cd\n",
      "a.csv");  // 0x81 is nothing in Windows-1252
  REQUIRE_FALSE(roster);
  CHECK(roster.error().code == ErrorCode::notText);
}
