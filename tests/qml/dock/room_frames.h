// SPDX-License-Identifier: Apache-2.0
// Purpose: the frames of the room's camera, where the app is built with one.
#pragma once

#ifdef SNUGLINE_HAS_FRAMES
#include "tests/platform/tags/played_camera.h"
#else
namespace snugline::tests {
class PlayedCamera {};
}  // namespace snugline::tests
#endif
