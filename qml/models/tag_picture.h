// SPDX-License-Identifier: Apache-2.0
// Purpose: shows what the camera sees, filling its place, with the part in the middle that is looked at. Thread: GUI thread.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QQuickPaintedItem>

namespace snugline::models {

class TagPicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QImage picture READ picture WRITE setPicture NOTIFY pictureChanged)
 public:
  explicit TagPicture(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}
  [[nodiscard]] QImage picture() const { return m_picture; }
  void setPicture(const QImage& picture);
  void paint(QPainter* painter) override;

 signals:
  void pictureChanged();

 private:
  QImage m_picture;
};

}  // namespace snugline::models
