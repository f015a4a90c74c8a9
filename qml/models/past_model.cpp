// SPDX-License-Identifier: Apache-2.0
#include "qml/models/past_model.h"

#include <algorithm>

#include <QVariantMap>

#include "core/report/csv_table.h"
#include "core/season/board.h"
#include "qml/models/choices.h"
#include "qml/models/log_reading.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {

QVariantMap figure(const char* name, const QString& title, int count, const char* tone = "plain") {
  return {{QStringLiteral("name"), QLatin1String(name)},
          {QStringLiteral("title"), title},
          {QStringLiteral("count"), QString::number(count)},
          {QStringLiteral("tone"), QLatin1String(tone)}};
}

// A name of a season may hold anything; a file's may not.
std::string fileWord(const std::string& season) {
  std::string word;
  for (const char c : season) {
    const bool isPlain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    word += isPlain ? c : '-';
  }
  return word;
}

}  // namespace

struct PastModel::Reading : LogReading<book::PastSeasons> {};

PastModel::PastModel(Desk* desk, const Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(choices, &Choices::changed, this, &PastModel::changed);
}
PastModel::~PastModel() = default;

void PastModel::begin() {
  if (!m_desk->isOpen()) return;
  m_trouble.clear();
  m_reading = std::make_shared<Reading>();
  m_progress = 0;
  emit progressChanged();
  emit changed();
  step(m_reading);
}

void PastModel::leave() {
  m_reading.reset();
  m_progress = -1;
  emit progressChanged();
}

void PastModel::step(const std::shared_ptr<Reading>& reading) {
  readPiece<book::PastSeasons>(*m_desk, this, reading, [this, reading](const Result<bool>& isDone) {
    if (reading != m_reading) return;  // left, or begun anew
    if (!isDone) {
      m_trouble = errorSentence(isDone.error());
      leave();
      emit changed();
    } else if (*isDone) {
      m_seasons = reading->answer.seasons();
      leave();
      emit changed();
    } else {
      m_progress = reading->share();
      emit progressChanged();
      step(reading);
    }
  });
}

void PastModel::choose(const QString& season) {
  m_chosen = utf8(season);
  m_place.clear();
  emit changed();
}

const book::PastSeason* PastModel::chosen() const {
  const auto it = std::find_if(m_seasons.begin(), m_seasons.end(), [this](const auto& each) { return each.season == m_chosen; });
  return it == m_seasons.end() ? nullptr : &*it;
}

QString PastModel::daysOf(const book::PastSeason& season) const {
  QString words;
  if (season.start && season.end) words = tr("%1 to %2").arg(dayWords(*season.start), dayWords(*season.end));
  if (season.closed) {
    const QString closed = tr("closed on %1").arg(dayWords(*season.closed));
    return words.isEmpty() ? PlainWords::sentenceCase(closed) : words + QStringLiteral(", ") + closed;
  }
  const QString never = tr("never closed");
  return words.isEmpty() ? PlainWords::sentenceCase(never) : words + QStringLiteral(", ") + never;
}

QString PastModel::helmetWords(const std::string& id) const {
  const season::UnitRecord* unit = m_desk->views().unit(id);
  return unit == nullptr ? tr("A helmet that is not in the Book")
                         : tr("%1, %2", "serial, kind").arg(text(unit->serial), kindOf(m_desk->views(), *unit));
}

QVariantList PastModel::seasons() const {
  QVariantList list;
  for (auto season = m_seasons.rbegin(); season != m_seasons.rend(); ++season) {
    // A name that a Book was founded with and that was given up before anything happened in it.
    const bool isNothing = !season->closed && season->pairs.empty();
    if (season->isOpen || isNothing) continue;
    const int missing = static_cast<int>(season->missing.size());
    const int found = static_cast<int>(
        std::count_if(season->missing.begin(), season->missing.end(), [](const auto& m) { return m.turnedUp.has_value(); }));
    QString more = missing == 0 ? QString() : tr("%n missing at the close", nullptr, missing);
    if (found > 0) more += tr(", %n turned up since", nullptr, found);
    list << QVariantMap{{QStringLiteral("name"), text(season->season)},
                        {QStringLiteral("title"), tr("Season %1").arg(text(season->season))},
                        {QStringLiteral("detail"), daysOf(*season)},
                        {QStringLiteral("note"), tr("%n athlete(s)", nullptr, season->athletes()) + QStringLiteral(", ") +
                                                     tr("%n helmet(s)", nullptr, season->helmets())},
                        {QStringLiteral("more"), more}};
  }
  return list;
}

QString PastModel::emptyWords() const {
  return seasons().isEmpty() && m_progress < 0 && m_trouble.isEmpty() ? tr("No season was closed yet.") : QString();
}

QString PastModel::title() const {
  const book::PastSeason* season = chosen();
  return season == nullptr ? QString() : tr("Season %1").arg(text(season->season));
}

QString PastModel::days() const {
  const book::PastSeason* season = chosen();
  return season == nullptr ? QString() : daysOf(*season);
}

QVariantList PastModel::figures() const {
  const book::PastSeason* season = chosen();
  if (season == nullptr) return {};
  const auto outcome = [&](fit::Verdict verdict) { return season->outcomes[static_cast<std::size_t>(verdict)]; };
  return {figure("athletes", tr("Athletes who had a helmet"), season->athletes()),
          figure("helmets", tr("Helmets that were with athletes"), season->helmets()),
          figure("fits", tr("Checks: fits"), outcome(fit::Verdict::fits), "snug"),
          figure("adjust", tr("Checks: adjust"), outcome(fit::Verdict::adjust), "see"),
          figure("do-not-wear", tr("Checks: do not wear"), outcome(fit::Verdict::doNotWear), "stop"),
          figure("unfinished", tr("Checks left unfinished"), outcome(fit::Verdict::unfinished), "quiet"),
          figure("line", tr("Seen in a standing line"), season->lineSeen),
          figure("words", tr("Words of athletes about fit and gear"), season->words),
          figure("holds", tr("Holds begun"), season->holds, "stop"),
          figure("faults", tr("Points seen at fault"), season->faults, "stop"),
          figure("handed-in", tr("Helmets handed in"), season->handedIn),
          figure("lost", tr("Marked as lost"), season->lost),
          figure("retired", tr("Retired"), season->retired)};
}

