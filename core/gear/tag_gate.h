// SPDX-License-Identifier: Apache-2.0
// Purpose: a tag that stands before a camera is read many times a second, and a hand scanner may fire twice; it counts once. A text counts
// again when it was not seen for kSameTagMs. Times may repeat but not go back by more than that; a clock set back counts it anew.
// Thread: confined to one thread.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/time.h"

namespace snugline::gear {

inline constexpr std::int64_t kSameTagMs = 1000;  // ours
inline constexpr std::size_t kTagsInView = 8;     // ours: more tags than that do not stand before one camera

class TagGate {
 public:
  // True the first time; each sighting keeps the text from counting for another kSameTagMs.
  [[nodiscard]] bool isNew(std::string_view text, Instant at);
  void forget() { m_seen.clear(); }

 private:
  struct Seen {
    std::string text;
    std::int64_t atMs = 0;
  };
  std::vector<Seen> m_seen;
};

}  // namespace snugline::gear
