// SPDX-License-Identifier: Apache-2.0
// Purpose: one of our icons as a painted item: a few strokes, painted once into an own small image and again only when a property
// changes. A shape of the scene would bring a module, a path and four objects for each. Units: px; the strokes are drawn on 24 x 24.
// Thread: GUI thread; paints on the render thread from copies.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QPainterPath>
#include <QQuickPaintedItem>

namespace snugline::parts {

// A path of the commands M, L, H, V, C, A (circular arcs only) and Z, absolute; what cannot be read ends it.
[[nodiscard]] QPainterPath strokePath(QStringView commands);

class SignGlyph : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QString strokes MEMBER m_strokes NOTIFY changed FINAL)  // as strokePath() reads them
  Q_PROPERTY(QColor color MEMBER m_color NOTIFY changed FINAL)
  Q_PROPERTY(qreal weight MEMBER m_weight NOTIFY changed FINAL)  // px on the screen

 public:
  explicit SignGlyph(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

 signals:
  void changed();

 private:
  QString m_strokes;
  QColor m_color;
  qreal m_weight = 2.0;
};

}  // namespace snugline::parts
