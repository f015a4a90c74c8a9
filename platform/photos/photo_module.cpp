// SPDX-License-Identifier: Apache-2.0
// The module that the app loads when the camera is first turned on for a picture, so that a start does not pay for Qt Multimedia.
#include <QtGlobal>

#include "platform/photos/photo_eye.h"

extern "C" Q_DECL_EXPORT snugline::ports::PhotoCamera* snuglineMakePhotoCamera() { return new snugline::photos::PhotoEye; }
