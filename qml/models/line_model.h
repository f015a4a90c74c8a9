// SPDX-License-Identifier: Apache-2.0
// Purpose: the board as one list for the Line screen: lanes with their counts, rows with their reasons in words, what floods a lane and
// what nobody waits for folded; search by jersey number; and the walk of a standing line, one athlete after another. It is made whole after
// every entry, when a minute turns and when the weather on the chip is touched; the list is changed where it differs, by athlete, so that
// it keeps its place under the thumb. Ranking and reasons are core's.
// Thread: GUI thread only.
#pragma once

#include <set>
#include <string>
#include <vector>

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
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
  Q_PROPERTY(QString clockWords READ clockWords NOTIFY boardChanged)  // whose clock is far off; empty when nobody's is
  Q_PROPERTY(int doNotWear READ doNotWear NOTIFY boardChanged)
  Q_PROPERTY(int beforePractice READ beforePractice NOTIFY boardChanged)
  Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY boardChanged)                // nobody on the roster
  Q_PROPERTY(QString query READ query WRITE setQuery NOTIFY queryChanged)  // digits of a jersey number
  Q_PROPERTY(QVariantList matches READ matches NOTIFY matchesChanged)      // rows as maps, keys as the roles
  Q_PROPERTY(QString walkWords READ walkWords NOTIFY boardChanged)         // what "Start the line" walks: "4 before practice"
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
  [[nodiscard]] QString clockWords() const;
  // Rows of which somebody has to see something: not those with the athletic trainer.
  [[nodiscard]] int doNotWear() const { return m_board.counts[0] - m_board.withTrainerCount; }
  [[nodiscard]] int beforePractice() const { return m_board.counts[1]; }
  [[nodiscard]] bool isEmpty() const { return m_board.rows.empty(); }
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
  [[nodiscard]] Day practice() const { return m_practice; }

  void setQuery(const QString& digits);
  Q_INVOKABLE void toggleLane(const QString& lane);  // or the group of the weather, "weather"
  // Which entry stands at the top of the list, and how far above it the view begins, for whoever comes back from a row.
  Q_INVOKABLE void keepPlace(int entry, double beyond);
  Q_INVOKABLE int keptEntry() const;  // -1: none, begin at the top
  Q_INVOKABLE double keptBeyond() const { return m_keptBeyond; }
  Q_INVOKABLE void startWalk();
  Q_INVOKABLE void walkOn();  // the present one is seen or skipped: whose turn is next
  Q_INVOKABLE void endWalk();

 signals:
  void boardChanged();
  void queryChanged();
  void matchesChanged();
  void walkChanged();

 private:
  // A lane's head, the head of a group in it, or a row.
  struct Entry {
    std::string id;  // "lane-weekly", "weather", or the athlete
    season::Lane lane = season::Lane::nothingDue;
    const season::DueRow* row = nullptr;  // of the board as it stands
    int count = 0;                        // of a head
    bool isOpen = true;                   // of a head
  };
  void build();
  void relist();
  [[nodiscard]] std::vector<Entry> entriesOf(const season::Board& board) const;
  void onWeather();
  [[nodiscard]] Speech speech() const;
  [[nodiscard]] QVariant rowValue(const season::DueRow& row, int role) const;
  [[nodiscard]] QVariant headValue(const Entry& entry, int role) const;
  [[nodiscard]] QVariantMap rowMap(const season::DueRow& row) const;
  [[nodiscard]] std::vector<const season::DueRow*> walkable() const;

  Desk* m_desk;
  Choices* m_choices;
  WeatherModel* m_weather;
  season::Board m_board;
  std::vector<Entry> m_entries;
  std::set<std::string> m_closed;  // ids of heads
  QString m_query;
  Day m_builtFor, m_practice;
  std::string m_kept;
  int m_keptAt = -1;
  season::Lane m_keptLane = season::Lane::nothingDue;
  double m_keptBeyond = 0;
  bool m_isWalking = false;
  season::Lane m_walkLane = season::Lane::beforePractice;
  std::string m_walkAthlete;
  std::set<std::string> m_walked;
};

[[nodiscard]] QString toneOf(season::Lane lane);

}  // namespace snugline::models
