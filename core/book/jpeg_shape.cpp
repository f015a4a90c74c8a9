// SPDX-License-Identifier: Apache-2.0
#include "core/book/jpeg_shape.h"

#include <cstddef>
#include <string>

#include "core/book/season_facts.h"

namespace snugline::book {

namespace {

// Second bytes of markers: ITU-T T.81, table B.1.
constexpr unsigned kSof0 = 0xC0, kSof2 = 0xC2, kDht = 0xC4, kRst0 = 0xD0, kRst7 = 0xD7, kSoi = 0xD8, kEoi = 0xD9, kSos = 0xDA, kDqt = 0xDB,
                   kDri = 0xDD, kApp0 = 0xE0, kApp14 = 0xEE, kApp15 = 0xEF, kCom = 0xFE;
constexpr std::string_view kJfif{"JFIF\0", 5};
constexpr std::size_t kJfifBytes = 14;  // without the length itself: ITU-T T.871, 10.1, no thumbnail
constexpr std::string_view kAdobe{"Adobe", 5};
constexpr std::size_t kAdobeBytes = 12;  // ITU-T T.872, 6.5.3
constexpr std::size_t kFrameHead = 6;    // precision, height, width, number of components

struct Walk {
  std::string_view bytes;
  std::size_t at = 0;
  JpegShape shape{};
  bool isJfifSeen = false, isScanSeen = false;

  [[nodiscard]] unsigned byte(std::size_t place) const { return static_cast<unsigned char>(bytes[place]); }
  [[nodiscard]] unsigned pair(std::size_t place) const { return byte(place) << 8 | byte(place + 1); }
  [[nodiscard]] tl::unexpected<Error> refuse(std::string_view rule) const {
    return fail(ErrorCode::notAllowed, "byte " + std::to_string(at), std::string(rule));
  }

  // The second byte of the next marker; any number of fill bytes may stand before it (B.1.1.2).
  [[nodiscard]] Result<unsigned> marker() {
    if (at >= bytes.size()) return refuse(rule::kCutShort);
    if (byte(at) != 0xFF) return refuse(rule::kNotJpeg);
    while (at < bytes.size() && byte(at) == 0xFF) ++at;
    if (at >= bytes.size()) return refuse(rule::kCutShort);
    return byte(at++);
  }
  [[nodiscard]] Result<std::string_view> segment() {
    if (bytes.size() - at < 2) return refuse(rule::kCutShort);
    const std::size_t length = pair(at);
    if (length < 2) return refuse(rule::kNotJpeg);
    if (bytes.size() - at < length) return refuse(rule::kCutShort);
    const std::string_view body = bytes.substr(at + 2, length - 2);
    at += length;
    return body;
  }
  // Over the coded data of a scan: a zero after 0xFF is stuffed, RSTn belong to it, any other marker ends it (B.1.1.5).
  void passScan() {
    while (at + 1 < bytes.size()) {
      if (byte(at) != 0xFF) {
        ++at;
        continue;
      }
      const unsigned next = byte(at + 1);
      if (next == 0xFF) {
        ++at;
      } else if (next == 0 || (next >= kRst0 && next <= kRst7)) {
        at += 2;
      } else {
        return;
      }
    }
    at = bytes.size();
  }

  [[nodiscard]] Result<void> frame(std::string_view body) {
    if (shape.width != 0) return refuse(rule::kNotJpeg);  // one picture a file
    if (body.size() < kFrameHead) return refuse(rule::kCutShort);
    const auto number = [&](std::size_t place) {
      return static_cast<int>(static_cast<unsigned char>(body[place])) << 8 | static_cast<int>(static_cast<unsigned char>(body[place + 1]));
    };
    shape = {number(3), number(1)};
    const auto parts = static_cast<std::size_t>(static_cast<unsigned char>(body[5]));
    if (body.size() != kFrameHead + 3 * parts || parts == 0) return refuse(rule::kNotJpeg);
    if (shape.width < 1 || shape.height < 1 || shape.width > kPhotoSideMost || shape.height > kPhotoSideMost) {
      return fail(ErrorCode::outOfRange, "pixels",
                  std::to_string(shape.width) + "x" + std::to_string(shape.height) + ", 1, " + std::to_string(kPhotoSideMost));
    }
    return {};
  }

  [[nodiscard]] Result<bool> step() {  // true: at the end
    const auto sort = marker();
    if (!sort) return tl::unexpected<Error>(sort.error());
    if (*sort == kEoi) {
      if (shape.width == 0 || !isScanSeen) return refuse(rule::kCutShort);
      if (at != bytes.size()) return refuse(rule::kHasExtras);
      return true;
    }
    const bool isFrame = *sort >= kSof0 && *sort <= kSof2;
    const bool isExtra = (*sort > kApp0 && *sort < kApp14) || *sort == kApp15 || *sort == kCom;
    const bool isKnown = isFrame || *sort == kDht || *sort == kDqt || *sort == kDri || *sort == kSos || *sort == kApp0 || *sort == kApp14;
    if (isExtra) return refuse(rule::kHasExtras);
    if (!isKnown) return refuse(rule::kNotJpeg);
    const auto body = segment();
    if (!body) return tl::unexpected<Error>(body.error());
    if (*sort == kApp0) {
      if (isJfifSeen || body->size() != kJfifBytes || body->substr(0, kJfif.size()) != kJfif) return refuse(rule::kHasExtras);
      if ((*body)[12] != 0 || (*body)[13] != 0) return refuse(rule::kHasExtras);
      isJfifSeen = true;
    }
    if (*sort == kApp14 && (body->size() != kAdobeBytes || body->substr(0, kAdobe.size()) != kAdobe)) return refuse(rule::kHasExtras);
    if (isFrame) {
      if (auto done = frame(*body); !done) return tl::unexpected<Error>(done.error());
    }
    if (*sort == kSos) {
      if (shape.width == 0) return refuse(rule::kNotJpeg);
      isScanSeen = true;
      passScan();
    }
    return false;
  }
};

}  // namespace

Result<JpegShape> examineJpeg(std::string_view bytes) {
  Walk walk{bytes};
  if (bytes.size() < 4 || walk.byte(0) != 0xFF || walk.byte(1) != kSoi) return walk.refuse(rule::kNotJpeg);
  walk.at = 2;
  while (true) {
    const auto done = walk.step();
    if (!done) return tl::unexpected<Error>(done.error());
    if (*done) return walk.shape;
  }
}

}  // namespace snugline::book
