// SPDX-License-Identifier: Apache-2.0
// Purpose: walks the segments of a JPEG (ITU-T T.81, JFIF as ITU-T T.871) and says its size, or why it may not be kept: only what a decoder
// needs to show the picture may stand in it (BOOK_FORMAT.md, Photos). Nothing is decoded. Range: sides 1..kPhotoSideMost pixels.
// Errors: notAllowed with detail one of the rules below, place "byte N". Thread: plain function.
#pragma once

#include <string_view>

#include "core/quantity/result.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kNotJpeg = "photo-not-jpeg";    // does not begin as one, or is of a sort that is not read
inline constexpr std::string_view kCutShort = "photo-cut-short";  // ends in the middle, or lacks its size or its picture
inline constexpr std::string_view kHasExtras = "photo-extras";    // place, camera, words, a small copy, or bytes after the end
}  // namespace rule

struct JpegShape {
  int width = 0, height = 0;  // pixels
  friend bool operator==(const JpegShape&, const JpegShape&) = default;
};
[[nodiscard]] Result<JpegShape> examineJpeg(std::string_view bytes);

}  // namespace snugline::book
