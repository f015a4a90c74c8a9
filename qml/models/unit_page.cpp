// SPDX-License-Identifier: Apache-2.0
#include "qml/models/unit_page.h"

#include <algorithm>
#include <utility>

#include <QVariantMap>

#include "core/fit/part_marks.h"
#include "core/season/spares.h"
#include "core/season/unit_age.h"
#include "qml/models/choices.h"
#include "qml/models/drawn_values.h"
#include "qml/models/label_reading.h"
#include "qml/models/sentences.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_photos.h"
#include "qml/models/sentences_standing.h"
#include "qml/models/sentences_units.h"

namespace snugline::models {

namespace {
constexpr std::size_t kCandidatesShown = 30;
}  // namespace

UnitPage::UnitPage(Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_desk(desk), m_choices(choices), m_last(QStringLiteral("helmet"), desk, choices) {
  connect(&m_last, &LastAct::changed, this, &UnitPage::changed);
  connect(&m_last, &LastAct::refused, this, [this](const QString& why) {
    m_refusal = why;
    emit changed();
  });
  connect(choices, &Choices::changed, this, &UnitPage::changed);
  connect(desk, &Desk::timeTurned, this, &UnitPage::changed);
  connect(desk, &Desk::changed, this, [this](const std::vector<std::string>& touched) {
    if (m_unit.empty()) return;
    if (std::find(touched.begin(), touched.end(), m_unit) != touched.end()) readHistory();
    emit changed();
  });
}

const season::UnitRecord* UnitPage::unit() const { return m_unit.empty() ? nullptr : m_desk->views().unit(m_unit); }

QString UnitPage::unitId() const { return unit() == nullptr ? QString() : text(m_unit); }
QString UnitPage::serial() const { return unit() == nullptr ? QString() : text(unit()->serial); }
QString UnitPage::kindWords() const { return unit() == nullptr ? QString() : kindOf(m_desk->views(), *unit()); }
QString UnitPage::labelWords() const { return unit() == nullptr ? QString() : labelWordsOf(m_desk->views(), *unit(), m_desk->today()); }
bool UnitPage::isLabelGood() const {
  return unit() != nullptr && labelStateOf(m_desk->views(), *unit(), m_desk->today()) == gear::LabelState::good;
}
QVariantList UnitPage::years() const {
  if (unit() == nullptr) return {};
  const bool isRead = !unit()->labels.empty() && !unit()->isLabelMissing;
  return labelYears(isRead ? std::optional(unit()->labels.back().label) : std::nullopt, m_desk->today());
}
bool UnitPage::isLabelMissing() const { return unit() != nullptr && unit()->isLabelMissing; }
bool UnitPage::isHeld() const { return unit() != nullptr && !unit()->holds.empty(); }

QVariantList UnitPage::points() const {
  if (unit() == nullptr) return {};
  gear::PointFindings findings;
  for (std::size_t i = 0; i < gear::kPointCount; ++i) {
    if (unit()->points[i]) findings[i] = unit()->points[i]->finding;
  }
  const auto stands = standing();
  QVariantList list = pointList(findings, m_desk->views().sheetOf(*unit()));
  for (std::size_t i = 0; i < gear::kPointCount; ++i) {
    QVariantMap point = list[static_cast<qsizetype>(i)].toMap();
    const auto& seen = unit()->points[i];
    QString when = tr("not seen yet");
    if (seen) {
      const QString who = whoWords(m_desk->views(), seen->stamp.who);
      const QString at = timeWords(seen->stamp.at, m_desk->today());
      when = who.isEmpty() ? tr("seen %1").arg(at) : tr("seen %1 by %2").arg(at, who);
    }
    point.insert(QStringLiteral("seen"), when);
    // The label says more than whoever looked: certification is as its standing draws it.
    if (const gear::PointState drawn = stands->points[i]; drawn != findings[i].state) {
      point.insert(QStringLiteral("state"), static_cast<int>(drawn));
      point.insert(QStringLiteral("words"), drawn == gear::PointState::fault ? labelWords() : pointStateWords({}));
    }
    list[static_cast<qsizetype>(i)] = point;
  }
  return list;
}

bool UnitPage::hasAir() const {
  const gear::ModelSheet* sheet = unit() == nullptr ? nullptr : m_desk->views().sheetOf(*unit());
  return sheet != nullptr && !sheet->air.empty();
}

// As last read, whenever that was; what the weather did to it stands on the air's own page.
QString UnitPage::airWords() const {
  if (!hasAir()) return {};
  QStringList parts;
  for (const gear::AirPort& port : m_desk->views().sheetOf(*unit())->air) {
    const auto read = std::find_if(unit()->air.rbegin(), unit()->air.rend(),
                                   [&](const season::AirEvent& event) { return event.port == port.port && event.gauge; });
    const QString name = MarkWords::port(port.port);
    parts << (read == unit()->air.rend() ? tr("%1 not measured", "a bladder").arg(name)
                                         : tr("%1 %2", "a bladder, its pressure").arg(name, text(print(*read->gauge, m_choices->units()))));
  }
  return PlainWords::sentenceCase(parts.join(QStringLiteral(", ")));
}

QVariantList UnitPage::holds() const {
  QVariantList list;
  if (unit() == nullptr) return list;
  for (const season::HoldRecord& hold : unit()->holds) {
    const QString who = whoWords(m_desk->views(), hold.stamp.who);
    const QString at = timeWords(hold.stamp.at, m_desk->today());
    // Asked of core, so that the rule stands there: a hold that cannot be released shows why instead of a button.
    const auto release = book::releaseHold(m_desk->views(), m_unit, hold.fact, "-", m_desk->today());
    list.append(QVariantMap{{QStringLiteral("fact"), text(hold.fact)},
                            {QStringLiteral("words"), holdWords(hold)},
                            {QStringLiteral("seen"), who.isEmpty() ? tr("held %1").arg(at) : tr("held %1 by %2").arg(at, who)},
                            {QStringLiteral("rule"), release ? QString() : errorSentence(release.error())}});
  }
  return list;
}

QVariantList UnitPage::wearers() const {
  QVariantList list;
  if (unit() == nullptr) return list;
  for (const std::string& id : unit()->athletes) {
    const season::AthleteRecord* wearer = m_desk->views().athlete(id);
    if (wearer == nullptr) continue;
    list.append(
        QVariantMap{{QStringLiteral("athlete"), text(id)}, {QStringLiteral("name"), athleteName(*wearer, m_choices->areNamesShort())}});
  }
  return list;
}

QVariantList UnitPage::candidates() const {
  const season::Views& views = m_desk->views();
  const QString wanted = m_candidateSearch.trimmed();
  std::vector<const season::AthleteRecord*> found;
  if (unit() == nullptr) return {};
  for (const auto& [id, athlete] : views.athletes) {
    if (!athlete.isOnRoster) continue;
    if (std::find(unit()->athletes.begin(), unit()->athletes.end(), id) != unit()->athletes.end()) continue;
    if (wanted.isEmpty() || athleteName(athlete).contains(wanted, Qt::CaseInsensitive)) found.push_back(&athlete);
  }
  // Those without a helmet first, then by jersey as a number.
  std::sort(found.begin(), found.end(), [](const season::AthleteRecord* a, const season::AthleteRecord* b) {
    return std::tuple(!a->units.empty(), jerseyOrder(a->jersey), a->family) <
           std::tuple(!b->units.empty(), jerseyOrder(b->jersey), b->family);
  });
  if (found.size() > kCandidatesShown) found.resize(kCandidatesShown);
  QVariantList list;
  for (const season::AthleteRecord* athlete : found) {
    const season::UnitRecord* worn = athlete->units.empty() ? nullptr : views.unit(athlete->units.back());
    list.append(QVariantMap{{QStringLiteral("athlete"), text(athlete->id)},
                            {QStringLiteral("jersey"), text(athlete->jersey)},
                            {QStringLiteral("name"), athleteName(*athlete, m_choices->areNamesShort())},
                            {QStringLiteral("old"), worn == nullptr ? QString() : text(worn->serial)},
                            {QStringLiteral("words"), worn == nullptr ? tr("No helmet yet") : tr("Has %1 now").arg(text(worn->serial))}});
  }
  return list;
}

void UnitPage::setCandidateSearch(const QString& words) {
  m_candidateSearch = words;
  emit changed();
}

void UnitPage::open(const QString& unitId) {
  m_unit = utf8(unitId);
  m_history.clear();
  m_refusal.clear();
  m_candidateSearch.clear();
  readHistory();
  emit changed();
}

void UnitPage::close() { open({}); }

QVariantList UnitPage::photos() const {
  return unit() == nullptr ? QVariantList() : PhotoWords::list(m_desk->views(), *unit(), m_desk->today());
}

QString UnitPage::photoOf(const book::Fact& fact) const {
  if (unit() == nullptr) return {};
  const auto& kept = unit()->photos;
  const auto photo = std::find_if(kept.begin(), kept.end(), [&](const season::PhotoRecord& each) { return each.fact == fact.id(); });
  return photo == kept.end() ? QString() : text(photo->photo);
}

bool UnitPage::isPhotoGone(const book::Fact& fact) const {
  return std::holds_alternative<book::PhotoTaken>(fact.body) && photoOf(fact).isEmpty();
}

void UnitPage::readHistory() {
  if (m_unit.empty()) return;
  const std::string asked = m_unit;
  m_desk->history(asked, this, [this, asked](const Result<std::vector<book::Fact>>& facts) {
    if (asked != m_unit) return;
    m_history.clear();
    if (facts) {
      for (auto fact = facts->rbegin(); fact != facts->rend(); ++fact) {
        const QString words = factWords(m_desk->views(), *fact);
        if (words.isEmpty()) continue;
        m_history.append(
            QVariantMap{{QStringLiteral("when"), timeWords(fact->at, m_desk->today())},
                        {QStringLiteral("who"), whoWords(m_desk->views(), fact->who)},
                        {QStringLiteral("fact"), text(fact->id())},
                        {QStringLiteral("photo"), photoOf(*fact)},
                        {QStringLiteral("words"), isPhotoGone(*fact) ? tr("%1. Taken back since, its file deleted").arg(words) : words}});
      }
    } else {
      m_refusal = errorSentence(facts.error());
    }
    emit changed();
  });
}

void UnitPage::act(Desk::Job job) {
  if (m_unit.empty() || m_isBusy) return;
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  m_desk->submit(std::move(job), this, [this](const Result<book::Appended>& outcome) {
    m_isBusy = false;
    if (!outcome) m_refusal = errorSentence(outcome.error());
    emit changed();
    if (!outcome) return;
    m_last.didAsRecorded(outcome->ids, m_unit);
    emit written();
  });
}

void UnitPage::undo() {
  m_refusal.clear();
  m_last.undo();
}

void UnitPage::hold(const QString& reason, const QString& what, bool isWithAthlete) {
  act([unit = m_unit, reason = utf8(reason), what = utf8(what.trimmed()), isWithAthlete](const season::Views& views, Instant) {
    return book::hold(views, unit, reason, what, isWithAthlete);
  });
}

void UnitPage::release(const QString& holdFact, const QString& why) {
  act([unit = m_unit, fact = utf8(holdFact), words = utf8(why.trimmed())](const season::Views& views, Instant now) {
    return book::releaseHold(views, unit, fact, words, dayOf(now));
  });
}

void UnitPage::moveTo(const QString& to, const QString& where, const QString& reason) {
  act([unit = m_unit, place = utf8(to), words = utf8(where.trimmed()), why = utf8(reason.trimmed())](const season::Views& views,
                                                                                                     Instant now) {
    if (place == "in-service") return book::putInService(views, unit, dayOf(now));
    if (place == "shelf") return book::toShelf(views, unit, now);
    return book::move(views, unit, place, words, why);
  });
}

void UnitPage::comeBack(const QString& by, const QString& done, const QString& paper, bool isCleaned) {
  const season::ReturnRecord returned{utf8(by), utf8(done.trimmed()), utf8(paper.trimmed()), isCleaned, {}};
  act([unit = m_unit, returned](const season::Views& views, Instant now) { return book::comeBack(views, unit, returned, dayOf(now)); });
}

void UnitPage::whereNow(bool isWithAthlete) {
  act([unit = m_unit, isWithAthlete](const season::Views& views, Instant) { return book::whereNow(views, unit, isWithAthlete); });
}

QVariantList UnitPage::parts() const {
  QVariantList list;
  const gear::ModelSheet* sheet = unit() == nullptr ? nullptr : m_desk->views().sheetOf(*unit());
  if (sheet == nullptr) return list;
  for (const gear::UnitPart part : gear::kUnitParts) {
    if (!gear::hasUnitPart(*sheet, part)) continue;
    list.append(QVariantMap{{QStringLiteral("code"), text(gear::code(part))},
                            {QStringLiteral("name"), UnitWords::part(part)},
                            {QStringLiteral("reopens"), UnitWords::reopened(fit::reopensOf(part))}});
  }
  return list;
}

void UnitPage::changePart(const QString& part, const QString& what) {
  const auto known = gear::unitPartFromCode(utf8(part));
  if (!known) return;
  act([unit = m_unit, known, words = utf8(what.trimmed())](const season::Views& views, Instant) {
    return book::changePart(views, unit, *known, words);
  });
}

QString UnitPage::shelf() const { return unit() == nullptr ? QString() : text(unit()->shelf); }

QStringList UnitPage::shelves() const {
  std::vector<std::string> names;
  for (const auto& [id, each] : m_desk->views().units) {
    if (!each.shelf.empty()) names.push_back(each.shelf);
  }
  std::sort(names.begin(), names.end(), season::shelfBefore);
  names.erase(std::unique(names.begin(), names.end()), names.end());
  QStringList list;
  for (const std::string& name : names) list.append(text(name));
  return list;
}

void UnitPage::setShelf(const QString& shelf) {
  act([unit = m_unit, words = utf8(shelf.trimmed())](const season::Views& views, Instant) {
    return book::move(views, unit, "shelf", words);
  });
}

QString UnitPage::ageWords() const {
  const gear::ModelSheet* sheet = unit() == nullptr ? nullptr : m_desk->views().sheetOf(*unit());
  if (sheet == nullptr) return {};
  const QString interval = tr("Certification every %n months by its sheet", nullptr, sheet->certificationMonths);
  const auto last = season::lastDayByAge(m_desk->views(), *unit());
  if (!last) return interval;
  const QString day = last->isOneDay() ? dayWords(last->first)
                                       : tr("between %1 and %2, judged by the earlier").arg(dayWords(last->first), dayWords(last->last));
  return tr("%1. Its age ends it %2").arg(interval, day);
}

void UnitPage::pairWith(const QString& athleteId, bool isOldWithAthlete) {
  act([unit = m_unit, athlete = utf8(athleteId), isOldWithAthlete](const season::Views& views, Instant now) {
    return book::pair(views, athlete, unit, dayOf(now), isOldWithAthlete);
  });
}

void UnitPage::unpair(const QString& athleteId) {
  act([unit = m_unit, athlete = utf8(athleteId), why = utf8(tr("given back"))](const season::Views& views, Instant now) {
    const season::UnitRecord* worn = views.unit(unit);
    if (worn != nullptr && worn->athletes == std::vector{athlete}) return book::toShelf(views, unit, now);
    return book::unpair(views, athlete, unit, why);
  });
}

// One point seen again; the others stay as they were seen.
void UnitPage::seePoint(const QString& point, bool isSound, const QString& what) {
  const auto seen = gear::pointFromCode(utf8(point));
  if (!seen) return;
  gear::PointFindings findings;
  findings[static_cast<std::size_t>(*seen)] = {isSound ? gear::PointState::sound : gear::PointState::fault, utf8(what.trimmed())};
  act([unit = m_unit, findings](const season::Views& views, Instant) { return book::seePoints(views, unit, findings, false); });
}

void UnitPage::readLabel(const std::optional<gear::Label>& label, bool isUnreadable) {
  act([unit = m_unit, label, isUnreadable](const season::Views& views, Instant now) {
    return book::readLabel(views, unit, label, dayOf(now), isUnreadable);
  });
}

void UnitPage::readLabelYear(int year, bool isMakersMark) { readLabel(labelOfYear(year, isMakersMark)); }
void UnitPage::readLabelMissing() { readLabel(std::nullopt); }
void UnitPage::readLabelUnreadable() { readLabel(std::nullopt, true); }

void UnitPage::readLabelDate(const QString& isoDay, const QString& source) {
  const auto label = labelOfDate(isoDay, source, m_desk->today());
  if (const auto* refused = std::get_if<QString>(&label)) {
    m_refusal = *refused;
    emit changed();
    return;
  }
  readLabel(std::get<gear::Label>(label));
}

void UnitPage::forgetRefusal() {
  m_refusal.clear();
  emit changed();
}

}  // namespace snugline::models
