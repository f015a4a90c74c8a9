// SPDX-License-Identifier: Apache-2.0
// Purpose: the board as one list for the Line screen: lanes with their counts, rows with every reason in words, Nothing due collapsed;
// search by jersey number; and the walk of a standing line, one athlete after another. The weather on the chip ranks it anew at once.
// Ranking and reasons are core's.
// Thread: GUI thread only.
#pragma once

#include <set>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QTimer>
#include <QVariantList>
#include <QVariantMap>

#include "choices.h"
#include "core/season/board.h"
#include "desk.h"
#include "sentences.h"
#include "weather_model.h"

namespace snugline::models {

class LineModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("built by the composition root")
  Q_PROPERTY(QString heading READ heading NOTIFY boardChanged)  // "Wed 14 Oct, practice at 15:30"
  // Between two seasons, and what that means for the rows; empty while a season is open.
  Q_PROPERTY(QString betweenWords READ betweenWords NOTIFY boardChanged)
  Q_PROPERTY(int doNotWear READ doNotWear NOTIFY boardChanged)
  Q_PROPERTY(int beforePractice READ beforePractice NOTIFY boardChanged)
  Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY boardChanged)                // nobody on the roster
  Q_PROPERTY(QString query READ query WRITE setQuery NOTIFY queryChanged)  // digits of a jersey number
  Q_PROPERTY(QVariantList matches READ matches NOTIFY matchesChanged)      // rows as maps, keys as the roles
  Q_PROPERTY(QString walkWords READ walkWords NOTIFY boardChanged)         // what "Start the line" would walk: "4 before practice"
  Q_PROPERTY(QString lineCheckWords READ lineCheckWords NOTIFY
                 boardChanged)  // "14 because of the weather"; empty where a line check is not offered
  Q_PROPERTY(bool isWalking READ isWalking NOTIFY walkChanged)
  Q_PROPERTY(QVariantMap walkRow READ walkRow NOTIFY walkChanged)  // the athlete whose turn it is; empty at the end
  Q_PROPERTY(QString walkLeft READ walkLeft NOTIFY walkChanged)    // "3 more after this one"
 public:
  enum Role {
    kindRole = Qt::UserRole + 1,
    laneRole,
    toneRole,
    titleRole,
    isOpenRole,
    athleteRole,
    jerseyRole,
    nameRole,
    reasonRole,
    moreRole,
    stripRole,
    pointsRole,
    serialRole,
    actionRole,
    actionCodeRole
  };
  Q_ENUM(Role)

  LineModel(Desk* desk, Choices* choices, WeatherModel* weather, QObject* parent = nullptr);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  [[nodiscard]] QString heading() const;
  [[nodiscard]] QString betweenWords() const;
  [[nodiscard]] int doNotWear() const { return m_board.counts()[0]; }
  [[nodiscard]] int beforePractice() const { return m_board.counts()[1]; }
  [[nodiscard]] bool isEmpty() const { return m_board.rows().empty(); }
  [[nodiscard]] QString query() const { return m_query; }
  [[nodiscard]] QVariantList matches() const;
  [[nodiscard]] QString walkWords() const;
  [[nodiscard]] QString lineCheckWords() const;
  // Who stands in the lane because of the air, as ranked; for the line check.
  [[nodiscard]] std::vector<const season::DueRow*> airRows() const;
  [[nodiscard]] bool isWalking() const { return m_isWalking; }
  [[nodiscard]] QVariantMap walkRow() const;
  [[nodiscard]] QString walkLeft() const;
  [[nodiscard]] const season::Board& board() const { return m_board; }

  void setQuery(const QString& digits);
  Q_INVOKABLE void toggleLane(const QString& lane);
  Q_INVOKABLE void startWalk();
  Q_INVOKABLE void walkOn();  // the present one is seen or skipped: whose turn is next
  Q_INVOKABLE void endWalk();

 signals:
  void boardChanged();
  void queryChanged();
  void matchesChanged();
  void walkChanged();

 private:
  struct Entry {
    bool isLane = false;
    season::Lane lane = season::Lane::nothingDue;
    season::DueRow row;  // of a row
    int count = 0;       // of a lane
    friend bool operator==(const Entry&, const Entry&) = default;
  };
  void build();
  void update(const std::vector<std::string>& athletes);
  void relist();
  void onMinute();
  void onWeather();
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] QVariant rowValue(const season::DueRow& row, int role) const;
  [[nodiscard]] QVariant laneValue(const Entry& entry, int role) const;
  [[nodiscard]] QVariantMap rowMap(const season::DueRow& row) const;
  [[nodiscard]] std::vector<const season::DueRow*> walkable() const;

  Desk* m_desk;
  Choices* m_choices;
  WeatherModel* m_weather;
  season::Board m_board;
  std::vector<Entry> m_entries;
  std::set<season::Lane> m_closed{season::Lane::nothingDue};
  QString m_query;
  QTimer m_minute;
  Day m_builtFor, m_practice;
  season::Conditions m_given;  // of the board: what was touched and is not noted yet
  bool m_isWalking = false;
  season::Lane m_walkLane = season::Lane::beforePractice;
  std::string m_walkAthlete;
  std::set<std::string> m_walked;
};

}  // namespace snugline::models
