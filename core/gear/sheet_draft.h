// SPDX-License-Identifier: Apache-2.0
// Purpose: a model sheet while it is written: any value may still be missing or wrong, and every fault is named at once by its path in the
// file (MODEL_SHEET.md). What a draft says is what its file says: bytesOf writes it, readDraft takes it back.
// Errors: readDraft only where there is nothing to read at all (those of strict_json.h, another format). Thread: plain values.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/gear/model_sheet.h"

namespace snugline::gear {

// A whole number of the unit at the end of its key; nothing while it is not said.
using Figure = std::optional<std::int64_t>;

struct BandDraft {
  std::string name;
  Figure low, high;  // um
  friend bool operator==(const BandDraft&, const BandDraft&) = default;
};
struct PortDraft {
  std::optional<Port> port;
  Figure start, low, high;  // Pa
  friend bool operator==(const PortDraft&, const PortDraft&) = default;
};
struct PadsDraft {
  std::vector<Figure> steps;  // um
  Figure fitted;              // the thickness, not its place among the steps
  friend bool operator==(const PadsDraft&, const PadsDraft&) = default;
};
struct QuestionDraft {
  std::string id, ask, ifNo;
  friend bool operator==(const QuestionDraft&, const QuestionDraft&) = default;
};
// What a sheet may be without, and nobody has said yet: none is an answer, silence is not. Never true of a file.
struct Unsaid {
  bool air = false, jawPads = false, crownPads = false;
  friend bool operator==(const Unsaid&, const Unsaid&) = default;
};
struct SheetDraft {
  std::string id, name;
  std::vector<BandDraft> sizes;
  std::vector<PortDraft> air;
  std::optional<PadsDraft> jawPads, crownPads;
  Figure browLow, browHigh, strapPoints, certificationMonths, ageLimitMonths, changeAllowance, leakPerWeek;
  std::vector<std::optional<Port>> order;
  std::vector<std::string> markOrder;  // codes; empty: the usual order
  std::vector<QuestionDraft> questions;
  std::string cautions;
  Unsaid unsaid;
  [[nodiscard]] bool hasPort(Port p) const;
  friend bool operator==(const SheetDraft&, const SheetDraft&) = default;
};

enum class SheetRule : std::uint8_t {
  missing,          // there must be a value
  range,            // the value lies outside lowest..highest
  characters,       // as many characters as from lowest to highest
  entries,          // as many entries as from lowest to highest
  form,             // another kind of value, an unknown key or word: only in a file
  printable,        // control characters, or nothing but blanks
  idLetters,        // letters a to z, digits and -
  sizeNone,         // "none" means off the chart
  sizeTwice,        // two bands have this name
  bandEnds,         // ends where it begins or before
  bandBegins,       // begins no higher than the band before it
  bandEndsTooLow,   // ends no higher than the band before it
  bandReachesOver,  // reaches into the band before its neighbour
  portTwice,
  startOutside,  // outside the band from low to high
  jawPair,       // the jaw ports come as a pair
  padsBesideAir,
  stepNotThicker,
  fittedNoStep,
  browEnds,         // no higher than the low end
  browAboveTarget,  // the low end lies above 1 in
  browBelowTarget,  // the high end lies below 1 in
  strapCount,       // neither 4 nor 6
  noAir,            // only with air
  orderNoPort,      // a port without air
  orderTwice,       // a port or a mark
  orderLeavesOut,
  questionTaken,  // a mark, a point or a step has this name
  questionTwice
};

struct SheetFault {
  std::string path;  // "/sizes/0/low_um"
  SheetRule rule = SheetRule::missing;
  ErrorCode code = ErrorCode::inconsistent;  // as the reader of a whole sheet says it
  std::string detail;
  std::int64_t lowest = 0, highest = 0;  // of range, characters and entries
  friend bool operator==(const SheetFault&, const SheetFault&) = default;
};

// Every fault, in the order of the file's keys; at most one at a path.
[[nodiscard]] std::vector<SheetFault> faultsOf(const SheetDraft& draft);

struct ReadDraft {
  SheetDraft draft;                // as much as could be read
  std::vector<SheetFault> faults;  // of the file and of what it says: none if and only if parseSheet takes it
};
[[nodiscard]] Result<ReadDraft> readDraft(std::string_view bytes, const std::string& name);

[[nodiscard]] SheetDraft draftOf(const ModelSheet& sheet);
// Keys in the order of MODEL_SHEET.md, one line for each key, band, port and question. What is missing is left out.
[[nodiscard]] std::string bytesOf(const SheetDraft& draft);
// As much of a sheet as is said, nought where nothing is; for drawing it. Hash and bytes stay empty.
[[nodiscard]] ModelSheet sheetOfDraft(const SheetDraft& draft);
// Errors: the first fault, its path as the place.
[[nodiscard]] Result<ModelSheet> sheetFrom(const SheetDraft& draft);

// What a number at a path counts, and between which ends.
enum class FigureUnit : std::uint8_t { um, pa, months, points };
struct FigureRange {
  FigureUnit unit = FigureUnit::um;
  std::int64_t lowest = 0, highest = 0;
};
[[nodiscard]] std::optional<FigureRange> figureRange(std::string_view path);
// The value at a path; null where the draft has no such place. Good until the draft's next change of shape.
[[nodiscard]] Figure* figureAt(SheetDraft& draft, std::string_view path);
[[nodiscard]] std::string* textAt(SheetDraft& draft, std::string_view path);

// The port's air, empty, and its place at the end of the order; the jaw's two come and go together. Without air nothing is left of what
// only air needs.
void addPort(SheetDraft& draft, Port port);
void removePort(SheetDraft& draft, Port port);
// The step as delivered stays the same pad when its thickness is corrected.
void setStep(PadsDraft& pads, std::size_t step, Figure thickness);

}  // namespace snugline::gear
