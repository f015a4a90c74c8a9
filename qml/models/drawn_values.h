// SPDX-License-Identifier: Apache-2.0
// Purpose: marks and points as the codes that the drawn strips take ("snug", "said-over", "sound"). Thread: plain functions.
#pragma once

#include <array>

#include <QString>
#include <QStringList>

#include "core/fit/guide.h"
#include "core/gear/points.h"

namespace snugline::models {

[[nodiscard]] inline QString codeWord(std::string_view code) { return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size())); }

[[nodiscard]] inline QString saidCode(fit::Feels feels) {
  switch (feels) {
    case fit::Feels::tight:
      return QStringLiteral("said-over");
    case fit::Feels::loose:
      return QStringLiteral("said-under");
    case fit::Feels::broke:
      return QStringLiteral("said-fault");
  }
  return {};
}

// A word of the athlete that nobody has seen to yet stands before what was found.
[[nodiscard]] inline QStringList stripCodes(const std::array<fit::Finding, fit::kMarkCount>& strip, fit::MarkSet words,
                                            const std::array<fit::Feels, fit::kMarkCount>& feels) {
  QStringList codes;
  for (const fit::Mark mark : fit::kMarks) {
    const auto i = static_cast<std::size_t>(mark);
    codes << (words.has(mark) ? saidCode(feels[i]) : codeWord(fit::code(strip[i])));
  }
  return codes;
}

[[nodiscard]] inline QString pointCode(gear::PointState state) {
  switch (state) {
    case gear::PointState::unseen:
      return QStringLiteral("unseen");
    case gear::PointState::sound:
      return QStringLiteral("sound");
    case gear::PointState::fault:
      return QStringLiteral("fault");
  }
  return {};
}

[[nodiscard]] inline QStringList pointCodes(const std::array<gear::PointState, gear::kPointCount>& points) {
  QStringList codes;
  for (const gear::PointState state : points) codes << pointCode(state);
  return codes;
}

}  // namespace snugline::models
