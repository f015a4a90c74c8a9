// SPDX-License-Identifier: Apache-2.0
#include "core/book/past_lanes.h"

#include <algorithm>

namespace snugline::book {

PastLanes::PastLanes(std::vector<Instant> times) : m_times(std::move(times)), m_later(m_times.size()) {}

Result<bool> PastLanes::step(Book& book, std::size_t facts) {
  if (m_times.empty()) return true;
  const auto isMore = book.read(m_cursor, facts, [&](Fact&& fact, bool counts) {
    if (!counts || std::holds_alternative<Corrected>(fact.body)) return;
    const auto next =
        std::lower_bound(m_times.begin(), m_times.end(), fact.at.ms, [](const Instant& t, std::int64_t ms) { return t.ms < ms; });
    if (next == m_times.begin()) return take(fact);
    if (next != m_times.end()) m_later[static_cast<std::size_t>(next - m_times.begin())].push_back(std::move(fact));
  });
  if (!isMore) return tl::unexpected<Error>(isMore.error());
  if (*isMore) return false;
  count();
  return true;
}

void PastLanes::take(const Fact& fact) {
  const Touches all(fact);
  for (const Touch& touch : all) m_folded.take(fact, touch.entity, *touch.id);
}

void PastLanes::count() {
  for (std::size_t i = 0; i < m_times.size(); ++i) {
    for (const Fact& fact : m_later[i]) take(fact);
    m_later[i] = {};
    m_folded.settle();
    for (auto& changed : m_folded.changed) changed.clear();
    m_counts.push_back(season::lanesAt(m_folded.views, m_times[i]));
  }
}

}  // namespace snugline::book
