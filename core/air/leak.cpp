// SPDX-License-Identifier: Apache-2.0
#include "core/air/leak.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/air/reading_order.h"

namespace snugline::air {

namespace {

constexpr double kMsPerWeek = 7.0 * 24 * 3600 * 1000;

double medianOf(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t half = values.size() / 2;
  return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2.0;
}

bool isBelieved(const LeakReading& r) {
  return believed(r.temperature).has_value() && believedAmbient(r.ambient).has_value() && believedGauge(r.gauge, r.ambient).has_value();
}

// Readings of one refill to the next, by where they were taken.
struct OpenRuns {
  std::array<std::vector<std::size_t>, 2> members;  // off the head, on it: indices of readings
};

class Sorting {
 public:
  Sorting(std::span<const LeakReading> readings, Leak& leak) : m_readings(readings), m_leak(leak) {}

  std::vector<std::vector<Point>> run() {
    bool isRefillPending = false;
    std::size_t next = 0;
    const std::vector<std::size_t> kept = keep();
    if (!kept.empty()) m_start = m_readings[kept.front()].at.ms;
    for (const std::size_t index : kept) {
      // A refill that was left out itself still happened between its neighbours.
      for (; next <= index; ++next) isRefillPending = isRefillPending || m_readings[next].isRefill;
      if (isRefillPending) close();
      isRefillPending = false;
      m_open.members[m_readings[index].isOnHead ? 1 : 0].push_back(index);
    }
    close();
    const auto byIndex = [](const auto& a, const auto& b) { return a.index < b.index; };
    std::sort(m_leak.leftOut.begin(), m_leak.leftOut.end(), byIndex);
    std::sort(m_leak.readings.begin(), m_leak.readings.end(), byIndex);
    return std::move(m_points);
  }

 private:
  // Indices of what is used, in the order written, which is then the order of time.
  std::vector<std::size_t> keep() {
    std::vector<std::size_t> good;
    good.reserve(m_readings.size());
    for (std::size_t i = 0; i < m_readings.size(); ++i) {
      if (isBelieved(m_readings[i])) {
        good.push_back(i);
      } else {
        m_leak.leftOut.push_back({i, LeftOut::notBelieved});
      }
    }
    std::vector<Stamp> stamps;
    stamps.reserve(good.size());
    for (const std::size_t i : good) stamps.push_back({m_readings[i].at.ms, m_readings[i].isRefill ? 2 : 1});
    const std::vector<bool> isInOrder = inOrder(stamps);
    std::vector<std::size_t> kept;
    kept.reserve(good.size());
    bool hasRefill = false;
    std::int64_t lastRefill = 0;
    for (std::size_t k = 0; k < good.size(); ++k) {
      const LeakReading& r = m_readings[good[k]];
      if (isInOrder[k]) {
        kept.push_back(good[k]);
        if (r.isRefill) lastRefill = r.at.ms;
        hasRefill = hasRefill || r.isRefill;
      } else {
        m_leak.leftOut.push_back({good[k], hasRefill && r.at.ms < lastRefill ? LeftOut::beforeRefill : LeftOut::notInOrder});
      }
    }
    if (kept.size() > kReadingsMost) {
      const auto from = kept.end() - static_cast<std::ptrdiff_t>(kReadingsMost);
      std::for_each(kept.begin(), from, [&](std::size_t i) { m_leak.leftOut.push_back({i, LeftOut::beyondTheMost}); });
      kept.erase(kept.begin(), from);
    }
    return kept;
  }

  void close() {
    for (auto& members : m_open.members) {
      if (members.size() == 1) m_leak.leftOut.push_back({members.front(), LeftOut::onlyOne});
      if (members.size() > 1) add(members);
      members.clear();
    }
  }

  void add(const std::vector<std::size_t>& members) {
    std::vector<Point>& points = m_points.emplace_back();
    std::vector<double> weeks, pascals;
    for (const std::size_t i : members) {
      const LeakReading& r = m_readings[i];
      const Point p{static_cast<double>(r.at.ms - m_start) / kMsPerWeek, carriedPascals({r.gauge, r.temperature, r.ambient})};
      points.push_back(p);
      weeks.push_back(p.week);
      pascals.push_back(p.pa);
      m_leak.readings.push_back({i, r.at, p.pa, m_leak.runs.size()});
    }
    m_leak.used += members.size();
    const Instant median{m_start + std::llround(medianOf(std::move(weeks)) * kMsPerWeek), m_readings[members.front()].at.offsetMinutes};
    m_leak.runs.push_back({members.size(), m_readings[members.front()].isOnHead, median, medianOf(std::move(pascals))});
  }

  std::span<const LeakReading> m_readings;
  Leak& m_leak;
  std::int64_t m_start = 0;
  OpenRuns m_open;
  std::vector<std::vector<Point>> m_points;
};

}  // namespace

std::string_view code(LeftOut why) {
  switch (why) {
    case LeftOut::notInOrder:
      return "not-in-order";
    case LeftOut::beforeRefill:
      return "before-refill";
    case LeftOut::notBelieved:
      return "not-believed";
    case LeftOut::onlyOne:
      return "only-one";
    case LeftOut::beyondTheMost:
      return "too-many";
  }
  return {};
}

Leak leakOf(std::span<const LeakReading> readings, Pressure allowancePerWeek) {
  Leak leak;
  const std::vector<std::vector<Point>> runs = Sorting(readings, leak).run();
  const Slope slope = theilSen(runs);
  leak.hasSlope = slope.hasSlope;
  leak.hasInterval = slope.hasInterval;
  leak.paPerWeek = slope.perWeek;
  leak.low = slope.low;
  leak.high = slope.high;
  leak.isLeaking = slope.hasInterval && slope.high < -static_cast<double>(allowancePerWeek.pa);
  return leak;
}

}  // namespace snugline::air
