// SPDX-License-Identifier: Apache-2.0
// Purpose: the facts of one helmet model: size chart, air ports, pads, straps, limits, intervals. Format: MODEL_SHEET.md.
// A sheet is known by the BLAKE2b-256 of its bytes, so that a check can name exactly what it was judged by.
// Errors: those of strict_json.h, and inconsistent. Thread: plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/gear/certification.h"
#include "core/quantity/quantity.h"

namespace snugline::gear {

enum class Port : std::uint8_t { crown, sides, jawLeft, jawRight };
inline constexpr std::size_t kPortCount = 4;
enum class Part : std::uint8_t { jawLeft, jawRight, crownPad, straps, chinCup };
inline constexpr std::size_t kPartCount = 5;

[[nodiscard]] std::string_view code(Port p);  // "crown", "sides", "jaw-left", "jaw-right"
[[nodiscard]] std::optional<Port> portFromCode(std::string_view);
[[nodiscard]] std::string_view code(Part p);  // "jaw-left", "jaw-right", "crown-pad", "straps", "chin-cup"
[[nodiscard]] std::optional<Part> partFromCode(std::string_view);

// The nine marks of a fit (core/fit/marks.h), by their codes and in the usual order.
inline constexpr std::array<std::string_view, 9> kMarkCodes{"brow", "ears", "nape", "chin", "straps", "jaw", "crown", "sides", "hold"};
using MarkOrder = std::array<std::uint8_t, kMarkCodes.size()>;  // places in kMarkCodes, each once
inline constexpr MarkOrder kUsualMarkOrder{0, 1, 2, 3, 4, 5, 6, 7, 8};

struct SizeBand {
  std::string name;  // as the maker prints it: "S", "M", "L"; unique within the sheet
  Length low, high;  // head circumference, both ends belong to the band as printed; bands may overlap
};

// Air in one bladder, gauge pressure. start lies within [low, high].
struct AirPort {
  Port port = Port::crown;
  Pressure start, low, high;
};

// Pads of the sheet for one place, thinnest first. One entry means that it cannot be swapped.
struct PadSet {
  std::vector<Length> steps;
  std::size_t fitted = 0;  // index in steps as delivered
};

// A yes/no question that the sheet adds after "hold"; "no" is a veto with its own words.
struct Question {
  std::string id;    // [a-z0-9-]{1,40}, unique
  std::string ask;   // in the words of the sheet
  std::string ifNo;  // the reason shown when the answer is no
};

struct ModelSheet {
  std::string id;                 // "alder-a1"
  std::string name;               // "Alder A1"
  std::vector<SizeBand> sizes;    // small to large
  std::vector<AirPort> air;       // at most one per port; empty for a sheet without air
  std::optional<PadSet> jawPads;  // swapped by thickness; exclusive with air in the jaw ports
  std::optional<PadSet> crownPads;
  Length browLow, browHigh;               // tolerance of the brow gap; target 25.4 mm lies within
  int strapPoints = 4;                    // 4 or 6
  int certificationMonths = 0;            // required by the format: 1..60
  int ageLimitMonths = 120;               // from first certification
  Pressure changeAllowance;               // move of gauge pressure that calls for a look, > 0 when there is air
  Pressure leakPerWeek;                   // allowance, > 0 when there is air
  std::vector<Port> fittingOrder;         // order in which the bladders are set at the first fit
  MarkOrder markOrder = kUsualMarkOrder;  // in which the marks are asked: makers differ
  std::vector<Question> questions;
  std::string cautions;  // in the sheet's own words; may be empty
  std::string hash;      // 64 hex digits, BLAKE2b-256 of the bytes read
  std::string bytes;     // exactly as read

  [[nodiscard]] const AirPort* airAt(Port p) const;
  [[nodiscard]] bool hasPort(Port p) const { return airAt(p) != nullptr; }
  [[nodiscard]] bool hasPart(Part p) const;  // straps and chin cup always; pads when listed
  [[nodiscard]] const PadSet* padsAt(Part p) const;
};

// name stands before the path in errors.
[[nodiscard]] Result<ModelSheet> parseSheet(std::string_view bytes, const std::string& name);
[[nodiscard]] Result<ModelSheet> readSheetFile(const std::string& path);
// Refuses more than this much, so that a wrong file is not swallowed whole.
inline constexpr std::size_t kSheetLimitBytes = 48 * 1024;

}  // namespace snugline::gear
