// SPDX-License-Identifier: Apache-2.0
#include "core/gear/model_sheet.h"

#include <sodium.h>

#include <algorithm>
#include <new>
#include <utility>

#include "core/gear/sheet_reader.h"
#include "core/gear/strict_json.h"

namespace snugline::gear {

namespace {

constexpr std::array<Port, kPortCount> kPorts{Port::crown, Port::sides, Port::jawLeft, Port::jawRight};
constexpr std::array<Part, kPartCount> kParts{Part::jawLeft, Part::jawRight, Part::crownPad, Part::straps, Part::chinCup};

std::string hashOf(std::string_view bytes) {
  std::array<unsigned char, crypto_generichash_BYTES> digest{};
  crypto_generichash(digest.data(), digest.size(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), nullptr, 0);
  std::string hex(digest.size() * 2 + 1, '\0');
  sodium_bin2hex(hex.data(), hex.size(), digest.data(), digest.size());
  hex.pop_back();
  return hex;
}

}  // namespace

std::string_view code(Port p) {
  switch (p) {
    case Port::crown:
      return "crown";
    case Port::sides:
      return "sides";
    case Port::jawLeft:
      return "jaw-left";
    case Port::jawRight:
      return "jaw-right";
  }
  return {};
}

std::optional<Port> portFromCode(std::string_view text) {
  for (Port p : kPorts)
    if (code(p) == text) return p;
  return std::nullopt;
}

std::string_view code(Part p) {
  switch (p) {
    case Part::jawLeft:
      return "jaw-left";
    case Part::jawRight:
      return "jaw-right";
    case Part::crownPad:
      return "crown-pad";
    case Part::straps:
      return "straps";
    case Part::chinCup:
      return "chin-cup";
  }
  return {};
}

std::optional<Part> partFromCode(std::string_view text) {
  for (Part p : kParts)
    if (code(p) == text) return p;
  return std::nullopt;
}

const AirPort* ModelSheet::airAt(Port p) const {
  const auto found = std::find_if(air.begin(), air.end(), [p](const AirPort& a) { return a.port == p; });
  return found == air.end() ? nullptr : &*found;
}

const PadSet* ModelSheet::padsAt(Part p) const {
  switch (p) {
    case Part::jawLeft:
    case Part::jawRight:
      return jawPads ? &*jawPads : nullptr;
    case Part::crownPad:
      return crownPads ? &*crownPads : nullptr;
    case Part::straps:
    case Part::chinCup:
      return nullptr;
  }
  return nullptr;
}

bool ModelSheet::hasPart(Part p) const {
  switch (p) {
    case Part::straps:
    case Part::chinCup:
      return true;
    case Part::jawLeft:
    case Part::jawRight:
    case Part::crownPad:
      return padsAt(p) != nullptr;
  }
  return false;
}

Result<ModelSheet> parseSheet(std::string_view bytes, const std::string& name) try {
  if (bytes.size() > kSheetLimitBytes)
    return fail(ErrorCode::tooLong, name, std::to_string(bytes.size()) + " bytes, " + std::to_string(kSheetLimitBytes));
  const Result<json::Document> document = json::Document::parse(bytes, name);
  if (!document) return tl::unexpected<Error>(document.error());
  Result<ModelSheet> sheet = readSheet(document->root());
  if (!sheet) return sheet;
  if (sodium_init() < 0) return fail(ErrorCode::internal, name, "libsodium does not start");
  sheet->bytes = std::string(bytes);
  sheet->hash = hashOf(bytes);
  return sheet;
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

Result<ModelSheet> readSheetFile(const std::string& path) {
  const Result<std::string> bytes = json::readText(path, kSheetLimitBytes);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  return parseSheet(*bytes, path);
}

}  // namespace snugline::gear
