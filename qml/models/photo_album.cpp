// SPDX-License-Identifier: Apache-2.0
#include "qml/models/photo_album.h"

#include <algorithm>
#include <utility>

#include <QBuffer>
#include <QByteArray>
#include <QImageReader>
#include <QPointer>

#include "core/book/photos.h"
#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_photos.h"

namespace snugline::models {

namespace {
// The bytes are those that were kept, so the only question is how small they may be decoded.
Result<QImage> decoded(const std::string& jpeg, const std::string& place, QSize wanted) {
  QByteArray bytes = QByteArray::fromStdString(jpeg);
  QBuffer buffer(&bytes);
  if (!buffer.open(QIODevice::ReadOnly)) return fail(ErrorCode::internal, place);
  QImageReader reader(&buffer, "jpeg");
  const QSize whole = reader.size();
  const QSize small = whole.scaled(wanted, Qt::KeepAspectRatioByExpanding);
  if (whole.isValid() && small.width() > 0 && small.width() < whole.width()) reader.setScaledSize(small.expandedTo(QSize(1, 1)));
  QImage image = reader.read();
  if (image.isNull()) return fail(ErrorCode::notAllowed, place, std::string(book::rule::kPhotoAltered));
  return image;
}
}  // namespace

PhotoAlbum::PhotoAlbum(Desk* desk, QObject* parent) : QObject(parent), m_desk(desk) { m_reader.setMaxThreadCount(1); }

PhotoAlbum::~PhotoAlbum() {
  m_reader.clear();
  m_reader.waitForDone();
}

void PhotoAlbum::load(const QString& photo, QSize wanted, QObject* context, Shown shown) {
  m_reader.start(
      [this, store = m_desk->photos(), hash = utf8(photo), wanted, context = QPointer<QObject>(context), shown = std::move(shown)] {
        const auto bytes = store.read(hash);
        Result<QImage> image = bytes ? decoded(*bytes, store.pathOf(hash), wanted) : tl::unexpected<Error>(bytes.error());
        QMetaObject::invokeMethod(
            this,
            [context, shown, image = std::move(image)] {
              if (context) shown(image);
            },
            Qt::QueuedConnection);
      });
}

QString PhotoAlbum::keptWhy(const QString& unit, const QString& fact) const {
  const auto may = book::mayRemovePhoto(m_desk->views(), utf8(unit), utf8(fact));
  return may ? QString() : PhotoWords::trouble(may.error());
}

bool PhotoAlbum::isNamed(const std::string& photo) const {
  const auto& units = m_desk->views().units;
  return std::any_of(units.begin(), units.end(), [&](const auto& unit) {
    const auto& photos = unit.second.photos;
    return std::any_of(photos.begin(), photos.end(), [&](const season::PhotoRecord& each) { return each.photo == photo; });
  });
}

void PhotoAlbum::remove(const QString& unit, const QString& fact) {
  if (m_isBusy) return;
  const season::UnitRecord* record = m_desk->views().unit(utf8(unit));
  if (record == nullptr) return;
  std::string photo;
  for (const season::PhotoRecord& each : record->photos) {
    if (each.fact == utf8(fact)) photo = each.photo;
  }
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  m_desk->work([unit = utf8(unit), fact = utf8(fact)](book::Book& book, Instant) { return book::removePhoto(book, unit, fact); }, this,
               [this, photo](const Result<book::Appended>& outcome) {
                 m_isBusy = false;
                 if (!outcome) m_refusal = PhotoWords::trouble(outcome.error());
                 if (outcome && !isNamed(photo) && m_desk->photos().read(photo))
                   m_refusal = tr(
                       "The photo is taken back, but its file could not be deleted yet. That is tried again when the Book is next opened.");
                 emit changed();
                 if (outcome) emit removed();
               });
}

void PhotoAlbum::forgetRefusal() {
  m_refusal.clear();
  emit changed();
}

}  // namespace snugline::models
