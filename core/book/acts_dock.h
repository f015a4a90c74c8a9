// SPDX-License-Identifier: Apache-2.0
// Purpose: acts on several helmets at once: a maker's notice, a swap on the sideline; and which helmet a tag means. As acts.h: pure, drafts
// of facts, nothing written. Errors: notFound, notAllowed (detail names the rule), outOfRange, inconsistent. Thread: plain functions.
#pragma once

#include <string>
#include <vector>

#include "core/book/acts.h"
#include "core/season/notice.h"

namespace snugline::book {

// Holds every helmet that the notice means, in one act: text 1..kWordsLimit characters, day not after today. A helmet that comes later and
// is meant is held when it is taken in. Refused: a scope that says nothing (kNothingSaid), a sheet that the Book has not.
// Years 1990..2199. A worn helmet is held where it is: still with the athlete.
[[nodiscard]] Result<Drafts> issueNotice(const season::Views&, const NoticeIssued&, Day today);

// Another helmet, or a first one, in one append; where the old one is now is always said. The old one goes on hold for the reason given;
// without one it keeps the holds it has, is held for what its records know against it (season::knownCause), or, where isOldGood says so and
// nothing is against it, goes back to the shelf. An open check is ended as it stands. The last draft begins the first fit in the new one.
struct Swap {
  std::string athlete, unit;      // unit: the new one
  std::string reason{}, what{};   // of the hold of the old one
  bool isOldWithAthlete = false;  // else it is in our hands
  bool isOldGood = false;
};
[[nodiscard]] Result<Drafts> swapHelmet(const season::Views&, const Swap&, Instant now);

// Helmets that a tag may mean, by id. By its key; where nothing has that key, a plain serial also means helmets whose tag says more than
// the serial (case does not count), because that is what people read off and type.
struct TagMeaning {
  std::vector<std::string> units;
  bool isBySerial = false;
};
[[nodiscard]] TagMeaning meaningOf(const season::Views&, const gear::Tag&);

}  // namespace snugline::book
