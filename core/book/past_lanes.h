// SPDX-License-Identifier: Apache-2.0
// Purpose: the lanes as they stood at past times, from the log, in steps, so that answers can come between. What was taken back since is
// left out: it is what is known now of then. A fact belongs to the time that its device wrote; of a device whose clock was off it may be
// counted in another week. Memory: the facts of the times asked for, and one set of views.
// Thread: a plain value; step() where the Book is.
#pragma once

#include <vector>

#include "core/book/book.h"
#include "core/book/fold.h"
#include "core/season/lanes.h"

namespace snugline::book {

class PastLanes {
 public:
  explicit PastLanes(std::vector<Instant> times);  // ascending
  // Reads at most so many facts more; true when all was read and counted. Errors: those of Book::read.
  [[nodiscard]] Result<bool> step(Book& book, std::size_t facts);
  [[nodiscard]] const std::vector<season::LaneCount>& counts() const { return m_counts; }  // whole once step gave true

 private:
  void take(const Fact& fact);
  void count();

  std::vector<Instant> m_times;
  Book::Cursor m_cursor;
  Folded m_folded;
  std::vector<std::vector<Fact>> m_later;  // by time: facts between the one before and it, in order; none for the first
  std::vector<season::LaneCount> m_counts;
};

}  // namespace snugline::book
