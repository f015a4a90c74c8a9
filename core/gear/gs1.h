// SPDX-License-Identifier: Apache-2.0
// Purpose: the identifiers of GS1 that a helmet tag may carry, for tag.cpp only: element strings, the bracketed form for
// people and Digital Link URIs, all into one map. Source: GS1 General Specifications; GS1 Digital Link Standard, URI Syntax.
// Errors: notATag with the reason as detail. Thread: pure functions.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace snugline::gear::gs1 {

inline constexpr char kFnc1 = '\x1d';  // character 29, as scanners send FNC1 between two elements

using Elements = std::map<std::string, std::string>;  // identifier -> value

// "0107300011000017" + "21ABC"; a character 29 ends a value of variable length and may follow any.
[[nodiscard]] Result<Elements> readElements(std::string_view text);
// "(01)07300011000017(21)ABC"
[[nodiscard]] Result<Elements> readBracketed(std::string_view text);
// After "http://" or "https://": "host/some/path/01/07300011000017/21/ABC?11=240115".
[[nodiscard]] Result<Elements> readLink(std::string_view afterScheme);

// Starts with two to four digits in brackets, and 01, 21, 8003 or 8004 stands in brackets somewhere.
[[nodiscard]] bool isBracketed(std::string_view text);
// The path has a segment 01, 8003 or 8004, or begins with 21.
[[nodiscard]] bool isLink(std::string_view afterScheme);

// What the identifiers must hold together: 21 not without 01, and something that names a helmet or its model.
[[nodiscard]] Result<void> checkTogether(const Elements& elements);

}  // namespace snugline::gear::gs1
