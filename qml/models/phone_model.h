// SPDX-License-Identifier: Apache-2.0
// Purpose: Snugline on an athlete's own phone (core/book/phone.h): joined by a code from staff, it holds what this athlete said, the next
// look and what came of it, in one small file of its own, and passes files with the staff. No Book is opened there, and no name is held.
// Errors: one sentence in `trouble`; what was said stays until it is kept. Ownership: the Shell's. Thread: GUI thread only; the file is
// a few kilobytes.
#pragma once

#include <optional>
#include <string>

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QStringList>

#include "choices.h"
#include "core/book/phone.h"
#include "desk.h"
#include "say_model.h"

namespace snugline::models {

class PhoneModel;

// The Say door on the phone: the same screens, with the phone's own file behind them.
class PhoneSay : public snugline::models::SayModel {  // in full: the QML type registration reads it as it is written
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the phone")
 public:
  PhoneSay(PhoneModel* phone, Desk* desk, Choices* choices, QObject* parent);
  Q_INVOKABLE void beginOwn();  // there is only one who speaks here
  [[nodiscard]] QString jersey() const override;
  [[nodiscard]] QVariantMap drawn() const override;
  [[nodiscard]] bool isShared() const override { return false; }
  [[nodiscard]] QVariantMap findings() const override;

 protected:
  void send(const season::SaidRecord& said, Recorded done) override;
  void follow(const std::string& athlete, const std::string& said, bool isMistake, Recorded done) override;
  void takeBackFact(const std::string& fact, Recorded done) override;
  [[nodiscard]] QString nextWords(const season::SaidRecord& said) const override;
  void tellSeen() override;

 private:
  PhoneModel* m_phone;
};

class PhoneModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(snugline::models::PhoneSay* say MEMBER m_say CONSTANT)
  Q_PROPERTY(bool isJoined READ isJoined NOTIFY changed)
  Q_PROPERTY(bool mayJoin READ mayJoin NOTIFY changed)  // this program can be an athlete's phone, and its Book is still empty
  Q_PROPERTY(QString jersey READ jersey NOTIFY changed)
  Q_PROPERTY(QString next READ next NOTIFY changed)              // the next look, as the staff last told
  Q_PROPERTY(QStringList outcomes READ outcomes NOTIFY changed)  // what came of what was said, newest first
  Q_PROPERTY(QString waiting READ waiting NOTIFY changed)        // "2 reports wait for staff"; empty when none
  Q_PROPERTY(QString remark READ remark NOTIFY changed)
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
 public:
  // file: where the phone is kept; empty: this program is no phone.
  PhoneModel(const QString& file, Desk* desk, Choices* choices, QObject* parent = nullptr);

  Q_INVOKABLE void join(const QString& code);
  Q_INVOKABLE void writeReports(const QString& folder);  // "snugline-reports.json" in it; empty: the Documents folder
  Q_INVOKABLE void takeAnswers(const QString& file);
  Q_INVOKABLE void forget();  // what was said before on the glass

  [[nodiscard]] bool isJoined() const { return m_phone.has_value(); }
  [[nodiscard]] bool mayJoin() const;
  [[nodiscard]] QString jersey() const;
  [[nodiscard]] QString next() const;
  [[nodiscard]] QStringList outcomes() const;
  [[nodiscard]] QString waiting() const;
  [[nodiscard]] QString remark() const { return m_remark; }
  [[nodiscard]] QString trouble() const { return m_trouble; }
  [[nodiscard]] const std::optional<book::Phone>& phone() const { return m_phone; }
  [[nodiscard]] PhoneSay* say() const { return m_say; }
  Result<std::string> record(const season::SaidRecord& said);
  Result<std::string> follow(const std::string& said, bool isMistake);
  Result<std::string> takeBack(const std::string& fact);

 signals:
  void changed();
  void joined();

 private:
  [[nodiscard]] Result<void> keep(const book::Phone& phone);
  void tell(const QString& remark, const QString& trouble);

  QString m_file;
  Desk* m_desk;
  Choices* m_choices;
  PhoneSay* m_say;
  std::optional<book::Phone> m_phone;
  QString m_remark, m_trouble;
};

}  // namespace snugline::models
