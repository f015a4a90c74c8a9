// SPDX-License-Identifier: Apache-2.0
// Purpose: the reading of a model sheet's JSON into a draft, for this folder's sources only. Format and ranges: MODEL_SHEET.md.
// Errors: the root is no object, or of another format; everything else is a fault of the draft. Thread: any.
#pragma once

#include "core/gear/sheet_draft.h"
#include "core/gear/strict_json.h"

namespace snugline::gear {

[[nodiscard]] Result<ReadDraft> readDraft(const json::Node& root);
// Everything but hash and bytes. Errors: the first fault, with the file's name before its path.
[[nodiscard]] Result<ModelSheet> readSheet(const json::Node& root);

}  // namespace snugline::gear
