// SPDX-License-Identifier: Apache-2.0
// Purpose: parts of the acts on helmets that several sources of acts need; nobody else. Thread: plain functions.
#pragma once

#include <limits>

#include "core/book/acts.h"
#include "core/season/standing.h"

namespace snugline::book {

inline constexpr std::string_view kReasonLabel = "label", kReasonNotice = "notice", kReasonBroken = "broken";
// Stamp of what an act is about to write: after whatever is written already.
inline const season::Stamp kLatest{{std::numeric_limits<std::int64_t>::max(), 0}, {}, {}, std::numeric_limits<std::int64_t>::max()};

[[nodiscard]] bool isAway(const season::UnitRecord& unit);    // in repair, sent out, retired, lost
[[nodiscard]] bool isAtWork(const season::UnitRecord& unit);  // in repair or sent out: its return asks what was done
[[nodiscard]] Result<void> checkLabel(const gear::Label& label);
[[nodiscard]] Result<void> checkReturn(const season::ReturnRecord& returned);
// The record as it would stand once that was written.
[[nodiscard]] season::UnitRecord asReturned(const season::UnitRecord& unit, const season::ReturnRecord& returned);
void addLabel(season::UnitRecord& unit, const std::optional<gear::Label>& label, bool isUnreadable);
[[nodiscard]] bool endsWithReturn(const season::Views& views, const season::UnitRecord& back, const season::HoldRecord& hold, Day today);
void addBack(Drafts& drafts, const season::Views& views, const season::UnitRecord& unit, const season::ReturnRecord& returned,
             const std::string& where, const std::string& reason, Day today);
// A crack's hold ends by return from who may mend it or by retirement only.
[[nodiscard]] bool isCrackHold(const season::HoldRecord& hold);
// What a standing has against a helmet, as the rule that refuses.
[[nodiscard]] tl::unexpected<Error> refusedBy(const season::UnitRecord& unit, const season::WhyNot& why);
// Whoever hands it in has nothing more to be asked about it: what was found so far is kept as the end of the check. acts_season.cpp.
void endOpenChecks(const season::Views& views, const season::UnitRecord& unit, Instant now, Drafts& drafts);
// Said to be broken and not looked at since: on hold before anybody else gets it. acts_season.cpp.
void holdIfBroken(const season::Views& views, const season::UnitRecord& unit, Drafts& drafts);

}  // namespace snugline::book
