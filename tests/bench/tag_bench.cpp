// SPDX-License-Identifier: Apache-2.0
// From a picture to the helmet in the Book (grey pixels, cutting, reading, counting it once, parsing, finding among 500) against zxing-cpp
// alone on the same pictures, whole and as the Dock cuts them: each picture by all three in turn, by the processor time of this thread.
// Pictures are labels of our own in a camera's frame of 1280 x 720; with Qt Multimedia also as frames of a camera.
#include <benchmark/benchmark.h>

#include <time.h>

#define ZX_USE_UTF8
#include <ZXing/ReadBarcode.h>

#include "core/book/acts_dock.h"
#include "core/gear/tag_gate.h"
#include "platform/tags/label_sheet.h"
#include "platform/tags/tag_decoder.h"
#ifdef SNUGLINE_HAS_FRAMES
#include <QVideoFrame>
#include <QVideoFrameFormat>

#include "platform/tags/grey_frame.h"
#endif

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

constexpr double kMostOfZxingCut = 1.1;  // limit, ours: what stands around the reading may cost a tenth of it

double cpuSeconds() {
  timespec now{};
  ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

// One picture on the way to the unit's page; each is the first sight of its tag.
bool isFound(const tags::GreyView& picture, gear::TagGate& gate, std::int64_t& ms) {
  ms += 2 * gear::kSameTagMs;
  const auto found = tags::readTags(picture, tags::kMiddle);
  if (found.empty() || !gate.isNew(found.front().text, Instant{ms, 0})) return false;
  const auto tag = gear::parseTag(found.front().text, kToday);
  return tag && book::meaningOf(views(), *tag).units.size() == 1;
}

struct Spent {
  double ours = 0, cut = 0, whole = 0;
  int missed = 0;
};
template <typename Ours, typename Alone>
void against(Spent& spent, const Ours& ours, const Alone& alone) {
  const double t0 = cpuSeconds();
  spent.missed += ours() ? 0 : 1;
  const double t1 = cpuSeconds();
  spent.missed += alone(true) ? 0 : 1;
  const double t2 = cpuSeconds();
  spent.missed += alone(false) ? 0 : 1;
  const double t3 = cpuSeconds();
  spent.ours += t1 - t0;
  spent.cut += t2 - t1;
  spent.whole += t3 - t2;
}
void say(benchmark::State& state, const Spent& spent) {
  if (spent.missed != 0 || pictures().size() < kPictures / 2) return state.SkipWithError("a tag was not found");
  const double each = 1e3 / static_cast<double>(pictures().size()) / static_cast<double>(state.iterations());
  state.counters["ms a picture"] = spent.ours * each;
  state.counters["zxing cut ms"] = spent.cut * each;
  state.counters["of zxing cut"] = spent.ours / spent.cut;
  state.counters["of zxing whole"] = spent.ours / spent.whole;
  state.counters["ratio to the limit"] = spent.ours / spent.cut / kMostOfZxingCut;
}

void imageToUnit(benchmark::State& state) {
  Spent spent;
  gear::TagGate gate;
  std::int64_t ms = 1;
  for (auto _ : state) {
    for (const auto& picture : pictures())
      against(
          spent,
          [&] {
            return isFound({picture.data(), kWide, kHigh, kWide}, gate, ms);
          },
          [&](bool isCut) { return isReadAlone(picture, isCut); });
  }
  say(state, spent);
}

#ifdef SNUGLINE_HAS_FRAMES
std::vector<QVideoFrame> framesOf(QVideoFrameFormat::PixelFormat format) {
  std::vector<QVideoFrame> frames;
  for (const auto& picture : pictures()) {
    QVideoFrame frame(QVideoFrameFormat(QSize(kWide, kHigh), format));
    if (!frame.map(QVideoFrame::WriteOnly)) continue;
    const int bytes = format == QVideoFrameFormat::Format_BGRA8888 ? 4 : 1;
    for (int y = 0; y < kHigh; ++y)
      for (int x = 0; x < kWide * bytes; ++x)
        frame.bits(0)[y * frame.bytesPerLine(0) + x] = picture[static_cast<std::size_t>(y * kWide + x / bytes)];
    frame.unmap();
    frames.push_back(frame);
  }
  return frames;
}

// The same frame handed to zxing-cpp as it lies there.
bool isReadAlone(const QVideoFrame& given, bool isCut) {
  using ZXing::BarcodeFormat;
  ZXing::DecodeHints hints;
  hints.setFormats(BarcodeFormat::DataMatrix | BarcodeFormat::QRCode | BarcodeFormat::Code128 | BarcodeFormat::Code39);
  QVideoFrame frame(given);
  if (!frame.map(QVideoFrame::ReadOnly)) return false;
  const int left = isCut ? kWide / 10 : 0, top = isCut ? kHigh / 10 : 0;
  const bool isColour = frame.pixelFormat() == QVideoFrameFormat::Format_BGRA8888;
  const ZXing::ImageView view(frame.bits(0) + top * frame.bytesPerLine(0) + left * (isColour ? 4 : 1), kWide - 2 * left, kHigh - 2 * top,
                              isColour ? ZXing::ImageFormat::BGRX : ZXing::ImageFormat::Lum, frame.bytesPerLine(0));
  const bool isRead = ZXing::ReadBarcode(view, hints).isValid();
  frame.unmap();
  return isRead;
}

void frameToUnit(benchmark::State& state, QVideoFrameFormat::PixelFormat format) {
  const auto frames = framesOf(format);
  Spent spent;
  gear::TagGate gate;
  std::int64_t ms = 1;
  for (auto _ : state) {
    for (const QVideoFrame& frame : frames)
      against(
          spent,
          [&] {
            const auto taken = tags::greyOf(frame);
            return taken && isFound(taken->grey, gate, ms);
          },
          [&](bool isCut) { return isReadAlone(frame, isCut); });
  }
  say(state, spent);
}
#endif

}  // namespace

BENCHMARK(imageToUnit)->Name("tags: picture to unit, and zxing-cpp alone")->Unit(benchmark::kMillisecond);
#ifdef SNUGLINE_HAS_FRAMES
BENCHMARK_CAPTURE(frameToUnit, nv12, QVideoFrameFormat::Format_NV12)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(frameToUnit, bgra, QVideoFrameFormat::Format_BGRA8888)->Unit(benchmark::kMillisecond);
#endif
