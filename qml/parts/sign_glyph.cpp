// SPDX-License-Identifier: Apache-2.0
#include "sign_glyph.h"

#include <cmath>
#include <optional>

#include <QPainter>
#include <QtMath>

namespace snugline::parts {

namespace {

constexpr qreal kSide = 24.0;  // of the square on which the strokes are drawn

// From the end points of a circular arc to the centre, as SVG 1.1 (W3C Recommendation, second edition, 2011), F.6.5, does it.
void arcTo(QPainterPath& path, qreal radius, bool isLarge, bool isClockwise, QPointF to) {
  const QPointF from = path.currentPosition();
  const QPointF half = (to - from) / 2;
  const qreal halfLength = std::hypot(half.x(), half.y());
  if (halfLength <= 0) return;
  const qreal r = std::max(radius, halfLength);
  const qreal away = std::sqrt(std::max(0.0, r * r - halfLength * halfLength)) / halfLength * (isLarge == isClockwise ? -1.0 : 1.0);
  const QPointF centre = (from + to) / 2 + QPointF(-half.y(), half.x()) * away;
  // Angles as Qt counts them: against the clock, y down.
  const qreal begin = qRadiansToDegrees(std::atan2(centre.y() - from.y(), from.x() - centre.x()));
  qreal sweep = qRadiansToDegrees(std::atan2(centre.y() - to.y(), to.x() - centre.x())) - begin;
  if (isClockwise && sweep > 0) sweep -= 360;
  if (!isClockwise && sweep < 0) sweep += 360;
  path.arcTo(QRectF(centre.x() - r, centre.y() - r, 2 * r, 2 * r), begin, sweep);
}

}  // namespace

QPainterPath strokePath(QStringView commands) {
  QPainterPath path;
  const auto words = commands.split(u' ', Qt::SkipEmptyParts);
  qsizetype at = 0;
  const auto number = [&]() -> std::optional<qreal> {
    bool isNumber = false;
    const qreal value = at < words.size() ? words[at].toDouble(&isNumber) : 0;
    if (isNumber) ++at;
    return isNumber ? std::optional(value) : std::nullopt;
  };
  const auto point = [&]() -> std::optional<QPointF> {
    const auto x = number();
    const auto y = x ? number() : std::nullopt;
    return y ? std::optional(QPointF(*x, *y)) : std::nullopt;
  };
  while (at < words.size()) {
    const QStringView command = words[at++];
    const QPointF here = path.currentPosition();
    if (command == u"Z") {
      path.closeSubpath();
    } else if (command == u"H" || command == u"V") {
      const auto value = number();
      if (!value) return path;
      path.lineTo(command == u"H" ? QPointF(*value, here.y()) : QPointF(here.x(), *value));
    } else if (command == u"C") {
      const auto first = point(), second = point(), to = point();
      if (!first || !second || !to) return path;
      path.cubicTo(*first, *second, *to);
    } else if (command == u"A") {
      const auto radii = point();
      const auto turn = number(), isLarge = number(), isClockwise = number();
      const auto to = point();
      if (!radii || !turn || !isLarge || !isClockwise || !to) return path;
      arcTo(path, radii->x(), *isLarge > 0, *isClockwise > 0, *to);
    } else {
      const auto to = point();
      if (!to) return path;
      command == u"M" ? path.moveTo(*to) : path.lineTo(*to);
    }
  }
  return path;
}

SignGlyph::SignGlyph(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &SignGlyph::changed, this, [this] {
    setFlag(ItemHasContents, !m_strokes.isEmpty());
    update();
  });
}

void SignGlyph::paint(QPainter* painter) {
  if (m_strokes.isEmpty()) return;
  const qreal scale = width() / kSide;
  painter->scale(scale, scale);
  painter->setBrush(Qt::NoBrush);
  painter->setPen(QPen(m_color, m_weight / scale, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter->drawPath(strokePath(m_strokes));
}

}  // namespace snugline::parts
