// SPDX-License-Identifier: Apache-2.0
// Purpose: "fits" said a second time, from the history of a check alone and without the guide's code: when was each mark
// last seen, with what, and when was it last disturbed. What disturbs what is written out here again on purpose.
#pragma once

#include <array>
#include <map>
#include <string>

#include "core/fit/guide.h"

namespace snugline::fit::proof {

// Marks in the order of the enum: brow ears nape chin straps jaw crown sides hold.
inline constexpr std::string_view kDisturbedByCrown = "x x x x x x x . x";
inline constexpr std::string_view kDisturbedBySides = "x x x . . x . x x";
inline constexpr std::string_view kDisturbedByJaw = "x x . x x x . . x";
inline constexpr std::string_view kDisturbedByStraps = "x . x x x . x . x";

[[nodiscard]] std::string_view disturbedBy(const Adjusted& change);
[[nodiscard]] inline bool isDisturbed(std::string_view row, std::size_t mark) { return row[mark * 2] == 'x'; }

class Ledger {
 public:
  explicit Ledger(const Setup& setup) : m_setup(setup) {}
  // Only answers that the guide accepted.
  void write(const Answer& answer);
  [[nodiscard]] bool isFits() const;
  [[nodiscard]] bool isSeenSinceDisturbed(std::size_t mark) const { return m_marks[mark].seen > m_marks[mark].disturbed; }
  [[nodiscard]] bool isSnug(std::size_t mark) const;

 private:
  struct Page {
    int seen = 0, disturbed = 0;      // by the number of the answer
    bool isOff = false;               // as said of the mark as a whole
    std::array<bool, 2> isSideOff{};  // as said of left and right by name
    bool hasWord = false;
    int word = 0;  // when it was last said or asked again
  };
  void see(std::size_t mark, Finding finding, Side side, const std::optional<Length>& gap);
  void disturb(std::string_view row);

  Setup m_setup;
  int m_now = 0;
  std::array<Page, kMarkCount> m_marks{};
  std::array<gear::PointState, gear::kPointCount> m_points{};
  std::map<std::string, bool> m_questions;
  std::optional<bool> m_isWet;
  bool m_isCold = false;
  bool m_isUnwell = false;
  std::array<bool, gear::kPointCount> m_arePointsSeenSinceBroke{true, true, true, true, true, true, true};
};

// The same predicate on one state, field by field.
[[nodiscard]] bool isFitsByFields(const Setup& setup, const State& state);

}  // namespace snugline::fit::proof
