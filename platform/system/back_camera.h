// SPDX-License-Identifier: Apache-2.0
// Purpose: which of a device's cameras is used, for tags and for pictures of gear, and at what size: the one at the back, the format whose
// width is nearest to what is wanted. Header only: whoever includes it links Qt Multimedia. Thread: GUI thread.
#pragma once

#include <cstdlib>

#include <QCamera>
#include <QCameraDevice>
#include <QMediaDevices>

namespace snugline::platform {

inline QCameraDevice backCamera() {
  const QList<QCameraDevice> all = QMediaDevices::videoInputs();
  for (const QCameraDevice& device : all)
    if (device.position() == QCameraDevice::BackFace) return device;
  return all.isEmpty() ? QCameraDevice() : QMediaDevices::defaultVideoInput();
}

inline QCameraFormat nearestFormat(const QCameraDevice& device, int wantedWide) {
  QCameraFormat best;
  const auto badness = [&](const QCameraFormat& format) { return std::abs(format.resolution().width() - wantedWide); };
  const QList<QCameraFormat> formats = device.videoFormats();
  for (const QCameraFormat& format : formats)
    if (best.isNull() || badness(format) < badness(best)) best = format;
  return best;
}

}  // namespace snugline::platform
