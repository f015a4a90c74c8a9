// SPDX-License-Identifier: Apache-2.0
// Purpose: the fit strip and the point strip as one painted item, cheap enough for a long list under software rendering: it paints
// once into its own image and again only when a property changes. Units: px. Thread: GUI thread; paints on the render thread from copies.
#pragma once

#include <atomic>

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QStringList>

namespace snugline::drawing {

class StripGlyph : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  // One word a place: "snug", "over", "under", "fault", "unseen"; "said-over", "said-under", "said-fault" are the athlete's own word;
  // "sound" is "snug".
  Q_PROPERTY(QStringList places READ places WRITE setPlaces NOTIFY changed FINAL)
  Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY changed FINAL)  // place with a frame round it, -1 none
  Q_PROPERTY(QColor snugColor MEMBER m_snug NOTIFY changed FINAL)
  Q_PROPERTY(QColor seeColor MEMBER m_see NOTIFY changed FINAL)
  Q_PROPERTY(QColor stopColor MEMBER m_stop NOTIFY changed FINAL)
  Q_PROPERTY(QColor lineColor MEMBER m_line NOTIFY changed FINAL)
  Q_PROPERTY(QColor unseenColor MEMBER m_unseen NOTIFY changed FINAL)
  Q_PROPERTY(qreal weight MEMBER m_weight NOTIFY changed FINAL)
  Q_PROPERTY(int paints READ paints NOTIFY painted FINAL)  // how often it was painted: a row that only moves paints nothing

 public:
  explicit StripGlyph(QQuickItem* parent = nullptr);
  [[nodiscard]] QStringList places() const { return m_places; }
  [[nodiscard]] int current() const { return m_current; }
  [[nodiscard]] int paints() const { return m_paints.load(); }
  void setPlaces(const QStringList& places);
  void setCurrent(int current);
  void paint(QPainter* painter) override;

 signals:
  void changed();
  void painted();

 private:
  QStringList m_places;
  int m_current = -1;
  std::atomic<int> m_paints = 0;
  QColor m_snug, m_see, m_stop, m_line, m_unseen;
  qreal m_weight = 2.0;
};

}  // namespace snugline::drawing
