// SPDX-License-Identifier: Apache-2.0
#include "core/book/roster_columns.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/book/written.h"

namespace snugline::book {

namespace {

using Words = std::initializer_list<std::string_view>;

bool isOneOf(std::string_view word, Words words) { return std::find(words.begin(), words.end(), word) != words.end(); }

bool isJersey(std::string_view h) {
  return isOneOf(h, {"jersey",
                     "jersey number",
                     "jersey no",
                     "jersey num",
                     "jersey nr",
                     "no",
                     "nr",
                     "num",
                     "number",
                     "uniform",
                     "uniform number",
                     "uniform no",
                     "shirt",
                     "shirt number",
                     "shirt no",
                     "player number",
                     "player no",
                     "roster number",
                     "dorsal",
                     "numero",
                     "numero de dorsal",
                     "numero de camiseta",
                     "numero de jersey",
                     "camiseta",
                     "n"});
}
bool isFamily(std::string_view h) {
  return isOneOf(h, {"last", "last name", "lastname", "lname", "surname", "family", "family name", "familyname", "player last name",
                     "athlete last name", "student last name", "apellido", "apellidos", "primer apellido"});
}
bool isGiven(std::string_view h) {
  return isOneOf(h, {"first", "first name", "firstname", "fname", "given", "given name", "given names", "forename", "forenames",
                     "preferred name", "player first name", "athlete first name", "student first name", "nombre de pila", "nombres"});
}
// Either the given name, where a family name stands beside it, or the whole.
bool isNameHeading(std::string_view h) { return isOneOf(h, {"name", "nombre"}); }
bool isFull(std::string_view h) {
  return isOneOf(h, {"full name",
                     "fullname",
                     "player",
                     "player name",
                     "athlete",
                     "athlete name",
                     "student",
                     "student name",
                     "name last first",
                     "last first",
                     "last name first name",
                     "nombre completo",
                     "nombre y apellido",
                     "nombre y apellidos",
                     "apellido y nombre",
                     "apellidos y nombre",
                     "apellidos nombre",
                     "jugador",
                     "jugadora",
                     "atleta",
                     "alumno",
                     "alumna"});
}
bool isBirth(std::string_view h) {
  return isOneOf(h, {"birth year",
                     "birthyear",
                     "year of birth",
                     "yob",
                     "born",
                     "year born",
                     "dob",
                     "d o b",
                     "date of birth",
                     "birth date",
                     "birthdate",
                     "birthday",
                     "birth",
                     "nacimiento",
                     "fecha de nacimiento",
                     "fecha nacimiento",
                     "ano de nacimiento",
                     "ano nacimiento",
                     "ano nac",
                     "fecha nac",
                     "f nac",
                     "nacido",
                     "nacida"});
}
bool isHead(std::string_view h) {
  return isOneOf(h, {"head",
                     "head size",
                     "head circumference",
                     "head circ",
                     "head measurement",
                     "head tape",
                     "tape",
                     "tape reading",
                     "circumference",
                     "circ",
                     "cabeza",
                     "contorno",
                     "contorno de cabeza",
                     "contorno cabeza",
                     "perimetro",
                     "perimetro cefalico",
                     "perimetro de cabeza",
                     "circunferencia",
                     "circunferencia de cabeza",
                     "medida",
                     "medida de cabeza",
                     "cinta"});
}

LengthUnit unitOf(std::string_view word) {
  if (isOneOf(word, {"mm", "millimetres", "millimeters", "milimetros"})) return LengthUnit::millimetre;
  if (isOneOf(word, {"cm", "centimetres", "centimeters", "centimetros"})) return LengthUnit::centimetre;
  if (isOneOf(word, {"in", "inch", "inches", "pulgadas", "pulg"})) return LengthUnit::inch;
  return LengthUnit::unsaid;
}

// The Latin-1 letters U+00C0 to U+00FF without their accents; '*' is no letter.
constexpr std::string_view kUnaccented = "aaaaaaaceeeeiiiidnooooo*ouuuuytsaaaaaaaceeeeiiiidnooooo*ouuuuyty";

std::optional<double> decimalOf(std::string_view text) {
  std::string plain(text);
  std::replace(plain.begin(), plain.end(), ',', '.');
  double value = 0;
  const auto [end, error] = std::from_chars(plain.data(), plain.data() + plain.size(), value, std::chars_format::fixed);
  if (plain.empty() || error != std::errc{} || end != plain.data() + plain.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

// "22.5", "22,5", "22 1/2".
std::optional<double> numberOf(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) return decimalOf(text);
  const auto blank = text.find_last_of(" -", slash);
  if (blank == std::string_view::npos) return std::nullopt;
  const auto whole = decimalOf(trimmed(text.substr(0, blank)));
  const auto over = decimalOf(text.substr(blank + 1, slash - blank - 1)), under = decimalOf(text.substr(slash + 1));
  if (!whole || !over || !under || *over < 0 || *under <= *over) return std::nullopt;
  return *whole + *over / *under;
}

Length lengthOf(double value, LengthUnit unit) {
  switch (unit) {
    case LengthUnit::millimetre:
      break;
    case LengthUnit::centimetre:
      value *= 10;
      break;
    case LengthUnit::inch:
      value *= 25.4;
      break;
    case LengthUnit::unsaid:
      break;
  }
  return Length::micrometres(std::llround(value * 1000));
}

LengthUnit plausibleUnit(double value) {
  if (value >= 400 && value <= 700) return LengthUnit::millimetre;
  if (value >= 40 && value <= 70) return LengthUnit::centimetre;
  if (value >= 15.7 && value <= 27.6) return LengthUnit::inch;
  return LengthUnit::unsaid;
}

std::optional<int> intOf(std::string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (text.empty() || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

std::size_t RosterColumns::known() const {
  std::size_t count = 0;
  for (const auto* column : {&jersey, &family, &given, &fullName, &birthYear, &head}) count += column->has_value() ? 1 : 0;
  return count;
}

std::size_t RosterColumns::last() const {
  std::size_t highest = 0;
  for (const auto* column : {&jersey, &family, &given, &fullName, &birthYear, &head}) highest = std::max(highest, column->value_or(0));
  return highest;
}

std::string folded(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    char letter = ' ';
    if (byte < 0x80) {
      const bool isLetter = (byte >= 'a' && byte <= 'z') || (byte >= '0' && byte <= '9');
      if (isLetter) letter = text[i];
      if (byte >= 'A' && byte <= 'Z') letter = static_cast<char>(byte - 'A' + 'a');
      if (byte == '\'') continue;
    } else if (byte == 0xC3 && i + 1 < text.size()) {
      const auto next = static_cast<std::size_t>(static_cast<unsigned char>(text[++i]) - 0x80);
      if (next < kUnaccented.size() && kUnaccented[next] != '*') letter = kUnaccented[next];
    } else if (byte == 0xCC || byte == 0xCD) {
      ++i;  // a combining accent (U+0300 to U+036F)
      continue;
    } else if (byte == 0xC2) {
      ++i;  // no-break space, degree and ordinal signs
    } else {
      letter = text[i];  // other scripts stay as they are
    }
    if (letter != ' ') {
      out += letter;
    } else if (!out.empty() && out.back() != ' ') {
      out += ' ';
    }
  }
  if (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

RosterColumns columnsOf(const std::vector<std::string>& header) {
  RosterColumns columns;
  std::optional<std::size_t> name;
  const auto take = [](std::optional<std::size_t>& column, std::size_t i) {
    if (!column) column = i;  // the first of two alike counts
  };
  for (std::size_t i = 0; i < header.size(); ++i) {
    std::string word = folded(header[i]);
    LengthUnit unit = LengthUnit::unsaid;
    if (const auto blank = word.rfind(' '); blank != std::string::npos) {
      unit = unitOf(std::string_view(word).substr(blank + 1));
      std::string bare = word.substr(0, blank);
      // "Tape in mm", "cabeza en cm": the small word goes with the unit; "tape in" alone means inches.
      for (std::string_view small : {" in", " en"}) {
        if (bare.ends_with(small)) bare.resize(bare.size() - small.size());
      }
      if (unit != LengthUnit::unsaid && isHead(bare)) word = bare;
    }
    if (trimmed(header[i]) == "#" || isJersey(word)) {
      take(columns.jersey, i);
    } else if (isFamily(word)) {
      take(columns.family, i);
    } else if (isGiven(word)) {
      take(columns.given, i);
    } else if (isNameHeading(word)) {
      take(name, i);
    } else if (isFull(word)) {
      take(columns.fullName, i);
    } else if (isBirth(word)) {
      take(columns.birthYear, i);
    } else if (isHead(word) && !columns.head) {
      columns.head = i;
      columns.headUnit = unit;
    }
  }
  if (name) take(columns.family && !columns.given ? columns.given : columns.fullName, *name);
  if (columns.family) columns.fullName.reset();  // two columns say more than one
  return columns;
}

NameParts splitName(std::string_view text) {
  text = trimmed(text);
  if (const auto comma = text.find(','); comma != std::string_view::npos) {
    return {std::string(trimmed(text.substr(0, comma))), std::string(trimmed(text.substr(comma + 1)))};
  }
  auto blank = text.rfind(' ');
  if (blank == std::string_view::npos) return {std::string(text), {}};
  while (true) {
    const auto before = trimmed(text.substr(0, blank));
    const auto previous = before.rfind(' ');
    if (previous == std::string_view::npos) break;
    const std::string_view particle = before.substr(previous + 1);
    if (!isOneOf(particle,
                 {"de", "la", "del", "las", "los", "van", "von", "der", "den", "di", "da", "dos", "bin", "al", "el", "ten", "ter", "y"}))
      break;
    blank = previous;
  }
  return {std::string(trimmed(text.substr(blank + 1))), std::string(trimmed(text.substr(0, blank)))};
}

std::optional<std::string> jerseyOf(std::string_view cell) {
  cell = trimmed(cell);
  // ="07" is how some exports keep a spreadsheet from eating the nought.
  if (cell.size() > 3 && cell.starts_with("=\"") && cell.ends_with('"')) cell = cell.substr(2, cell.size() - 3);
  if (cell.starts_with('#')) cell = trimmed(cell.substr(1));
  if (cell.ends_with(".0")) cell.remove_suffix(2);
  std::string jersey(cell);
  if (!checkJersey(jersey, {})) return std::nullopt;
  return jersey;
}

std::optional<int> birthYearOf(std::string_view cell) {
  cell = trimmed(cell);
  if (cell.ends_with(".0")) cell.remove_suffix(2);
  const auto isYear = [](int year) { return year >= 1900 && year <= 2199; };
  if (const auto year = intOf(cell)) return isYear(*year) ? year : std::nullopt;
  // A time of day after the date says nothing about the year.
  if (const auto blank = cell.find_first_of("T "); blank != std::string_view::npos && cell.find(':', blank) != std::string_view::npos)
    cell = cell.substr(0, blank);
  std::vector<std::string_view> parts;
  for (std::size_t at = 0; at <= cell.size();) {
    const std::size_t end = std::min(cell.find_first_of("-/. ,", at), cell.size());
    if (end > at) parts.push_back(cell.substr(at, end - at));
    at = end + 1;
  }
  if (parts.size() != 3) return std::nullopt;
  for (std::string_view part : {parts.back(), parts.front()}) {
    const auto year = intOf(part);
    if (year && part.size() == 4 && isYear(*year)) return year;
  }
  const auto shortYear = intOf(parts.back());
  if (!shortYear || parts.back().size() != 2) return std::nullopt;
  constexpr int kCenturyTurn = 50;  // ours: 00..49 is 2000..2049
  return *shortYear + (*shortYear < kCenturyTurn ? 2000 : 1900);
}

std::optional<Length> headOf(std::string_view cell, LengthUnit unit) {
  cell = trimmed(cell);
  if (const auto withUnit = parseLength(cell)) return *withUnit;
  // "22 1/2 in", "57 cm." and the like.
  const auto letters =
      std::find_if(cell.begin(), cell.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '"'; });
  if (letters != cell.end()) {
    const auto at = static_cast<std::size_t>(letters - cell.begin());
    unit = *letters == '"' ? LengthUnit::inch : unitOf(folded(cell.substr(at)));
    if (unit == LengthUnit::unsaid) return std::nullopt;
    cell = trimmed(cell.substr(0, at));
  }
  const auto number = numberOf(cell);
  if (!number || *number <= 0 || *number > 10000) return std::nullopt;
  if (unit == LengthUnit::unsaid) unit = plausibleUnit(*number);
  if (unit == LengthUnit::unsaid) return std::nullopt;
  return lengthOf(*number, unit);
}

}  // namespace snugline::book
