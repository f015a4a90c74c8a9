// SPDX-License-Identifier: Apache-2.0
// Purpose: which facts rest on an earlier one, so that the earlier one cannot be taken back while they stand. Ours, and one-sided: where
// taking back would leave a helmet with nobody and with somebody at once, a check without its beginning, or a hold gone under a helmet
// that went on, it is refused; what only makes the board ask once more is not. Thread: plain functions.
#pragma once

#include <string>
#include <string_view>

#include "core/book/fact.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kRestsOnIt = "rests-on-it";  // place: kind of the later fact
}

// later comes after earlier, and both concern one entity at least. Whatever names the id of the earlier one rests on it.
[[nodiscard]] Result<bool> restsOn(const Fact& later, const Fact& earlier);

}  // namespace snugline::book
