// SPDX-License-Identifier: Apache-2.0
// Purpose: in which slot of a board an athlete's row stands. Eight bytes an entry in one block, so that a district is laid in a pass over
// dense keys: no text is read and nothing is asked of the heap a row.
// Complexity: put, find and drop are constant on average; two entries of room for each slot. Thread: plain values.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace snugline::season {

class SlotIndex {
 public:
  void clear() {
    m_entries.clear();
    m_used = 0;
    m_count = 0;
  }
  void reserve(std::size_t count) {  // of slots
    std::size_t room = kLeast;
    while (room < count * 2) room *= 2;
    if (room > m_entries.size()) lay(room);
  }
  [[nodiscard]] std::size_t size() const { return m_count; }

  // The caller sees to it that no entry stands for the same athlete yet.
  void put(std::uint64_t key, std::uint32_t slot) {
    if ((m_used + 1) * 2 > m_entries.size()) lay(std::max(kLeast, (m_count + 1) * 4));
    std::size_t at = start(hashOf(key));
    while (m_entries[at].slot != kEmpty) at = next(at);
    m_entries[at] = {hashOf(key), slot};
    ++m_used;
    ++m_count;
  }
  // isThat(slot): different athletes may share a key.
  template <typename IsThat>
  [[nodiscard]] std::optional<std::uint32_t> find(std::uint64_t key, const IsThat& isThat) const {
    if (m_entries.empty()) return std::nullopt;
    const std::uint32_t hash = hashOf(key);
    for (std::size_t at = start(hash); m_entries[at].slot != kEmpty; at = next(at)) {
      const Entry& entry = m_entries[at];
      if (entry.hash == hash && entry.slot != kGone && isThat(entry.slot)) return entry.slot;
    }
    return std::nullopt;
  }
  void drop(std::uint64_t key, std::uint32_t slot) {
    if (m_entries.empty()) return;
    for (std::size_t at = start(hashOf(key)); m_entries[at].slot != kEmpty; at = next(at)) {
      if (m_entries[at].slot != slot) continue;
      m_entries[at].slot = kGone;  // kept as a step for those behind it until the next laying
      --m_count;
      return;
    }
  }

 private:
  struct Entry {
    std::uint32_t hash = 0, slot = kEmpty;
  };
  static constexpr std::uint32_t kEmpty = 0xFFFFFFFF, kGone = 0xFFFFFFFE;
  static constexpr std::size_t kLeast = 16;  // entries

  static std::uint32_t hashOf(std::uint64_t key) {
    constexpr std::uint64_t kGolden = 0x9E3779B97F4A7C15;  // 2^64 over the golden ratio: spreads numbers that follow one another
    return static_cast<std::uint32_t>((key * kGolden) >> 32);
  }
  [[nodiscard]] std::size_t start(std::uint32_t hash) const { return hash & (m_entries.size() - 1); }
  [[nodiscard]] std::size_t next(std::size_t at) const { return (at + 1) & (m_entries.size() - 1); }
  void lay(std::size_t least) {
    std::size_t room = kLeast;
    while (room < least) room *= 2;
    const std::vector<Entry> old = std::exchange(m_entries, std::vector<Entry>(room));
    for (const Entry& entry : old) {
      if (entry.slot == kEmpty || entry.slot == kGone) continue;
      std::size_t at = start(entry.hash);
      while (m_entries[at].slot != kEmpty) at = next(at);
      m_entries[at] = entry;
    }
    m_used = m_count;
  }

  std::vector<Entry> m_entries;         // a power of two of them
  std::size_t m_used = 0, m_count = 0;  // entries not empty, and those of them not gone
};

}  // namespace snugline::season
