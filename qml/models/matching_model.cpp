// SPDX-License-Identifier: Apache-2.0
#include "matching_model.h"

#include <algorithm>
#include <utility>

#include "sentences_gear.h"
#include "sentences_season.h"
#include "sentences_standing.h"

namespace snugline::models {

namespace {

using Wish = std::pair<std::string, std::string>;

QVariantMap row(const char* kind, const QString& title, const QString& detail = {}, const char* tone = "plain") {
  return {{QStringLiteral("kind"), QLatin1String(kind)},
          {QStringLiteral("name"), QString()},
          {QStringLiteral("number"), QString()},
          {QStringLiteral("title"), title},
          {QStringLiteral("detail"), detail},
          {QStringLiteral("tone"), QLatin1String(tone)},
          {QStringLiteral("athlete"), QString()}};
}

bool wears(const season::Views& views, const season::MatchPair& pair) {
  const season::AthleteRecord* athlete = views.athlete(pair.athlete);
  return athlete != nullptr && std::find(athlete->units.begin(), athlete->units.end(), pair.unit) != athlete->units.end();
}

void drop(std::vector<Wish>& wishes, const std::string& athlete) {
  std::erase_if(wishes, [&](const Wish& wish) { return wish.first == athlete; });
}

}  // namespace

MatchingModel::MatchingModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  m_wishes.keepsWorn = true;
  const auto again = [this] {
    if (m_isShown) workOut();
  };
  connect(desk, &Desk::changed, this, again);
  connect(choices, &Choices::changed, this, again);
  connect(desk, &Desk::opened, this, [this] {
    m_wishes.pins.clear();
    m_wishes.exclusions.clear();
    m_answer.reset();
    m_isShown = false;
    emit changed();
  });
}

Speech MatchingModel::speech() const { return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()}; }

void MatchingModel::begin() {
  m_isShown = true;
  m_open.clear();
  workOut();
}

void MatchingModel::setKeepsWorn(bool keeps) {
  m_wishes.keepsWorn = keeps;
  workOut();
}

void MatchingModel::workOut() {
  m_trouble.clear();
  auto answer = season::matchHelmets(m_desk->views(), m_wishes, m_desk->today());
  if (answer) {
    m_answer = std::move(*answer);
  } else {
    m_answer.reset();
    m_trouble = SeasonWords::wishTrouble(answer.error());
  }
  listRows();
  emit changed();
}

QString MatchingModel::nameOf(const std::string& athlete) const {
  const season::AthleteRecord* record = m_desk->views().athlete(athlete);
  return record == nullptr ? QString() : PlainWords::name(speech(), record->family, record->given);
}