QVariantList PastModel::missing() const {
  QVariantList list;
  const book::PastSeason* season = chosen();
  if (season == nullptr) return list;
  for (const book::PastMissing& each : season->missing) {
    const season::AthleteRecord* athlete = m_desk->views().athlete(each.athlete);
    QStringList detail;
    if (athlete != nullptr) detail << tr("It was with %1").arg(athleteName(*athlete, m_choices->areNamesShort()));
    detail << (each.turnedUp ? tr("turned up on %1").arg(dayWords(*each.turnedUp)) : tr("not seen since"));
    list << QVariantMap{{QStringLiteral("unit"), text(each.unit)},
                        {QStringLiteral("title"), helmetWords(each.unit)},
                        {QStringLiteral("detail"), PlainWords::sentenceCase(detail.join(QStringLiteral(", ")))},
                        {QStringLiteral("tone"), each.turnedUp ? QStringLiteral("plain") : QStringLiteral("see")}};
  }
  return list;
}

std::vector<const book::PastPair*> PastModel::sortedPairs() const {
  std::vector<const book::PastPair*> pairs;
  const book::PastSeason* season = chosen();
  if (season == nullptr) return pairs;
  for (const book::PastPair& pair : season->pairs) pairs.push_back(&pair);
  const auto jersey = [this](const book::PastPair& pair) {
    const season::AthleteRecord* athlete = m_desk->views().athlete(pair.athlete);
    return athlete == nullptr ? std::string() : athlete->jersey;
  };
  std::stable_sort(pairs.begin(), pairs.end(), [&](const auto* a, const auto* b) {
    const std::string first = jersey(*a), second = jersey(*b);
    if (first != second) return season::jerseyBefore(first, second);
    return a->athlete != b->athlete ? a->athlete < b->athlete : a->from < b->from;
  });
  return pairs;
}

QVariantList PastModel::pairs() const {
  QVariantList list;
  const Speech speech{m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort()};
  for (const book::PastPair* pair : sortedPairs()) {
    const season::AthleteRecord* athlete = m_desk->views().athlete(pair->athlete);
    QStringList detail{helmetWords(pair->unit)};
    detail << (pair->to ? (pair->isHandedIn ? tr("%1 to %2, handed in") : tr("%1 to %2")).arg(dayWords(pair->from), dayWords(*pair->to))
                        : tr("from %1, not handed in").arg(dayWords(pair->from)));
    QStringList more{tr("%n check(s)", nullptr, pair->checks)};
    if (pair->last) more << tr("the last: %1").arg(GuideWords::verdict(*pair->last));
    const bool isKept = athlete != nullptr && athlete->nameKeptBack;
    list << QVariantMap{{QStringLiteral("athlete"), text(pair->athlete)},
                        {QStringLiteral("unit"), text(pair->unit)},
                        {QStringLiteral("number"), athlete == nullptr ? QString() : text(athlete->jersey)},
                        {QStringLiteral("title"), athlete == nullptr ? tr("Somebody who is not in the Book")
                                                  : isKept           ? tr("Name kept back")
                                                                     : PlainWords::name(speech, athlete->family, athlete->given)},
                        {QStringLiteral("detail"), detail.join(QStringLiteral(". "))},
                        {QStringLiteral("more"), more.join(QStringLiteral(", "))}};
  }
  return list;
}

void PastModel::handOut() {
  const book::PastSeason* season = chosen();
  if (season == nullptr || !m_outbox) return;
  const auto head = [](const QString& words) { return words.toStdString(); };
  std::vector<std::vector<std::string>> rows{{head(tr("Number")), head(tr("Family name")), head(tr("Given name")), head(tr("Helmet")),
                                              head(tr("Model")), head(tr("Size")), head(tr("From")), head(tr("To")), head(tr("Handed in")),
                                              head(tr("Checks")), head(tr("Last check")), head(tr("Seen in line"))}};
  for (const book::PastPair* pair : sortedPairs()) {
    const season::AthleteRecord* athlete = m_desk->views().athlete(pair->athlete);
    const season::UnitRecord* unit = m_desk->views().unit(pair->unit);
    const gear::ModelSheet* sheet = unit == nullptr ? nullptr : m_desk->views().sheetOf(*unit);
    rows.push_back({athlete == nullptr ? std::string() : athlete->jersey, athlete == nullptr ? std::string() : athlete->family,
                    athlete == nullptr ? std::string() : athlete->given, unit == nullptr ? pair->unit : unit->serial,
                    sheet == nullptr ? std::string() : sheet->name, unit == nullptr ? std::string() : unit->size, print(pair->from),
                    pair->to ? print(*pair->to) : std::string(), head(pair->isHandedIn ? tr("yes") : tr("no")),
                    std::to_string(pair->checks), pair->last ? head(GuideWords::verdict(*pair->last)) : std::string(),
                    std::to_string(pair->lines)});
  }
  const auto place = m_outbox->keep("snugline-season-" + fileWord(season->season) + ".csv", report::csvTable(rows));
  m_place = place ? PlainWords::text(*place) : QString();
  m_trouble = place ? QString() : errorSentence(place.error());
  emit changed();
}

}  // namespace snugline::models
