// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/camera_eye.h"

#include <utility>

#include <QTimer>
#include <QVideoFrame>
#include <QVideoSink>

#include "platform/tags/grey_frame.h"
#include "platform/tags/tag_watcher.h"

namespace snugline::tags {

struct CameraEye::Body : QObject {
  MakeSource makeSource;
  EyePatience patience;
  ports::CameraListener listener;
  std::unique_ptr<QVideoSink> sink;
  std::unique_ptr<FrameSource> source;
  std::unique_ptr<TagWatcher> watcher;
  QTimer silence;
  int round = 0;  // of start and stop: what an earlier one saw does not count
  bool isSeeing = false;
  bool hasEnded = false;  // it said so itself; what is still on its way does not count

  void say(ports::CameraState state) const {
    if (listener.onState) listener.onState(state);
  }
  void see(const Sighting& seen) {
    if (hasEnded) return;
    silence.start(patience.forNext);
    if (!isSeeing) {
      isSeeing = true;
      say(ports::CameraState::seeing);
    }
    if (seen.picture && listener.onPicture) listener.onPicture(*seen.picture);
    for (const std::string& text : seen.texts)
      if (listener.onText) listener.onText(text);
    if (seen.texts.empty() && seen.isUnreadable && listener.onUnreadable) listener.onUnreadable();
  }
  void lose(ports::CameraState why) {
    silence.stop();
    isSeeing = false;
    say(why);
  }
  // What feeds the watcher goes before it.
  void close() {
    silence.stop();
    if (sink) sink->disconnect(this);
    source.reset();
    sink.reset();
    watcher.reset();
    ++round;
    isSeeing = hasEnded = false;
  }
};

CameraEye::CameraEye(MakeSource makeSource, EyePatience patience) : m_body(std::make_unique<Body>()) {
  Body* body = m_body.get();
  body->makeSource = std::move(makeSource);
  body->patience = patience;
  body->silence.setSingleShot(true);
  QObject::connect(&body->silence, &QTimer::timeout, body, [body] { body->lose(ports::CameraState::failed); });
}
CameraEye::~CameraEye() { m_body->close(); }

void CameraEye::listen(ports::CameraListener listener) { m_body->listener = std::move(listener); }

Result<void> CameraEye::start() {
  Body* body = m_body.get();
  if (body->source) return {};
  auto source = body->makeSource();
  if (!source) {
    body->say(ports::CameraState::noCamera);
    return {};
  }
  body->source = std::move(source);
  body->say(ports::CameraState::starting);
  body->watcher = std::make_unique<TagWatcher>(body, [body, round = body->round](const Sighting& seen) {
    if (round == body->round) body->see(seen);
  });
  body->sink = std::make_unique<QVideoSink>();
  // On whatever thread the frame comes: it is only handed on, and made grey where it is looked at.
  TagWatcher* watcher = body->watcher.get();
  QObject::connect(
      body->sink.get(), &QVideoSink::videoFrameChanged, body,
      [watcher](const QVideoFrame& frame) { watcher->offer([frame] { return greyOf(frame); }); }, Qt::DirectConnection);
  body->silence.start(body->patience.forFirst);
  body->source->begin(*body->sink, [body](SourceEnd why) {
    body->hasEnded = true;
    body->lose(why == SourceEnd::noPermission ? ports::CameraState::noPermission : ports::CameraState::failed);
  });
  return {};
}

void CameraEye::stop() {
  if (!m_body->source) return;
  m_body->close();
  m_body->say(ports::CameraState::off);
}

}  // namespace snugline::tags
