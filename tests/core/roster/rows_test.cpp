// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/book/roster.h"
#include "core/book/roster_columns.h"
#include "core/book/roster_text.h"

using namespace snugline;
using namespace snugline::book;

namespace {

RosterRead readOk(const std::string& text) {
  auto roster = readRoster(text, "team.csv");
  REQUIRE(roster);
  return *roster;
}

}  // namespace

TEST_CASE("Header names are understood in any order, in English and Spanish, with units") {
  struct Spelling {
    std::string header, row;
  };
  const auto spelling =
      GENERATE(values<Spelling>({{"Jersey,Last name,First name,Birth year,Head (mm)", "07,Thistlecroft,Ivo,2010,561"},
                                 {"Head mm,First,Last,#,YOB", "561,Ivo,Thistlecroft,07,2010"},
                                 {"NUMBER;SURNAME;GIVEN NAME;DOB;TAPE IN MM", "07;Thistlecroft;Ivo;2010-03-09;561"},
                                 {"Dorsal;Apellidos;Nombre;Año de nacimiento;Cabeza (cm)", "07;Thistlecroft;Ivo;2010;56,1"},
                                 {"Número,Nombre completo,Fecha de nacimiento,Contorno de cabeza", "07,Ivo Thistlecroft,09/03/2010,561"},
                                 {"No.,Name,Born,Head", "#07,\"Thistlecroft, Ivo\",3/9/2010,56.1 cm"},
                                 {"Uniform #,Player,Birth Date,Head circumference", "07,Ivo Thistlecroft,9 Mar 2010,561 mm"},
                                 {"Jersey No,Name,Last Name,Birthday,Head cm", "07,Ivo,Thistlecroft,2010-03-09 00:00:00,56.1"}}));
  INFO(spelling.header);
  const RosterRead read = readOk(spelling.header + "\r\n" + spelling.row + "\r\n");
  REQUIRE(read.refused.empty());
  REQUIRE(read.rows.size() == 1);
  CHECK(read.rows[0].jersey == "07");
  CHECK(read.rows[0].family == "Thistlecroft");
  CHECK(read.rows[0].given == "Ivo");
  CHECK(read.rows[0].birthYear == 2010);
  CHECK(read.rows[0].head == Length::micrometres(561000));
}

TEST_CASE("A title above the header, blank rows and a separator line are passed over, and lines keep their numbers") {
  const RosterRead titled = readOk("Herons 2026,,\n\n,,\nNo,Last,First\n\n4,Wexcombe,Ari\n");
  REQUIRE(titled.rows.size() == 1);
  CHECK(titled.rows[0].line == 6);
  const RosterRead separated = readOk("sep=;\r\nNo;Last;First\r\n4;Wexcombe;Ari\r\n");
  REQUIRE(separated.rows.size() == 1);
  CHECK(separated.rows[0].line == 3);
  CHECK(separated.delimiter == ';');
}

TEST_CASE("Old line ends, no last line end and quoted delimiters do no harm") {
  const RosterRead read = readOk("No,Last,First\r4,\"Wexcombe, the elder\",Ari\r5,Rothwaite,Bao");
  REQUIRE(read.rows.size() == 2);
  CHECK(read.rows[0].family == "Wexcombe, the elder");
  CHECK(read.rows[1].line == 3);
}

TEST_CASE("A bad row is refused with its line and reason, and the good rows around it are read") {
  const RosterRead read = readOk(
      "No,Last,First,Born,Head mm\n"
      "1,Ashgarrow,Abel,2010,555\n"        // 2
      "2,,,2010,555\n"                     // 3 no name
      "12345,Bramwick,Adem,2010,555\n"     // 4 jersey
      "3,Calverhithe,Ari,2010,large\n"     // 5 head
      "4,Danvelli,Bao,nineteen,555\n"      // 6 birth year
      "5,Edelsvard\n"                      // 7 too few
      "6,Faraguna,Emil,2010,555,extra\n"   // 8 too many
      "7,Gren\"wyth,Enzo,2010,555\n"       // 9 quote
      "8,\"Hollinbeck\"x,Ezra,2010,555\n"  // 10 quote
      "9,Ibek\x01were,Finn,2010,555\n"     // 11 not printable
      "1,Ashgarrow,Abel,2010,555\n"        // 12 repeated
      "10,\"Jorvanger,Gael,2010,555\n"     // 13 never closed
      "11,Karavelis,Hugo,2010,555\n");     // 14
  REQUIRE(read.rows.size() == 2);
  CHECK(read.rows[0].family == "Ashgarrow");
  CHECK(read.rows[1].family == "Karavelis");
  CHECK(read.rows[1].line == 14);
  using Pair = std::pair<std::size_t, RowDoubt>;
  std::vector<Pair> refused;
  for (const RowNote& note : read.refused) refused.emplace_back(note.line, note.doubt);
  CHECK(refused == std::vector<Pair>{{3, RowDoubt::noName},
                                     {4, RowDoubt::jerseyUnreadable},
                                     {5, RowDoubt::headUnreadable},
                                     {6, RowDoubt::birthYearUnreadable},
                                     {7, RowDoubt::tooFewCells},
                                     {8, RowDoubt::tooManyCells},
                                     {9, RowDoubt::badQuote},
                                     {10, RowDoubt::badQuote},
                                     {11, RowDoubt::notPrintable},
                                     {12, RowDoubt::repeated},
                                     {13, RowDoubt::badQuote}});
}

