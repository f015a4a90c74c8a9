// SPDX-License-Identifier: Apache-2.0
// Purpose: what pushes frames into a sink: a camera over Qt Multimedia, or a test. Thread: GUI thread; frames may come on any.
#pragma once

#include <functional>
#include <memory>

class QVideoSink;

namespace snugline::tags {

enum class SourceEnd { failed, noPermission };

class FrameSource {
 public:
  virtual ~FrameSource() = default;  // no frame comes once it has returned
  // onEnd: it stopped by itself, or never began.
  virtual void begin(QVideoSink& sink, std::function<void(SourceEnd)> onEnd) = 0;
};

// Nothing on a device without a camera. Prefers the one at the back and a picture about 1280 wide, which a tag at arm's length fills well
// enough. Where Qt knows permissions, a person is asked for this one first.
[[nodiscard]] std::unique_ptr<FrameSource> cameraOfDevice();

}  // namespace snugline::tags
