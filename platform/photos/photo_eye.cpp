// SPDX-License-Identifier: Apache-2.0
#include "platform/photos/photo_eye.h"

#include <utility>

#include <QElapsedTimer>
#include <QImage>
#include <QMediaCaptureSession>
#include <QVideoFrame>
#include <QVideoSink>

#include "platform/system/back_camera.h"

namespace snugline::photos {

namespace {
constexpr int kWantedWide = 1920;  // ours: the kept side is 1600
constexpr int kShownWide = 640;
constexpr qint64 kShownEveryMs = 100;
}  // namespace

ports::ColourPicture coloursOf(const QVideoFrame& frame, int widest) {
  QImage image = frame.toImage();
  if (image.isNull()) return {};
  if (widest > 0 && image.width() > widest) image = image.scaledToWidth(widest);
  image = image.convertToFormat(QImage::Format_RGB888);
  ports::ColourPicture picture{image.width(), image.height(), {}};
  const auto rowBytes = static_cast<std::size_t>(image.width()) * 3;
  picture.rgb.reserve(rowBytes * static_cast<std::size_t>(image.height()));
  for (int y = 0; y < image.height(); ++y) {
    const uchar* row = image.constScanLine(y);
    picture.rgb.insert(picture.rgb.end(), row, row + rowBytes);
  }
  return picture;
}

struct PhotoEye::Body : QObject {
  ports::PhotoListener listener;
  std::unique_ptr<QMediaCaptureSession> session;
  std::unique_ptr<QCamera> camera;
  std::unique_ptr<QVideoSink> sink;
  QVideoFrame last;
  QElapsedTimer sinceShown;
  bool isSeeing = false;

  void say(ports::CameraState state) const {
    if (listener.onState) listener.onState(state);
  }
  void see(const QVideoFrame& frame) {
    if (!camera || !frame.isValid()) return;
    last = frame;
    if (!isSeeing) {
      isSeeing = true;
      say(ports::CameraState::seeing);
    }
    if (sinceShown.isValid() && sinceShown.elapsed() < kShownEveryMs) return;
    sinceShown.start();
    const ports::ColourPicture picture = coloursOf(frame, kShownWide);
    if (listener.onPicture && !picture.rgb.empty()) listener.onPicture(picture);
  }
  void close() {
    if (sink) sink->disconnect(this);
    if (camera) camera->disconnect(this);
    if (session) session->setCamera(nullptr);
    last = {};
    camera.reset();
    sink.reset();
    session.reset();
    sinceShown.invalidate();
    isSeeing = false;
  }
};

PhotoEye::PhotoEye() : m_body(std::make_unique<Body>()) {}
PhotoEye::~PhotoEye() { m_body->close(); }

void PhotoEye::listen(ports::PhotoListener listener) { m_body->listener = std::move(listener); }

Result<void> PhotoEye::start() {
  Body* body = m_body.get();
  if (body->camera) return {};
  const QCameraDevice device = platform::backCamera();
  if (device.isNull()) {
    body->say(ports::CameraState::noCamera);
    return {};
  }
  body->say(ports::CameraState::starting);
  body->session = std::make_unique<QMediaCaptureSession>();
  body->camera = std::make_unique<QCamera>(device);
  body->sink = std::make_unique<QVideoSink>();
  if (const QCameraFormat format = platform::nearestFormat(device, kWantedWide); !format.isNull()) body->camera->setCameraFormat(format);
  QObject::connect(body->camera.get(), &QCamera::errorOccurred, body, [body](QCamera::Error error, const QString&) {
    if (error != QCamera::NoError) body->say(ports::CameraState::failed);
  });
  QObject::connect(
      body->sink.get(), &QVideoSink::videoFrameChanged, body, [body](const QVideoFrame& frame) { body->see(frame); }, Qt::QueuedConnection);
  body->session->setCamera(body->camera.get());
  body->session->setVideoSink(body->sink.get());
  body->camera->start();
  return {};
}

void PhotoEye::stop() {
  if (!m_body->camera) return;
  m_body->close();
  m_body->say(ports::CameraState::off);
}

Result<ports::ColourPicture> PhotoEye::take() {
  ports::ColourPicture picture = coloursOf(m_body->last);
  if (picture.rgb.empty()) return fail(ErrorCode::notAllowed, "camera", std::string(ports::kNothingSeen));
  return picture;
}

}  // namespace snugline::photos
