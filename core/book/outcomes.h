// SPDX-License-Identifier: Apache-2.0
// Purpose: what came of what an athlete said: which check saw the place, what it found and what was done. For the Say door and for the
// athlete's own phone; words are made at the screen. What was said about feeling unwell takes no part. Thread: plain values.
#pragma once

#include <string>
#include <vector>

#include "core/book/fact.h"
#include "core/season/record.h"

namespace snugline::book {

struct WordOutcome {
  std::string said;   // fact
  std::string check;  // that saw it; empty where it was closed without one
  fit::Mark where = fit::Mark::brow;
  fit::Side side = fit::Side::both;
  fit::Feels feels = fit::Feels::tight;
  Instant saidAt, seenAt;
  fit::Finding found = fit::Finding::unseen;  // at its mark, as the check ended
  fit::Verdict verdict = fit::Verdict::unfinished;
  bool isOtherHelmet = false;  // another helmet is worn now than when it was said
  friend bool operator==(const WordOutcome&, const WordOutcome&) = default;
};
// Of every answered word with a place, in the order in which they were said.
[[nodiscard]] std::vector<WordOutcome> outcomesOf(const season::AthleteRecord& athlete);

// A change that a check made, repeats taken together: pumps added up, the last thickness.
struct Done {
  fit::Adjusted change;
  int direction = 0;  // pad: +1 thicker, -1 thinner; straps: +1 longer, -1 shorter; 0 not known
  friend bool operator==(const Done&, const Done&) = default;
};
// history: the facts about one check, in order, corrected ones included. What was taken back is not done; air put in and let out again
// as often is left out.
[[nodiscard]] std::vector<Done> doneIn(const std::vector<Fact>& history);

}  // namespace snugline::book
