// SPDX-License-Identifier: Apache-2.0
// Purpose: shows a photo of gear: one that is kept, proved each time, or the one that is being taken. What does not hold shows nothing and
// says why. Thread: GUI thread.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QPointer>
#include <QQuickPaintedItem>

#include "photo_album.h"
#include "photo_model.h"

namespace snugline::models {

class PhotoView : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(snugline::models::PhotoAlbum* album READ album WRITE setAlbum NOTIFY sourceChanged)
  Q_PROPERTY(QString photo READ photo WRITE setPhoto NOTIFY sourceChanged)  // hash of a kept one
  Q_PROPERTY(snugline::models::PhotoModel* taking READ taking WRITE setTaking NOTIFY sourceChanged)
  Q_PROPERTY(bool crops READ crops WRITE setCrops NOTIFY sourceChanged)  // fills its place; else the whole picture stands in it
  Q_PROPERTY(bool isShown READ isShown NOTIFY shownChanged)
  Q_PROPERTY(QString words READ words NOTIFY shownChanged)  // why nothing is shown; empty while it is read
  Q_PROPERTY(qreal ratio READ ratio NOTIFY shownChanged)    // height by width, of what is shown; 0 while nothing is
 public:
  explicit PhotoView(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}
  [[nodiscard]] PhotoAlbum* album() const { return m_album; }
  [[nodiscard]] QString photo() const { return m_photo; }
  [[nodiscard]] PhotoModel* taking() const { return m_taking; }
  [[nodiscard]] bool crops() const { return m_crops; }
  [[nodiscard]] bool isShown() const { return !shown().isNull(); }
  [[nodiscard]] QString words() const { return m_words; }
  [[nodiscard]] qreal ratio() const;
  void setAlbum(PhotoAlbum* album);
  void setPhoto(const QString& photo);
  void setTaking(PhotoModel* taking);
  void setCrops(bool crops);
  void paint(QPainter* painter) override;

 signals:
  void sourceChanged();
  void shownChanged();

 protected:
  void geometryChange(const QRectF& geometry, const QRectF& before) override;
  void componentComplete() override;

 private:
  [[nodiscard]] const QImage& shown() const { return m_taking ? m_taking->picture() : m_image; }
  void read();

  QPointer<PhotoAlbum> m_album;
  QPointer<PhotoModel> m_taking;
  QString m_photo, m_words;
  QImage m_image;
  QSize m_asked;  // the size that m_image was read for
  bool m_crops = false;
};

}  // namespace snugline::models
