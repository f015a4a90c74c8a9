// SPDX-License-Identifier: Apache-2.0
// The camera and the printer of the room, played by hand.
#include <malloc.h>

#include "room.h"

namespace snugline::tests {

namespace {
constexpr int kPictureWide = 96, kPictureHigh = 60;
}  // namespace

void Room::showTag(const QString& text) { m_camera->show(text.toStdString()); }
void Room::showDamagedTag() { m_camera->showDamaged(); }

void Room::cameraIs(const QString& state) {
  using ports::CameraState;
  m_camera->say(state == QLatin1String("none")        ? CameraState::noCamera
                : state == QLatin1String("forbidden") ? CameraState::noPermission
                : state == QLatin1String("busy")      ? CameraState::busy
                : state == QLatin1String("failed")    ? CameraState::failed
                                                      : CameraState::seeing);
}

// Light that falls off to one side, and a dark square in the middle.
void Room::showPicture() {
  ports::SeenPicture picture{kPictureWide, kPictureHigh, {}};
  for (int y = 0; y < kPictureHigh; ++y) {
    for (int x = 0; x < kPictureWide; ++x) {
      const bool isTag = x > 36 && x < 60 && y > 18 && y < 42 && ((x / 3 + y / 3) % 2 == 0);
      picture.grey.push_back(static_cast<std::uint8_t>(isTag ? 30 : 130 + x));
    }
  }
  m_camera->show(picture);
}

void Room::passMs(int ms) { m_now->ms += ms; }

QStringList Room::printedSerials() const {
  QStringList list;
  for (const std::string& serial : m_sheets->serials()) list.append(QString::fromStdString(serial));
  return list;
}

qint64 Room::memoryKib() const { return static_cast<qint64>(mallinfo2().uordblks / 1024); }

}  // namespace snugline::tests
