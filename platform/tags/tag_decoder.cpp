// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/tag_decoder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <exception>
#include <optional>
#include <utility>

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>
#include <ZXing/ZXVersion.h>
#if __has_include(<ZXing/ReaderOptions.h>)
#include <ZXing/ReaderOptions.h>
#define SNUGLINE_ZXING_OPTIONS ZXing::ReaderOptions
#else
#define SNUGLINE_ZXING_OPTIONS ZXing::DecodeHints
#endif

namespace snugline::tags {

namespace {

// One tag a picture: version 1.4 as Debian builds it ends the program when it meets the same bars twice, in two sizes of one picture (an
// assertion in its comparison of results). With one there is nothing to compare, and the next picture shows the next tag.
SNUGLINE_ZXING_OPTIONS forReading() {
  using ZXing::BarcodeFormat;
  SNUGLINE_ZXING_OPTIONS options;
  options.setFormats(BarcodeFormat::DataMatrix | BarcodeFormat::QRCode | BarcodeFormat::Code128 | BarcodeFormat::Code39);
  options.setMaxNumberOfSymbols(1);
  options.setTryHarder(true);
  options.setTryRotate(true);
  options.setTryDownscale(false);  // makes the smaller pictures whether they are needed or not: a quarter of the time
  return options;
}

SNUGLINE_ZXING_OPTIONS forMatrixOnly() {
  SNUGLINE_ZXING_OPTIONS options;
  options.setFormats(ZXing::BarcodeFormat::DataMatrix);
  options.setMaxNumberOfSymbols(1);
  options.setTryHarder(true);
  options.setTryRotate(true);
  options.setTryDownscale(false);
  return options;
}

// Is there a tag that cannot be read? Asked only where none was, and where the library answers: 1.4 takes the option and says nothing.
constexpr bool kTellsDamaged = ZXING_VERSION_MAJOR >= 2;
SNUGLINE_ZXING_OPTIONS forDamaged() {
  using ZXing::BarcodeFormat;
  SNUGLINE_ZXING_OPTIONS options;
  options.setFormats(BarcodeFormat::DataMatrix | BarcodeFormat::QRCode);
  options.setReturnErrors(true);
  options.setMaxNumberOfSymbols(1);
  options.setTryDownscale(true);
  return options;
}

ReadTag tagOf(const ZXing::Result& found) {
  if (!found.isValid()) return {{}, true};
  if (found.contentType() != ZXing::ContentType::GS1) return {found.text(), false};
  const ZXing::ByteArray& bytes = found.bytes();
  return {found.symbologyIdentifier() + std::string(bytes.begin(), bytes.end()), false};
}

// Faint print in bad light: what lies between the darkest and the brightest few pixels is spread out, where that is little.
constexpr int kFaintRange = 130, kLeastRange = 12;  // ours, of 255 steps
constexpr int kShareLeftOut = 400;                  // one pixel in so many at either end may be a speck

std::optional<std::pair<int, int>> faintRange(const ZXing::ImageView& view) {
  std::array<int, 256> counts{};
  int all = 0;
  for (int y = 0; y < view.height(); y += 3) {
    for (int x = 0; x < view.width(); x += 3) {
      ++counts[*view.data(x, y)];
      ++all;
    }
  }
  const auto end = [&](int from, int step) {
    int value = from;
    for (int seen = counts[static_cast<std::size_t>(value)]; seen <= all / kShareLeftOut && value + step >= 0 && value + step <= 255;) {
      value += step;
      seen += counts[static_cast<std::size_t>(value)];
    }
    return value;
  };
  const int dark = end(0, 1), light = end(255, -1);
  if (light - dark >= kFaintRange || light - dark < kLeastRange) return std::nullopt;
  return std::pair(dark, light);
}

std::vector<std::uint8_t> spreadOut(const ZXing::ImageView& view, std::pair<int, int> range) {
  std::vector<std::uint8_t> pixels;
  pixels.reserve(static_cast<std::size_t>(view.width()) * static_cast<std::size_t>(view.height()));
  for (int y = 0; y < view.height(); ++y) {
    for (int x = 0; x < view.width(); ++x) {
      const int value = (*view.data(x, y) - range.first) * 255 / (range.second - range.first);
      pixels.push_back(static_cast<std::uint8_t>(std::clamp(value, 0, 255)));
    }
  }
  return pixels;
}

void readInto(std::vector<ReadTag>& tags, const ZXing::ImageView& view, const SNUGLINE_ZXING_OPTIONS& options) {
  for (const ZXing::Result& found : ZXing::ReadBarcodes(view, options)) tags.push_back(tagOf(found));
}

// A third as wide and high, each pixel the mean of nine: large codes that are not sharp. Ours, as the library does it by itself.
constexpr int kSmaller = 3, kSmallerFrom = 500;

std::vector<std::uint8_t> smaller(const ZXing::ImageView& view) {
  const int width = view.width() / kSmaller, height = view.height() / kSmaller;
  std::vector<std::uint8_t> pixels;
  pixels.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width; ++x) {
      int sum = 0;
      for (int row = 0; row < kSmaller; ++row) {
        const std::uint8_t* from = view.data(x * kSmaller, y * kSmaller + row);
        for (int column = 0; column < kSmaller; ++column) sum += from[column];
      }
      pixels.push_back(static_cast<std::uint8_t>(sum / (kSmaller * kSmaller)));
    }
  }
  return pixels;
}

