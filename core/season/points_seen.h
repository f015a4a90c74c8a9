// SPDX-License-Identifier: Apache-2.0
// Purpose: the seven points of a unit as last seen. What the board asks of every unit of a district (state and time) lies together in two
// lines of memory; who saw it and in which words lies elsewhere and is read where a row says so.
// Complexity: one allocation per unit that was ever looked over. Thread: plain values.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <utility>

#include "core/gear/points.h"
#include "core/season/stamp.h"

namespace snugline::season {

struct PointSeenRecord {
  gear::PointFinding finding;
  Stamp stamp;
  bool isInGroup = false;
  friend bool operator==(const PointSeenRecord&, const PointSeenRecord&) = default;
};

class SeenPoints {
 public:
  using Records = std::array<std::optional<PointSeenRecord>, gear::kPointCount>;
  // State and time of a point alone.
  struct Glance {
    std::int64_t ms = 0;
    std::int32_t offsetMinutes = 0;
    gear::PointState state = gear::PointState::unseen;
    bool isRecorded = false;
    [[nodiscard]] Instant at() const { return {ms, offsetMinutes}; }
    explicit operator bool() const { return isRecorded; }
  };

  SeenPoints() = default;
  SeenPoints(const SeenPoints& other) : m_glances(other.m_glances), m_records(copyOf(other.m_records)) {}
  SeenPoints(SeenPoints&& other) noexcept : m_glances(std::exchange(other.m_glances, {})), m_records(std::move(other.m_records)) {}
  SeenPoints& operator=(SeenPoints other) noexcept {
    m_glances = other.m_glances;
    m_records = std::move(other.m_records);
    return *this;
  }
  ~SeenPoints() = default;

  void see(gear::Point point, PointSeenRecord record) {
    if (m_records == nullptr) m_records = std::make_unique<Records>();
    m_glances[at(point)] = {record.stamp.at.ms, record.stamp.at.offsetMinutes, record.finding.state, true};
    (*m_records)[at(point)] = std::move(record);
  }
  void forget(gear::Point point) {
    m_glances[at(point)] = {};
    if (m_records != nullptr) (*m_records)[at(point)].reset();
  }

  [[nodiscard]] const Glance& glance(gear::Point point) const { return m_glances[at(point)]; }
  [[nodiscard]] const std::optional<PointSeenRecord>& operator[](std::size_t point) const { return records()[point]; }
  [[nodiscard]] auto begin() const { return records().begin(); }
  [[nodiscard]] auto end() const { return records().end(); }
  friend bool operator==(const SeenPoints& a, const SeenPoints& b) { return a.records() == b.records(); }

 private:
  static std::size_t at(gear::Point point) { return static_cast<std::size_t>(point); }
  static std::unique_ptr<Records> copyOf(const std::unique_ptr<Records>& records) {
    return records == nullptr ? nullptr : std::make_unique<Records>(*records);
  }
  [[nodiscard]] const Records& records() const {
    static const Records kNone{};
    return m_records == nullptr ? kNone : *m_records;
  }

  std::array<Glance, gear::kPointCount> m_glances{};
  std::unique_ptr<Records> m_records;
};

}  // namespace snugline::season
