// SPDX-License-Identifier: Apache-2.0
#include "athlete_model.h"

#include <algorithm>

#include "drawn_values.h"
#include "sentences_air.h"
#include "sentences_gear.h"
#include "sentences_standing.h"

namespace snugline::models {

using season::AthleteRecord;
using season::DueRow;
using season::Lane;
using season::RowAction;
using season::UnitRecord;

AthleteModel::AthleteModel(Desk* desk, Choices* choices, WeatherModel* weather, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_weather(weather), m_last(QStringLiteral("athlete"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &AthleteModel::changed);
  connect(&m_last, &LastAct::refused, this, &AthleteModel::setTrouble);
  connect(&m_last, &LastAct::undone, this, [this] {
    if (tapeInHand() == nullptr) m_tapeFact.clear();  // its first reading was taken back
    emit readingsChanged();
  });
  connect(weather, &WeatherModel::weatherChanged, this, &AthleteModel::refresh);
  connect(desk, &Desk::opened, this, &AthleteModel::refresh);
  connect(desk, &Desk::changed, this, &AthleteModel::refresh);
  connect(desk, &Desk::timeTurned, this, &AthleteModel::refresh);
  connect(choices, &Choices::changed, this, &AthleteModel::refresh);
}

const AthleteRecord* AthleteModel::record() const { return m_desk->views().athlete(m_athlete); }

const UnitRecord* AthleteModel::unit() const {
  const AthleteRecord* athlete = record();
  return athlete == nullptr || athlete->units.empty() ? nullptr : m_desk->views().unit(athlete->units.back());
}

Speech AthleteModel::speech() const {
  return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort(), m_weather->now()};
}

void AthleteModel::open(const QString& athlete) {
  m_athlete = athlete.toStdString();
  m_timeline.clear();
  endTape();
  setTrouble({});
  refresh();
}

void AthleteModel::refresh() {
  if (!m_desk->isOpen() || m_athlete.empty()) return;
  const AthleteRecord* athlete = record();
  m_row = athlete == nullptr ? std::nullopt
                             : std::optional<DueRow>(season::rowOf(m_desk->views(), *athlete, {m_desk->now()},
                                                                   m_weather->draft().value_or(season::Conditions{})));
  emit changed();
  readTimeline();
}

void AthleteModel::readTimeline() {
  m_desk->history(m_athlete, this, [this, asked = m_athlete](const Result<std::vector<book::Fact>>& facts) {
    if (!facts || asked != m_athlete) return;
    QVariantList lines;
    for (auto fact = facts->rbegin(); fact != facts->rend(); ++fact) {
      const QString words = factWords(m_desk->views(), *fact);
      if (words.isEmpty()) continue;
      lines << QVariantMap{{QStringLiteral("when"), PlainWords::moment(fact->at, m_desk->today())},
                           {QStringLiteral("text"), words},
                           {QStringLiteral("who"), PlainWords::person(m_desk->views(), fact->who)}};
    }
    m_timeline = lines;
    emit timelineChanged();
  });
}

QString AthleteModel::jersey() const { return record() == nullptr ? QString() : QString::fromStdString(record()->jersey); }

QString AthleteModel::name() const {
  const AthleteRecord* athlete = record();
  return athlete == nullptr ? QString() : PlainWords::name(speech(), athlete->family, athlete->given);
}

QString AthleteModel::summary() const {
  const UnitRecord* worn = unit();
  if (worn == nullptr) return tr("No helmet yet");
  const gear::ModelSheet* model = m_desk->views().sheetOf(*worn);
  return tr("Helmet %1, %2, %3", "serial, model, size")
      .arg(PlainWords::text(worn->serial), model == nullptr ? QString() : PlainWords::text(model->name), PlainWords::text(worn->size));
}

QVariantList AthleteModel::reasons() const {
  QVariantList list;
  if (!m_row) return list;
  for (const season::DueReason& reason : m_row->reasons) {
    const QString tone = reason.lane == Lane::doNotWear        ? QStringLiteral("stop")
                         : reason.lane == Lane::beforePractice ? QStringLiteral("see")
                                                               : QStringLiteral("plain");
    const bool isLeak = reason.kind == season::DueKind::airLeaking;
    const bool hasWhy = reason.port && (isLeak || reason.kind == season::DueKind::airChanged);
    list << QVariantMap{{QStringLiteral("text"), DueWords::reason(reason, speech())},
                        {QStringLiteral("tone"), tone},
                        {QStringLiteral("port"), hasWhy ? codeWord(gear::code(*reason.port)) : QString()},
                        {QStringLiteral("about"), isLeak ? QStringLiteral("leak") : QStringLiteral("air")}};
  }
  return list;
}

QVariantMap AthleteModel::why(const QString& port, const QString& about) const {
  const auto which = gear::portFromCode(port.toStdString());
  if (!which || unit() == nullptr) return {};
  if (about == QLatin1String("leak")) return leakWhy(m_desk->views(), *unit(), *which, m_choices->units(), m_desk->now());
  return airWhy(m_desk->views(), record(), *unit(), *which, m_weather->now(), m_choices->units(), m_desk->now());
}

QString AthleteModel::standing() const { return m_row ? codeWord(season::code(m_row->lane)) : QString(); }
bool AthleteModel::isStop() const { return m_row && m_row->lane == Lane::doNotWear && unit() != nullptr; }

bool AthleteModel::isOfPoints() const {
  if (!isStop()) return false;
  const season::UnitStanding at = season::standingOf(m_desk->views(), *unit(), m_desk->today());
  return !at.mayBeWorn() && season::isOfPoints(at.reasons.front());
}

QString AthleteModel::nothingDue() const {
  if (!m_row || !m_row->reasons.empty()) return {};
  if (m_row->dueFrom <= m_desk->today()) return tr("Nothing due");
  return tr("Nothing due. Next look from %1.").arg(PlainWords::dueDay(m_row->dueFrom, m_desk->today()));
}

QStringList AthleteModel::strip() const { return m_row ? stripCodes(m_row->strip, m_row->words, m_row->wordFeels) : QStringList(); }
QStringList AthleteModel::points() const {
  return unit() == nullptr ? QStringList() : pointCodes(season::standingOf(m_desk->views(), *unit(), m_desk->today()).points);
}

namespace {

// Of the words that stand open; both where they speak of different sides, or of none.
fit::Side sideSaid(const AthleteRecord& athlete, fit::Mark mark) {
  std::optional<fit::Side> side;
  for (const season::SaidRecord& said : athlete.said) {
    if (said.isAnswered || said.where != mark) continue;
    side = !side || *side == said.side ? said.side : fit::Side::both;
  }
  return side.value_or(fit::Side::both);
}

}  // namespace

QVariantMap AthleteModel::findings() const {
  QVariantMap map;
  if (record() == nullptr) return map;
  const QStringList codes = strip();
  for (qsizetype i = 0; i < codes.size(); ++i) {
    const fit::Mark mark = fit::kMarks[static_cast<std::size_t>(i)];
    const fit::Side side = m_row->words.has(mark) ? sideSaid(*record(), mark) : fit::Side::both;
    // What was said of one side is drawn on that side only.
    const QString on = side == fit::Side::left ? QStringLiteral("-left") : side == fit::Side::right ? QStringLiteral("-right") : QString();
    map.insert(codeWord(fit::code(mark)) + on, codes[i]);
  }
  return map;
}

QVariantList AthleteModel::places() const {
  QVariantList list;
  const AthleteRecord* athlete = record();
  if (athlete == nullptr) return list;
  const season::EndedCheck* last = athlete->checks.empty() ? nullptr : &athlete->checks.back();
  QString seen;
  if (last != nullptr) {
    const QString who = PlainWords::person(m_desk->views(), last->stamp.who);
    const QString when = PlainWords::moment(last->stamp.at, m_desk->today());
    seen = who.isEmpty() ? tr("seen %1").arg(when) : tr("seen %1 by %2").arg(when, who);
  }
  const QStringList codes = strip();
  for (qsizetype i = 0; i < codes.size(); ++i) {
    const fit::Mark mark = fit::kMarks[static_cast<std::size_t>(i)];
    const auto finding = m_row->strip[static_cast<std::size_t>(i)];
    list << QVariantMap{
        {QStringLiteral("name"), codeWord(fit::code(mark))},
        {QStringLiteral("text"), MarkWords::name(mark)},
        {QStringLiteral("state"), codes[i]},
        {QStringLiteral("detail"), finding == fit::Finding::unseen
                                       ? tr("Not seen")
                                       : PlainWords::sentenceCase(MarkWords::found(mark, finding, fit::Side::both, fit::HoldHow::unsaid)) +
                                             (seen.isEmpty() ? QString() : QStringLiteral(", ") + seen)}};
  }
  return list;
}

QVariantMap drawnSheet(const gear::ModelSheet* sheet, const UnitRecord* unit) {
  QVariantMap map;
  if (sheet == nullptr) return map;
  map.insert(QStringLiteral("hasCrownAir"), sheet->hasPort(gear::Port::crown));
  map.insert(QStringLiteral("hasSideAir"), sheet->hasPort(gear::Port::sides));
  map.insert(QStringLiteral("hasJawAir"), sheet->hasPort(gear::Port::jawLeft));
  map.insert(QStringLiteral("strapPoints"), sheet->strapPoints);
  map.insert(QStringLiteral("browLow"), sheet->browLow.mm());
  map.insert(QStringLiteral("browHigh"), sheet->browHigh.mm());
  map.insert(QStringLiteral("browTarget"), fit::kBrowTarget.mm());
  map.insert(QStringLiteral("hasRecertLabel"), unit == nullptr || !unit->isLabelMissing);
  return map;
}

QVariantMap AthleteModel::sheet() const {
  const UnitRecord* worn = unit();
  return worn == nullptr ? QVariantMap() : drawnSheet(m_desk->views().sheetOf(*worn), worn);
}

QVariantMap AthleteModel::helmet() const {
  const UnitRecord* worn = unit();
  if (worn == nullptr) return {};
  const gear::ModelSheet* model = m_desk->views().sheetOf(*worn);
  const season::UnitStanding at = season::standingOf(m_desk->views(), *worn, m_desk->today());
  const Names names = m_choices->areNamesShort() ? Names::initials : Names::full;
  const gear::LabelState label = labelStateOf(m_desk->views(), *worn, m_desk->today());
  QVariantMap found;
  for (std::size_t i = 0; i < gear::kPointCount; ++i) found.insert(codeWord(gear::code(gear::kPoints[i])), pointCode(at.points[i]));
  return {{QStringLiteral("id"), QString::fromStdString(worn->id)},
          {QStringLiteral("found"), found},
          {QStringLiteral("serial"), PlainWords::text(worn->serial)},
          {QStringLiteral("model"),
           model == nullptr ? QString() : tr("%1, size %2").arg(PlainWords::text(model->name), PlainWords::text(worn->size))},
          {QStringLiteral("label"), labelWordsOf(m_desk->views(), *worn, m_desk->today())},
          {QStringLiteral("labelTone"), label == gear::LabelState::good ? QStringLiteral("quiet") : QStringLiteral("stop")},
          {QStringLiteral("standing"), codeWord(season::code(at.state))},
          {QStringLiteral("status"), StandingWords::headline(at, names, m_desk->today())},
          {QStringLiteral("tone"), StandingWords::tone(at)},
          {QStringLiteral("reasons"), StandingWords::reasons(at, m_desk->today())}};
}

// What is due comes first; the rest stands below. Whether an act is allowed is asked of core, not decided here.
QVariantList AthleteModel::actions() const {
  QVariantList list;
  const AthleteRecord* athlete = record();
  if (athlete == nullptr || !m_row) return list;
  const auto add = [&list](const char* name, const QString& text) {
    list << QVariantMap{{QStringLiteral("name"), QLatin1String(name)},
                        {QStringLiteral("text"), text},
                        {QStringLiteral("kind"), list.isEmpty() ? QStringLiteral("primary") : QStringLiteral("plain")}};
  };
  const auto canBegin = [&](fit::CheckKind kind) {
    return book::beginCheck(m_desk->views(), m_athlete, kind, m_desk->today()).has_value();
  };
  if (!athlete->openCheck.empty()) add("resume", tr("Go on"));
  const fit::CheckKind due = book::kindDue(m_desk->views(), *athlete);
  const bool isRefitDue = m_row->action == RowAction::refit;
  if (due == fit::CheckKind::first && canBegin(due)) add("first", GuideWords::kind(due));
  if (due != fit::CheckKind::first && isRefitDue && canBegin(fit::CheckKind::refit)) add("refit", GuideWords::kind(fit::CheckKind::refit));
  if (due != fit::CheckKind::first && canBegin(fit::CheckKind::look)) add("look", GuideWords::kind(fit::CheckKind::look));
  if (due != fit::CheckKind::first && !isRefitDue && canBegin(fit::CheckKind::refit)) add("refit", GuideWords::kind(fit::CheckKind::refit));
  add("choose", tr("Swap helmet"));
  return list;
}

void AthleteModel::setTrouble(const QString& sentence) {
  if (m_trouble == sentence) return;
  m_trouble = sentence;
  emit troubleChanged();
}

void AthleteModel::dismissTrouble() { setTrouble({}); }

void AthleteModel::setBusy(bool isBusy) {
  if (m_isBusy == isBusy) return;
  m_isBusy = isBusy;
  emit busyChanged();
}

void AthleteModel::act(Desk::Job job, std::function<void(const book::Appended&)> then) {
  if (m_isBusy) return;
  setBusy(true);
  setTrouble({});
  m_desk->submit(std::move(job), this, [this, then = std::move(then)](const Result<book::Appended>& outcome) {
    setBusy(false);
    if (!outcome) return setTrouble(errorSentence(outcome.error()));
    then(*outcome);
  });
}

void AthleteModel::undo() {
  setTrouble({});
  m_last.undo();
}

}  // namespace snugline::models
