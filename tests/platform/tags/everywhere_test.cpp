// SPDX-License-Identifier: Apache-2.0
// A hand holds a tag anywhere in the frame: labels of our own (flat), and square codes, on a grid over the part that is looked at.
#include SNUGLINE_CATCH_HEADER

#include "platform/tags/label_sheet.h"
#include "platform/tags/tag_decoder.h"

using namespace snugline;

namespace {

constexpr int kWide = 1280, kHigh = 720, kGround = 150, kDark = 40, kLight = 220, kQuiet = 2;

std::vector<std::uint8_t> pictureOf(const tags::MatrixCode& code, int module, int left, int top) {
  std::vector<std::uint8_t> grey(static_cast<std::size_t>(kWide) * kHigh, kGround);
  for (int y = -kQuiet * module; y < (code.height + kQuiet) * module; ++y) {
    for (int x = -kQuiet * module; x < (code.width + kQuiet) * module; ++x) {
      const bool isInside = x >= 0 && y >= 0 && x < code.width * module && y < code.height * module;
      const bool isDark = isInside && code.dark[static_cast<std::size_t>(y / module * code.width + x / module)];
      grey[static_cast<std::size_t>((top + y) * kWide + left + x)] = isDark ? kDark : kLight;
    }
  }
  return grey;
}

bool isReadAs(const std::vector<tags::ReadTag>& found, const std::string& text) {
  return found.size() == 1 && !found.front().isUnreadable && found.front().text == text;
}

}  // namespace

TEST_CASE("A label is read wherever it stands in the part that is looked at, and by pictures that take turns after at most four") {
  struct Shape {
    std::string text;
    int module;
  };
  for (const Shape& shape :
       {Shape{"K7QD-00042-T", 9}, Shape{"K7QD-00042-T", 7}, Shape{"H-0231", 6}, Shape{"]d2-like text of a longer kind", 5}}) {
    const tags::MatrixCode code = tags::matrixOf(shape.text);
    const int edge = (kQuiet + 1) * shape.module;
    int missed = 0, missedByTurns = 0, all = 0;
    for (int top = kHigh / 10 + edge; top + code.height * shape.module + edge < kHigh * 9 / 10; top += 61) {
      for (int left = kWide / 10 + edge; left + code.width * shape.module + edge < kWide * 9 / 10; left += 157) {
        const auto picture = pictureOf(code, shape.module, left, top);
        const tags::GreyView view{picture.data(), kWide, kHigh, kWide};
        ++all;
        missed += isReadAs(tags::readTags(view, tags::kMiddle), shape.text) ? 0 : 1;
        bool isRead = false;
        for (unsigned turn = 7; turn < 7 + tags::kTurns && !isRead; ++turn)
          isRead = isReadAs(tags::readTags(view, tags::kMiddle, turn), shape.text);
        missedByTurns += isRead ? 0 : 1;
      }
    }
    INFO(shape.text << " " << code.width << "x" << code.height << " of " << shape.module << " pixels, " << all << " places");
    CHECK(all > 15);
    CHECK(missed == 0);
    CHECK(missedByTurns == 0);
  }
}
