// SPDX-License-Identifier: Apache-2.0
#include "core/gear/serial_range.h"

#include <algorithm>
#include <string>

namespace snugline::gear {

namespace {

bool isFigure(char c) { return c >= '0' && c <= '9'; }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// The run at the front, of digits or of anything else, taken off.
std::string_view takeRun(std::string_view& rest) {
  std::size_t end = 0;
  while (end < rest.size() && isFigure(rest[end]) == isFigure(rest.front())) ++end;
  const std::string_view run = rest.substr(0, end);
  rest.remove_prefix(end);
  return run;
}

int compareNumbers(std::string_view a, std::string_view b) {
  a.remove_prefix(std::min(a.find_first_not_of('0'), a.size()));
  b.remove_prefix(std::min(b.find_first_not_of('0'), b.size()));
  if (a.size() != b.size()) return a.size() < b.size() ? -1 : 1;
  return a.compare(b);
}

}  // namespace

std::optional<int> compareSerials(std::string_view a, std::string_view b) {
  int order = 0;
  while (!a.empty() && !b.empty()) {
    if (isFigure(a.front()) != isFigure(b.front())) return std::nullopt;
    const bool isNumber = isFigure(a.front());
    const std::string_view runA = takeRun(a);
    const std::string_view runB = takeRun(b);
    if (isNumber) {
      if (order == 0) order = compareNumbers(runA, runB);
    } else if (!std::equal(runA.begin(), runA.end(), runB.begin(), runB.end(), [](char x, char y) { return lower(x) == lower(y); })) {
      return std::nullopt;
    }
  }
  if (!a.empty() || !b.empty()) return std::nullopt;
  return order;
}

bool isWithinSerials(std::string_view serial, std::string_view from, std::string_view to) {
  if (!from.empty()) {
    const auto order = compareSerials(serial, from);
    if (!order || *order < 0) return false;
  }
  if (to.empty()) return true;
  const auto order = compareSerials(serial, to);
  return order && *order <= 0;
}

Result<void> checkSerialRange(std::string_view from, std::string_view to) {
  if (from.empty() || to.empty()) return {};
  const auto order = compareSerials(from, to);
  if (!order) return fail(ErrorCode::inconsistent, "serials", std::string(from) + " and " + std::string(to) + " are not numbered alike");
  if (*order > 0) return fail(ErrorCode::inconsistent, "serials", std::string(to) + " comes before " + std::string(from));
  return {};
}

}  // namespace snugline::gear
