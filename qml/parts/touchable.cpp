// SPDX-License-Identifier: Apache-2.0
#include "touchable.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QStyleHints>

namespace snugline::parts {

namespace {

constexpr int kFirstRepeatMs = 300;  // ours: long enough that a single touch stays single
constexpr int kNextRepeatMs = 100;

bool isKeyboard(Qt::FocusReason reason) {
  return reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason || reason == Qt::ShortcutFocusReason;
}

bool presses(const QKeyEvent& event) { return event.key() == Qt::Key_Space || event.key() == Qt::Key_Select; }

}  // namespace

Touchable::Touchable(QQuickItem* parent) : QQuickItem(parent) {
  setAcceptedMouseButtons(Qt::LeftButton);
  setAcceptTouchEvents(true);
  setActiveFocusOnTab(true);
  const auto remeasure = [this] {
    if (!isComponentComplete()) return;
    m_textAdvance = -1;
    emit textAdvanceChanged();
  };
  connect(this, &Touchable::textChanged, this, remeasure);
  connect(this, &Touchable::fontChanged, this, remeasure);
}

void Touchable::componentComplete() {
  QQuickItem::componentComplete();
  emit textAdvanceChanged();
}

qreal Touchable::textAdvance() const {
  if (m_textAdvance < 0 && isComponentComplete()) m_textAdvance = advanceOf(m_text, m_font);
  return std::max(0.0, m_textAdvance);
}

qreal Touchable::advanceOf(const QString& text, const QFont& font) const {
  return text.isEmpty() || !isComponentComplete() ? 0.0 : QFontMetricsF(font).horizontalAdvance(text);
}

void Touchable::setDown(bool isDown) {
  if (m_isDown == isDown) return;
  m_isDown = isDown;
  emit downChanged();
}

void Touchable::press(QPointF) {
  if (!QGuiApplication::styleHints()->setFocusOnTouchRelease()) forceActiveFocus(Qt::MouseFocusReason);
  m_isHeld = true;
  m_hasRepeated = false;
  setDown(true);
  if (m_repeats) m_repeat.start(kFirstRepeatMs, this);
}

void Touchable::move(QPointF where) {
  if (!m_isHeld) return;
  setDown(contains(where));
  if (!m_isDown) m_repeat.stop();
}

void Touchable::release(QPointF where) {
  if (!m_isHeld) return;
  const bool isClick = m_isDown && contains(where) && !m_hasRepeated;
  if (isClick && QGuiApplication::styleHints()->setFocusOnTouchRelease()) forceActiveFocus(Qt::MouseFocusReason);
  letGo();
  if (isClick) emit clicked();
}

// Without a click: the finger slid off, a list began to move under it, or it was switched off or hidden.
void Touchable::letGo() {
  m_isHeld = false;
  m_touch = -1;
  m_repeat.stop();
  setDown(false);
}

void Touchable::mousePressEvent(QMouseEvent* event) {
  press(event->position());
  event->accept();
}

void Touchable::mouseMoveEvent(QMouseEvent* event) {
  move(event->position());
  event->accept();
}

void Touchable::mouseReleaseEvent(QMouseEvent* event) {
  release(event->position());
  event->accept();
}

// The second of two quick presses comes as a press first.
void Touchable::mouseDoubleClickEvent(QMouseEvent* event) { event->accept(); }

void Touchable::mouseUngrabEvent() { letGo(); }
void Touchable::touchUngrabEvent() { letGo(); }

void Touchable::touchEvent(QTouchEvent* event) {
  if (event->type() == QEvent::TouchCancel) return letGo();
  bool isOurs = false;
  for (const QEventPoint& point : event->points()) {
    if (m_touch < 0 && !m_isHeld && point.state() == QEventPoint::Pressed) m_touch = point.id();
    if (point.id() != m_touch) continue;
    isOurs = true;
    if (point.state() == QEventPoint::Pressed) {
      press(point.position());
    } else if (point.state() == QEventPoint::Updated) {
      move(point.position());
    } else if (point.state() == QEventPoint::Released) {
      release(point.position());
    }
  }
  event->setAccepted(isOurs);
}

void Touchable::keyPressEvent(QKeyEvent* event) {
  const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (presses(*event)) {
    if (!event->isAutoRepeat()) {
      m_isHeld = true;
      m_hasRepeated = false;
      setDown(true);
      if (m_repeats) m_repeat.start(kFirstRepeatMs, this);
    }
  } else if (isEnter) {
    emit clicked();
  } else {
    QQuickItem::keyPressEvent(event);
    return;
  }
  event->accept();
}

void Touchable::keyReleaseEvent(QKeyEvent* event) {
  if (!presses(*event)) {
    QQuickItem::keyReleaseEvent(event);
    return;
  }
  event->accept();
  if (event->isAutoRepeat() || !m_isHeld) return;
  const bool isClick = m_isDown && !m_hasRepeated;
  letGo();
  if (isClick) emit clicked();
}

void Touchable::focusInEvent(QFocusEvent* event) {
  QQuickItem::focusInEvent(event);
  m_cameByKeys = isKeyboard(event->reason());
  if (hasVisualFocus()) emit visualFocusChanged();
}

void Touchable::focusOutEvent(QFocusEvent* event) {
  QQuickItem::focusOutEvent(event);
  if (m_isHeld) letGo();
  const bool had = m_cameByKeys;
  m_cameByKeys = false;
  if (had) emit visualFocusChanged();
}

void Touchable::timerEvent(QTimerEvent* event) {
  if (event->timerId() != m_repeat.timerId()) return QQuickItem::timerEvent(event);
  m_hasRepeated = true;
  m_repeat.start(kNextRepeatMs, this);
  emit clicked();
}

void Touchable::itemChange(ItemChange change, const ItemChangeData& value) {
  QQuickItem::itemChange(change, value);
  const bool isGone = (change == ItemVisibleHasChanged || change == ItemEnabledHasChanged) && !value.boolValue;
  if (isGone && m_isHeld) letGo();
}

}  // namespace snugline::parts
