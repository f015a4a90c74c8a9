// SPDX-License-Identifier: Apache-2.0
// Purpose: canonical JSON for facts and view rows: keys in the order given, no blanks, integers and text only. Writes straight into one
// string, because a rebuild writes every row. Broken text (not UTF-8) and integers beyond 2^53-1 are noted, not thrown.
// Thread: one writer, one thread.
#pragma once

#include <charconv>
#include <cstdint>
#include <string>
#include <string_view>

namespace snugline::book {

inline constexpr std::int64_t kLargestInteger = (std::int64_t{1} << 53) - 1;  // RFC 7493, 2.2

class LineWriter {
 public:
  LineWriter& beginObject() { return open('{'); }
  LineWriter& endObject() { return close('}'); }
  LineWriter& beginArray() { return open('['); }
  LineWriter& endArray() { return close(']'); }
  LineWriter& key(std::string_view k) {
    comma();
    m_text += '"';
    m_text += k;  // ours: never needs escaping
    m_text += "\":";
    m_isFirst = true;
    return *this;
  }
  LineWriter& string(std::string_view v) {
    comma();
    quote(v);
    return *this;
  }
  LineWriter& integer(std::int64_t v) {
    comma();
    if (v > kLargestInteger || v < -kLargestInteger) m_isInRange = false;
    char digits[24];
    const auto end = std::to_chars(digits, digits + sizeof digits, v).ptr;
    m_text.append(digits, end);
    return *this;
  }
  LineWriter& boolean(bool v) {
    comma();
    m_text += v ? "true" : "false";
    return *this;
  }
  // Members that are left out when empty, absent or false.
  LineWriter& text(std::string_view k, std::string_view v) { return v.empty() ? *this : key(k).string(v); }
  LineWriter& flag(std::string_view k, bool v) { return v ? key(k).boolean(true) : *this; }

  [[nodiscard]] bool isText() const { return m_isText; }
  [[nodiscard]] bool isInRange() const { return m_isInRange; }
  [[nodiscard]] const std::string& view() const { return m_text; }
  [[nodiscard]] std::string take() { return std::move(m_text); }
  void reserve(std::size_t bytes) { m_text.reserve(bytes); }

 private:
  LineWriter& open(char c) {
    comma();
    m_text += c;
    m_isFirst = true;
    return *this;
  }
  LineWriter& close(char c) {
    m_text += c;
    m_isFirst = false;
    return *this;
  }
  void comma() {
    if (!m_isFirst) m_text += ',';
    m_isFirst = false;
  }
  void quote(std::string_view v);

  std::string m_text;
  bool m_isFirst = true;
  bool m_isText = true;
  bool m_isInRange = true;
};

}  // namespace snugline::book
