// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/camera_eye.h"

#include <utility>

#include <QCamera>
#include <QImage>
#include <QMediaCaptureSession>
#include <QVideoFrame>
#include <QVideoSink>

#include "platform/photos/back_camera.h"
#include "platform/tags/grey_frame.h"
#include "platform/tags/tag_watcher.h"

namespace snugline::tags {

namespace {

constexpr int kWantedWide = 1280;  // ours
}  // namespace

struct CameraEye::Body : QObject {
  ports::CameraListener listener;
  std::unique_ptr<QMediaCaptureSession> session;
  std::unique_ptr<QCamera> camera;
  std::unique_ptr<QVideoSink> sink;
  std::unique_ptr<TagWatcher> watcher;
  bool isSeeing = false;

  void say(ports::CameraState state) const {
    if (listener.onState) listener.onState(state);
  }
  void see(const Sighting& seen) {
    if (!camera) return;  // stopped while it was on its way
    if (!isSeeing) {
      isSeeing = true;
      say(ports::CameraState::seeing);
    }
    if (seen.picture && listener.onPicture) listener.onPicture(*seen.picture);
    for (const std::string& text : seen.texts)
      if (listener.onText) listener.onText(text);
    if (seen.texts.empty() && seen.isUnreadable && listener.onUnreadable) listener.onUnreadable();
  }
  // The watcher goes before what feeds it.
  void close() {
    if (sink) sink->disconnect(this);
    if (camera) camera->disconnect(this);
    if (session) session->setCamera(nullptr);
    camera.reset();
    sink.reset();
    session.reset();
    watcher.reset();
    isSeeing = false;
  }
};

CameraEye::CameraEye() : m_body(std::make_unique<Body>()) {}
CameraEye::~CameraEye() { m_body->close(); }

void CameraEye::listen(ports::CameraListener listener) { m_body->listener = std::move(listener); }

Result<void> CameraEye::start() {
  Body* body = m_body.get();
  if (body->camera) return {};
  const QCameraDevice device = photos::backCamera();
  if (device.isNull()) {
    body->say(ports::CameraState::noCamera);
    return {};
  }
  body->say(ports::CameraState::starting);
  body->watcher = std::make_unique<TagWatcher>(body, [body](const Sighting& seen) { body->see(seen); });
  body->session = std::make_unique<QMediaCaptureSession>();
  body->camera = std::make_unique<QCamera>(device);
  body->sink = std::make_unique<QVideoSink>();
  if (const QCameraFormat format = photos::nearestFormat(device, kWantedWide); !format.isNull()) body->camera->setCameraFormat(format);
  if (body->camera->isFocusModeSupported(QCamera::FocusModeAutoNear)) body->camera->setFocusMode(QCamera::FocusModeAutoNear);
  QObject::connect(body->camera.get(), &QCamera::errorOccurred, body, [body](QCamera::Error error, const QString&) {
    if (error != QCamera::NoError) body->say(ports::CameraState::failed);
  });
  // On whatever thread the frame comes: it is only handed on, and made grey where it is looked at.
  TagWatcher* watcher = body->watcher.get();
  QObject::connect(
      body->sink.get(), &QVideoSink::videoFrameChanged, body,
      [watcher](const QVideoFrame& frame) { watcher->offer([frame] { return greyOf(frame); }); }, Qt::DirectConnection);
  body->session->setCamera(body->camera.get());
  body->session->setVideoSink(body->sink.get());
  body->camera->start();
  return {};
}

void CameraEye::stop() {
  if (!m_body->camera) return;
  m_body->close();
  m_body->say(ports::CameraState::off);
}

}  // namespace snugline::tags
