// SPDX-License-Identifier: Apache-2.0
// Purpose: the nine marks of a fit, in their order, and what can be found at each. The list is common practice.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace snugline::fit {

enum class Mark : std::uint8_t { brow, ears, nape, chin, straps, jaw, crown, sides, hold };
inline constexpr std::size_t kMarkCount = 9;
inline constexpr std::array<Mark, kMarkCount> kMarks{Mark::brow, Mark::ears,  Mark::nape,  Mark::chin, Mark::straps,
                                                     Mark::jaw,  Mark::crown, Mark::sides, Mark::hold};

// over: high, presses, tight, hurts. under: low, gap, slack, slides.
enum class Finding : std::uint8_t { unseen, snug, over, under, fault };
enum class Side : std::uint8_t { both, left, right };  // jaw, sides and ears know left and right
enum class HoldHow : std::uint8_t { unsaid, twist, rock, drop };

[[nodiscard]] std::string_view code(Mark m);  // "brow"
[[nodiscard]] std::optional<Mark> markFromCode(std::string_view);
[[nodiscard]] std::string_view code(Finding f);                          // "unseen", "snug", "over", "under", "fault"
[[nodiscard]] std::optional<Finding> findingFromCode(std::string_view);  // also high, presses, tight, hurts, low, gap, slack, loose, slides
[[nodiscard]] std::string_view code(Side s);
[[nodiscard]] std::optional<Side> sideFromCode(std::string_view);
[[nodiscard]] std::string_view code(HoldHow h);
[[nodiscard]] std::optional<HoldHow> holdHowFromCode(std::string_view);
[[nodiscard]] bool knowsSides(Mark m);

// A set of marks as bits, so that reopening is one operation.
struct MarkSet {
  std::uint16_t bits = 0;
  constexpr MarkSet() = default;
  constexpr MarkSet(std::initializer_list<Mark> marks) {
    for (Mark m : marks) bits |= static_cast<std::uint16_t>(1U << static_cast<unsigned>(m));
  }
  [[nodiscard]] constexpr bool has(Mark m) const { return (bits >> static_cast<unsigned>(m)) & 1U; }
  constexpr void add(Mark m) { bits |= static_cast<std::uint16_t>(1U << static_cast<unsigned>(m)); }
  constexpr void remove(Mark m) { bits &= static_cast<std::uint16_t>(~(1U << static_cast<unsigned>(m))); }
  friend constexpr bool operator==(const MarkSet&, const MarkSet&) = default;
  friend constexpr MarkSet operator|(MarkSet a, MarkSet b) {
    MarkSet r;
    r.bits = a.bits | b.bits;
    return r;
  }
};

inline constexpr MarkSet kAllMarks{Mark::brow, Mark::ears,  Mark::nape,  Mark::chin, Mark::straps,
                                   Mark::jaw,  Mark::crown, Mark::sides, Mark::hold};

// The three grouped views of a look: front, side, hold.
enum class LookView : std::uint8_t { front, side, hold };
inline constexpr std::array<LookView, 3> kLookViews{LookView::front, LookView::side, LookView::hold};
[[nodiscard]] std::array<Mark, 3> marksOf(LookView v);  // front: brow, chin, straps; side: ears, nape, jaw; hold: crown, sides, hold
[[nodiscard]] std::string_view code(LookView v);
[[nodiscard]] std::optional<LookView> lookViewFromCode(std::string_view);

}  // namespace snugline::fit
