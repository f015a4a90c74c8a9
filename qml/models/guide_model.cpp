// SPDX-License-Identifier: Apache-2.0
#include "guide_model.h"

#include <algorithm>
#include <charconv>

#include "athlete_model.h"
#include "drawn_values.h"
#include "sentences_gear.h"
#include "verdict.h"

namespace snugline::models {

using season::CheckRecord;

GuideModel::GuideModel(Desk* desk, Choices* choices, QObject* parent) : QObject(parent), m_desk(desk), m_choices(choices) {
  connect(desk, &Desk::changed, this, [this](const std::vector<std::string>& touched) {
    // What this page itself wrote is shown once it is acknowledged, once.
    if (!m_isBusy && !m_check.empty() && std::find(touched.begin(), touched.end(), m_check) != touched.end()) refresh();
  });
  connect(choices, &Choices::changed, this, &GuideModel::refresh);
  connect(desk, &Desk::personChanged, this, [this] {
    if (m_asksWho && m_isWhoWanted && !m_desk->person().empty()) finish(m_isOfItself);
  });
}

const CheckRecord* GuideModel::check() const { return m_check.empty() ? nullptr : m_desk->views().openCheck(m_check); }
Speech GuideModel::speech() const {
  return {m_desk->views(), m_choices->units(), m_desk->today(), m_choices->areNamesShort(), {}, m_choices->gaugeUnits()};
}

void GuideModel::start(const QString& athlete, const QString& action) {
  if (m_isBusy) return;
  const season::AthleteRecord* record = m_desk->views().athlete(athlete.toStdString());
  if (record == nullptr) return;
  m_athlete = record->id;
  if (action == QLatin1String("resume") || !record->openCheck.empty()) {
    openCheck(record->openCheck);
    return;
  }
  const auto kind = fit::checkKindFromCode(action.toStdString());
  if (!kind) return;
  submit([id = m_athlete, kind = *kind](const season::Views& views, Instant now) { return book::beginCheck(views, id, kind, dayOf(now)); },
         [this](const book::Appended&) {
           const season::AthleteRecord* begunFor = m_desk->views().athlete(m_athlete);
           if (begunFor != nullptr) openCheck(begunFor->openCheck);
         });
}

void GuideModel::openCheck(const std::string& check) {
  m_check = check;
  m_asksWho = m_isWhoWanted = false;
  m_touches = {};
  m_endFacts.clear();
  m_lastFacts.clear();
  m_isEnded = false;
  m_verdict.clear();
  setTrouble({});
  const CheckRecord* record = this->check();
  if (record == nullptr) return;
  m_athlete = record->athlete;
  m_unit = record->unit;
  refresh();
  emit begun();
  if (m_page.stage == Stage::done) finish(true);
}

// A check belongs to this device when its creating fact does; of several the one begun last.
bool GuideModel::takeUpOpenCheck(const std::string& device) {
  const CheckRecord* newest = nullptr;
  std::uint64_t newestN = 0;
  const std::string prefix = device + ':';
  for (const auto& [id, record] : m_desk->views().openChecks) {
    if (!id.starts_with(prefix) || dayOf(record.begun.at) != m_desk->today()) continue;
    std::uint64_t n = 0;
    std::from_chars(id.data() + prefix.size(), id.data() + id.size(), n);
    if (newest != nullptr && n < newestN) continue;
    newest = &record;
    newestN = n;
  }
  if (newest == nullptr) return false;
  openCheck(newest->id);
  return true;
}

void GuideModel::refresh() {
  if (!m_desk->isOpen()) return;
  if (m_isEnded) return showVerdict();
  const CheckRecord* record = check();
  if (record == nullptr) {
    m_page = {};
    emit changed();
    emit gapChanged();
    return;
  }
  show(*record);
}

void GuideModel::show(const CheckRecord& kept) {
  auto setup = season::setupOf(m_desk->views(), kept, m_desk->today());
  if (!setup) return setTrouble(errorSentence(setup.error()));
  CheckRecord record = kept;
  // As the next answer will find it.
  if (const auto cold = book::coldNow(m_desk->views(), kept, m_desk->now()))
    if (auto state = fit::take(*setup, kept.state, *cold)) record.state = std::move(*state);
  setup->asksFitted = record.kind != fit::CheckKind::look;
  m_page = pageOf(record, *setup, m_touches, speech());
  if (m_asksWho) askWho();
  const season::AthleteRecord* athlete = m_desk->views().athlete(record.athlete);
  const season::UnitRecord* unit = m_desk->views().unit(record.unit);
  m_kind = GuideWords::kind(record.kind);
  m_who = athlete == nullptr || unit == nullptr
              ? QString()
              : tr("%1 %2, %3", "jersey, name, serial of the helmet")
                    .arg(QString::fromStdString(athlete->jersey), PlainWords::shortName(speech(), athlete->family, athlete->given),
                         PlainWords::text(unit->serial))
                    .trimmed();
  m_sheet = record.sheet;
  m_drawn = drawnSheet(setup->sheet, unit);
  m_drawn.insert(QStringLiteral("hasAir"), !setup->sheet->air.empty());
  m_drawn.insert(QStringLiteral("view"), m_page.drawnView);
  m_drawn.insert(QStringLiteral("focus"), m_page.focusPart);
  m_drawn.insert(QStringLiteral("touch"), m_page.touchParts);
  m_drawn.insert(QStringLiteral("findings"), m_page.findings);
  m_drawn.insert(QStringLiteral("motion"), m_page.motion);
  m_drawn.insert(QStringLiteral("hair"), record.state.isHairWet.value_or(false) ? QStringLiteral("wet") : QStringLiteral("dry"));
  m_drawn.insert(QStringLiteral("description"), QString(m_page.title + QStringLiteral(". ") + m_page.ask));
  m_undoWords = record.answers.empty() ? isOfSwap() ? m_last->words() : tr("Begun: %1", "first fit, refit or look").arg(m_kind)
                                       : answerWords(record.answers.back().answer, speech());
  emit changed();
  emit gapChanged();
}

// A verdict is shown by the sheet that its check was judged by, also where another stands for it by now.
const gear::ModelSheet* GuideModel::sheetOfCheck(const season::UnitRecord* unit) const {
  if (const gear::ModelSheet* own = m_desk->views().sheet(m_sheet)) return own;
  return unit == nullptr ? nullptr : m_desk->views().sheetOf(*unit);
}

void GuideModel::showVerdict() {
  const season::AthleteRecord* athlete = m_desk->views().athlete(m_athlete);
  if (athlete == nullptr) return;
  const auto ended =
      std::find_if(athlete->checks.rbegin(), athlete->checks.rend(), [this](const season::EndedCheck& e) { return e.check == m_check; });
  if (ended == athlete->checks.rend()) return;
  const season::UnitRecord* unit = m_desk->views().unit(m_unit);
  m_verdict = verdictMap(*ended, unit, sheetOfCheck(unit), speech());
  m_undoWords = tr("Recorded: %1", "a verdict").arg(GuideWords::verdict(ended->verdict));
  emit changed();
}

QString GuideModel::caution() const {
  if (m_page.stage != Stage::advice) return {};
  const CheckRecord* record = check();
  return GuideWords::caution(record == nullptr ? nullptr : m_desk->views().sheet(record->sheet));
}

bool GuideModel::canUndo() const {
  if (m_isEnded) return !m_endFacts.empty();
  const CheckRecord* record = check();
  return record != nullptr;
}

bool GuideModel::isOfSwap() const {
  return m_last != nullptr && std::find(m_last->facts().begin(), m_last->facts().end(), m_check) != m_last->facts().end();
}

bool GuideModel::canStepBack() const {
  return !m_isEnded &&
         (m_asksWho ? !m_isOfItself
                    : m_touches.mark || m_touches.point || m_touches.finding || m_touches.isBroken || m_touches.arePointsOpen ||
                          m_touches.gap || m_touches.port || m_touches.pad || m_touches.isListWanted || m_touches.isFittingOpen ||
                          m_touches.isGaugeOpen || m_touches.isGaugeAlone || m_touches.pressure);
}

void GuideModel::stepBack() {
  m_asksWho = false;
  const bool wasInner = m_touches.finding || m_touches.isBroken || m_touches.isPointFault;
  if (m_touches.pressure || m_touches.port || m_touches.pad) {  // the number first, then the place
    if (!m_touches.pressure) {
      m_touches.port.reset();
      m_touches.pad.reset();
    }
    clearEntry();
  } else if (wasInner) {
    m_touches.finding.reset();
    m_touches.isBroken = m_touches.isPointFault = false;
  } else {
    m_touches = {};
  }
  refresh();
}

void GuideModel::submit(Desk::Job job, std::function<void(const book::Appended&)> then) {
  if (m_isBusy) return;
  setBusy(true);
  setTrouble({});
  m_desk->submit(std::move(job), this, [this, then = std::move(then)](const Result<book::Appended>& outcome) {
    setBusy(false);
    if (!outcome) return setTrouble(errorSentence(outcome.error()));
    then(*outcome);
  });
}

void GuideModel::take(std::vector<fit::Answer> answers) {
  submit([id = m_check, answers = std::move(answers), source = m_touches.source](
             const season::Views& views, Instant now) { return book::answer(views, id, answers, now, source); },
         [this](const book::Appended& appended) {
           const bool isRestWanted = m_touches.isRestWanted;
           m_touches = {};
           m_touches.isRestWanted = isRestWanted;
           m_lastFacts = appended.ids;
           refresh();
           if (m_page.stage == Stage::done) finish(true);
         });
}

void GuideModel::finish(bool isOfItself) {
  m_isOfItself = isOfItself;
  m_asksWho = m_desk->person().empty();
  m_isWhoWanted = false;
  if (m_asksWho) return refresh();
  submit([id = m_check](const season::Views& views, Instant now) { return book::endCheck(views, id, now); },
         [this, isOfItself](const book::Appended& appended) {
           m_endFacts = appended.ids;
           if (m_last != nullptr && m_last->about() == m_athlete) m_last->forget();  // the verdict is the last act now
           if (!isOfItself) m_lastFacts.clear();
           m_isEnded = true;
           m_touches = {};
           showVerdict();
         });
}

// All that was answered is on disk; only the end waits, since it carries who saw to it.
void GuideModel::askWho() {
  m_page = {};
  m_page.title = tr("Verdict");
  m_page.ask = tr("Who signs this check?");
  m_page.hint = tr("All answers are kept. The verdict carries the initials of whoever saw to it.");
  m_page.answers << QVariantMap{{QStringLiteral("name"), QStringLiteral("who")},
                                {QStringLiteral("text"), tr("Say who signs")},
                                {QStringLiteral("kind"), QStringLiteral("primary")}};
}

void GuideModel::endHere() { finish(false); }

// A verdict that came of itself is taken back together with the answer that brought it; else the same end would come at once.
void GuideModel::undo() {
  std::vector<std::string> facts;
  if (m_isEnded) {
    facts = m_endFacts;
    facts.insert(facts.end(), m_lastFacts.begin(), m_lastFacts.end());
  } else if (const CheckRecord* record = check(); record != nullptr && record->answers.empty()) {
    facts = isOfSwap() ? m_last->facts() : std::vector{m_check};
  } else if (record != nullptr) {
    const std::string& last = record->answers.back().fact;
    const bool isLastTouch = std::find(m_lastFacts.begin(), m_lastFacts.end(), last) != m_lastFacts.end();
    facts = isLastTouch ? m_lastFacts : std::vector{last};
  }
  if (facts.empty() || m_isBusy) return;
  m_asksWho = false;
  setBusy(true);
  setTrouble({});
  m_desk->correct(std::move(facts), this, [this](const Result<book::Appended>& outcome) {
    setBusy(false);
    if (!outcome) return setTrouble(errorSentence(outcome.error()));
    if (isOfSwap() && check() == nullptr) m_last->forget();
    m_isEnded = false;
    m_endFacts.clear();
    m_lastFacts.clear();
    m_touches = {};
    refresh();
    if (check() == nullptr) emit left();
  });
}

void GuideModel::setTrouble(const QString& sentence) {
  if (m_trouble == sentence) return;
  m_trouble = sentence;
  emit troubleChanged();
}

void GuideModel::dismissTrouble() { setTrouble({}); }

void GuideModel::setBusy(bool isBusy) {
  if (m_isBusy == isBusy) return;
  m_isBusy = isBusy;
  emit busyChanged();
}

}  // namespace snugline::models