TEST_CASE("Quotes that never match end the reading, not the machine") {
  std::string text = "No,Last,First\n";
  for (int i = 0; i < 5000; ++i) text += "\"a\n";
  const auto roster = readRoster(text, "team.csv");
  REQUIRE_FALSE(roster);
  CHECK(roster.error().code == ErrorCode::badRow);
}

TEST_CASE("A roster of 20,000 rows is read and one more is refused") {
  std::string text = "Last,First\n";
  for (int i = 0; i < 20000; ++i) text += "F" + std::to_string(i) + ",G\n";
  CHECK(readOk(text).rows.size() == 20000);
  CHECK(readRoster(text + "One,More\n", "team.csv").error().code == ErrorCode::tooLong);
}

TEST_CASE("Jerseys stay as written") {
  CHECK(jerseyOf("07") == "07");
  CHECK(jerseyOf("00") == "00");
  CHECK(jerseyOf(" #7 ") == "7");
  CHECK(jerseyOf("7.0") == "7");
  CHECK(jerseyOf("=\"07\"") == "07");
  CHECK_FALSE(jerseyOf("7a").has_value());
  CHECK_FALSE(jerseyOf("1234").has_value());
  CHECK_FALSE(jerseyOf("-7").has_value());
}

TEST_CASE("A head is read with its unit, the header's or by plausible size, else not at all") {
  using enum LengthUnit;
  CHECK(headOf("575mm", unsaid) == Length::micrometres(575000));
  CHECK(headOf("57,5 cm", millimetre) == Length::micrometres(575000));  // its own unit counts
  CHECK(headOf("22 1/2", inch) == Length::micrometres(571500));
  CHECK(headOf("22.5\"", unsaid) == Length::micrometres(571500));
  CHECK(headOf("575", unsaid) == Length::micrometres(575000));
  CHECK(headOf("57.5", unsaid) == Length::micrometres(575000));
  CHECK(headOf("22.5", unsaid) == Length::micrometres(571500));
  CHECK(headOf("57.5", millimetre) == Length::micrometres(57500));  // the header says so: questioned later
  CHECK_FALSE(headOf("100", unsaid).has_value());
  CHECK_FALSE(headOf("-575", millimetre).has_value());
  CHECK_FALSE(headOf("575 furlongs", unsaid).has_value());
  CHECK_FALSE(headOf("nan", millimetre).has_value());
  CHECK_FALSE(headOf("1e3", millimetre).has_value());
}

TEST_CASE("Names are split where the roster has one column for both") {
  const auto parts = [](const char* text) {
    const NameParts p = splitName(text);
    return p.family + "|" + p.given;
  };
  CHECK(parts("Ravenhythe, Oren") == "Ravenhythe|Oren");
  CHECK(parts("Oren Ravenhythe") == "Ravenhythe|Oren");
  CHECK(parts("Oren Tomas Ravenhythe") == "Ravenhythe|Oren Tomas");
  CHECK(parts("Gael de la Torrent") == "de la Torrent|Gael");
  CHECK(parts("Ravenhythe") == "Ravenhythe|");
  CHECK(parts("") == "|");
}

TEST_CASE("Cells keep blanks inside quotes and lines are counted through quoted breaks") {
  const auto rows = parseCells("a,\" b \"\n\n\"x\r\ny\",z\nlast,one\n", ',', "f", 10);
  REQUIRE(rows);
  REQUIRE(rows->size() == 3);
  CHECK((*rows)[0].cells == std::vector<std::string>{"a", " b "});
  CHECK((*rows)[1].line == 3);
  CHECK((*rows)[1].cells[0] == "x\r\ny");
  CHECK((*rows)[2].line == 5);
}
