// SPDX-License-Identifier: Apache-2.0
#include "tag_picture.h"

#include <QPainter>

namespace snugline::models {

void TagPicture::setScan(ScanModel* scan) {
  if (m_scan == scan) return;
  if (m_scan) m_scan->disconnect(this);
  m_scan = scan;
  if (m_scan) connect(m_scan, &ScanModel::pictureChanged, this, [this] { update(); });
  update();
  emit scanChanged();
}

// Cut to the place's shape.
void TagPicture::paint(QPainter* painter) {
  if (!m_scan || m_scan->picture().isNull() || width() <= 0 || height() <= 0) return;
  const QImage& picture = m_scan->picture();
  const QSizeF wanted = boundingRect().size().scaled(QSizeF(picture.size()), Qt::KeepAspectRatio);
  const QRectF from((picture.width() - wanted.width()) / 2, (picture.height() - wanted.height()) / 2, wanted.width(), wanted.height());
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  painter->drawImage(boundingRect(), picture, from);
}

}  // namespace snugline::models
