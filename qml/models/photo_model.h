// SPDX-License-Identifier: Apache-2.0
// Purpose: a photo of gear being taken: of which helmet, for which hold, through the camera or from a file, looked at, then kept or thrown
// away. What comes in is made plain by the port before it is shown; nothing is on the disk before `keep`.
// Errors: a sentence in `refusal`, and the page stays as it was. Thread: GUI thread; pictures are made on a thread of the model's own.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QVariantList>

#include "core/gear/points.h"
#include "core/ports/photo_port.h"
#include "qml/models/photo_album.h"

namespace snugline::season {
struct HoldRecord;
struct UnitRecord;
}  // namespace snugline::season

namespace snugline::models {

class Choices;

// Without a maker no photo is taken in this program; without a camera it is chosen as a file.
struct PhotoEdges {
  std::unique_ptr<ports::PhotoCamera> camera{};
  std::unique_ptr<ports::PhotoMaker> maker{};
};

class PhotoModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of Shell")
  Q_PROPERTY(bool canTake READ canTake CONSTANT)
  Q_PROPERTY(bool hasCamera READ hasCamera CONSTANT)
  Q_PROPERTY(snugline::models::PhotoAlbum* album READ album CONSTANT)
  Q_PROPERTY(QString unitId READ unitId NOTIFY changed)
  Q_PROPERTY(QString helmetWords READ helmetWords NOTIFY changed)  // "HC-0412, Alder A1, size L"
  Q_PROPERTY(QString holdWords READ holdWords NOTIFY changed)      // of the hold that it stands for; empty: none
  Q_PROPERTY(bool isOn READ isOn NOTIFY changed)                   // the camera was turned on
  Q_PROPERTY(bool isSeeing READ isSeeing NOTIFY changed)           // pictures come
  Q_PROPERTY(QString cameraWords READ cameraWords NOTIFY changed)
  Q_PROPERTY(bool isCameraTrouble READ isCameraTrouble NOTIFY changed)
  Q_PROPERTY(bool isPicked READ isPicked NOTIFY changed)      // a picture is there to be looked at
  Q_PROPERTY(bool isMaking READ isMaking NOTIFY changed)      // one is being read
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)          // one is on its way to the disk
  Q_PROPERTY(bool asksPoint READ asksPoint NOTIFY changed)    // no hold says what is seen
  Q_PROPERTY(QVariantList points READ points NOTIFY changed)  // {name, text, chosen}
  Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)  // what was kept last
 public:
  PhotoModel(PhotoEdges edges, Desk* desk, const Choices* choices, QObject* parent = nullptr);
  ~PhotoModel() override;

  [[nodiscard]] bool canTake() const { return m_edges.maker != nullptr; }
  [[nodiscard]] bool hasCamera() const { return m_edges.camera != nullptr; }
  [[nodiscard]] PhotoAlbum* album() { return &m_album; }
  [[nodiscard]] QString unitId() const;
  [[nodiscard]] QString helmetWords() const;
  [[nodiscard]] QString holdWords() const;
  [[nodiscard]] bool isOn() const { return m_isOn; }
  [[nodiscard]] bool isSeeing() const { return m_isOn && m_state == ports::CameraState::seeing; }
  [[nodiscard]] QString cameraWords() const;
  [[nodiscard]] bool isCameraTrouble() const;
  [[nodiscard]] bool isPicked() const { return !m_jpeg.empty(); }
  [[nodiscard]] bool isMaking() const { return m_isMaking; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] bool asksPoint() const;
  [[nodiscard]] QVariantList points() const;
  [[nodiscard]] QString words() const { return m_words; }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString lastWords() const { return m_lastWords; }
  [[nodiscard]] const QImage& picture() const { return m_picture; }  // what the camera sees, or the one picked; for PhotoView
  void setWords(const QString& words);

  // hold: fact of an open hold, or empty. Whatever was picked before is thrown away.
  Q_INVOKABLE void begin(const QString& unit, const QString& hold);
  Q_INVOKABLE void beginAtLastHold(const QString& unit);
  Q_INVOKABLE void start();
  Q_INVOKABLE void stop();
  Q_INVOKABLE void take();
  Q_INVOKABLE void choose(const QString& file);  // path or URL
  Q_INVOKABLE void choosePoint(const QString& code);
  Q_INVOKABLE void throwAway();
  Q_INVOKABLE void keep();

 signals:
  void changed();
  void pictureChanged();
  void kept();

 private:
  [[nodiscard]] const season::UnitRecord* unit() const;
  [[nodiscard]] const season::HoldRecord* hold() const;
  void make(std::function<Result<std::string>(ports::PhotoMaker&)> road);
  void show(const ports::ColourPicture& picture);

  PhotoEdges m_edges;
  Desk* m_desk;
  PhotoAlbum m_album;
  QThreadPool m_room;
  std::string m_unit, m_hold, m_jpeg;
  std::optional<gear::Point> m_point;
  QString m_words, m_refusal, m_lastWords;
  QImage m_picture;
  ports::CameraState m_state = ports::CameraState::off;
  int m_turn = 0;  // a picture that was asked for before the last beginning is not taken any more
  bool m_isOn = false, m_isMissing = false, m_isMaking = false, m_isBusy = false;
};

}  // namespace snugline::models
