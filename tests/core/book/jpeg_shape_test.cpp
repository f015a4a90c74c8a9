// SPDX-License-Identifier: Apache-2.0
// Which files may be kept: markers as in ITU-T T.81 (table B.1), JFIF as in ITU-T T.871, Exif as in CIPA DC-008.
#include "core/book/jpeg_shape.h"

#include <random>

#include SNUGLINE_CATCH_HEADER
#include "photo_bytes.h"

using namespace snugline;
using namespace snugline::test;

namespace {
std::string ruleOf(std::string_view bytes) {
  const auto shape = book::examineJpeg(bytes);
  return shape ? "kept" : shape.error().detail;
}
}  // namespace

TEST_CASE("A plain JPEG is taken with its size") {
  const auto shape = book::examineJpeg(plainJpeg(1600, 1200));
  REQUIRE(shape);
  CHECK(*shape == book::JpegShape{1600, 1200});
  CHECK(book::examineJpeg(plainJpeg(1, 16384)).has_value());
  CHECK(book::examineJpeg(plainJpeg(8, 8, jpegSegment(0xEE, std::string_view("Adobe\0\x64\0\0\0\0\1", 12)))).has_value());
  CHECK(book::examineJpeg(plainJpeg(8, 8, "\xFF\xFF" + jpegSegment(0xDD, std::string_view("\0\4", 2)))).has_value());
}

TEST_CASE("A picture with place, camera, words or a small copy in it is refused") {
  CHECK(ruleOf(plainJpeg(8, 8, exifWithPlace())) == book::rule::kHasExtras);
  for (unsigned sort = 0xE1; sort <= 0xEF; ++sort) {
    if (sort == 0xEE) continue;
    INFO(sort);
    CHECK(ruleOf(plainJpeg(8, 8, jpegSegment(static_cast<unsigned char>(sort), "anything"))) == book::rule::kHasExtras);
  }
  CHECK(ruleOf(plainJpeg(8, 8, jpegSegment(0xFE, "behind the gym"))) == book::rule::kHasExtras);
  CHECK(ruleOf(plainJpeg(8, 8, jpegSegment(0xE0, std::string_view("JFXX\0\x10small copy here", 20)))) == book::rule::kHasExtras);
  CHECK(ruleOf(plainJpeg(8, 8, jfifHead())) == book::rule::kHasExtras);
  CHECK(ruleOf(plainJpeg(8, 8, jpegSegment(0xEE, "Adobe and more words"))) == book::rule::kHasExtras);
  CHECK(ruleOf(plainJpeg() + "more") == book::rule::kHasExtras);
  CHECK(ruleOf(plainJpeg() + plainJpeg()) == book::rule::kHasExtras);
  std::string thumb = plainJpeg();
  thumb[18] = 1;  // width of a thumbnail in the JFIF head
  CHECK(ruleOf(thumb) == book::rule::kHasExtras);
  // After the picture, before the end, is no better place.
  std::string late = plainJpeg();
  late.insert(late.size() - 2, exifWithPlace());
  CHECK(ruleOf(late) == book::rule::kHasExtras);
}

TEST_CASE("What is no JPEG, or of a sort that is not read, is refused") {
  CHECK(ruleOf("") == book::rule::kNotJpeg);
  CHECK(ruleOf("\x89PNG\r\n\x1a\n") == book::rule::kNotJpeg);
  CHECK(ruleOf(std::string(4000, '\0')) == book::rule::kNotJpeg);
  CHECK(ruleOf(plainJpeg(8, 8, jpegSegment(0xC9, "arithmetic"))) == book::rule::kNotJpeg);
  CHECK(ruleOf(plainJpeg(8, 8, jpegSegment(0xC8, "reserved"))) == book::rule::kNotJpeg);
  CHECK(ruleOf(plainJpeg(8, 8, std::string("\xFF\xD8", 2))) == book::rule::kNotJpeg);
  CHECK(ruleOf(plainJpeg(8, 8, "loose bytes")) == book::rule::kNotJpeg);
  CHECK(ruleOf(plainJpeg(8, 8, std::string("\xFF\xDB\0\1", 4))) == book::rule::kNotJpeg);
  CHECK(book::examineJpeg(plainJpeg(0, 8)).error().code == ErrorCode::outOfRange);
  CHECK(book::examineJpeg(plainJpeg(8, 0)).error().code == ErrorCode::outOfRange);
  CHECK(book::examineJpeg(plainJpeg(60000, 60000)).error().code == ErrorCode::outOfRange);
  CHECK(ruleOf(std::string("\xFF\xD8\xFF\xD9", 4)) == book::rule::kCutShort);
}

TEST_CASE("A picture cut short anywhere is refused") {
  const std::string whole = plainJpeg();
  for (std::size_t size = 0; size < whole.size(); ++size) {
    INFO(size);
    CHECK_FALSE(book::examineJpeg(whole.substr(0, size)));
  }
}

TEST_CASE("Bytes by chance are refused or walked to their end, and what is kept holds no mark of a camera") {
  std::mt19937 dice(2026);
  const std::string whole = plainJpeg(640, 480, exifWithPlace());
  int kept = 0;
  for (int i = 0; i < 20'000; ++i) {
    std::string bytes = i % 2 == 0 ? plainJpeg() : whole;
    for (int change = 0; change < 1 + i % 4; ++change) bytes[dice() % bytes.size()] = static_cast<char>(dice());
    if (i % 3 == 0) bytes.resize(dice() % (bytes.size() + 1));
    if (book::examineJpeg(bytes)) ++kept;
  }
  CHECK(kept > 0);  // changes of the coded data are no business of the walk
  CHECK(kept < 20'000);
}
