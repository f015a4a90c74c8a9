// SPDX-License-Identifier: Apache-2.0
// From a picture to the helmet in the Book (reading, parsing, finding among 500) against zxing-cpp alone on the same pictures, whole and as
// the Dock cuts them. Pictures are labels of our own in a camera's frame of 1280 x 720.
#include <benchmark/benchmark.h>

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>

#include "core/book/acts_dock.h"
#include "platform/tags/label_sheet.h"
#include "platform/tags/tag_decoder.h"

namespace {

using namespace snugline;

constexpr int kWide = 1280, kHigh = 720, kModule = 9, kPictures = 16, kHelmets = 500;
const Day kToday = dayOf(2026, 10, 14);

std::string serialAt(int n) { return "K7QD-" + std::to_string(10'000 + n) + "-T"; }

std::vector<std::uint8_t> pictureOf(int n) {
  std::vector<std::uint8_t> grey(static_cast<std::size_t>(kWide) * kHigh);
  for (int y = 0; y < kHigh; ++y)
    for (int x = 0; x < kWide; ++x)
      grey[static_cast<std::size_t>(y * kWide + x)] = static_cast<std::uint8_t>(150 + (x * 60 / kWide) + (x * y) % 7);
  const tags::MatrixCode code = tags::matrixOf(serialAt(n));
  const int left = 480 + 11 * n, top = 260 + 5 * n, quiet = 2 * kModule;
  for (int y = -quiet; y < code.height * kModule + quiet; ++y) {
    for (int x = -quiet; x < code.width * kModule + quiet; ++x) {
      const bool isInside = x >= 0 && y >= 0 && x < code.width * kModule && y < code.height * kModule;
      const bool isDark = isInside && code.dark[static_cast<std::size_t>(y / kModule * code.width + x / kModule)];
      grey[static_cast<std::size_t>((top + y) * kWide + left + x)] = isDark ? 40 : 220;
    }
  }
  return grey;
}

// As anybody would call it for these four formats.
bool isReadAlone(const std::vector<std::uint8_t>& picture, bool isCut) {
  using ZXing::BarcodeFormat;
  ZXing::DecodeHints hints;
  hints.setFormats(BarcodeFormat::DataMatrix | BarcodeFormat::QRCode | BarcodeFormat::Code128 | BarcodeFormat::Code39);
  const int left = isCut ? kWide / 10 : 0, top = isCut ? kHigh / 10 : 0;
  const ZXing::ImageView view(picture.data() + top * kWide + left, kWide - 2 * left, kHigh - 2 * top, ZXing::ImageFormat::Lum, kWide);
  return ZXing::ReadBarcode(view, hints).isValid();
}

const std::vector<std::vector<std::uint8_t>>& pictures() {
  static const auto kAll = [] {
    std::vector<std::vector<std::uint8_t>> all;
    // Pictures that zxing-cpp alone reads, whole and cut: what is compared is the time for one answer.
    for (int n = 0; n < 4 * kPictures && static_cast<int>(all.size()) < kPictures; ++n) {
      auto picture = pictureOf(n % 30);
      if (isReadAlone(picture, false) && isReadAlone(picture, true)) all.push_back(std::move(picture));
    }
    return all;
  }();
  return kAll;
}

const season::Views& views() {
  static const season::Views kViews = [] {
    season::Views made;
    for (int n = 0; n < kHelmets; ++n) {
      season::UnitRecord unit;
      unit.id = "d:" + std::to_string(n);
      unit.serial = unit.tagKey = serialAt(n);
      made.units[unit.id] = unit;
    }
    return made;
  }();
  return kViews;
}

void imageToUnit(benchmark::State& state) {
  int missed = pictures().size() < kPictures / 2 ? 1 : 0;
  for (auto _ : state) {
    for (const auto& picture : pictures()) {
      const auto found = tags::readTags({picture.data(), kWide, kHigh, kWide}, tags::kMiddle);
      const auto tag = found.empty() ? tl::unexpected<Error>(Error{}) : gear::parseTag(found.front().text, kToday);
      missed += tag && book::meaningOf(views(), *tag).units.size() == 1 ? 0 : 1;
    }
  }
  if (missed != 0) state.SkipWithError("a tag was not found");
}

void zxingAlone(benchmark::State& state) {
  int missed = 0;
  for (auto _ : state) {
    for (const auto& picture : pictures()) missed += isReadAlone(picture, state.range(0) != 0) ? 0 : 1;
  }
  if (missed != 0) state.SkipWithError("a tag was not found");
}

}  // namespace

BENCHMARK(imageToUnit)->Unit(benchmark::kMillisecond);
BENCHMARK(zxingAlone)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);
