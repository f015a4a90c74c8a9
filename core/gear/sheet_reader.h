// SPDX-License-Identifier: Apache-2.0
// Purpose: the reading and checking of a model sheet's JSON, for model_sheet.cpp only. Format and ranges: MODEL_SHEET.md.
// Errors: those of strict_json.h, unknownWord, inconsistent; place is always the path of the offending value. Thread: any.
#pragma once

#include "core/gear/model_sheet.h"
#include "core/gear/strict_json.h"

namespace snugline::gear {

// Everything but hash and bytes.
[[nodiscard]] Result<ModelSheet> readSheet(const json::Node& root);

}  // namespace snugline::gear
