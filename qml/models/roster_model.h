// SPDX-License-Identifier: Apache-2.0
// Purpose: the athletes of the Book as a list with a search, adding and changing one, and taking a roster file in.
// Thread: GUI thread. Errors: sentences in `refusal`, nothing written.
#pragma once

#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QString>
#include <QVariantMap>

#include "qml/models/desk.h"
#include "qml/models/roster_import.h"

namespace snugline::models {

class Choices;

class RosterModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built where the app is put together")
  Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY listed)                   // jersey or part of a name
  Q_PROPERTY(bool onlyUnsigned READ isOnlyUnsigned WRITE setOnlyUnsigned NOTIFY listed)  // who has yet to sign the yearly warning
  Q_PROPERTY(int count READ count NOTIFY listed)
  Q_PROPERTY(int total READ total NOTIFY listed)
  Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged)
  Q_PROPERTY(bool isBusy READ isBusy NOTIFY refusalChanged)
  Q_PROPERTY(snugline::models::RosterImport* intake READ intake CONSTANT)

 public:
  enum Role {
    AthleteIdRole = Qt::UserRole + 1,
    JerseyRole,
    NameRole,
    HelmetRole,
    TapeRole,
    IsTapeStaleRole,
    IsOnRosterRole,
    IsUnsignedRole
  };

  RosterModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  [[nodiscard]] QString search() const { return m_search; }
  [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
  [[nodiscard]] int total() const;
  [[nodiscard]] QString refusal() const { return m_refusal; }
  [[nodiscard]] bool isBusy() const { return m_isBusy; }
  [[nodiscard]] RosterImport* intake() { return &m_intake; }
  void setSearch(const QString& search);
  [[nodiscard]] bool isOnlyUnsigned() const { return m_isOnlyUnsigned; }
  void setOnlyUnsigned(bool isOnly);

  Q_INVOKABLE QVariantMap athlete(const QString& athleteId) const;  // {jersey, family, given, birthYear, isOnRoster} for the form
  Q_INVOKABLE void add(const QString& jersey, const QString& family, const QString& given, const QString& birthYear);
  Q_INVOKABLE void change(const QString& athleteId, const QString& jersey, const QString& family, const QString& given,
                          const QString& birthYear, bool isOnRoster);
  Q_INVOKABLE void forgetRefusal();

 signals:
  void listed();
  void refusalChanged();
  void written();  // on disk

 private:
  void list();
  void refuse(const QString& words);
  void write(Desk::Job job, const QString& words);

  Desk* m_desk;
  const Choices* m_choices;
  RosterImport m_intake;
  QString m_search;
  QString m_refusal;
  bool m_isBusy = false;
  bool m_isOnlyUnsigned = false;
  std::vector<std::string> m_rows;  // athlete ids, by jersey number then name
};

}  // namespace snugline::models