// Lines so many pixels apart: a code of eight modules, the flattest there is, is crossed where a module is five pixels.
constexpr int kBetweenLines = 40;
constexpr int kLowestWindow = 24;  // nothing lower holds a code and its quiet zone

// Around each line as much of the picture as lies evenly above and below it.
void readAroundLines(std::vector<ReadTag>& tags, const ZXing::ImageView& view, std::optional<unsigned> turn) {
  const int middle = view.height() / 2;
  unsigned n = 0;
  for (int away = kBetweenLines; away < middle; away += kBetweenLines) {
    for (const int line : {middle - away, middle + away}) {
      if (turn && n++ % kTurns != *turn % kTurns) continue;
      const int half = std::min(line, view.height() - line);
      if (2 * half < kLowestWindow) continue;
      readInto(tags, ZXing::ImageView(view.data(0, line - half), view.width(), 2 * half, ZXing::ImageFormat::Lum, view.rowStride()),
               forMatrixOnly());
      if (!tags.empty()) return;
    }
  }
}

int part(double share, int whole) { return std::clamp(static_cast<int>(std::lround(share * whole)), 0, whole); }

}  // namespace

std::vector<ReadTag> readTags(const GreyView& picture, Region region, std::optional<unsigned> turn) {
  std::vector<ReadTag> tags;
  if (picture.pixels == nullptr || picture.width <= 0 || picture.height <= 0 || picture.stride < picture.width) return tags;
  const int left = part(region.left, picture.width), top = part(region.top, picture.height);
  const int right = part(region.left + region.width, picture.width), bottom = part(region.top + region.height, picture.height);
  if (right <= left || bottom <= top) return tags;
  try {
    const ZXing::ImageView view(picture.pixels + static_cast<std::ptrdiff_t>(top) * picture.stride + left, right - left, bottom - top,
                                ZXing::ImageFormat::Lum, picture.stride);
    // What a good picture does not need is asked only of one that gave nothing.
    readInto(tags, view, forReading());
    if (!tags.empty()) return tags;
    std::vector<std::uint8_t> spread;
    ZXing::ImageView again = view;
    if (const auto range = faintRange(view)) {
      spread = spreadOut(view, *range);
      again = ZXing::ImageView(spread.data(), view.width(), view.height(), ZXing::ImageFormat::Lum);
      readInto(tags, again, forReading());
    }
    if (tags.empty() && std::max(view.width(), view.height()) >= kSmallerFrom) {
      const auto pixels = smaller(again);
      readInto(tags, ZXing::ImageView(pixels.data(), view.width() / kSmaller, view.height() / kSmaller, ZXing::ImageFormat::Lum),
               forReading());
    }
    if (tags.empty()) readAroundLines(tags, again, turn);
    if (tags.empty() && kTellsDamaged) readInto(tags, again, forDamaged());
  } catch (const std::exception&) {
    tags.clear();  // a picture that the library cannot bear is one without a tag
  }
  return tags;
}

bool tellsDamaged() { return kTellsDamaged; }

}  // namespace snugline::tags
