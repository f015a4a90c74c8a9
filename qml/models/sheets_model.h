// SPDX-License-Identifier: Apache-2.0
// Purpose: the model sheets of the Book: those that count and those that were replaced, with the pages that show one and write one; taking
// one in from a file. A file that is no sheet is refused with every path inside it that offends, and can be put right here where it can
// be read at all. Thread: GUI thread.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include "qml/models/desk.h"
#include "qml/models/last_act.h"
#include "qml/models/sheet_editor.h"
#include "qml/models/sheet_page.h"

namespace snugline::models {

class Choices;

class SheetsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of UnitsModel")
  Q_PROPERTY(QVariantList sheets READ sheets NOTIFY changed)    // that count: {hash, title, detail, note}
  Q_PROPERTY(QVariantList earlier READ earlier NOTIFY changed)  // replaced: {hash, title, detail}
  Q_PROPERTY(snugline::models::SheetPage* page READ page CONSTANT)
  Q_PROPERTY(snugline::models::SheetEditor* editor READ editor CONSTANT)
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(QStringList faults READ faults NOTIFY changed)      // of the file that was refused
  Q_PROPERTY(bool canMend READ canMend NOTIFY changed)           // it could be read so far that it can be put right here
  Q_PROPERTY(QString remark READ remark NOTIFY changed)          // "Alder A1 adopted"
  Q_PROPERTY(QString lastWords READ lastWords NOTIFY changed)    // what undo takes back
  Q_PROPERTY(QString aboutWords READ aboutWords NOTIFY changed)  // the same where it was about the sheet that the page shows
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)

 public:
  SheetsModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);
  void useOutbox(std::shared_ptr<ports::Outbox> outbox) { m_page.useOutbox(std::move(outbox)); }

  [[nodiscard]] QVariantList sheets() const;
  [[nodiscard]] QVariantList earlier() const;
  [[nodiscard]] SheetPage* page() { return &m_page; }
  [[nodiscard]] SheetEditor* editor() { return &m_editor; }
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] QStringList faults() const { return m_faults; }
  [[nodiscard]] bool canMend() const { return m_broken.has_value() && !m_editor.isOpen(); }
  [[nodiscard]] QString remark() const { return m_remark; }
  [[nodiscard]] QString lastWords() const { return m_last.words(); }
  [[nodiscard]] QString aboutWords() const { return m_last.wordsAbout(m_page.hash().toStdString()); }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

  // A new model is adopted at once; one whose short name counts already goes to the editor, and `changeWanted` follows.
  Q_INVOKABLE void adopt(const QString& pathOrUrl);
  Q_INVOKABLE void mend();  // the file refused last, in the editor
  Q_INVOKABLE void undo();
  Q_INVOKABLE void forget();  // refusal, remark and undo: another page was opened

 signals:
  void changed();
  void changeWanted();  // the editor holds a whole sheet: what it changes is to be shown
  void undone();

 private:
  void onKept(const QString& hash, const QString& before, const QStringList& facts);
  [[nodiscard]] std::string standingOfId(const std::string& id) const;

  Desk* m_desk;
  const Choices* m_choices;
  SheetPage m_page;
  SheetEditor m_editor;
  std::optional<gear::ReadDraft> m_broken;
  LastAct m_last;
  std::string m_before;  // what counts again once the last act is undone
  QString m_refusal, m_remark;
  QStringList m_faults;
  bool m_isBusy = false, m_wasWriting = false;
};

}  // namespace snugline::models
