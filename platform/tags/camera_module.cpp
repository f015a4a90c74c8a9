// SPDX-License-Identifier: Apache-2.0
// The module that the app loads when the camera is first turned on, so that a start does not pay for Qt Multimedia and zxing-cpp.
#include <QtGlobal>

#include "platform/tags/camera_eye.h"

extern "C" Q_DECL_EXPORT snugline::ports::TagCamera* snuglineMakeCamera() { return new snugline::tags::CameraEye; }
