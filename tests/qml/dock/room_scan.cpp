// SPDX-License-Identifier: Apache-2.0
// The camera, the NFC reader and the printer of the room, played by hand.
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

namespace {
// As the standards of the NFC Forum lay the bytes out (core/gear/ndef.h).
ports::NfcRecord recordOf(const QString& kind, const QString& words) {
  constexpr std::uint8_t kWellKnown = 1, kMedia = 2;
  const std::string text = words.toStdString();
  if (kind == QLatin1String("text"))
    return {kWellKnown, "T",
            "\x02"
            "en" +
                text};
  if (kind == QLatin1String("latin"))
    return {kWellKnown, "T",
            "\x02"
            "en" +
                words.toLatin1().toStdString()};
  if (kind == QLatin1String("address")) return {kWellKnown, "U", "\x04" + text};
  if (kind == QLatin1String("poster")) return {kWellKnown, "Sp", "\xd1\x01\x01U" + text};
  if (kind == QLatin1String("cut")) return {kWellKnown, "T", "\x3f" + text};
  if (kind == QLatin1String("long"))
    return {kWellKnown, "T",
            "\x02"
            "en" +
                std::string(5000, 'x')};
  if (kind == QLatin1String("utf16")) {
    std::string wide =
        "\x82"
        "en";
    for (const QChar letter : words) {
      wide += static_cast<char>(letter.row());
      wide += static_cast<char>(letter.cell());
    }
    return {kWellKnown, "T", wide};
  }
  return {kMedia, "image/png", text};
}
}  // namespace

void Room::holdTag(const QString& kind, const QString& words) {
  m_nfc->hold(kind == QLatin1String("nothing") ? std::vector<ports::NfcRecord>() : std::vector{recordOf(kind, words)});
}

void Room::holdTags(const QStringList& kindsAndWords) {
  std::vector<ports::NfcRecord> records;
  for (qsizetype i = 0; i + 1 < kindsAndWords.size(); i += 2) records.push_back(recordOf(kindsAndWords[i], kindsAndWords[i + 1]));
  m_nfc->hold(records);
}

void Room::holdBadTag(const QString& why) {
  m_nfc->hold(why == QLatin1String("unformatted") ? ports::NfcMiss::unformatted
              : why == QLatin1String("gone")      ? ports::NfcMiss::goneTooSoon
                                                  : ports::NfcMiss::unreadable);
}

void Room::nfcIs(const QString& state) {
  m_nfc->say(state == QLatin1String("off")      ? ports::NfcState::switchedOff
             : state == QLatin1String("failed") ? ports::NfcState::failed
                                                : ports::NfcState::waiting);
}

void Room::passMs(int ms) { m_time->pass(ms); }

QStringList Room::printedSerials() const {
  QStringList list;
  for (const std::string& serial : m_sheets->serials()) list.append(QString::fromStdString(serial));
  return list;
}

qint64 Room::memoryKib() const { return static_cast<qint64>(mallinfo2().uordblks / 1024); }

}  // namespace snugline::tests
