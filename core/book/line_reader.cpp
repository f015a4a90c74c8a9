// SPDX-License-Identifier: Apache-2.0
#include "core/book/line_reader.h"

#include <rapidjson/error/en.h>

#include <algorithm>
#include <cstring>

#include "core/gear/utf8.h"

namespace snugline::book {

namespace {

constexpr unsigned kFlags = rapidjson::kParseInsituFlag;
// The quicker way calls itself for each level, and a line from elsewhere may nest as deep as it is long.
constexpr unsigned kDeepFlags = kFlags | rapidjson::kParseIterativeFlag;
constexpr std::size_t kShallowBytes = 1024;
constexpr std::size_t kPadding = 16;                                  // the parser reads whole words past the end
constexpr std::size_t kValueRoom = 16 * 1024, kStackRoom = 4 * 1024;  // a usual line fits; longer ones ask for more
constexpr rapidjson::SizeType kFewMembers = 24;
constexpr int kDeepest = 32;

std::string_view nameOf(const JsonValue::Member& member) { return {member.name.GetString(), member.name.GetStringLength()}; }

const JsonValue* repeatedIn(const JsonValue& object) {
  if (object.MemberCount() <= kFewMembers) {
    for (auto a = object.MemberBegin(); a != object.MemberEnd(); ++a) {
      for (auto b = object.MemberBegin(); b != a; ++b) {
        if (nameOf(*a) == nameOf(*b)) return &a->name;
      }
    }
    return nullptr;
  }
  std::vector<std::string_view> names;
  names.reserve(object.MemberCount());
  for (const auto& member : object.GetObject()) names.push_back(nameOf(member));
  std::sort(names.begin(), names.end());
  const auto twice = std::adjacent_find(names.begin(), names.end());
  if (twice == names.end()) return nullptr;
  return &object.FindMember(JsonValue(twice->data(), static_cast<rapidjson::SizeType>(twice->size())))->name;
}

// What I-JSON refuses and the parser lets through: a key twice, a number that is no integer of 53 bits.
std::optional<Error> refusedIn(const JsonValue& value, int depth) {
  if (depth > kDeepest) return Error{ErrorCode::notJson, {}, "nested too deep"};
  if (value.IsNumber()) {
    if (value.IsInt64() && value.GetInt64() <= kLargestInteger && value.GetInt64() >= -kLargestInteger) return std::nullopt;
    return Error{value.IsDouble() ? ErrorCode::wrongType : ErrorCode::outOfRange, {}, "an integer"};
  }
  if (value.IsArray()) {
    for (const JsonValue& item : value.GetArray()) {
      if (auto refused = refusedIn(item, depth + 1)) return refused;
    }
    return std::nullopt;
  }
  if (!value.IsObject()) return std::nullopt;
  if (const JsonValue* twice = repeatedIn(value)) {
    return Error{ErrorCode::duplicateKey, std::string(twice->GetString(), twice->GetStringLength()), {}};
  }
  for (const auto& member : value.GetObject()) {
    if (auto refused = refusedIn(member.value, depth + 1)) {
      refused->place = std::string(nameOf(member)) + (refused->place.empty() ? "" : "/" + refused->place);
      return refused;
    }
  }
  return std::nullopt;
}

}  // namespace

LineParser::LineParser() : m_valueRoom(kValueRoom), m_stackRoom(kStackRoom) {}

Result<const JsonValue*> LineParser::parse(std::string_view line, const std::string& name) {
  if (line.find('\0') != std::string_view::npos) return snugline::fail(ErrorCode::notJson, name, "a zero byte");
  if (!gear::isUtf8(line)) return snugline::fail(ErrorCode::notJson, name, "not UTF-8");
  m_text.resize(line.size() + kPadding);
  std::memcpy(m_text.data(), line.data(), line.size());
  std::memset(m_text.data() + line.size(), 0, kPadding);
  m_parsed.reset();
  if (m_values) {
    m_values->Clear();
    m_stack->Clear();
  } else {
    m_values.emplace(m_valueRoom.data(), m_valueRoom.size());
    m_stack.emplace(m_stackRoom.data(), m_stackRoom.size());
  }
  m_parsed.emplace(&*m_values, kStackRoom / 2, &*m_stack);
  if (line.size() <= kShallowBytes) {
    m_parsed->ParseInsitu<kFlags>(m_text.data());
  } else {
    m_parsed->ParseInsitu<kDeepFlags>(m_text.data());
  }
  if (m_parsed->HasParseError()) {
    return snugline::fail(ErrorCode::notJson, name,
                          std::to_string(m_parsed->GetErrorOffset()) + ", " + rapidjson::GetParseError_En(m_parsed->GetParseError()));
  }
  return static_cast<const JsonValue*>(&*m_parsed);
}

std::optional<Error> refusedByIJson(const JsonValue& root, const std::string& name) {
  auto refused = refusedIn(root, 0);
  if (refused) refused->place = name + "#/" + refused->place;
  return refused;
}

ObjectReader::ObjectReader(FirstFault& fault, const JsonValue& value, std::string_view key, const ObjectReader* parent, int index)
    : m_fault(fault), m_value(&value), m_key(key), m_parent(parent), m_index(index) {
  if (value.IsObject()) return;
  if (!m_fault.error) m_fault.error = Error{ErrorCode::wrongType, path({}), "an object"};
}

std::string ObjectReader::path(std::string_view key) const {
  std::string before;
  if (m_parent != nullptr) {
    before = m_parent->path(m_key);
    if (m_index >= 0) before += "/" + std::to_string(m_index);
  } else {
    before = m_fault.name + "#";
  }
  return key.empty() ? before : before + "/" + std::string(key);
}

void ObjectReader::fail(ErrorCode code, std::string_view key, std::string detail) {
  if (!m_fault.error) m_fault.error = Error{code, path(key), std::move(detail)};
}

bool ObjectReader::has(std::string_view key) const {
  if (!m_value->IsObject()) return false;
  return std::any_of(m_value->MemberBegin(), m_value->MemberEnd(), [&](const auto& m) { return nameOf(m) == key; });
}

const JsonValue* ObjectReader::take(std::string_view key, bool isRequired) {
  if (!m_value->IsObject()) return nullptr;
  const auto count = m_value->MemberCount();
  for (rapidjson::SizeType step = 0; step < count; ++step) {
    const rapidjson::SizeType i = m_next + step < count ? m_next + step : m_next + step - count;
    const auto member = m_value->MemberBegin() + static_cast<std::ptrdiff_t>(i);
    if (nameOf(*member) != key) continue;
    m_next = i + 1 < count ? i + 1 : 0;
    ++m_taken;
    return &member->value;
  }
  if (isRequired) fail(ErrorCode::missingKey, key);
  return nullptr;
}

const JsonValue* ObjectReader::array(std::string_view key, bool isRequired) {
  const JsonValue* value = take(key, isRequired);
  if (value == nullptr || value->IsArray()) return value;
  fail(ErrorCode::wrongType, key, "a list");
  return nullptr;
}

std::optional<std::string> ObjectReader::textIf(std::string_view key) {
  const JsonValue* value = take(key, false);
  if (value == nullptr) return std::nullopt;
  if (value->IsString()) return std::string(value->GetString(), value->GetStringLength());
  fail(ErrorCode::wrongType, key, "text");
  return std::nullopt;
}
std::string ObjectReader::textOr(std::string_view key) { return textIf(key).value_or(std::string()); }
std::string ObjectReader::text(std::string_view key) {
  const JsonValue* value = take(key, true);
  if (value != nullptr && value->IsString()) return std::string(value->GetString(), value->GetStringLength());
  if (value != nullptr) fail(ErrorCode::wrongType, key, "text");
  return {};
}

std::optional<std::int64_t> ObjectReader::integerIf(std::string_view key, std::int64_t low, std::int64_t high) {
  const JsonValue* value = take(key, false);
  if (value == nullptr) return std::nullopt;
  if (!value->IsInt64()) {
    fail(ErrorCode::wrongType, key, "an integer");
    return std::nullopt;
  }
  const std::int64_t number = value->GetInt64();
  if (number >= low && number <= high) return number;
  fail(ErrorCode::outOfRange, key, std::to_string(number) + ", " + std::to_string(low) + ", " + std::to_string(high));
  return std::nullopt;
}
std::int64_t ObjectReader::integer(std::string_view key, std::int64_t low, std::int64_t high) {
  const auto number = integerIf(key, low, high);
  if (!number) fail(ErrorCode::missingKey, key);
  return number.value_or(low);
}

std::optional<bool> ObjectReader::booleanIf(std::string_view key) {
  const JsonValue* value = take(key, false);
  if (value == nullptr) return std::nullopt;
  if (value->IsBool()) return value->GetBool();
  fail(ErrorCode::wrongType, key, "true or false");
  return std::nullopt;
}
bool ObjectReader::flag(std::string_view key) { return booleanIf(key).value_or(false); }
bool ObjectReader::boolean(std::string_view key) {
  const auto value = booleanIf(key);
  if (!value) fail(ErrorCode::missingKey, key);
  return value.value_or(false);
}

std::optional<Day> ObjectReader::dayIf(std::string_view key) {
  const auto text = textIf(key);
  if (!text) return std::nullopt;
  const auto day = parseDay(*text);
  if (day) return *day;
  fail(day.error().code, key, *text);
  return std::nullopt;
}
Day ObjectReader::day(std::string_view key) {
  const auto day = dayIf(key);
  if (!day) fail(ErrorCode::missingKey, key);
  return day.value_or(Day{});
}

std::vector<std::string> ObjectReader::texts(std::string_view key) {
  std::vector<std::string> all;
  const JsonValue* list = array(key, true);
  if (list == nullptr) return all;
  all.reserve(list->Size());
  for (const JsonValue& item : list->GetArray()) {
    if (!item.IsString()) {
      fail(ErrorCode::wrongType, key, "a list of texts");
      break;
    }
    all.emplace_back(item.GetString(), item.GetStringLength());
  }
  return all;
}

std::vector<std::int64_t> ObjectReader::integers(std::string_view key, std::int64_t low, std::int64_t high) {
  std::vector<std::int64_t> all;
  const JsonValue* list = array(key, true);
  if (list == nullptr) return all;
  for (const JsonValue& item : list->GetArray()) {
    if (!item.IsInt64() || item.GetInt64() < low || item.GetInt64() > high) {
      fail(item.IsInt64() ? ErrorCode::outOfRange : ErrorCode::wrongType, key, "integers");
      break;
    }
    all.push_back(item.GetInt64());
  }
  return all;
}

bool ObjectReader::booleans(std::string_view key, std::array<bool, 7>& days) {
  const JsonValue* list = array(key, true);
  if (list == nullptr || list->Size() != days.size()) return false;
  for (rapidjson::SizeType i = 0; i < list->Size(); ++i) {
    if (!(*list)[i].IsBool()) return false;
    days[i] = (*list)[i].GetBool();
  }
  return true;
}

void ObjectReader::finish() {
  if (!isSound() || !m_value->IsObject() || m_taken == m_value->MemberCount()) return;
  // Which one nobody asked for cannot be told from counts alone; the slow path runs once, on an error.
  fail(ErrorCode::unknownKey, {}, std::to_string(m_value->MemberCount() - m_taken));
}

}  // namespace snugline::book
