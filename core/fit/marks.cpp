// SPDX-License-Identifier: Apache-2.0
#include "core/fit/marks.h"

#include <utility>

namespace snugline::fit {

namespace {

constexpr std::array<std::string_view, kMarkCount> kMarkCodes{"brow", "ears", "nape", "chin", "straps", "jaw", "crown", "sides", "hold"};

// Each mark is said in its own words on the head; all of them read as one of four findings.
constexpr std::array<std::pair<std::string_view, Finding>, 15> kFindingWords{{{"unseen", Finding::unseen},
                                                                              {"snug", Finding::snug},
                                                                              {"over", Finding::over},
                                                                              {"high", Finding::over},
                                                                              {"presses", Finding::over},
                                                                              {"tight", Finding::over},
                                                                              {"hurts", Finding::over},
                                                                              {"under", Finding::under},
                                                                              {"low", Finding::under},
                                                                              {"gap", Finding::under},
                                                                              {"slack", Finding::under},
                                                                              {"loose", Finding::under},
                                                                              {"slides", Finding::under},
                                                                              {"uncovered", Finding::under},
                                                                              {"fault", Finding::fault}}};

}  // namespace

std::string_view code(Mark m) { return kMarkCodes[static_cast<std::size_t>(m)]; }

std::optional<Mark> markFromCode(std::string_view text) {
  for (Mark m : kMarks)
    if (code(m) == text) return m;
  return std::nullopt;
}

std::string_view code(Finding f) {
  switch (f) {
    case Finding::unseen:
      return "unseen";
    case Finding::snug:
      return "snug";
    case Finding::over:
      return "over";
    case Finding::under:
      return "under";
    case Finding::fault:
      return "fault";
  }
  return "unseen";
}

std::optional<Finding> findingFromCode(std::string_view text) {
  for (const auto& [word, finding] : kFindingWords)
    if (word == text) return finding;
  return std::nullopt;
}

std::string_view code(Side s) {
  switch (s) {
    case Side::both:
      return "both";
    case Side::left:
      return "left";
    case Side::right:
      return "right";
  }
  return "both";
}

std::optional<Side> sideFromCode(std::string_view text) {
  for (Side s : {Side::both, Side::left, Side::right})
    if (code(s) == text) return s;
  return std::nullopt;
}

std::string_view code(HoldHow h) {
  switch (h) {
    case HoldHow::unsaid:
      return "unsaid";
    case HoldHow::twist:
      return "twist";
    case HoldHow::rock:
      return "rock";
    case HoldHow::drop:
      return "drop";
  }
  return "unsaid";
}

std::optional<HoldHow> holdHowFromCode(std::string_view text) {
  for (HoldHow h : {HoldHow::unsaid, HoldHow::twist, HoldHow::rock, HoldHow::drop})
    if (code(h) == text) return h;
  return std::nullopt;
}

bool knowsSides(Mark m) { return m == Mark::jaw || m == Mark::sides || m == Mark::ears; }

std::array<Mark, 3> marksOf(LookView v) {
  switch (v) {
    case LookView::front:
      return {Mark::brow, Mark::chin, Mark::straps};
    case LookView::side:
      return {Mark::ears, Mark::nape, Mark::jaw};
    case LookView::hold:
      return {Mark::crown, Mark::sides, Mark::hold};
  }
  return {Mark::brow, Mark::chin, Mark::straps};
}

std::string_view code(LookView v) {
  switch (v) {
    case LookView::front:
      return "front";
    case LookView::side:
      return "side";
    case LookView::hold:
      return "hold";
  }
  return "front";
}

std::optional<LookView> lookViewFromCode(std::string_view text) {
  for (LookView v : kLookViews)
    if (code(v) == text) return v;
  return std::nullopt;
}

}  // namespace snugline::fit
