// SPDX-License-Identifier: Apache-2.0
#include <rapidjson/stringbuffer.h>
#include <rapidjson/writer.h>

#include <array>
#include <charconv>
#include <cmath>

#include "core/gear/strict_json.h"
#include "core/gear/utf8.h"

namespace snugline::json {

struct Writer::Body {
  rapidjson::StringBuffer out;
  rapidjson::Writer<rapidjson::StringBuffer> writer{out};
};

namespace {

rapidjson::SizeType sizeOf(std::string_view v) { return static_cast<rapidjson::SizeType>(v.size()); }

}  // namespace

Writer::Writer() : m_body(std::make_unique<Body>()) {}
Writer::~Writer() = default;

Writer& Writer::beginObject() {
  m_body->writer.StartObject();
  return *this;
}

Writer& Writer::endObject() {
  m_body->writer.EndObject();
  return *this;
}

Writer& Writer::beginArray() {
  m_body->writer.StartArray();
  return *this;
}

Writer& Writer::endArray() {
  m_body->writer.EndArray();
  return *this;
}

Writer& Writer::key(std::string_view k) { return string(k); }

Writer& Writer::string(std::string_view v) {
  if (gear::isUtf8(v)) {
    m_body->writer.String(v.empty() ? "" : v.data(), sizeOf(v));
  } else {
    const std::string mended = gear::mendedUtf8(v);
    m_body->writer.String(mended.data(), sizeOf(mended));
  }
  return *this;
}

Writer& Writer::integer(std::int64_t v) {
  m_body->writer.Int64(v);
  return *this;
}

Writer& Writer::boolean(bool v) {
  m_body->writer.Bool(v);
  return *this;
}

// Not printf: its decimal point follows the locale.
Writer& Writer::real(double v, int decimals) {
  std::array<char, 400> text{};
  const auto end = std::isfinite(v) ? std::to_chars(text.data(), text.data() + text.size(), v, std::chars_format::fixed, decimals)
                                    : std::to_chars_result{text.data(), std::errc::invalid_argument};
  std::string_view number(text.data(), static_cast<std::size_t>(end.ptr - text.data()));
  if (end.ec != std::errc()) return null();
  if (number.starts_with('-') && number.find_first_not_of("-0.") == std::string_view::npos) number.remove_prefix(1);
  m_body->writer.RawValue(number.data(), number.size(), rapidjson::kNumberType);
  return *this;
}

Writer& Writer::null() {
  m_body->writer.Null();
  return *this;
}

Writer& Writer::raw(std::string_view json) {
  m_body->writer.RawValue(json.data(), json.size(), rapidjson::kObjectType);
  return *this;
}

std::string Writer::take() {
  std::string text(m_body->out.GetString(), m_body->out.GetSize());
  m_body->out.Clear();
  m_body->writer.Reset(m_body->out);
  return text;
}

}  // namespace snugline::json
