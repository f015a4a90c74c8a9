// SPDX-License-Identifier: Apache-2.0
// Purpose: the model sheets the Book has adopted, each with its sizes, air, pads and intervals as words, and adopting another from a
// file. A file that is not a sheet is refused with the path inside it that offends. Thread: GUI thread.
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QVariantList>

namespace snugline::models {

class Choices;
class Desk;

class SheetsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of UnitsModel")
  // {hash, name, adopted, units, sizes: [{name, band}], facts: [{name, words}], cautions}
  Q_PROPERTY(QVariantList sheets READ sheets NOTIFY changed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QString remark READ remark NOTIFY changed)  // "Alder A1 adopted"
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)

 public:
  SheetsModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] QVariantList sheets() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QString remark() const { return m_remark; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

  Q_INVOKABLE void adopt(const QString& pathOrUrl);

 signals:
  void changed();

 private:
  Desk* m_desk;
  const Choices* m_choices;
  QString m_refusal, m_remark;
  bool m_isBusy = false;
};

}  // namespace snugline::models
