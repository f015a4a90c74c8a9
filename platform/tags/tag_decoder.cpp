// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/tag_decoder.h"

#include <algorithm>
#include <cmath>
#include <exception>

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>
#if __has_include(<ZXing/ReaderOptions.h>)
#include <ZXing/ReaderOptions.h>
#define SNUGLINE_ZXING_OPTIONS ZXing::ReaderOptions
#else
#define SNUGLINE_ZXING_OPTIONS ZXing::DecodeHints
#endif

namespace snugline::tags {

namespace {

constexpr int kTagsMost = 4;  // ours: more do not stand before one camera

SNUGLINE_ZXING_OPTIONS optionsFor(Patience patience) {
  using ZXing::BarcodeFormat;
  SNUGLINE_ZXING_OPTIONS options;
  options.setFormats(BarcodeFormat::DataMatrix | BarcodeFormat::QRCode | BarcodeFormat::Code128 | BarcodeFormat::Code39);
  options.setReturnErrors(true);
  options.setMaxNumberOfSymbols(kTagsMost);
  options.setTryHarder(patience == Patience::much);
  options.setTryRotate(true);
  options.setTryDownscale(true);
  return options;
}

ReadTag tagOf(const ZXing::Result& found) {
  if (!found.isValid()) return {{}, true};
  if (found.contentType() != ZXing::ContentType::GS1) return {found.text(), false};
  const ZXing::ByteArray& bytes = found.bytes();
  return {found.symbologyIdentifier() + std::string(bytes.begin(), bytes.end()), false};
}

int part(double share, int whole) { return std::clamp(static_cast<int>(std::lround(share * whole)), 0, whole); }

}  // namespace

std::vector<ReadTag> readTags(const GreyView& picture, Region region, Patience patience) {
  std::vector<ReadTag> tags;
  if (picture.pixels == nullptr || picture.width <= 0 || picture.height <= 0 || picture.stride < picture.width) return tags;
  const int left = part(region.left, picture.width), top = part(region.top, picture.height);
  const int right = part(region.left + region.width, picture.width), bottom = part(region.top + region.height, picture.height);
  if (right <= left || bottom <= top) return tags;
  try {
    const ZXing::ImageView view(picture.pixels + static_cast<std::ptrdiff_t>(top) * picture.stride + left, right - left, bottom - top,
                                ZXing::ImageFormat::Lum, picture.stride);
    for (const ZXing::Result& found : ZXing::ReadBarcodes(view, optionsFor(patience))) tags.push_back(tagOf(found));
  } catch (const std::exception&) {
    tags.clear();  // a picture that the library cannot bear is one without a tag
  }
  // What can be read counts; a second, failing look at the same tag does not.
  const bool isAnyRead = std::any_of(tags.begin(), tags.end(), [](const ReadTag& tag) { return !tag.isUnreadable; });
  if (isAnyRead) std::erase_if(tags, [](const ReadTag& tag) { return tag.isUnreadable; });
  return tags;
}

}  // namespace snugline::tags
