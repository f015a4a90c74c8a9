// SPDX-License-Identifier: Apache-2.0
// Purpose: plain JPEGs out of files and frames, by Qt Gui: upright, at most kLongestSide, nothing of the source but its pixels.
// Range: files up to kFileMost bytes and kSourceSideMost pixels a side; jpeg, png, bmp, and webp or heic where this Qt reads them.
// Errors and thread: as photo_port.h.
#pragma once

#include "core/ports/photo_port.h"

namespace snugline::photos {

inline constexpr int kLongestSide = 1600;                      // pixels; ours: a hair crack still shows, the file stays near 300 kB
inline constexpr std::int64_t kFileMost = 64LL * 1024 * 1024;  // ours
inline constexpr int kSourceSideMost = 20'000;                 // ours: above any camera of a phone

class PlainPhotoMaker final : public ports::PhotoMaker {
 public:
  [[nodiscard]] Result<std::string> fromFile(const std::string& path) override;
  [[nodiscard]] Result<std::string> fromPicture(const ports::ColourPicture& picture) override;
};

}  // namespace snugline::photos
