// SPDX-License-Identifier: Apache-2.0
#include "plan_model.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <QDate>
#include <QLocale>

#include "sentences_gear.h"
#include "sentences_season.h"

namespace snugline::models {

namespace {

constexpr std::array<int, 4> kCovers{80, 90, 95, 99};       // percent
constexpr std::array<int, 4> kTurnarounds{21, 42, 63, 84};  // days
constexpr std::array<int, 4> kReturns{70, 85, 95, 100};     // percent
constexpr int kDaysInWeek = 7;
constexpr int kMonthsShown = 18;

QVariantMap entry(const QString& title, const QString& detail, const char* tone = "plain") {
  return {{QStringLiteral("title"), title}, {QStringLiteral("detail"), detail}, {QStringLiteral("tone"), QLatin1String(tone)}};
}

template <std::size_t N, typename Words>
QVariantList chips(const std::array<int, N>& values, int chosen, const Words& words) {
  QVariantList list;
  for (const int value : values)
    list << QVariantMap{{QStringLiteral("name"), QString::number(value)},
                        {QStringLiteral("text"), words(value)},
                        {QStringLiteral("chosen"), value == chosen}};
  return list;
}

template <std::size_t N>
std::optional<int> valueOf(const std::array<int, N>& values, const QString& name) {
  const int value = name.toInt();
  return std::find(values.begin(), values.end(), value) == values.end() ? std::nullopt : std::optional(value);
}

QString monthWords(Day day) {
  const CivilDate date = civil(day);
  return QLocale().toString(QDate(date.year, date.month, 1), QStringLiteral("MMM yyyy"));
}

QVariantMap part(double value, const QString& words, const char* kind) {
  return {{QStringLiteral("value"), value}, {QStringLiteral("words"), words}, {QStringLiteral("kind"), QLatin1String(kind)}};
}

}  // namespace

PlanModel::PlanModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  const auto again = [this] {
    if (m_isShown) workOut();
  };
  connect(desk, &Desk::changed, this, again);
  connect(choices, &Choices::changed, this, again);
  connect(desk, &Desk::opened, this, [this] {
    m_answer.reset();
    m_isShown = false;
    emit changed();
  });
}

void PlanModel::begin() {
  m_isShown = true;
  workOut();
}

void PlanModel::workOut() {
  const auto& team = m_desk->views().team;
  bool isYear = false;
  const int named = team ? QString::fromStdString(team->season).toInt(&isYear) : 0;
  m_wishes.season = isYear ? named : civil(m_desk->today()).year;
  m_trouble.clear();
  auto answer = season::planSeason(m_desk->views(), m_wishes, m_desk->today());
  if (answer) {
    m_answer = std::move(*answer);
  } else {
    m_answer.reset();
    m_trouble = SeasonWords::wishTrouble(answer.error());
  }
  emit changed();
}

void PlanModel::chooseCover(const QString& name) {
  if (const auto value = valueOf(kCovers, name)) m_wishes.cover = *value / 100.0;
  workOut();
}
void PlanModel::chooseTurnaround(const QString& name) {
  if (const auto value = valueOf(kTurnarounds, name)) m_wishes.turnaround = *value;
  workOut();
}
void PlanModel::chooseReturns(const QString& name) {
  if (const auto value = valueOf(kReturns, name)) m_wishes.returning = *value / 100.0;
  workOut();
}

QString PlanModel::title() const {
  return m_answer ? tr("This season %1, the next %2", "years").arg(m_answer->season).arg(m_answer->nextSeason) : QString();
}
QVariantList PlanModel::covers() const {
  return chips(kCovers, static_cast<int>(std::lround(m_wishes.cover * 100)), [](int v) { return PlainWords::percent(v / 100.0); });
}
QVariantList PlanModel::turnarounds() const {
  return chips(kTurnarounds, m_wishes.turnaround, [](int v) { return tr("%n week(s)", nullptr, v / kDaysInWeek); });
}
QVariantList PlanModel::returns() const {
  return chips(kReturns, static_cast<int>(std::lround(m_wishes.returning * 100)), [](int v) { return PlainWords::percent(v / 100.0); });
}

QVariantList PlanModel::lapses() const {
  QVariantList list;
  if (!m_answer) return list;
  const auto& all = m_answer->lapsing;
  for (std::size_t i = 0; i < all.size();) {
    const CivilDate first = civil(all[i].lastGood.first);
    std::size_t to = i;
    int renewable = 0;
    const auto isAlike = [&](const season::Lapsing& one) {
      const CivilDate date = civil(one.lastGood.first);
      return one.when == all[i].when && (one.when == season::LapseWhen::before || (date.year == first.year && date.month == first.month));
    };
    for (; to < all.size() && isAlike(all[to]); ++to) renewable += all[to].isRenewable ? 1 : 0;
    const auto count = static_cast<int>(to - i);
    const bool isPast = all[i].when == season::LapseWhen::before;
    QString detail = tr("%n helmet(s), %1", nullptr, count).arg(SeasonWords::lapse(all[i].when));
    if (renewable < count) detail += tr("; %n past their age limit", nullptr, count - renewable);
    list << entry(isPast ? tr("Before today") : monthWords(all[i].lastGood.first), detail,
                  isPast                                         ? "stop"
                  : all[i].when == season::LapseWhen::thisSeason ? "see"
                                                                 : "plain");
    i = to;
  }
  return list;
}

