// SPDX-License-Identifier: Apache-2.0
// Purpose: an equipment room for tests of the screens: a real Book in a temporary folder, the demo's model sheets, a clock that moves at
// every touch and where the test puts it, the models as the app builds them, and a hand scanner that types into the window. After every act
// the room is looked at with fresh eyes (tests/eyes): what is not true is a warning, and a test of screens fails on one. Not so in a life
// that is killed: looking seals the Book, which a killed app had not. Thread: GUI thread.
#pragma once

#include <memory>

#include <QObject>
#include <QQuickItem>
#include <QTemporaryDir>

#include "core/ports/memory_camera.h"
#include "core/ports/memory_gauge.h"
#include "core/ports/memory_nfc.h"
#include "core/ports/memory_photos.h"
#include "fresh_eyes.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/dock_model.h"
#include "qml/models/gauge_model.h"
#include "qml/models/photo_model.h"
#include "qml/models/roster_model.h"
#include "qml/models/scan_model.h"
#include "qml/models/settings_model.h"
#include "qml/models/unit_card.h"
#include "qml/models/units_model.h"

namespace snugline::tests {

class PlayedCamera;

class Room : public QObject {
  Q_OBJECT
  Q_PROPERTY(snugline::models::DockModel* dock READ dock NOTIFY opened)
  Q_PROPERTY(snugline::models::UnitsModel* units READ units NOTIFY opened)
  Q_PROPERTY(snugline::models::RosterModel* roster READ roster NOTIFY opened)
  Q_PROPERTY(snugline::models::SettingsModel* settings READ settings NOTIFY opened)
  Q_PROPERTY(snugline::models::GaugeModel* gauge READ gauge NOTIFY opened)  // two gauges lie in the room
  Q_PROPERTY(snugline::models::ScanModel* scanner READ scanner NOTIFY opened)
  Q_PROPERTY(snugline::models::UnitCard* unitCard READ unitCard NOTIFY opened)
  Q_PROPERTY(snugline::models::PhotoModel* photos READ photos NOTIFY opened)  // a camera for pictures stands in the room

 public:
  explicit Room(QObject* parent = nullptr);
  ~Room() override;

  [[nodiscard]] models::DockModel* dock() const { return m_dock.get(); }
  [[nodiscard]] models::UnitsModel* units() const { return m_units.get(); }
  [[nodiscard]] models::RosterModel* roster() const { return m_roster.get(); }
  [[nodiscard]] models::SettingsModel* settings() const { return m_settings.get(); }
  [[nodiscard]] models::GaugeModel* gauge() const { return m_gauge.get(); }
  [[nodiscard]] models::UnitCard* unitCard() const { return m_unitCard.get(); }
  [[nodiscard]] models::PhotoModel* photos() const { return m_photos.get(); }
  [[nodiscard]] models::ScanModel* scanner() const { return m_scanner.get(); }

  // A new Book with the three demo sheets; it is 14 October 2026, 08:00.
  Q_INVOKABLE bool begin();
  // The same Book, as after the app was ended and started again.
  Q_INVOKABLE bool reopen();
  // The Book of another process, in the folder that SNUGLINE_ROOM names; that folder is used by begin() too where it is set.
  Q_INVOKABLE bool resume();
  // Ends this process as a flat battery would: no destructor runs, nothing is closed.
  Q_INVOKABLE void die();
  Q_INVOKABLE int setting(const QString& name) const;  // a number from the environment, 0 without
  // Closes the Book; the screens must be gone by then.
  Q_INVOKABLE void close();

  // As a hand scanner types it: every character as a key of its own, then Enter.
  Q_INVOKABLE void scan(QQuickItem* item, const QString& text);
  Q_INVOKABLE void type(QQuickItem* item, const QString& text);
  Q_INVOKABLE QString write(const QString& name, const QByteArray& bytes);  // a file in the room's folder; its path
  Q_INVOKABLE QString writeText(const QString& name, const QString& words);
  Q_INVOKABLE QString writePicture(const QString& name);              // a PNG under that name
  Q_INVOKABLE QString spoiltSheet(const QString& name);               // Alder A1 with a negative size
  Q_INVOKABLE QString changedSheet(const QString& name, int months);  // Alder A1 certified for so long
  Q_INVOKABLE QString sheetPath(const QString& name) const;

