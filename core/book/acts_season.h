// SPDX-License-Identifier: Apache-2.0
// Purpose: acts of the turn of a season: helmets handed in, the season closed, the next one opened. As acts.h: pure, drafts of facts,
// nothing written. Errors: notFound, notAllowed (detail names the rule), outOfRange, inconsistent. Thread: plain functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/book/acts.h"
#include "core/season/turn.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kSeasonOpen = "season-open";    // place: the season that is not closed yet
inline constexpr std::string_view kSeasonTaken = "season-taken";  // place: a season that is in the Book already
}  // namespace rule

inline constexpr std::size_t kMissingMost = 2000;  // helmets that one closing can name: a fact has at most 64 KiB
inline constexpr int kSeasonDaysMost = 366;        // ours: a longer one is a slip of the year

// One helmet handed in: whoever had it has it no longer, all in one act, and the unit-collected is its last fact. A check that was open in
// it ends as it stands, a hold that said "with the athlete" is in our hands, and what was said to be broken is held. Lost ones come to
// light. Drafts nothing when it is in already: a tag seen twice counts once. returned: it stood as in repair or sent out and is back
// (comeBack in acts.h). Refused: away and not said to be back (kReturnUnsaid), retired (kUnitRetired).
struct HandIn {
  std::string unit;
  std::string where{};  // the shelf it goes to, 0..80 characters
  std::optional<season::ReturnRecord> returned{};
};
[[nodiscard]] Result<Drafts> handIn(const season::Views&, const HandIn&, Instant now);
// A helmet that the Book does not know: taken in by its tag alone, on hold until its model and size are said, and handed in.
[[nodiscard]] Result<Drafts> handInNew(const season::Views&, const gear::Tag&, Day today);

// Names every helmet that was to be handed in and is not. Refused: closed already (kAlreadyClosed).
[[nodiscard]] Result<Drafts> closeSeason(const season::Views&, Day today);
// The fact to take back so that the season runs again. Refused: it runs (kSeasonOpen).
[[nodiscard]] Result<std::string> closingFact(const season::Views&);

// Opens the next season: its name and days, and who leaves the roster, in one act. Refused: the present one is not closed (kSeasonOpen), a
// name that is taken (kSeasonTaken), a last day not after the first, a first day not after the season before, more than kSeasonDaysMost.
struct NextSeason {
  std::string name;
  std::optional<Day> start, end;
  std::vector<std::string> leaving;  // athletes
};
[[nodiscard]] Result<Drafts> openSeason(const season::Views&, const NextSeason&);

}  // namespace snugline::book
