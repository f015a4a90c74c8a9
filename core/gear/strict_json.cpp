// SPDX-License-Identifier: Apache-2.0
#include "core/gear/strict_json.h"

#include <rapidjson/document.h>
#include <rapidjson/error/en.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <charconv>
#include <cstddef>
#include <cstdio>
#include <cstring>
#include <new>

#include "core/gear/utf8.h"

namespace snugline::json {

namespace {

using Value = rapidjson::Value;
using Pool = rapidjson::MemoryPoolAllocator<>;

// The bytes are checked to be UTF-8 as a whole, which is a third of what the parser's own check would cost.
constexpr unsigned kFlags = rapidjson::kParseFullPrecisionFlag;
constexpr std::size_t kOwnRoom = 4096;           // a fact fits, so that reading one costs a single allocation
constexpr rapidjson::SizeType kFewMembers = 16;  // up to here comparing pairs is cheaper than sorting
constexpr std::size_t kFileSlice = 65536;

std::string_view text(const Value& v) { return {v.GetString(), v.GetStringLength()}; }

std::string position(std::string_view json, std::size_t offset) {
  const std::string_view before = json.substr(0, std::min(offset, json.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const std::size_t start = before.rfind('\n');
  const std::size_t column = before.size() - (start == std::string_view::npos ? 0 : start + 1) + 1;
  return "byte " + std::to_string(before.size()) + ", line " + std::to_string(line) + ", column " + std::to_string(column);
}

// One half of an escaped surrogate pair: third digit c to f for the second half, 8 to b for the first.
bool isSurrogate(std::string_view escape, std::string_view thirdDigits) {
  return escape.size() >= 6 && escape[1] == 'u' && (escape[2] == 'd' || escape[2] == 'D') &&
         thirdDigits.find(escape[3]) != std::string_view::npos;
}

// What the parser lets through or trips over: levels are counted here, as it calls itself for each, and a second half of a
// surrogate pair without its first would come out as bytes that are no UTF-8. Empty when there is nothing.
std::string foundBefore(std::string_view json) {
  // Few brackets and no escape, as in nearly every fact: nothing can be found.
  const auto opened = std::count(json.begin(), json.end(), '{') + std::count(json.begin(), json.end(), '[');
  if (static_cast<std::size_t>(opened) <= kDepthLimit && json.find('\\') == std::string_view::npos) return {};
  std::size_t depth = 0, pairAt = 0;
  bool isInString = false;
  for (std::size_t i = 0; i < json.size(); ++i) {
    const char c = json[i];
    if (isInString) {
      if (c == '\\') {
        const std::string_view escape = json.substr(i, 6);
        if (isSurrogate(escape, "cdefCDEF") && pairAt != i) return position(json, i) + ": half of a surrogate pair";
        if (isSurrogate(escape, "89abAB")) pairAt = i + 6;
        ++i;
      } else if (c == '"') {
        isInString = false;
      }
    } else if (c == '"') {
      isInString = true;
    } else if (c == '{' || c == '[') {
      if (++depth > kDepthLimit) return position(json, i) + ": nested deeper than " + std::to_string(kDepthLimit) + " levels";
    } else if ((c == '}' || c == ']') && depth > 0) {
      --depth;
    }
  }
  return {};
}

const Value* repeatedKey(const Value& object) {
  const rapidjson::SizeType count = object.MemberCount();
  if (count <= kFewMembers) {
    for (auto a = object.MemberBegin(); a != object.MemberEnd(); ++a)
      for (auto b = object.MemberBegin(); b != a; ++b)
        if (text(a->name) == text(b->name)) return &a->name;
    return nullptr;
  }
  std::vector<const Value*> names;
  names.reserve(count);
  for (const auto& member : object.GetObject()) names.push_back(&member.name);
  std::stable_sort(names.begin(), names.end(), [](const Value* a, const Value* b) { return text(*a) < text(*b); });
  const auto twin = std::adjacent_find(names.begin(), names.end(), [](const Value* a, const Value* b) { return text(*a) == text(*b); });
  return twin == names.end() ? nullptr : *twin;
}

// RFC 6901, and control characters as escapes so that an error stays one line.
std::string escaped(std::string_view key) {
  std::string out;
  for (char c : key) {
    if (c == '~') {
      out += "~0";
    } else if (c == '/') {
      out += "~1";
    } else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) {
      std::array<char, 8> code{};
      std::snprintf(code.data(), code.size(), "\\u%04x", static_cast<unsigned>(c));
      out += code.data();
    } else {
      out += c;
    }
  }
  return out;
}

struct Fault {
  const Value* holder = nullptr;
  std::string key;
};

// The first object that has a key twice.
bool findRepeated(const Value& value, Fault& fault) {
  if (value.IsObject()) {
    if (const Value* const key = repeatedKey(value)) {
      fault = {&value, escaped(text(*key))};
      return true;
    }
    return std::any_of(value.MemberBegin(), value.MemberEnd(), [&](const auto& m) { return findRepeated(m.value, fault); });
  }
  return value.IsArray() && std::any_of(value.Begin(), value.End(), [&](const Value& v) { return findRepeated(v, fault); });
}

// Appends the way from value to target; false and nothing appended where target does not lie below value.
bool findPath(const Value& value, const Value* target, std::string& path) {
  if (&value == target) return true;
  const std::size_t length = path.size();
  if (value.IsObject()) {
    for (const auto& member : value.GetObject()) {
      path += '/' + escaped(text(member.name));
      if (findPath(member.value, target, path)) return true;
      path.resize(length);
    }
  } else if (value.IsArray()) {
    for (rapidjson::SizeType i = 0; i < value.Size(); ++i) {
      path += '/' + std::to_string(i);
      if (findPath(value[i], target, path)) return true;
      path.resize(length);
    }
  }
  return false;
}

std::string withoutStop(std::string cause) {
  if (!cause.empty() && cause.back() == '.') cause.pop_back();
  return cause;
}

std::string limits(std::string value, std::string low, std::string high) {
  return std::move(value) + ", " + std::move(low) + ", " + std::move(high);
}

std::string shortest(double v) {
  std::array<char, 32> out{};
  const auto end = std::to_chars(out.data(), out.data() + out.size(), v);
  return {out.data(), end.ptr};
}

}  // namespace

struct Document::Body {
  explicit Body(std::string called) : name(std::move(called)) {}
  alignas(std::max_align_t) std::array<char, kOwnRoom> room;
  Pool pool{room.data(), room.size()};
  rapidjson::Document document{&pool};
  std::string name;
};

Document::Document(std::unique_ptr<Body> body) : m_body(std::move(body)) {}
Document::Document(Document&&) noexcept = default;
Document& Document::operator=(Document&&) noexcept = default;
Document::~Document() = default;

Result<std::string> readText(const std::string& path, std::size_t limitBytes) try {
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rb"), &std::fclose);
  if (!file) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
  std::string bytes;
  std::string slice(kFileSlice, '\0');
  while (bytes.size() <= limitBytes) {
    errno = 0;
    const std::size_t n = std::fread(slice.data(), 1, slice.size(), file.get());
    if (std::ferror(file.get()) != 0) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
    if (n == 0) break;
    bytes.append(slice, 0, n);
  }
  if (bytes.find('\0') != std::string::npos) return fail(ErrorCode::notText, path);
  if (bytes.size() > limitBytes)
    return fail(ErrorCode::tooLong, path, "more than " + std::to_string(limitBytes) + " bytes, " + std::to_string(limitBytes));
  return bytes;
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

Result<Document> Document::parse(std::string_view json, std::string name) try {
  if (json.starts_with("\xEF\xBB\xBF"))
    return fail(ErrorCode::notJson, std::move(name), "byte 0: a byte order mark stands before the text");
  // The parser takes a zero byte for the end, so that whatever follows would go unread.
  if (const std::size_t at = json.find('\0'); at != std::string_view::npos)
    return fail(ErrorCode::notJson, std::move(name), position(json, at) + ": a zero byte");
  if (!gear::isUtf8(json)) return fail(ErrorCode::notJson, std::move(name), position(json, gear::utf8End(json)) + ": not UTF-8");
  if (std::string cause = foundBefore(json); !cause.empty()) return fail(ErrorCode::notJson, std::move(name), std::move(cause));
  auto body = std::make_unique<Body>(std::move(name));
  rapidjson::Document& document = body->document;
  document.Parse<kFlags>(json.data(), json.size());
  if (document.HasParseError())
    return fail(ErrorCode::notJson, body->name,
                position(json, document.GetErrorOffset()) + ": " + withoutStop(rapidjson::GetParseError_En(document.GetParseError())));
  Fault fault;
  if (findRepeated(document, fault)) {
    std::string path = body->name + '#';
    findPath(document, fault.holder, path);
    return fail(ErrorCode::duplicateKey, path + '/' + fault.key);
  }
  return Document(std::move(body));
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

Result<Document> Document::readFile(const std::string& path, std::size_t limitBytes) {
  const Result<std::string> bytes = readText(path, limitBytes);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  return parse(*bytes, path);
}

Node Document::root() const {
  Node node;
  node.m_body = m_body.get();
  node.m_value = static_cast<const Value*>(&m_body->document);
  return node;
}

// ---- Node ----------------------------------------------------------------------------------------------------------

namespace {

const Value* valueOf(const void* v) { return static_cast<const Value*>(v); }

}  // namespace

std::string Node::path() const {
  if (m_body == nullptr) return {};
  std::string path = m_body->name + '#';
  const std::size_t length = path.size();
  findPath(m_body->document, valueOf(m_value != nullptr ? m_value : m_parent), path);
  if (m_value == nullptr) path += '/' + m_missing;
  if (path.size() == length) path += '/';
  return path;
}

tl::unexpected<Error> Node::error(ErrorCode code, std::string detail) const { return fail(code, path(), std::move(detail)); }

bool Node::isObject() const { return exists() && valueOf(m_value)->IsObject(); }
bool Node::isArray() const { return exists() && valueOf(m_value)->IsArray(); }
bool Node::isString() const { return exists() && valueOf(m_value)->IsString(); }
bool Node::isInteger() const { return exists() && valueOf(m_value)->IsInt64(); }
bool Node::isBool() const { return exists() && valueOf(m_value)->IsBool(); }

Node Node::at(std::string_view key) const {
  Node node;
  node.m_body = m_body;
  if (isObject())
    for (const auto& member : valueOf(m_value)->GetObject())
      if (text(member.name) == key) {
        node.m_value = &member.value;
        return node;
      }
  node.m_parent = exists() ? m_value : m_parent;
  node.m_missing = exists() ? escaped(key) : m_missing + '/' + escaped(key);
  return node;
}

std::vector<Node> Node::items() const {
  std::vector<Node> nodes;
  if (!isArray()) return nodes;
  nodes.reserve(valueOf(m_value)->Size());
  for (const Value& value : valueOf(m_value)->GetArray()) {
    Node& node = nodes.emplace_back();
    node.m_body = m_body;
    node.m_value = &value;
  }
  return nodes;
}

std::vector<std::pair<std::string, Node>> Node::members() const {
  std::vector<std::pair<std::string, Node>> nodes;
  if (!isObject()) return nodes;
  nodes.reserve(valueOf(m_value)->MemberCount());
  for (const auto& member : valueOf(m_value)->GetObject()) {
    auto& entry = nodes.emplace_back(std::string(text(member.name)), Node());
    entry.second.m_body = m_body;
    entry.second.m_value = &member.value;
  }
  return nodes;
}

Result<std::string> Node::asString() const {
  if (!exists()) return error(ErrorCode::missingKey);
  if (!isString()) return error(ErrorCode::wrongType, "text");
  return std::string(text(*valueOf(m_value)));
}

Result<std::int64_t> Node::asInteger(std::int64_t low, std::int64_t high) const {
  if (!exists()) return error(ErrorCode::missingKey);
  const Value& value = *valueOf(m_value);
  const auto range = [&](std::string shown) { return limits(std::move(shown), std::to_string(low), std::to_string(high)); };
  if (value.IsUint64() && !value.IsInt64()) return error(ErrorCode::outOfRange, range(std::to_string(value.GetUint64())));
  if (!value.IsInt64()) return error(ErrorCode::wrongType, "a whole number");
  const std::int64_t number = value.GetInt64();
  if (number < low || number > high) return error(ErrorCode::outOfRange, range(std::to_string(number)));
  return number;
}

Result<double> Node::asNumber(double low, double high) const {
  if (!exists()) return error(ErrorCode::missingKey);
  const Value& value = *valueOf(m_value);
  if (!value.IsNumber()) return error(ErrorCode::wrongType, "a number");
  const double number = value.GetDouble();
  if (number < low || number > high) return error(ErrorCode::outOfRange, limits(shortest(number), shortest(low), shortest(high)));
  return number;
}

Result<std::string> Node::string(std::string_view key) const {
  if (exists() && !isObject()) return error(ErrorCode::wrongType, "an object");
  return at(key).asString();
}

Result<std::int64_t> Node::integer(std::string_view key, std::int64_t low, std::int64_t high) const {
  if (exists() && !isObject()) return error(ErrorCode::wrongType, "an object");
  return at(key).asInteger(low, high);
}

Result<double> Node::number(std::string_view key, double low, double high) const {
  if (exists() && !isObject()) return error(ErrorCode::wrongType, "an object");
  return at(key).asNumber(low, high);
}

Result<bool> Node::boolean(std::string_view key) const {
  if (exists() && !isObject()) return error(ErrorCode::wrongType, "an object");
  const Node node = at(key);
  if (!node.exists()) return node.error(ErrorCode::missingKey);
  if (!node.isBool()) return node.error(ErrorCode::wrongType, "true or false");
  return valueOf(node.m_value)->GetBool();
}

Result<Node> Node::object(std::string_view key) const {
  if (exists() && !isObject()) return error(ErrorCode::wrongType, "an object");
  Node node = at(key);
  if (!node.exists()) return node.error(ErrorCode::missingKey);
  if (!node.isObject()) return node.error(ErrorCode::wrongType, "an object");
  return node;
}

Result<Node> Node::array(std::string_view key) const {
  if (exists() && !isObject()) return error(ErrorCode::wrongType, "an object");
  Node node = at(key);
  if (!node.exists()) return node.error(ErrorCode::missingKey);
  if (!node.isArray()) return node.error(ErrorCode::wrongType, "a list");
  return node;
}

Result<void> Node::onlyKeys(std::initializer_list<std::string_view> allowed) const {
  if (!exists()) return error(ErrorCode::missingKey);
  if (!isObject()) return error(ErrorCode::wrongType, "an object");
  for (const auto& member : valueOf(m_value)->GetObject()) {
    if (std::find(allowed.begin(), allowed.end(), text(member.name)) != allowed.end()) continue;
    Node node;
    node.m_body = m_body;
    node.m_value = &member.value;
    return node.error(ErrorCode::unknownKey);
  }
  return {};
}

}  // namespace snugline::json
