// SPDX-License-Identifier: Apache-2.0
// Purpose: shows what the camera sees, filling its place without drawing it out of proportion. Thread: GUI thread.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QPointer>
#include <QQuickPaintedItem>

#include "scan_model.h"

namespace snugline::models {

class TagPicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(snugline::models::ScanModel* scan READ scan WRITE setScan NOTIFY scanChanged)
 public:
  explicit TagPicture(QQuickItem* parent = nullptr) : QQuickPaintedItem(parent) {}
  [[nodiscard]] ScanModel* scan() const { return m_scan; }
  void setScan(ScanModel* scan);
  void paint(QPainter* painter) override;

 signals:
  void scanChanged();

 private:
  QPointer<ScanModel> m_scan;
};

}  // namespace snugline::models
