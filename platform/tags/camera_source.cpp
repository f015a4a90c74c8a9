// SPDX-License-Identifier: Apache-2.0
#include <utility>

#include <QCamera>
#include <QCameraDevice>
#include <QMediaCaptureSession>
#include <QObject>
#include <QVideoSink>
#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0) && QT_CONFIG(permissions)
#include <QCoreApplication>
#include <QPermissions>
#define SNUGLINE_ASKS_FOR_CAMERA
#endif

#include "platform/system/back_camera.h"
#include "platform/tags/frame_source.h"

namespace snugline::tags {

namespace {

constexpr int kWantedWide = 1280;  // ours

class CameraSource final : public FrameSource {
 public:
  explicit CameraSource(const QCameraDevice& device) : m_device(device) {}
  ~CameraSource() override {
    if (!m_camera) return;
    m_camera->disconnect(&m_context);
    m_session.setCamera(nullptr);
    m_session.setVideoSink(nullptr);
  }
  void begin(QVideoSink& sink, std::function<void(SourceEnd)> onEnd) override {
    m_onEnd = std::move(onEnd);
    m_sink = &sink;
#ifdef SNUGLINE_ASKS_FOR_CAMERA
    qApp->requestPermission(QCameraPermission(), &m_context, [this](const QPermission& answer) {
      if (answer.status() == Qt::PermissionStatus::Granted) return open();
      m_onEnd(SourceEnd::noPermission);
    });
#else
    open();
#endif
  }

 private:
  void open() {
    m_camera = std::make_unique<QCamera>(m_device);
    if (const QCameraFormat format = platform::nearestFormat(m_device, kWantedWide); !format.isNull()) m_camera->setCameraFormat(format);
    if (m_camera->isFocusModeSupported(QCamera::FocusModeAutoNear)) m_camera->setFocusMode(QCamera::FocusModeAutoNear);
    QObject::connect(m_camera.get(), &QCamera::errorOccurred, &m_context, [this](QCamera::Error error, const QString&) {
      if (error != QCamera::NoError) m_onEnd(SourceEnd::failed);
    });
    // Unplugged, or taken by the system.
    QObject::connect(m_camera.get(), &QCamera::activeChanged, &m_context, [this](bool isActive) {
      if (!isActive && m_wasActive) m_onEnd(SourceEnd::failed);
      m_wasActive = m_wasActive || isActive;
    });
    m_session.setCamera(m_camera.get());
    m_session.setVideoSink(m_sink);
    m_camera->start();
  }

  QCameraDevice m_device;
  QObject m_context;
  QMediaCaptureSession m_session;
  std::unique_ptr<QCamera> m_camera;
  QVideoSink* m_sink = nullptr;
  std::function<void(SourceEnd)> m_onEnd;
  bool m_wasActive = false;
};

}  // namespace

std::unique_ptr<FrameSource> cameraOfDevice() {
  const QCameraDevice device = platform::backCamera();
  if (device.isNull()) return nullptr;
  return std::make_unique<CameraSource>(device);
}

}  // namespace snugline::tags
