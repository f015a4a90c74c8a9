// SPDX-License-Identifier: Apache-2.0
#include "tag_picture.h"

#include <QPainter>

namespace snugline::models {

void TagPicture::setPicture(const QImage& picture) {
  m_picture = picture;
  update();
  emit pictureChanged();
}

// Cut to the place's shape, so that nothing is drawn out of proportion.
void TagPicture::paint(QPainter* painter) {
  if (m_picture.isNull() || width() <= 0 || height() <= 0) return;
  const QSizeF size = boundingRect().size();
  const QSizeF wanted = size.scaled(QSizeF(m_picture.size()), Qt::KeepAspectRatio);
  const QRectF from((m_picture.width() - wanted.width()) / 2, (m_picture.height() - wanted.height()) / 2, wanted.width(), wanted.height());
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  painter->drawImage(boundingRect(), m_picture, from);
}

}  // namespace snugline::models
