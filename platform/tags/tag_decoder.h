// SPDX-License-Identifier: Apache-2.0
// Purpose: tags in a grey picture, by zxing-cpp (1.4 of Debian 12, and later ones, whose names differ: all of that stays in the .cpp). Only
// Data Matrix, QR, Code 128 and Code 39 are looked for, and only in the part of the picture that is asked.
// One tag of a picture is read; another one beside it in the next.
// Version 1.4 looks for a Data Matrix along the middle line of a picture only, so that the picture is then looked at again around other
// lines, close enough together that one of them crosses any code that is large enough to be read.
// Text as gear::parseTag takes it: GS1 data begins with its symbology prefix (]d2 ]Q3 ]C1) and keeps its character 29; anything else is
// UTF-8 as the tag says it. Errors: a picture that makes no sense is read as empty; no exception leaves it. Thread: any, one at a time.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace snugline::tags {

// Black 0, white 255, row by row, stride bytes apart.
struct GreyView {
  const std::uint8_t* pixels = nullptr;
  int width = 0, height = 0, stride = 0;
};
// Parts of the picture, 0 to 1.
struct Region {
  double left = 0, top = 0, width = 1, height = 1;
};
struct ReadTag {
  std::string text;           // empty where it is unreadable
  bool isUnreadable = false;  // a tag is there, and its check sum or its layout does not hold; said by version 2 and later only
};

inline constexpr Region kMiddle{0.1, 0.1, 0.8, 0.8};  // ours: of a camera's picture, a little more than its frame shows
// Of pictures that follow one another each may look around a share of the other lines: turn counts the pictures, and kTurns of them in a
// row look around all.
inline constexpr unsigned kTurns = 4;
[[nodiscard]] std::vector<ReadTag> readTags(const GreyView& picture, Region region = {}, std::optional<unsigned> turn = std::nullopt);
// Whether this program's library tells a damaged tag from none.
[[nodiscard]] bool tellsDamaged();

}  // namespace snugline::tags