void MatchingModel::listRows() {
  m_rows.clear();
  if (!m_answer) return;
  const season::Views& views = m_desk->views();
  const auto jersey = [&](const std::string& athlete) {
    const season::AthleteRecord* record = views.athlete(athlete);
    return record == nullptr ? std::string() : record->jersey;
  };
  const auto byJersey = [&](const auto* a, const auto* b) {
    return std::pair(jerseyOrder(jersey(a->athlete)), a->athlete) < std::pair(jerseyOrder(jersey(b->athlete)), b->athlete);
  };
  const auto add = [&](const char* kind, const std::string& athlete, const QString& detail, const char* tone) {
    QVariantMap one = row(kind, nameOf(athlete), detail, tone);
    one[QStringLiteral("name")] = QStringLiteral("match-") + PlainWords::text(jersey(athlete));
    one[QStringLiteral("number")] = PlainWords::text(jersey(athlete));
    one[QStringLiteral("athlete")] = PlainWords::text(athlete);
    m_rows << one;
  };

  std::vector<const season::UnmatchedHead*> without;
  for (const season::UnmatchedHead& head : m_answer->unmatched) without.push_back(&head);
  std::sort(without.begin(), without.end(), byJersey);
  std::vector<const season::MatchPair*> moves, stays;
  for (const season::MatchPair& pair : m_answer->pairs) (wears(views, pair) ? stays : moves).push_back(&pair);
  std::sort(moves.begin(), moves.end(), byJersey);
  std::sort(stays.begin(), stays.end(), byJersey);

  if (!without.empty()) m_rows << row("head", tr("No helmet, %1").arg(without.size()), {}, "stop");
  for (const auto* head : without) add("none", head->athlete, SeasonWords::noHelmet(*head), "stop");
  if (!moves.empty()) m_rows << row("head", tr("Another helmet than now, %1").arg(moves.size()), {}, "see");
  for (const auto* pair : moves) add("pair", pair->athlete, SeasonWords::pair(*pair, speech()), pair->isTryOn ? "see" : "plain");
  if (!stays.empty()) m_rows << row("head", tr("As now, %1").arg(stays.size()));
  for (const auto* pair : stays) add("pair", pair->athlete, SeasonWords::pair(*pair, speech()), pair->isTryOn ? "see" : "plain");

  if (!m_answer->refusedPins.empty()) {
    m_rows << row("head", tr("Pins that cannot be"), {}, "see");
    for (const season::RefusedPin& pin : m_answer->refusedPins)
      m_rows << row("words", tr("%1: the helmet is barred").arg(nameOf(pin.athlete)), pin.bar ? StandingWords::bar(*pin.bar) : QString(),
                    "see");
  }
  m_rows << row("head", tr("On the shelf"));
  m_rows << row("words", tr("Short"), m_answer->shortBySize.empty() ? tr("Nothing.") : SeasonWords::counts(views, m_answer->shortBySize),
                m_answer->shortBySize.empty() ? "plain" : "stop");
  m_rows << row("words", tr("Spare"), m_answer->spareBySize.empty() ? tr("Nothing.") : SeasonWords::counts(views, m_answer->spareBySize));
  for (const season::BarredUnit& barred : m_answer->barred) {
    const season::UnitRecord* unit = views.unit(barred.unit);
    if (unit == nullptr) continue;
    m_rows << row("words", tr("%1 cannot be given").arg(PlainWords::text(unit->serial)),
                  PlainWords::sentenceCase(tr("%1. %2", "what keeps it, model and size")
                                               .arg(barred.bar ? StandingWords::bar(*barred.bar) : QString(), kindOf(views, *unit))));
  }
}

QString MatchingModel::summary() const {
  if (!m_answer) return {};
  const auto heads = static_cast<int>(m_answer->pairs.size() + m_answer->unmatched.size());
  if (heads == 0) return tr("Nobody is on the roster yet.");
  return tr("%1 of %n heads have a helmet that can be given.", nullptr, heads).arg(m_answer->pairs.size());
}

QString MatchingModel::through() const {
  if (!m_answer) return {};
  const QString day = PlainWords::day(m_answer->through, m_desk->today());
  return m_answer->isSeasonEndKnown ? tr("Certified through %1, in service, and of a size that is likely.").arg(day)
                                    : tr("The season's end is not set: certified today, in service, and of a size that is likely.");
}

const season::MatchPair* MatchingModel::pairOf(const std::string& athlete) const {
  if (!m_answer) return nullptr;
  const auto it = std::find_if(m_answer->pairs.begin(), m_answer->pairs.end(), [&](const auto& pair) { return pair.athlete == athlete; });
  return it == m_answer->pairs.end() ? nullptr : &*it;
}

void MatchingModel::open(const QString& athlete) {
  m_open = athlete.toStdString();
  emit changed();
}

