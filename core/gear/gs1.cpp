// SPDX-License-Identifier: Apache-2.0
#include "core/gear/gs1.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "core/gear/tag_fault.h"

namespace snugline::gear::gs1 {

namespace {

// Lengths of the value. The first `digits` characters are digits, whatever follows is of the 82 characters.
struct Identifier {
  std::string_view from, to;
  std::size_t least = 0, most = 0, digits = 0;
  [[nodiscard]] bool isFixed() const { return least == most; }
};
constexpr std::array<Identifier, 8> kIdentifiers{{{"01", "01", 14, 14, 14},      // trade item: the model
                                                  {"10", "10", 1, 20, 0},        // batch
                                                  {"11", "11", 6, 6, 6},         // day made
                                                  {"21", "21", 1, 20, 0},        // serial of a trade item
                                                  {"8003", "8003", 14, 30, 14},  // returnable asset, serial behind 14 digits
                                                  {"8004", "8004", 1, 30, 0},    // individual asset
                                                  {"90", "90", 1, 30, 0},        // agreed between partners
                                                  {"91", "99", 1, 90, 0}}};      // the company's own

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isAllDigits(std::string_view text) { return std::all_of(text.begin(), text.end(), isDigit); }

// GS1 General Specifications, encodable character set 82.
bool isOfSet82(char c) {
  constexpr std::string_view kMarks = "!\"%&'()*+,-./:;<=>?_";
  return isDigit(c) || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || kMarks.find(c) != std::string_view::npos;
}

const Identifier* find(std::string_view name) {
  const auto found = std::find_if(kIdentifiers.begin(), kIdentifiers.end(),
                                  [&](const Identifier& i) { return name.size() == i.from.size() && name >= i.from && name <= i.to; });
  return found == kIdentifiers.end() ? nullptr : &*found;
}

tl::unexpected<Error> refuse(TagFault fault, std::string_view identifier = {}) { return gear::refuse({fault, std::string(identifier)}); }

bool isMonth(std::string_view yymmdd) {
  const std::string_view month = yymmdd.substr(2, 2);
  return month >= "01" && month <= "12";
}

int daysIn(std::string_view yymmdd) {
  constexpr std::array<int, 12> kDays{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const int month = (yymmdd[2] - '0') * 10 + (yymmdd[3] - '0');
  const int year = (yymmdd[0] - '0') * 10 + (yymmdd[1] - '0');
  // Within -49/+50 years the only century with a year 00 is 2000 until 2050, which is a leap year.
  return month == 2 && year % 4 != 0 ? 28 : kDays[static_cast<std::size_t>(month - 1)];
}

Result<void> checkValue(const Identifier& identifier, std::string_view name, std::string_view value) {
  if (value.size() < identifier.least || value.size() > identifier.most) {
    return gear::refuse({TagFault::wrongLength, std::string(name), value.size(), identifier.least, identifier.most});
  }
  if (!isAllDigits(value.substr(0, identifier.digits))) return gear::refuse({TagFault::needsDigits, std::string(name), identifier.digits});
  if (!std::all_of(value.begin(), value.end(), isOfSet82)) return refuse(TagFault::strangeCharacter, name);
  // The company prefix is digits (General Specifications), and no prefix is shorter than three.
  if (name == "8004" && !isAllDigits(value.substr(0, 3))) return refuse(TagFault::noCompanyPrefix, name);
  if (name == "8003" && value.front() != '0') return refuse(TagFault::noLeadingZero, name);
  if (name != "11") return {};
  if (!isMonth(value)) return refuse(TagFault::noSuchMonth, name);
  if ((value[4] - '0') * 10 + (value[5] - '0') > daysIn(value)) return refuse(TagFault::noSuchDay, name);
  return {};
}

Result<void> add(Elements& elements, std::string_view name, std::string_view value) {
  const Identifier* const identifier = find(name);
  if (identifier == nullptr) return refuse(TagFault::unknownIdentifier, name);
  if (const Result<void> checked = checkValue(*identifier, name, value); !checked) return checked;
  const auto [entry, isNew] = elements.emplace(name, value);
  if (!isNew && entry->second != value) return refuse(TagFault::twiceDifferent, name);
  return {};
}

// The known identifier that the text begins with. None begins another.
const Identifier* atFront(std::string_view text, std::string_view& name) {
  for (const std::size_t length : {std::size_t{2}, std::size_t{4}}) {
    name = text.substr(0, length);
    if (const Identifier* const identifier = find(name)) return identifier;
  }
  name = text.substr(0, 2);
  return nullptr;
}

// Length of "(21)" at the front, 0 where there is none.
std::size_t bracketLength(std::string_view text) {
  if (!text.starts_with('(')) return 0;
  const std::size_t close = text.find(')');
  if (close == std::string_view::npos || close < 3 || close > 5 || !isAllDigits(text.substr(1, close - 1))) return 0;
  return close + 1;
}

int hexDigit(char c) {
  if (isDigit(c)) return c - '0';
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

std::optional<std::string> percentDecoded(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '%') {
      out += text[i];
      continue;
    }
    const int high = i + 2 < text.size() ? hexDigit(text[i + 1]) : -1;
    const int low = i + 2 < text.size() ? hexDigit(text[i + 2]) : -1;
    if (high < 0 || low < 0) return std::nullopt;
    out += static_cast<char>(high * 16 + low);
    i += 2;
  }
  return out;
}

std::vector<std::string_view> split(std::string_view text, std::string_view separators) {
  std::vector<std::string_view> parts;
  while (true) {
    const std::size_t at = text.find_first_of(separators);
    parts.push_back(text.substr(0, at));
    if (at == std::string_view::npos) return parts;
    text.remove_prefix(at + 1);
  }
}

bool isPrimaryKey(std::string_view segment) { return segment == "01" || segment == "8003" || segment == "8004"; }

struct Link {
  std::vector<std::string_view> path;
  std::string_view query;
};
Link partsOf(std::string_view afterScheme) {
  afterScheme = afterScheme.substr(0, afterScheme.find('#'));
  const std::size_t question = afterScheme.find('?');
  Link link{split(afterScheme.substr(0, question), "/"), {}};
  if (question != std::string_view::npos) link.query = afterScheme.substr(question + 1);
  link.path.erase(link.path.begin());  // the host
  if (!link.path.empty() && link.path.back().empty()) link.path.pop_back();
  return link;
}

Result<void> addDecoded(Elements& elements, std::string_view name, std::string_view encoded) {
  const std::optional<std::string> value = percentDecoded(encoded);
  if (!value) return refuse(TagFault::badPercent, name);
  return add(elements, name, *value);
}

// From the primary key on, the path is pairs of identifier and value.
Result<Elements> readPairs(const std::vector<std::string_view>& path, std::size_t from) {
  Elements elements;
  for (std::size_t i = from; i < path.size(); i += 2) {
    if (i + 1 == path.size()) return refuse(TagFault::noValueInPath, path[i]);
    if (i > from && isPrimaryKey(path[i])) return refuse(TagFault::twoKeysInPath);
    if (const Result<void> added = addDecoded(elements, path[i].substr(0, 20), path[i + 1]); !added)
      return tl::unexpected<Error>(added.error());
  }
  return elements;
}

// Attributes with a name of digits are identifiers; those that are not ours say nothing about which helmet it is.
Result<void> readQuery(std::string_view query, Elements& elements) {
  if (query.empty()) return {};
  for (const std::string_view attribute : split(query, "&;")) {
    const std::size_t equals = attribute.find('=');
    const std::string_view name = attribute.substr(0, equals);
    if (equals == std::string_view::npos || find(name) == nullptr) continue;
    if (isPrimaryKey(name) || name == "10" || name == "21") return refuse(TagFault::belongsInPath, name);
    if (const Result<void> added = addDecoded(elements, name, attribute.substr(equals + 1)); !added) return added;
  }
  return {};
}

}  // namespace

bool isBracketed(std::string_view text) {
  if (bracketLength(text) == 0) return false;
  // "(2024) spare" is somebody's own numbering.
  for (const std::string_view key : {"(01)", "(21)", "(8003)", "(8004)"})
    if (text.find(key) != std::string_view::npos) return true;
  return false;
}

bool isLink(std::string_view afterScheme) {
  const Link link = partsOf(afterScheme);
  return std::any_of(link.path.begin(), link.path.end(), isPrimaryKey) || (link.path.size() > 1 && link.path.front() == "21");
}

Result<Elements> readElements(std::string_view text) {
  Elements elements;
  if (text.empty()) return refuse(TagFault::nothingBehindPrefix);
  while (!text.empty()) {
    std::string_view name;
    const Identifier* const identifier = atFront(text, name);
    if (identifier == nullptr) return refuse(TagFault::unknownIdentifier, name);
    text.remove_prefix(name.size());
    const std::size_t end = std::min(text.find(kFnc1), text.size());
    const std::string_view value = text.substr(0, identifier->isFixed() ? std::min(identifier->most, end) : end);
    if (const Result<void> added = add(elements, name, value); !added) return tl::unexpected<Error>(added.error());
    text.remove_prefix(value.size());
    if (text.starts_with(kFnc1)) text.remove_prefix(1);
  }
  return elements;
}

Result<Elements> readBracketed(std::string_view text) {
  Elements elements;
  while (!text.empty()) {
    const std::size_t length = bracketLength(text);
    if (length == 0) return refuse(TagFault::noBracket);
    const std::string_view name = text.substr(1, length - 2);
    text.remove_prefix(length);
    // A value may hold brackets of its own; only a known identifier in brackets ends it.
    std::size_t end = 0;
    for (; end < text.size(); ++end) {
      const std::size_t next = bracketLength(text.substr(end));
      if (next > 0 && find(text.substr(end + 1, next - 2)) != nullptr) break;
    }
    if (const Result<void> added = add(elements, name, text.substr(0, end)); !added) return tl::unexpected<Error>(added.error());
    text.remove_prefix(end);
  }
  return elements;
}

Result<Elements> readLink(std::string_view afterScheme) {
  const Link link = partsOf(afterScheme);
  if (afterScheme.empty() || afterScheme.starts_with('/')) return refuse(TagFault::noHost);
  // A path of the host's own may happen to hold such a segment: the first whose value reads well is the key.
  std::size_t key = link.path.size();
  for (std::size_t i = link.path.size(); i-- > 0;) {
    Elements alone;
    if (isPrimaryKey(link.path[i]) &&
        (key == link.path.size() || (i + 1 < link.path.size() && addDecoded(alone, link.path[i], link.path[i + 1]))))
      key = i;
  }
  if (key == link.path.size()) return refuse(TagFault::serialAlone);
  Result<Elements> answer = readPairs(link.path, key);
  if (!answer) return answer;
  if (const Result<void> read = readQuery(link.query, *answer); !read) return tl::unexpected<Error>(read.error());
  return answer;
}

Result<void> checkTogether(const Elements& elements) {
  const bool hasItem = elements.contains("01");
  if (elements.contains("21") && !hasItem) return refuse(TagFault::serialAlone);
  if (!hasItem && !elements.contains("8003") && !elements.contains("8004")) return refuse(TagFault::namesNoHelmet);
  return {};
}

}  // namespace snugline::gear::gs1
