// SPDX-License-Identifier: Apache-2.0
// The app's eye from a frame as a driver hands it over to the text of the tag: every format that cameras give, padded lines, turned and
// mirrored sensors, and cameras that end.
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QVideoSink>

#include SNUGLINE_CATCH_HEADER

#include "platform/tags/camera_eye.h"
#include "platform/tags/grey_frame.h"
#include "platform/tags/tag_decoder.h"
#include "tests/platform/tags/played_camera.h"

using namespace snugline;
using namespace snugline::tests;
using ports::CameraState;

namespace {

QGuiApplication& application() {
  static int count = 1;
  static char name[] = "test_camera";
  static char* names[] = {name, nullptr};
  qputenv("QT_QPA_PLATFORM", "offscreen");
  static auto* const kOne = new QGuiApplication(count, names);  // never ended: threads of Qt's outlive main
  return *kOne;
}

struct Bench {
  QGuiApplication& app = application();
  PlayedCamera camera;
  std::vector<CameraState> states;
  std::vector<std::string> texts;
  std::vector<ports::SeenPicture> pictures;
  int unreadable = 0;
  tags::CameraEye eye;

  explicit Bench(tags::EyePatience patience = {}) : eye(camera.source(), patience) {
    eye.listen({[this](const std::string& text) { texts.push_back(text); }, [this] { ++unreadable; },
                [this](CameraState state) { states.push_back(state); },
                [this](const ports::SeenPicture& picture) { pictures.push_back(picture); }});
  }
  template <typename Wanted>
  bool until(Wanted wanted) {
    QElapsedTimer timer;
    timer.start();
    while (!wanted() && timer.elapsed() < 10'000) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return wanted();
  }
  bool reads(const std::string& serial, const FrameLook& look) {
    texts.clear();
    camera.push(frameOf(serial, look));
    return until([this] { return !texts.empty(); }) && texts.front() == serial;
  }
};

// Where the code's corner lies, as shares of the picture: the middle of what is much darker than the ground.
std::pair<double, double> middleOfDark(const ports::SeenPicture& picture) {
  double x = 0, y = 0, count = 0;
  for (int row = 0; row < picture.height; ++row) {
    for (int column = 0; column < picture.width; ++column) {
      if (picture.grey[static_cast<std::size_t>(row * picture.width + column)] > 90) continue;
      x += column;
      y += row;
      ++count;
    }
  }
  REQUIRE(count > 0);
  return {x / count / picture.width, y / count / picture.height};
}

}  // namespace

TEST_CASE("A tag is read from frames of every format that cameras give, whatever their lines are padded to") {
  Bench bench;
  REQUIRE(bench.eye.start());
  int padded = 0, n = 0;
  using F = QVideoFrameFormat;
  for (const auto format :
       {F::Format_NV12, F::Format_NV21, F::Format_YUV420P, F::Format_YUV422P, F::Format_YV12, F::Format_Y8, F::Format_YUYV, F::Format_UYVY,
        F::Format_BGRA8888, F::Format_BGRX8888, F::Format_RGBA8888, F::Format_ARGB8888, F::Format_XRGB8888, F::Format_ABGR8888}) {
    for (const int width : {1280, 1278, 642}) {
      INFO(F::pixelFormatToString(format).toStdString() << " " << width);
      FrameLook look;
      look.format = format;
      look.width = width;
      QVideoFrame frame = frameOf("X", look);
      REQUIRE(frame.map(QVideoFrame::ReadOnly));
      padded += frame.bytesPerLine(0) % width != 0 ? 1 : 0;
      frame.unmap();
      CHECK(bench.reads("K7QD-" + std::to_string(10'000 + ++n) + "-T", look));
    }
  }
  CHECK(padded > 0);
  CHECK(bench.states == std::vector{CameraState::starting, CameraState::seeing});
}

TEST_CASE("Colours become the brightness that they have") {
  application();
  for (const auto format : {QVideoFrameFormat::Format_BGRA8888, QVideoFrameFormat::Format_RGBA8888, QVideoFrameFormat::Format_ARGB8888,
                            QVideoFrameFormat::Format_ABGR8888}) {
    const auto greyOfColour = [&](int red, int green, int blue) {
      QVideoFrame frame(QVideoFrameFormat(QSize(8, 8), format));
      REQUIRE(frame.map(QVideoFrame::WriteOnly));
      for (int i = 0; i + 3 < frame.mappedBytes(0); i += 4) {
        uchar* pixel = frame.bits(0) + i;
        const bool isAlphaFirst = format == QVideoFrameFormat::Format_ARGB8888 || format == QVideoFrameFormat::Format_ABGR8888;
        const bool isRedFirst = format == QVideoFrameFormat::Format_RGBA8888 || format == QVideoFrameFormat::Format_ARGB8888;
        pixel[isAlphaFirst ? 0 : 3] = 255;
        uchar* colour = pixel + (isAlphaFirst ? 1 : 0);
        colour[isRedFirst ? 0 : 2] = static_cast<uchar>(red);
        colour[1] = static_cast<uchar>(green);
        colour[isRedFirst ? 2 : 0] = static_cast<uchar>(blue);
      }
      frame.unmap();
      const auto taken = tags::greyOf(frame);
      REQUIRE(taken);
      return static_cast<int>(taken->grey.pixels[0]);
    };
    // ITU-R BT.601: 0.299 R + 0.587 G + 0.114 B.
    CHECK(std::abs(greyOfColour(255, 0, 0) - 76) <= 1);
    CHECK(std::abs(greyOfColour(0, 255, 0) - 150) <= 1);
    CHECK(std::abs(greyOfColour(0, 0, 255) - 29) <= 1);
    CHECK(greyOfColour(255, 255, 255) >= 254);
    CHECK(greyOfColour(0, 0, 0) == 0);
  }
}

TEST_CASE("A sensor that stands sideways, upside down or mirrored is read, and what it sees is shown upright") {
  for (const auto format : {QVideoFrameFormat::Format_NV12, QVideoFrameFormat::Format_BGRA8888}) {
    for (int turns = 0; turns < 4; ++turns) {
      for (const bool isMirrored : {false, true}) {
        INFO(turns << (isMirrored ? " mirrored" : ""));
        Bench bench;
        REQUIRE(bench.eye.start());
        FrameLook look;
        look.format = format;
        look.quarterTurns = turns;
        look.isMirrored = isMirrored;
        REQUIRE(bench.reads("K7QD-00042-T", look));
        REQUIRE(!bench.pictures.empty());
        const auto& picture = bench.pictures.front();
        CHECK((picture.height > picture.width) == (turns % 2 == 1));
        // A little right of the middle and above it; mirrored, a little left.
        const auto [x, y] = middleOfDark(picture);
        CHECK((x > 0.5) == !isMirrored);
        CHECK(y < 0.5);
      }
    }
  }
}

TEST_CASE("A damaged tag is never read as something else, and is said to be unreadable where the library can tell") {
  Bench bench;
  REQUIRE(bench.eye.start());
  FrameLook damaged;
  damaged.isDamaged = true;
  bench.camera.push(frameOf("K7QD-00042-T", damaged));
  REQUIRE(bench.until([&] { return !bench.pictures.empty(); }));
  CHECK(bench.until([&] { return bench.unreadable > 0 || !tags::tellsDamaged(); }));
  CHECK(bench.texts.empty());
  const int before = bench.unreadable;
  // Frame after frame, as a camera gives them: what is shown of them keeps to its own pace.
  const auto pushUntil = [&bench](const std::string& serial, const auto& wanted) {
    return bench.until([&] {
      if (!wanted()) bench.camera.push(frameOf(serial));
      return wanted();
    });
  };
  REQUIRE(pushUntil(std::string(5000, 'x'), [&bench] { return bench.pictures.size() > 1; }));  // no code holds that: grey ground alone
  CHECK(bench.unreadable == before);
  bench.camera.push(QVideoFrame());
  REQUIRE(pushUntil("K7QD-00043-A", [&bench] { return !bench.texts.empty(); }));
  CHECK(bench.texts.front() == "K7QD-00043-A");
}

TEST_CASE("A camera that ends by itself says so, and pictures still on their way do not count") {
  Bench bench;
  REQUIRE(bench.eye.start());
  REQUIRE(bench.reads("K7QD-00042-T", {}));
  bench.camera.push(frameOf("K7QD-00043-A"));
  bench.camera.end();
  CHECK(bench.states.back() == CameraState::failed);
  const auto texts = bench.texts.size();
  bench.eye.stop();
  CHECK(bench.states.back() == CameraState::off);
  CHECK(!bench.camera.isOn());
  REQUIRE(bench.eye.start());
  REQUIRE(bench.reads("K7QD-00044-B", {}));
  CHECK(texts == 1);
}

TEST_CASE("A camera whose pictures stop coming has failed, and sees again when they come again") {
  Bench bench({std::chrono::milliseconds(10'000), std::chrono::milliseconds(40)});
  REQUIRE(bench.eye.start());
  REQUIRE(bench.reads("K7QD-00042-T", {}));
  REQUIRE(bench.until([&] { return bench.states.back() == CameraState::failed; }));
  REQUIRE(bench.reads("K7QD-00043-A", {}));
  CHECK(std::count(bench.states.begin(), bench.states.end(), CameraState::seeing) == 2);
}

TEST_CASE("A camera that never gives a picture has failed") {
  Bench bench({std::chrono::milliseconds(40), std::chrono::milliseconds(40)});
  REQUIRE(bench.eye.start());
  REQUIRE(bench.until([&] { return bench.states.back() == CameraState::failed; }));
}

TEST_CASE("No camera and a forbidden one are told apart") {
  Bench none;
  none.camera.isThere = false;
  REQUIRE(none.eye.start());
  CHECK(none.states == std::vector{CameraState::noCamera});
  none.eye.stop();
  CHECK(none.states.size() == 1);
  Bench forbidden;
  forbidden.camera.isForbidden = true;
  REQUIRE(forbidden.eye.start());
  CHECK(forbidden.states.back() == CameraState::noPermission);
}

TEST_CASE("Nothing is heard after the eye was closed, whatever was on its way") {
  Bench bench;
  for (int i = 0; i < 20; ++i) {
    REQUIRE(bench.eye.start());
    bench.camera.push(frameOf("K7QD-00042-T"));
    bench.eye.stop();
    bench.texts.clear();
    bench.pictures.clear();
    QCoreApplication::processEvents();
    CHECK(bench.texts.empty());
    CHECK(bench.pictures.empty());
  }
}
