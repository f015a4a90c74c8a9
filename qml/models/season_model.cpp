// SPDX-License-Identifier: Apache-2.0
#include "season_model.h"

#include "core/season/charts.h"
#include "core/season/patterns.h"
#include "sentences_gear.h"
#include "sentences_said.h"

namespace snugline::models {

SeasonModel::SeasonModel(Desk* desk, Choices* choices, QObject* parent)
    : QObject(parent),
      m_desk(desk),
      m_choices(choices),
      m_matching(new MatchingModel(desk, choices, this)),
      m_plan(new PlanModel(desk, choices, this)),
      m_lanes(new LanesModel(desk, this)),
      m_collect(new CollectModel(desk, choices, this)),
      m_turn(new TurnModel(desk, choices, this)),
      m_past(new PastModel(desk, choices, this)) {
  connect(desk, &Desk::opened, this, &SeasonModel::changed);
  connect(desk, &Desk::changed, this, &SeasonModel::changed);
  connect(choices, &Choices::changed, this, &SeasonModel::changed);
}

Speech SeasonModel::speech() const { return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()}; }

QString SeasonModel::words() const {
  if (!m_desk->isOpen()) return {};
  const auto patterns = season::saidAgain(m_desk->views(), m_desk->today());
  return patterns.empty() ? tr("Nothing said again and again")
                          : tr("%n places said again and again", nullptr, static_cast<int>(patterns.size()));
}

QVariantList SeasonModel::saidAgain() const {
  QVariantList list;
  if (!m_desk->isOpen()) return list;
  for (const season::Pattern& pattern : season::saidAgain(m_desk->views(), m_desk->today())) {
    list << QVariantMap{{QStringLiteral("name"), QStringLiteral("again-%1").arg(list.size())},
                        {QStringLiteral("title"), SaidWords::pattern(pattern, speech())},
                        {QStringLiteral("detail"), SaidWords::patternDetail(pattern, speech())},
                        {QStringLiteral("tone"), pattern.isOpen ? QStringLiteral("see") : QStringLiteral("plain")},
                        {QStringLiteral("athlete"), PlainWords::text(pattern.athlete)}};
  }
  return list;
}

namespace {
QVariantMap bar(int value, const QString& words, const char* kind) {
  return {{QStringLiteral("value"), value}, {QStringLiteral("words"), words}, {QStringLiteral("kind"), QLatin1String(kind)}};
}
}  // namespace

QVariantList SeasonModel::pointBars() const {
  QVariantList list;
  if (!m_desk->isOpen()) return list;
  const auto counts = season::pointsOver(m_desk->views());
  for (const gear::Point point : gear::kPoints) {
    const season::PointCount& count = counts[static_cast<std::size_t>(point)];
    QVariantList parts{bar(count.sound, tr("%1 sound").arg(count.sound), "full")};
    if (count.fault > 0) parts << bar(count.fault, tr("%1 at fault").arg(count.fault), "striped");
    if (count.unseen > 0) parts << bar(count.unseen, tr("%1 not seen").arg(count.unseen), "hollow");
    list << QVariantMap{{QStringLiteral("label"), pointName(point)}, {QStringLiteral("parts"), parts}};
  }
  return list;
}

QVariantList SeasonModel::lookBars() const {
  QVariantList list;
  if (!m_desk->isOpen()) return list;
  const auto& team = m_desk->views().team;
  const season::FirstLooks looks = season::firstLooks(m_desk->views(), team ? team->seasonStart : std::nullopt);
  const QStringList labels{tr("Same day"), tr("After 1 day"), tr("After 2 days"), tr("After 3 days"), tr("After more")};
  for (std::size_t i = 0; i < looks.after.size(); ++i)
    list << QVariantMap{{QStringLiteral("label"), labels[static_cast<qsizetype>(i)]},
                        {QStringLiteral("parts"), QVariantList{bar(looks.after[i], QString::number(looks.after[i]), "full")}}};
  list << QVariantMap{{QStringLiteral("label"), tr("None yet")},
                      {QStringLiteral("parts"), QVariantList{bar(looks.waiting, QString::number(looks.waiting), "hollow")}}};
  return list;
}

QString SeasonModel::againRule() const {
  return tr("The same place on %1 days by one athlete, or by %2 athletes in one model. Pads and air may not reach the cause: try another "
            "size or model, "
            "and ask the maker.")
      .arg(season::kAgainTimes)
      .arg(season::kAgainAthletes);
}

}  // namespace snugline::models
