// SPDX-License-Identifier: Apache-2.0
// Purpose: the helmets of the Book as a list with a filter and a search, the page of one of them, and the model sheets.
// Thread: GUI thread. Errors: sentences in `refusal` of the page or of the sheets.
#pragma once

#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QString>
#include <QVariantList>

#include "qml/models/notice_model.h"
#include "qml/models/sheets_model.h"
#include "qml/models/unit_air.h"
#include "qml/models/unit_page.h"

namespace snugline::models {

class Choices;

class UnitsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built where the app is put together")
  Q_PROPERTY(Filter filter READ filter WRITE setFilter NOTIFY listed)
  Q_PROPERTY(QString search READ search WRITE setSearch NOTIFY listed)
  Q_PROPERTY(QVariantList filters READ filters NOTIFY listed)  // {filter, name, count}
  Q_PROPERTY(int count READ count NOTIFY listed)
  Q_PROPERTY(snugline::models::UnitPage* page READ page CONSTANT)
  Q_PROPERTY(snugline::models::UnitAir* air READ air CONSTANT)
  Q_PROPERTY(snugline::models::NoticeModel* notices READ notices CONSTANT)
  Q_PROPERTY(snugline::models::SheetsModel* sheets READ sheets CONSTANT)

 public:
  enum class Filter { All, InService, OnHold, Shelf, WithAthletes, Lapsing };
  Q_ENUM(Filter)
  enum Role {
    UnitIdRole = Qt::UserRole + 1,
    SerialRole,
    KindRole,
    StatusRole,
    PointsRole,
    ToneRole,      // as StandingWords::tone
    StandingRole,  // code of its state
  };

  UnitsModel(Desk* desk, const Choices* choices, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  [[nodiscard]] Filter filter() const { return m_filter; }
  [[nodiscard]] QString search() const { return m_search; }
  [[nodiscard]] QVariantList filters() const;
  [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
  [[nodiscard]] UnitPage* page() { return &m_page; }
  [[nodiscard]] UnitAir* air() { return &m_air; }
  [[nodiscard]] NoticeModel* notices() { return &m_notices; }
  [[nodiscard]] SheetsModel* sheets() { return &m_sheets; }
  void setFilter(Filter filter);
  void setSearch(const QString& search);

 signals:
  void listed();

 private:
  void list();

  Desk* m_desk;
  const Choices* m_choices;
  UnitPage m_page;
  UnitAir m_air;
  SheetsModel m_sheets;
  NoticeModel m_notices;
  Filter m_filter = Filter::All;
  QString m_search;
  std::vector<std::string> m_rows;  // unit ids, by serial
};

}  // namespace snugline::models
