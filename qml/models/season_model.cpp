// SPDX-License-Identifier: Apache-2.0
#include "season_model.h"

#include "core/season/patterns.h"
#include "sentences_said.h"

namespace snugline::models {

SeasonModel::SeasonModel(Desk* desk, Choices* choices, QObject* parent)
    : QObject(parent),
      m_desk(desk),
      m_choices(choices),
      m_matching(new MatchingModel(desk, choices, this)),
      m_plan(new PlanModel(desk, choices, this)) {
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

QString SeasonModel::againRule() const {
  return tr("The same place on %1 days by one athlete, or by %2 athletes in one model. Pads and air may not reach the cause: try another "
            "size or model, "
            "and ask the maker.")
      .arg(season::kAgainTimes)
      .arg(season::kAgainAthletes);
}

}  // namespace snugline::models
