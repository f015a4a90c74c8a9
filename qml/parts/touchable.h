// SPDX-License-Identifier: Apache-2.0
// Purpose: whatever is pressed as a whole: a button, a row, a tile. One item with a press, a click and a focus, without the machinery
// of a styled control, because a first screen has dozens of them. Touch, mouse, Space and Enter press it; a finger that slides off
// presses nothing. What it shows is its children. Units: px, ms. Thread: GUI thread.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QBasicTimer>
#include <QFont>
#include <QPointF>
#include <QQuickItem>

namespace snugline::parts {

class Touchable : public QQuickItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QString text MEMBER m_text NOTIFY textChanged FINAL)
  Q_PROPERTY(QFont font MEMBER m_font NOTIFY fontChanged FINAL)
  Q_PROPERTY(qreal textAdvance READ textAdvance NOTIFY textAdvanceChanged FINAL)    // width of the text on one line
  Q_PROPERTY(bool checked MEMBER m_isChecked NOTIFY checkedChanged FINAL)           // as its owner says; a press does not change it
  Q_PROPERTY(bool autoRepeat MEMBER m_repeats NOTIFY autoRepeatChanged FINAL)       // clicks again and again while held
  Q_PROPERTY(bool down READ isDown NOTIFY downChanged FINAL)                        // a finger or key holds it
  Q_PROPERTY(bool visualFocus READ hasVisualFocus NOTIFY visualFocusChanged FINAL)  // the keyboard came here, not a finger
 public:
  explicit Touchable(QQuickItem* parent = nullptr);
  // Nothing is measured before everything about it is known: its font may depend on its width, and its width on what is measured.
  [[nodiscard]] qreal textAdvance() const;
  Q_INVOKABLE [[nodiscard]] qreal advanceOf(const QString& text, const QFont& font) const;  // likewise, of another text on it
  [[nodiscard]] bool isDown() const { return m_isDown; }
  [[nodiscard]] bool hasVisualFocus() const { return m_cameByKeys && hasActiveFocus(); }

 signals:
  void clicked();
  void textChanged();
  void fontChanged();
  void textAdvanceChanged();
  void checkedChanged();
  void autoRepeatChanged();
  void downChanged();
  void visualFocusChanged();

 protected:
  void componentComplete() override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseUngrabEvent() override;
  void touchEvent(QTouchEvent* event) override;
  void touchUngrabEvent() override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void timerEvent(QTimerEvent* event) override;
  void itemChange(ItemChange change, const ItemChangeData& value) override;

 private:
  void press(QPointF where);
  void move(QPointF where);
  void release(QPointF where);
  void letGo();
  void setDown(bool isDown);

  QString m_text;
  mutable qreal m_textAdvance = -1;  // below zero: not measured yet
  QFont m_font;
  bool m_isChecked = false, m_repeats = false, m_isDown = false, m_isHeld = false, m_hasRepeated = false, m_cameByKeys = false;
  int m_touch = -1;  // the finger that holds it
  QBasicTimer m_repeat;
};

}  // namespace snugline::parts
