// SPDX-License-Identifier: Apache-2.0
#include "strip_glyph.h"

#include <algorithm>

#include <QPainter>

namespace snugline::drawing {

namespace {

// Shapes in parts of the height: a bar reaches from the baseline to near the edge, a dot is as wide as it needs to be seen at arm's length.
constexpr qreal kBarLength = 0.42;
constexpr qreal kBarWidth = 0.16;
constexpr qreal kDotSide = 0.25;
constexpr qreal kFaultSide = 0.30;

}  // namespace

StripGlyph::StripGlyph(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  setOpaquePainting(false);
  connect(this, &StripGlyph::changed, this, [this] { update(); });
}

void StripGlyph::setPlaces(const QStringList& places) {
  if (places == m_places) return;
  m_places = places;
  emit changed();
}

void StripGlyph::setCurrent(int current) {
  if (current == m_current) return;
  m_current = current;
  emit changed();
}

void StripGlyph::paint(QPainter* painter) {
  ++m_paints;
  QMetaObject::invokeMethod(this, &StripGlyph::painted, Qt::QueuedConnection);
  if (m_places.isEmpty()) return;
  const qreal cell = width() / static_cast<qreal>(m_places.size());
  const qreal tall = std::min(height(), cell * 44.0 / 14.0);  // the drawn proportion: 14 px a place at 44 px
  const qreal base = height() / 2;
  painter->setPen(QPen(m_line, std::max(1.0, m_weight * 0.75)));
  painter->drawLine(QPointF(cell * 0.15, base), QPointF(width() - cell * 0.15, base));
  int index = 0;
  for (const QString& place : std::as_const(m_places)) {
    const qreal middle = cell * (index + 0.5);
    const bool said = place.startsWith(QLatin1String("said-"));
    const QStringView what = said ? QStringView(place).mid(5) : QStringView(place);
    const bool over = what == QLatin1String("over");
    const bool under = what == QLatin1String("under");
    if (index == m_current) {
      painter->setPen(QPen(m_unseen, m_weight));
      painter->setBrush(Qt::NoBrush);
      painter->drawRoundedRect(QRectF(middle - cell / 2 + m_weight, base - tall / 2 + m_weight, cell - 2 * m_weight, tall - 2 * m_weight),
                               4, 4);
    }
    if (over || under) {
      const qreal barWidth = tall * kBarWidth;
      QRectF bar(middle - barWidth / 2, over ? base - tall * kBarLength : base, barWidth, tall * kBarLength);
      painter->setPen(QPen(m_see, m_weight));
      painter->setBrush(said ? QBrush(Qt::NoBrush) : QBrush(m_see));
      bar.adjust(m_weight / 2, m_weight / 2, -m_weight / 2, -m_weight / 2);
      painter->drawRoundedRect(bar, 2, 2);
    } else if (what == QLatin1String("fault")) {
      const qreal side = tall * kFaultSide;
      painter->save();
      painter->translate(middle, base);
      painter->rotate(45);
      painter->setPen(QPen(m_stop, m_weight));
      painter->setBrush(said ? QBrush(Qt::NoBrush) : QBrush(m_stop));
      painter->drawRect(QRectF(-side / 2, -side / 2, side, side));
      painter->restore();
    } else {
      const bool snug = what == QLatin1String("snug") || what == QLatin1String("sound");
      const qreal radius = tall * kDotSide / 2;
      painter->setPen(QPen(snug ? m_snug : m_unseen, m_weight * 0.75));
      painter->setBrush(Qt::NoBrush);
      if (snug) {
        painter->setBrush(m_snug);
      } else {  // the baseline does not run through a hollow dot
        painter->setCompositionMode(QPainter::CompositionMode_Clear);
        painter->drawEllipse(QPointF(middle, base), radius, radius);
        painter->fillRect(QRectF(middle - radius, base - m_weight, 2 * radius, 2 * m_weight), Qt::transparent);
        painter->setCompositionMode(QPainter::CompositionMode_SourceOver);
      }
      painter->drawEllipse(QPointF(middle, base), radius, radius);
    }
    ++index;
  }
}

}  // namespace snugline::drawing
