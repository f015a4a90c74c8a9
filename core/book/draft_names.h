// SPDX-License-Identifier: Apache-2.0
// Purpose: ids of facts that do not exist yet. A draft may name the k-th draft of its call as "#k". Errors: notFound. Thread: plain
// functions.
#pragma once

#include <string>
#include <vector>

#include "core/book/fact.h"

namespace snugline::book {

// Puts real ids in place of "#k" wherever the fact names another; ids holds those of the drafts before it.
[[nodiscard]] Result<void> resolveNames(std::string& about, Body& body, const std::vector<std::string>& ids);

}  // namespace snugline::book