  Q_INVOKABLE void addAthlete(const QString& jersey, const QString& family, const QString& given);
  // Takes a unit in behind the screens: sheet "Alder A1", label year, all sound or with one fault.
  Q_INVOKABLE void addUnit(const QString& serial, const QString& size, int labelYear, const QString& fault = {});
  Q_INVOKABLE void pair(const QString& serial, const QString& jersey);
  // "in-service", "held: reason what", "received", or "" when the Book does not know it.
  Q_INVOKABLE QString unitState(const QString& serial) const;
  Q_INVOKABLE QString labelOf(const QString& serial) const;  // "recertification 2025", "missing"
  Q_INVOKABLE QString unitId(const QString& serial) const;
  Q_INVOKABLE int unitCount() const;
  Q_INVOKABLE int athleteCount() const;
  Q_INVOKABLE QString sheetHash(const QString& name) const;
  Q_INVOKABLE QVariantMap rows() const;                          // number -> lane and reasons, by their codes, as the board has them now
  Q_INVOKABLE void beginFit(const QString& jersey);              // a first fit that stays open
  Q_INVOKABLE int openCheckMonths(const QString& jersey) const;  // certification of the sheet that it is judged by
  Q_INVOKABLE int standingMonths(const QString& serial) const;   // of the sheet that counts for the helmet
  Q_INVOKABLE QString galleryFolder() const;                     // SNUGLINE_GALLERY, else the room's folder
  Q_INVOKABLE void pass(int minutes);
  Q_INVOKABLE void noteWeather(double celsius, double metres);
  Q_INVOKABLE void holdGauge(double pascals);           // the gauge reads this, absolute, for a second and a bit
  Q_INVOKABLE void sendGauge(const QByteArray& bytes);  // as a pressure
  Q_INVOKABLE void showTag(const QString& text);        // before the camera
  Q_INVOKABLE void showDamagedTag();
  Q_INVOKABLE void cameraIs(const QString& state);  // "none", "forbidden", "busy", "failed", "seeing"
  Q_INVOKABLE void showPicture();
  Q_INVOKABLE void haveNfc(bool isThere) { m_isNfcThere = isThere; }  // from the next begin() or reopen() on
  // A tag held to the device: "text", "address" (after https://), "utf16", "poster", "picture", "latin", "cut", "long" or "nothing".
  Q_INVOKABLE void holdTag(const QString& kind, const QString& words = {});
  Q_INVOKABLE void holdTags(const QStringList& kindsAndWords);  // records of one tag: kind, words, kind, words
  Q_INVOKABLE void holdBadTag(const QString& why);              // "unformatted", "gone", "unreadable"
  Q_INVOKABLE void nfcIs(const QString& state);                 // "waiting", "off", "failed"
  // From the next begin() on the camera is the app's own eye over frames; false where the app is built without one.
  Q_INVOKABLE bool haveFrames(bool isWanted);
  // A frame with a label as a driver hands it over; format "NV12", "YUYV", "YUV420P", "BGRA8888".
  Q_INVOKABLE void pushFrame(const QString& serial, const QString& format, int quarterTurns = 0);
  Q_INVOKABLE void endFrames();  // as when the camera is unplugged
  Q_INVOKABLE void passMs(int ms);
  Q_INVOKABLE QStringList printedSerials() const;
  // room_photos.cpp. A JPEG as a camera writes it: turned a quarter (Exif orientation 6), with place and maker in it. Its path.
  Q_INVOKABLE QString writeCameraPicture(const QString& name, int width, int height);
  Q_INVOKABLE QStringList photoFiles() const;  // beside the Book
  Q_INVOKABLE bool holdsBytes(const QString& file, const QString& bytes) const;
  Q_INVOKABLE QSize plainSize(const QString& file) const;  // of a stored picture, none where it holds anything but a picture
  Q_INVOKABLE void spoil(const QString& file);             // its last byte but two
  Q_INVOKABLE void showHelmet();                           // before the camera for pictures
  Q_INVOKABLE QStringList openedPapers() const;            // papers, where people print them
  Q_INVOKABLE QStringList printed() const;                 // the parts of the last card, "picture: Shell", "row: ..."
  Q_INVOKABLE QString verified();                          // the closed Book: "ok, 1 photos" or "missing HC-1 ..."
  Q_INVOKABLE qint64 memoryKib() const;                    // in use, as the C library counts it

 signals:
  void opened();

 private:
  std::unique_ptr<ports::TagCamera> makeCamera();
  bool open();
  bool run(models::Desk::Job job);
  void openEyes();  // room_eyes.cpp
  void look();
  [[nodiscard]] const season::UnitRecord* unit(const QString& serial) const;

  [[nodiscard]] QString inFolder(const QString& name) const;

  std::unique_ptr<QTemporaryDir> m_folder;
  std::shared_ptr<eyes::MovingTime> m_time;
  std::unique_ptr<eyes::Hand> m_hand;
  bool m_isStirred = false;
  std::unique_ptr<models::Choices> m_choices;
  std::unique_ptr<models::Desk> m_desk;
  std::unique_ptr<models::WeatherModel> m_weather;
  std::unique_ptr<models::LineModel> m_line;
  std::unique_ptr<models::DoorsModel> m_doors;
  std::unique_ptr<models::DockModel> m_dock;
  std::unique_ptr<models::UnitsModel> m_units;
  std::unique_ptr<models::RosterModel> m_roster;
  std::unique_ptr<models::SettingsModel> m_settings;
  ports::MemoryCamera* m_camera = nullptr;  // of m_scanner
  ports::MemoryLabelSheets* m_sheets = nullptr;
  ports::MemoryNfc* m_nfc = nullptr;
  bool m_isNfcThere = true;
  bool m_areFramesWanted = false;
  std::unique_ptr<PlayedCamera> m_frames;
  std::unique_ptr<models::ScanModel> m_scanner;
  ports::MemoryPhotoCamera* m_photoCamera = nullptr;  // of m_photos
  std::unique_ptr<models::PhotoModel> m_photos;
  std::shared_ptr<ports::MemoryOutbox> m_outbox = std::make_shared<ports::MemoryOutbox>();
  std::unique_ptr<models::UnitCard> m_unitCard;
  ports::MemoryGauge* m_port = nullptr;  // of m_gauge
  std::unique_ptr<models::GaugeModel> m_gauge;
  std::int64_t m_gaugeMs = 0;
};

}  // namespace snugline::tests
