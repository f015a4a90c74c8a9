// SPDX-License-Identifier: Apache-2.0
#include "qml/models/sentences_photos.h"

#include <algorithm>

#include <QVariantMap>

#include "core/book/jpeg_shape.h"
#include "core/book/photos.h"
#include "core/ports/photo_port.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {
// The file as people know it, without the folders of the device.
QString fileOf(const Error& error) { return text(error.place).section(QLatin1Char('/'), -1); }
}  // namespace

QString PhotoWords::title(const season::PhotoRecord& photo) {
  const QString what = text(photo.what);
  if (!photo.of) return what.isEmpty() ? tr("The helmet") : PlainWords::sentenceCase(what);
  return what.isEmpty() ? pointName(*photo.of) : tr("%1: %2", "a point, what is seen").arg(pointName(*photo.of), what);
}

QVariantList PhotoWords::list(const season::Views& views, const season::UnitRecord& unit, Day today) {
  QVariantList list;
  for (auto photo = unit.photos.rbegin(); photo != unit.photos.rend(); ++photo) {
    const QString who = whoWords(views, photo->stamp.who);
    const QString at = timeWords(photo->stamp.at, today);
    const auto hold =
        std::find_if(unit.holds.begin(), unit.holds.end(), [&](const season::HoldRecord& each) { return each.fact == photo->hold; });
    list.append(QVariantMap{{QStringLiteral("fact"), text(photo->fact)},
                            {QStringLiteral("photo"), text(photo->photo)},
                            {QStringLiteral("title"), title(*photo)},
                            {QStringLiteral("seen"), who.isEmpty() ? tr("taken %1").arg(at) : tr("taken %1 by %2").arg(at, who)},
                            {QStringLiteral("hold"), hold == unit.holds.end() ? QString() : holdWords(*hold)}});
  }
  return list;
}

QString PhotoWords::trouble(const Error& error) {
  namespace rule = book::rule;
  const std::string& why = error.detail;
  if (error.code == ErrorCode::notAllowed) {
    if (why == ports::kNotAPicture) return tr("%1 is not a picture that can be read here. Choose a JPEG or PNG file.").arg(fileOf(error));
    if (why == ports::kPictureDamaged) return tr("%1 is damaged or cut short. Choose another picture.").arg(fileOf(error));
    if (why == ports::kNothingSeen) return tr("The camera has sent no picture yet. Wait a moment and take it again.");
    if (why == rule::kNotJpeg || why == rule::kCutShort || why == rule::kHasExtras)
      return tr("The picture could not be freed of what else stands in it, so it was not kept.");
    if (why == rule::kPhotoAltered) return tr("This photo was altered since it was taken. It is not shown.");
    if (why == rule::kPhotoMissing) return tr("The file of this photo is missing.");
    if (why == rule::kPhotoKept) return tr("This very picture stands with %1 already.").arg(text(error.place));
    if (why == rule::kPhotoOnHold) return tr("A legal hold stands. No photo is deleted until it ends.");
  }
  if (error.code == ErrorCode::outOfRange && error.detail.find('x') != std::string::npos)
    return tr("%1 has more pixels than a picture of a camera. Choose another picture.").arg(fileOf(error));
  if (error.code == ErrorCode::tooLong) return tr("%1 is too large for a picture. Choose another one.").arg(fileOf(error));
  return errorSentence(error);
}

bool PhotoWords::isCameraTrouble(ports::CameraState state) {
  switch (state) {
    case ports::CameraState::off:
    case ports::CameraState::starting:
    case ports::CameraState::seeing:
      return false;
    case ports::CameraState::noCamera:
    case ports::CameraState::noPermission:
    case ports::CameraState::busy:
    case ports::CameraState::failed:
      return true;
  }
  return false;
}

QString PhotoWords::camera(ports::CameraState state) {
  switch (state) {
    case ports::CameraState::off:
    case ports::CameraState::starting:
      return tr("The camera is starting.");
    case ports::CameraState::seeing:
      return {};
    case ports::CameraState::noCamera:
      return tr("This device has no camera. Choose a picture file.");
    case ports::CameraState::noPermission:
      return tr("The camera may not be used. Allow it in the settings of this device, or choose a picture file.");
    case ports::CameraState::busy:
      return tr("Another program has the camera. Close it there, or choose a picture file.");
    case ports::CameraState::failed:
      return tr("The camera stopped. Turn it on again, or choose a picture file.");
  }
  return {};
}

}  // namespace snugline::models