QVariantMap MatchingModel::opened() const {
  const season::MatchPair* pair = m_open.empty() ? nullptr : pairOf(m_open);
  if (pair == nullptr) return {};
  const season::UnitRecord* unit = m_desk->views().unit(pair->unit);
  QVariantList terms;
  const auto line = [&](const QString& name, double value, const QString& how = {}) {
    terms << QVariantMap{
        {QStringLiteral("name"), name}, {QStringLiteral("value"), QString::number(value, 'f', 2)}, {QStringLiteral("how"), how}};
  };
  for (const season::PairTerm& term : pair->terms) {
    const bool isSize = term.term == season::CostTerm::size && pair->odds;
    line(SeasonWords::term(term.term, term.count), term.cost, isSize ? tr("\u2212ln %1").arg(PlainWords::percent(*pair->odds)) : QString());
  }
  line(tr("Sum"), pair->cost);
  const QVariantMap part{{QStringLiteral("title"), tr("What this pair costs")}, {QStringLiteral("lines"), terms}};
  const QVariantMap why{{QStringLiteral("sentence"), SeasonWords::pair(*pair, speech())},
                        {QStringLiteral("tone"), QStringLiteral("plain")},
                        {QStringLiteral("parts"), QVariantList{part}},
                        {QStringLiteral("advice"), tr("As many heads as possible come first, then the least sum over all pairs. Nothing is "
                                                      "written down here.")},
                        {QStringLiteral("caution"), tr("A size by the tape is where to start. The fit on the head decides.")}};
  return {
      {QStringLiteral("title"),
       tr("%1 and %2", "an athlete, a helmet").arg(nameOf(m_open), unit == nullptr ? QString() : PlainWords::text(unit->serial))},
      {QStringLiteral("why"), why},
      {QStringLiteral("athlete"), PlainWords::text(m_open)},
      {QStringLiteral("isPinned"), std::find(m_wishes.pins.begin(), m_wishes.pins.end(), Wish(m_open, pair->unit)) != m_wishes.pins.end()}};
}

void MatchingModel::pin() {
  const season::MatchPair* pair = pairOf(m_open);
  if (pair == nullptr) return;
  const Wish wish(pair->athlete, pair->unit);
  drop(m_wishes.pins, wish.first);
  std::erase(m_wishes.exclusions, wish);
  m_wishes.pins.push_back(wish);
  workOut();
}

void MatchingModel::setAside() {
  const season::MatchPair* pair = pairOf(m_open);
  if (pair == nullptr) return;
  const Wish wish(pair->athlete, pair->unit);
  std::erase(m_wishes.pins, wish);
  if (std::find(m_wishes.exclusions.begin(), m_wishes.exclusions.end(), wish) == m_wishes.exclusions.end())
    m_wishes.exclusions.push_back(wish);
  workOut();
}

QVariantList MatchingModel::wishes() const {
  QVariantList list;
  const auto serial = [&](const std::string& id) {
    const season::UnitRecord* unit = m_desk->views().unit(id);
    return unit == nullptr ? QString() : PlainWords::text(unit->serial);
  };
  const auto add = [&](const char* kind, const std::vector<Wish>& wishes, const auto& words) {
    for (std::size_t i = 0; i < wishes.size(); ++i)
      list << QVariantMap{{QStringLiteral("name"), QLatin1String(kind) + QString::number(i)},
                          {QStringLiteral("text"), words(nameOf(wishes[i].first), serial(wishes[i].second))}};
  };
  add("pin-", m_wishes.pins, [](const QString& who, const QString& helmet) { return tr("Pinned: %1, %2").arg(who, helmet); });
  add("aside-", m_wishes.exclusions, [](const QString& who, const QString& helmet) { return tr("Set aside: %1, %2").arg(who, helmet); });
  return list;
}

void MatchingModel::takeBack(const QString& wish) {
  const bool isPin = wish.startsWith(QLatin1String("pin-"));
  std::vector<Wish>& wishes = isPin ? m_wishes.pins : m_wishes.exclusions;
  bool isNumber = false;
  const auto index = wish.section(QLatin1Char('-'), 1).toUInt(&isNumber);
  if (!isNumber || index >= wishes.size()) return;
  wishes.erase(wishes.begin() + static_cast<std::ptrdiff_t>(index));
  workOut();
}

}  // namespace snugline::models
