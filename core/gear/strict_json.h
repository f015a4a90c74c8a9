// SPDX-License-Identifier: Apache-2.0
// Purpose: reading JSON with the offending path named. I-JSON (RFC 7493): UTF-8, no duplicate keys; the reader also
// refuses fractions where an integer is asked for. Wraps RapidJSON so that no other header of core includes it.
// Ranges: whole numbers of 64 bits; at most kDepthLimit levels of objects and arrays.
// Errors: notJson, duplicateKey, missingKey, unknownKey, wrongType, outOfRange, outOfMemory; place is "file#/path/to/key"
// with ~ and / in a key written ~0 and ~1 (RFC 6901). outOfRange says "value, lowest, highest".
// Thread: a Document is confined to one thread; a Node lives no longer than its Document.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/quantity/result.h"

namespace snugline::json {

class Node;

inline constexpr std::size_t kDepthLimit = 64;  // ours; nothing of ours nests deeper than eight

// The bytes of a whole file. Errors: cannotRead, tooLong ("length, limit"), notText (it holds a zero byte, as pictures do).
[[nodiscard]] Result<std::string> readText(const std::string& path, std::size_t limitBytes);

class Document {
 public:
  // name is put before each path in errors (a file name, or "fact dev:12").
  [[nodiscard]] static Result<Document> parse(std::string_view text, std::string name);
  [[nodiscard]] static Result<Document> readFile(const std::string& path, std::size_t limitBytes);
  [[nodiscard]] Node root() const;
  Document(Document&&) noexcept;
  Document& operator=(Document&&) noexcept;
  ~Document();

 private:
  struct Body;
  explicit Document(std::unique_ptr<Body> body);
  std::unique_ptr<Body> m_body;
  friend class Node;
};

// A value and the path that leads to it. A missing optional member is a Node for which exists() is false.
class Node {
 public:
  [[nodiscard]] bool exists() const { return m_value != nullptr; }
  [[nodiscard]] std::string path() const;  // "file#/sizes/2/low_um"
  [[nodiscard]] bool isObject() const;
  [[nodiscard]] bool isArray() const;
  [[nodiscard]] bool isString() const;
  [[nodiscard]] bool isInteger() const;
  [[nodiscard]] bool isBool() const;
  [[nodiscard]] Node at(std::string_view key) const;                        // may not exist
  [[nodiscard]] std::vector<Node> items() const;                            // of an array, empty otherwise
  [[nodiscard]] std::vector<std::pair<std::string, Node>> members() const;  // of an object, in file order
  [[nodiscard]] Result<std::string> string(std::string_view key) const;
  [[nodiscard]] Result<std::int64_t> integer(std::string_view key, std::int64_t low, std::int64_t high) const;
  [[nodiscard]] Result<double> number(std::string_view key, double low, double high) const;
  [[nodiscard]] Result<bool> boolean(std::string_view key) const;
  [[nodiscard]] Result<Node> object(std::string_view key) const;
  [[nodiscard]] Result<Node> array(std::string_view key) const;
  [[nodiscard]] Result<std::string> asString() const;
  [[nodiscard]] Result<std::int64_t> asInteger(std::int64_t low, std::int64_t high) const;
  [[nodiscard]] Result<double> asNumber(double low, double high) const;
  // Refuses members that are not in the list.
  [[nodiscard]] Result<void> onlyKeys(std::initializer_list<std::string_view> allowed) const;
  [[nodiscard]] tl::unexpected<Error> error(ErrorCode code, std::string detail = {}) const;

 private:
  friend class Document;
  const Document::Body* m_body = nullptr;
  const void* m_value = nullptr;   // rapidjson::Value; null where a member is missing
  const void* m_parent = nullptr;  // of a missing member
  std::string m_missing;           // its key; a path is only worked out when an error asks for it
};

// Writing: a small append-only writer. Keys come out in the order given; no blanks; UTF-8, with U+FFFD for bytes that are
// none; integers only unless real() is called (terminal output may carry decimals, facts may not).
class Writer {
 public:
  Writer();
  ~Writer();
  Writer& beginObject();
  Writer& endObject();
  Writer& beginArray();
  Writer& endArray();
  Writer& key(std::string_view k);
  Writer& string(std::string_view v);
  Writer& integer(std::int64_t v);
  Writer& boolean(bool v);
  Writer& real(double v, int decimals);  // terminal only
  Writer& null();
  Writer& raw(std::string_view json);  // must be one complete JSON value
  [[nodiscard]] std::string take();

 private:
  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::json
