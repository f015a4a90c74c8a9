// SPDX-License-Identifier: Apache-2.0
// Purpose: photos of gear as they are shown and taken back. Each is read anew from beside the Book and proved by its hash before a pixel of
// it is shown; what does not hold is a sentence instead of a picture. Taking one back deletes its file and cannot be undone.
// Thread: GUI thread; files are read and decoded on a thread of the album's own.
#pragma once

#include <functional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QImage>
#include <QObject>
#include <QSize>
#include <QString>
#include <QThreadPool>

#include "core/quantity/result.h"

namespace snugline::models {

class Desk;

class PhotoAlbum : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of PhotoModel")
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
 public:
  explicit PhotoAlbum(Desk* desk, QObject* parent = nullptr);
  ~PhotoAlbum() override;  // waits for what is being read

  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  // Why it may not be taken back; empty where it may.
  Q_INVOKABLE [[nodiscard]] QString keptWhy(const QString& unit, const QString& fact) const;
  Q_INVOKABLE void remove(const QString& unit, const QString& fact);
  Q_INVOKABLE void forgetRefusal();

  using Shown = std::function<void(const Result<QImage>&)>;
  // Proved, decoded to about `wanted` or a little more. `shown` is called on this thread unless context is gone.
  void load(const QString& photo, QSize wanted, QObject* context, Shown shown);

 signals:
  void changed();
  void removed();

 private:
  [[nodiscard]] bool isNamed(const std::string& photo) const;

  Desk* m_desk;
  QThreadPool m_reader;
  QString m_refusal;
  bool m_isBusy = false;
};

}  // namespace snugline::models
