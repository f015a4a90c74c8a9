// SPDX-License-Identifier: Apache-2.0
#include "qml/models/photo_view.h"

#include <QPainter>
#include <QQuickWindow>

#include "qml/models/sentences_photos.h"

namespace snugline::models {

qreal PhotoView::ratio() const {
  return shown().isNull() ? 0.0 : static_cast<qreal>(shown().height()) / static_cast<qreal>(shown().width());
}

void PhotoView::setAlbum(PhotoAlbum* album) {
  if (m_album == album) return;
  m_album = album;
  m_asked = {};
  emit sourceChanged();
  read();
}

void PhotoView::setPhoto(const QString& photo) {
  if (m_photo == photo) return;
  m_photo = photo;
  m_image = {};
  m_words.clear();
  m_asked = {};
  emit sourceChanged();
  emit shownChanged();
  update();
  read();
}

void PhotoView::setTaking(PhotoModel* taking) {
  if (m_taking == taking) return;
  if (m_taking) m_taking->disconnect(this);
  m_taking = taking;
  if (m_taking) {
    connect(m_taking, &PhotoModel::pictureChanged, this, [this] {
      emit shownChanged();
      update();
    });
  }
  emit sourceChanged();
  emit shownChanged();
  update();
}

void PhotoView::setCrops(bool crops) {
  if (m_crops == crops) return;
  m_crops = crops;
  emit sourceChanged();
  update();
}

void PhotoView::componentComplete() {
  QQuickPaintedItem::componentComplete();
  read();
}

void PhotoView::geometryChange(const QRectF& geometry, const QRectF& before) {
  QQuickPaintedItem::geometryChange(geometry, before);
  read();
}

// Once it is known how large it stands, and again when it stands larger.
void PhotoView::read() {
  if (!isComponentComplete() || m_taking || !m_album || m_photo.isEmpty() || width() < 1 || height() < 1) return;
  const qreal dots = window() == nullptr ? 1.0 : window()->effectiveDevicePixelRatio();
  const QSize wanted = (size() * dots).toSize().expandedTo(QSize(1, 1));
  if (wanted.width() <= m_asked.width() && wanted.height() <= m_asked.height()) return;
  m_asked = wanted;
  m_album->load(m_photo, wanted, this, [this, photo = m_photo](const Result<QImage>& image) {
    if (photo != m_photo) return;
    m_image = image ? *image : QImage();
    m_words = image ? QString() : PhotoWords::trouble(image.error());
    emit shownChanged();
    update();
  });
}

void PhotoView::paint(QPainter* painter) {
  const QImage& image = shown();
  if (image.isNull() || width() <= 0 || height() <= 0) return;
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  if (m_crops) {
    const QSizeF wanted = boundingRect().size().scaled(QSizeF(image.size()), Qt::KeepAspectRatio);
    const QRectF from((image.width() - wanted.width()) / 2, (image.height() - wanted.height()) / 2, wanted.width(), wanted.height());
    painter->drawImage(boundingRect(), image, from);
    return;
  }
  const QSizeF fitted = QSizeF(image.size()).scaled(boundingRect().size(), Qt::KeepAspectRatio);
  painter->drawImage(QRectF((width() - fitted.width()) / 2, (height() - fitted.height()) / 2, fitted.width(), fitted.height()), image);
}

}  // namespace snugline::models
