// SPDX-License-Identifier: Apache-2.0
// Purpose: a frame of a camera as a grey picture. Formats whose first plane is brightness are copied as they are; others are converted.
// Errors: nothing, where the frame cannot be mapped. Thread: any.
#pragma once

#include <optional>

#include "core/ports/tag_port.h"

class QVideoFrame;

namespace snugline::tags {

[[nodiscard]] std::optional<ports::SeenPicture> greyOf(const QVideoFrame& frame);

}  // namespace snugline::tags
