// SPDX-License-Identifier: Apache-2.0
// Purpose: the log read in pieces for a page: one piece after another on the Book thread, others' jobs between them, until all is read or
// the page is left. Answer: what is read into, with step(book, facts) giving true when done. Thread: GUI thread; the answer is the Book
// thread's until `next` hears that it is done.
#pragma once

#include <algorithm>
#include <cstdint>
#include <functional>
#include <memory>
#include <utility>

#include "desk.h"

namespace snugline::models {

// A piece takes some hundredths of a second: what waits behind it hardly notices.
inline constexpr std::size_t kFactsInStep = 4096;

template <typename Answer>
struct LogReading {
  Answer answer;
  std::uint64_t all = 0;  // facts in the log when it began
  std::uint64_t done = 0;
  [[nodiscard]] double share() const {
    return std::min(1.0, static_cast<double>(done) / static_cast<double>(std::max<std::uint64_t>(all, 1)));
  }
};

// Reads one piece; next hears whether it was the last. Whoever wants more calls again.
template <typename Answer>
void readPiece(Desk& desk, QObject* context, const std::shared_ptr<LogReading<Answer>>& reading,
               std::function<void(const Result<bool>& isDone)> next) {
  desk.read(
      [reading](book::Book& book) -> Result<bool> {
        if (reading->all == 0) {
          const auto info = book.info();
          if (!info) return tl::unexpected<Error>(info.error());
          reading->all = info->facts;
        }
        reading->done += kFactsInStep;
        return reading->answer.step(book, kFactsInStep);
      },
      context, std::move(next));
}

}  // namespace snugline::models
