// SPDX-License-Identifier: Apache-2.0
// Purpose: a model sheet while it is written: from scratch, as a copy, instead of one that counts, or from a file; every fault at once and
// beside its field; what keeping it would change, before it is kept; keeping it. A half written sheet is kept in a small file of this
// device with every change and comes back after a restart; it is no part of the Book. Errors: a refused act is `refusal`.
// Thread: GUI thread.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QVariantList>

#include "core/gear/sheet_draft.h"
#include "core/season/sheet_change.h"
#include "qml/models/sentences.h"
#include "qml/models/sheet_fields.h"

namespace snugline::models {

class Choices;
class Desk;

class SheetEditor : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("part of SheetsModel")
  Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)                 // a half written sheet is there
  Q_PROPERTY(QString title READ title NOTIFY changed)                // its name
  Q_PROPERTY(QString insteadWords READ insteadWords NOTIFY changed)  // "Instead of Alder A1", "A new sheet"
  Q_PROPERTY(QVariantList sections READ sections NOTIFY changed)     // {name, text, state}: state as a step ladder takes it
  Q_PROPERTY(QString section READ section WRITE setSection NOTIFY changed)
  Q_PROPERTY(QVariantList groups READ groups NOTIFY changed)  // as in sheet_fields.h
  Q_PROPERTY(QVariantList actions READ actions NOTIFY changed)
  Q_PROPERTY(QStringList troubles READ troubles NOTIFY changed)
  Q_PROPERTY(QString intro READ intro NOTIFY changed)
  Q_PROPERTY(QStringList unread READ unread NOTIFY changed)  // entries of a file that could not be taken over
  Q_PROPERTY(QVariantMap drawn READ drawn NOTIFY changed)
  Q_PROPERTY(QVariantList callouts READ callouts NOTIFY changed)
  Q_PROPERTY(QVariantList chart READ chart NOTIFY changed)
  Q_PROPERTY(QString openWords READ openWords NOTIFY changed)   // "3 values not said yet, 1 to put right"; empty for none
  Q_PROPERTY(QString nextFault READ nextFault NOTIFY changed)   // where the first of them is
  Q_PROPERTY(bool isWhole READ isWhole NOTIFY changed)          // without a fault
  Q_PROPERTY(bool isDifferent READ isDifferent NOTIFY changed)  // from the sheet that it would replace
  Q_PROPERTY(bool replaces READ replaces NOTIFY changed)
  Q_PROPERTY(QStringList differences READ differences NOTIFY looked)
  Q_PROPERTY(QString effectWords READ effectWords NOTIFY looked)  // "7 athletes and 9 helmets are concerned"
  Q_PROPERTY(QVariantList athletes READ athletes NOTIFY looked)   // {athlete, number, title, detail, tone, changesRow}
  Q_PROPERTY(QVariantList helmets READ helmets NOTIFY looked)     // {unit, title, detail, tone}
  Q_PROPERTY(QString openChecks READ openChecks NOTIFY looked)
  Q_PROPERTY(QString barred READ barred NOTIFY looked)  // why it cannot be kept as it is
  Q_PROPERTY(bool canKeep READ canKeep NOTIFY looked)
  Q_PROPERTY(QString droppedWords READ droppedWords NOTIFY changed)  // what undoDrop brings back; empty for none
  Q_PROPERTY(QString refusal READ refusal NOTIFY changed)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed)

 public:
  SheetEditor(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void beginNew();
  Q_INVOKABLE void beginCopy(const QString& hash);    // a sheet of its own, its short name still to be said
  Q_INVOKABLE void beginChange(const QString& hash);  // takes the place of the one that counts; of an earlier one: puts it back
  void begin(const gear::ReadDraft& read, const std::string& replaces);  // from a file
  Q_INVOKABLE void drop();
  Q_INVOKABLE void undoDrop();
  void forgetDropped() { m_dropped.reset(); }  // something was kept since: that is what undo names

  Q_INVOKABLE void step(const QString& path, const QString& wholes);
  Q_INVOKABLE void type(const QString& path, const QString& words);  // a number as typed, or the text as it stands
  Q_INVOKABLE void choose(const QString& path, const QString& value);
  Q_INVOKABLE void act(const QString& action);
  Q_INVOKABLE void goToFault();  // the section of the first one
  Q_INVOKABLE void look();       // what keeping it would change
  Q_INVOKABLE void keep();       // `kept` follows, or `refusal`

  [[nodiscard]] bool isOpen() const { return m_isOpen; }
  [[nodiscard]] QString title() const;
  [[nodiscard]] QString insteadWords() const;
  [[nodiscard]] QVariantList sections() const;
  [[nodiscard]] QString section() const { return code(m_section); }
  void setSection(const QString& section);
  [[nodiscard]] QVariantList groups() const { return m_fields.groups; }
  [[nodiscard]] QVariantList actions() const { return m_fields.actions; }
  [[nodiscard]] QStringList troubles() const { return m_fields.troubles; }
  [[nodiscard]] QString intro() const { return m_fields.intro; }
  [[nodiscard]] QStringList unread() const { return m_unread; }
  [[nodiscard]] QVariantMap drawn() const;
  [[nodiscard]] QVariantList callouts() const;
  [[nodiscard]] QVariantList chart() const;
  [[nodiscard]] QString openWords() const;
  [[nodiscard]] QString nextFault() const;
  [[nodiscard]] bool isWhole() const { return m_isOpen && m_faults.empty() && m_typed.empty(); }
  [[nodiscard]] bool isDifferent() const;
  [[nodiscard]] bool replaces() const { return !m_replaces.empty(); }
  [[nodiscard]] QStringList differences() const;
  [[nodiscard]] QString effectWords() const;
  [[nodiscard]] QVariantList athletes() const;
  [[nodiscard]] QVariantList helmets() const;
  [[nodiscard]] QString openChecks() const;
  [[nodiscard]] QString barred() const;
  [[nodiscard]] bool canKeep() const;
  [[nodiscard]] QString droppedWords() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }

 signals:
  void changed();
  void looked();
  // hash: that counts from now on; before: the one that it replaced, or empty; fact: which says so.
  void kept(const QString& hash, const QString& before, const QStringList& facts);

 private:
  struct Dropped {
    gear::SheetDraft draft;
    std::string replaces;
    SheetSection section = SheetSection::names;
  };
  void clear();
  void start(gear::SheetDraft draft, std::string replaces, SheetSection section);
  void edited();
  void judge();
  [[nodiscard]] gear::ModelSheet sheet() const;  // as far as it is said
  [[nodiscard]] Result<gear::ModelSheet> whole() const;
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] QString draftFile() const;
  void readFile();
  void writeFile();

  Desk* m_desk;
  const Choices* m_choices;
  gear::SheetDraft m_draft;
  std::string m_replaces;  // hash
  bool m_isOpen = false, m_isIdSaid = false;
  SheetSection m_section = SheetSection::names;
  std::vector<gear::SheetFault> m_faults;
  Typed m_typed;
  SheetFields m_fields;
  QStringList m_unread;
  std::optional<season::SheetChange> m_change;
  std::optional<Dropped> m_dropped;
  QString m_refusal;
  bool m_isBusy = false;
};

}  // namespace snugline::models
