// SPDX-License-Identifier: Apache-2.0
// Purpose: a frame of a camera as grey pixels. Formats whose first plane is brightness are looked at where they lie; packed ones are made
// grey (ITU-R BT.601 weights; YUYV and UYVY hold brightness already), anything else goes through QImage.
// Pixels come as the sensor has them, neither turned nor mirrored: how the picture is to be shown stands beside them.
// Errors: nothing, where the frame cannot be mapped or is shorter than it says. Thread: any.
#pragma once

#include <memory>
#include <optional>

#include "platform/tags/tag_watcher.h"

class QVideoFrame;

namespace snugline::tags {

[[nodiscard]] std::optional<TakenFrame> greyOf(const QVideoFrame& frame);

}  // namespace snugline::tags
