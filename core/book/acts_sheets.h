// SPDX-License-Identifier: Apache-2.0
// Purpose: model sheets in the Book, as drafts of facts; adopting a new one is in acts.h. A sheet that is replaced stays in the log and
// goes on judging the checks that began with it; everything else goes by the one that stands for it. Thread: plain functions.
#pragma once

#include <string>

#include "core/book/acts.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kSheetIdTaken = "sheet-id-taken";   // place: the id; another sheet that counts has it
inline constexpr std::string_view kSheetReplaced = "sheet-replaced";  // place: its name; somebody replaced it meanwhile
inline constexpr std::string_view kSizeInUse = "size-in-use";         // place: sizes that helmets have and the new chart lacks
}  // namespace rule

// From now on `sheet` counts where `replaced` did. Nothing where the two mean the same. Errors: notFound, and those rules.
[[nodiscard]] Result<Drafts> replaceSheet(const season::Views&, const std::string& replaced, const gear::ModelSheet& sheet);

}  // namespace snugline::book