QVariantList PlanModel::batches() const {
  QVariantList list;
  if (!m_answer) return list;
  const Day today = m_desk->today();
  for (const season::Batch& batch : m_answer->batches)
    list << entry(
        tr("Send %1, back %2").arg(PlainWords::day(batch.send, today), PlainWords::day(batch.back, today)),
        tr("%n helmet(s): %1", nullptr, static_cast<int>(batch.units.size())).arg(SeasonWords::counts(m_desk->views(), batch.sizes)));
  return list;
}

QVariantList PlanModel::missing() const {
  QVariantList list;
  if (!m_answer) return list;
  const Day today = m_desk->today();
  for (const season::SizeMissing& one : m_answer->missing)
    list << entry(tr("%1 short of %2", "how many, of what").arg(one.most).arg(SeasonWords::kind(m_desk->views(), one.sheet, one.size)),
                  tr("%1 to %2, whatever is sent").arg(PlainWords::day(one.first, today), PlainWords::day(one.last, today)), "stop");
  return list;
}

QVariantList PlanModel::orders() const {
  QVariantList list;
  if (!m_answer) return list;
  // What is to be ordered first; then what is there in plenty, with its reckoning too.
  for (const bool isWanted : {true, false}) {
    for (const season::Order& order : m_answer->orders) {
      if ((order.order > 0) != isWanted || (order.enough == 0 && order.good == 0 && order.notCounted == 0)) continue;
      const QString kind = SeasonWords::kind(m_desk->views(), order.sheet, order.size);
      list << entry(isWanted ? tr("Order %1 of %2", "how many, of what").arg(order.order).arg(kind) : tr("No more of %1").arg(kind),
                    SeasonWords::order(order, m_wishes.cover), isWanted ? "see" : "plain");
    }
  }
  return list;
}

QVariantList PlanModel::sizes() const {
  QVariantList list;
  if (!m_answer) return list;
  for (const season::Order& order : m_answer->orders) {
    if (order.enough == 0 && order.good == 0) continue;
    list << QVariantMap{{QStringLiteral("label"), SeasonWords::kind(m_desk->views(), order.sheet, order.size)},
                        {QStringLiteral("parts"), QVariantList{part(order.enough, tr("%1 enough").arg(order.enough), "hollow"),
                                                               part(order.good, tr("%1 good").arg(order.good), "full")}}};
  }
  return list;
}

QVariantList PlanModel::months() const {
  QVariantList list;
  if (!m_answer) return list;
  const season::Views& views = m_desk->views();
  std::vector<Day> lastGood;
  int unread = 0;
  for (const auto& [id, unit] : views.units) {
    if (unit.place == season::UnitPlace::retired || unit.place == season::UnitPlace::lost) continue;
    if (const auto span = season::lastGoodDay(views, unit)) {
      lastGood.push_back(span->first);
    } else {
      ++unread;
    }
  }
  const CivilDate now = civil(m_desk->today());
  for (int i = 0; i < kMonthsShown; ++i) {
    const Day month = i == 0 ? m_desk->today() : addMonths(dayOf(now.year, now.month, 1), i);
    const auto good = std::count_if(lastGood.begin(), lastGood.end(), [&](Day last) { return last >= month; });
    const auto lapsed = static_cast<std::ptrdiff_t>(lastGood.size()) - good;
    list << QVariantMap{{QStringLiteral("label"), i == 0 ? tr("Today") : monthWords(month)},
                        {QStringLiteral("parts"), QVariantList{part(static_cast<double>(good), tr("%1 certified").arg(good), "full"),
                                                               part(static_cast<double>(lapsed), tr("%1 lapsed").arg(lapsed), "striped")}}};
  }
  if (unread > 0)
    list << QVariantMap{
        {QStringLiteral("label"), tr("Not read")},
        {QStringLiteral("parts"), QVariantList{part(unread, tr("%1 without a label that is known").arg(unread), "hollow")}}};
  return list;
}

QStringList PlanModel::assumptions() const {
  return m_answer ? SeasonWords::assumptions(m_desk->views(), m_wishes, *m_answer, m_desk->today()) : QStringList();
}

}  // namespace snugline::models
