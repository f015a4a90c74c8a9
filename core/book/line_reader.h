// SPDX-License-Identifier: Apache-2.0
// Purpose: reading facts and view rows fast and strictly: the first thing wrong is kept with its path, and reading goes on with zeros, so
// that a decoder reads like the table in BOOK_FORMAT.md. Includes RapidJSON: only sources of core/book include this header.
// Errors: notJson, duplicateKey, missingKey, unknownKey, wrongType, outOfRange, unknownWord. Thread: one reader, one thread.
#pragma once

// Strings are most of a line; sixteen bytes at a time. Only sources of core/book parse in place, so nobody else sees these.
#if defined(__SSE2__) && !defined(RAPIDJSON_SSE2)
#define RAPIDJSON_SSE2
#elif defined(__ARM_NEON) && !defined(RAPIDJSON_NEON)
#define RAPIDJSON_NEON
#endif
#include <rapidjson/document.h>

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/book/line_writer.h"
#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace snugline::book {

using JsonValue = rapidjson::Value;

// Memory for parsing one line after the other without asking the system each time.
class LineParser {
 public:
  LineParser();
  // The root stays valid until the next parse. name stands before paths in errors.
  [[nodiscard]] Result<const JsonValue*> parse(std::string_view line, const std::string& name);

 private:
  using Pool = rapidjson::MemoryPoolAllocator<>;
  using Parsed = rapidjson::GenericDocument<rapidjson::UTF8<>, Pool, Pool>;
  std::vector<char> m_valueRoom, m_stackRoom;
  std::vector<char> m_text;
  std::optional<Pool> m_values, m_stack;
  std::optional<Parsed> m_parsed;
};

// What I-JSON refuses and the parser lets through: a key twice, a number that is no integer of 53 bits. Whoever reads every value of an
// object by an ObjectReader meets that anyway, only with a vaguer error.
[[nodiscard]] std::optional<Error> refusedByIJson(const JsonValue& root, const std::string& name);

struct FirstFault {
  std::string name;
  std::optional<Error> error;
};

// A JSON object whose keys are taken one by one; finish() finds what nobody took.
class ObjectReader {
 public:
  ObjectReader(FirstFault& fault, const JsonValue& value, std::string_view key = {}, const ObjectReader* parent = nullptr, int index = -1);

  [[nodiscard]] bool has(std::string_view key) const;
  std::string text(std::string_view key);    // required
  std::string textOr(std::string_view key);  // empty when left out
  std::optional<std::string> textIf(std::string_view key);
  std::int64_t integer(std::string_view key, std::int64_t low = -kLargestInteger, std::int64_t high = kLargestInteger);
  std::optional<std::int64_t> integerIf(std::string_view key, std::int64_t low = -kLargestInteger, std::int64_t high = kLargestInteger);
  bool boolean(std::string_view key);  // required
  bool flag(std::string_view key);     // false when left out
  std::optional<bool> booleanIf(std::string_view key);
  Day day(std::string_view key);
  std::optional<Day> dayIf(std::string_view key);
  std::vector<std::string> texts(std::string_view key);
  std::vector<std::int64_t> integers(std::string_view key, std::int64_t low, std::int64_t high);
  bool booleans(std::string_view key, std::array<bool, 7>& days);  // false when it is not seven of them
  // A word and what it stands for; of(std::string_view) gives an optional.
  template <typename Of>
  auto word(std::string_view key, Of of) -> typename decltype(of(std::string_view{}))::value_type {
    const JsonValue* value = take(key, true);
    if (value == nullptr) return {};
    return wordOf(key, *value, of);
  }
  template <typename Of>
  auto wordIf(std::string_view key, Of of) -> decltype(of(std::string_view{})) {
    const JsonValue* value = take(key, false);
    if (value == nullptr) return {};
    return wordOf(key, *value, of);
  }
  template <typename Read>
  void object(std::string_view key, Read read) {
    if (const JsonValue* value = take(key, true)) under(key, *value, -1, read);
  }
  template <typename Read>
  void objectIf(std::string_view key, Read read) {
    if (const JsonValue* value = take(key, false)) under(key, *value, -1, read);
  }
  template <typename Read>
  void objects(std::string_view key, Read read) {
    const JsonValue* list = array(key, true);
    if (list == nullptr) return;
    int index = 0;
    for (const JsonValue& item : list->GetArray()) under(key, item, index++, read);
  }
  template <typename Read>
  void members(Read read) {  // of an object whose keys are words
    if (!m_value->IsObject()) return;
    for (const auto& member : m_value->GetObject()) read(std::string_view(member.name.GetString(), member.name.GetStringLength()));
  }
  void finish();
  void fail(ErrorCode code, std::string_view key, std::string detail = {});
  [[nodiscard]] bool isSound() const { return !m_fault.error.has_value(); }

 private:
  [[nodiscard]] const JsonValue* take(std::string_view key, bool isRequired);
  [[nodiscard]] const JsonValue* array(std::string_view key, bool isRequired);
  [[nodiscard]] std::string path(std::string_view key) const;
  template <typename Of>
  auto wordOf(std::string_view key, const JsonValue& value, Of of) -> typename decltype(of(std::string_view{}))::value_type {
    if (!value.IsString()) {
      fail(ErrorCode::wrongType, key, "a word");
      return {};
    }
    const std::string_view word(value.GetString(), value.GetStringLength());
    const auto found = of(word);
    if (!found) fail(ErrorCode::unknownWord, key, std::string(word));
    return found.value_or(typename decltype(of(std::string_view{}))::value_type{});
  }
  template <typename Read>
  void under(std::string_view key, const JsonValue& value, int index, Read read) {
    ObjectReader reader(m_fault, value, key, this, index);
    if (!value.IsObject()) return;
    read(reader);
    reader.finish();
  }

  FirstFault& m_fault;
  const JsonValue* m_value;
  std::string_view m_key;
  const ObjectReader* m_parent;
  int m_index;
  rapidjson::SizeType m_next = 0;  // most objects are read in the order they were written
  rapidjson::SizeType m_taken = 0;
};

}  // namespace snugline::book
