// SPDX-License-Identifier: Apache-2.0
// Purpose: a text as a square code (QR, ISO/IEC 18004), module by module, for the screen to draw. Capital letters, digits and the colon
// go in its denser alphabet. Errors: an empty answer where the text does not fit. Thread: plain function.
#pragma once

#include <string>
#include <vector>

namespace snugline::sharing {

// Rows from the top, '1' dark; without the quiet margin of four modules, which the screen leaves free.
[[nodiscard]] std::vector<std::string> squareCode(const std::string& text);

}  // namespace snugline::sharing
