// SPDX-License-Identifier: Apache-2.0
#include "core/gear/tag_gate.h"

#include <algorithm>

namespace snugline::gear {

bool TagGate::isNew(std::string_view text, Instant at) {
  const auto isOver = [&](const Seen& seen) { return at.ms - seen.atMs > kSameTagMs || at.ms + kSameTagMs < seen.atMs; };
  std::erase_if(m_seen, isOver);
  const auto known = std::find_if(m_seen.begin(), m_seen.end(), [&](const Seen& seen) { return seen.text == text; });
  if (known != m_seen.end()) {
    known->atMs = std::max(known->atMs, at.ms);
    return false;
  }
  if (m_seen.size() == kTagsInView) m_seen.erase(m_seen.begin());
  m_seen.push_back({std::string(text), at.ms});
  return true;
}

}  // namespace snugline::gear
