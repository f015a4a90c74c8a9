// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <limits>

#include "core/book/acts.h"
#include "core/book/acts_air.h"
#include "core/book/acts_checks.h"
#include "core/book/acts_units.h"
#include "core/season/board_reasons.h"
#include "core/season/standing.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;
using season::CheckRecord;
using season::UnitPlace;
using season::UnitRecord;
using season::Views;

tl::unexpected<Error> refuse(const std::string& place, std::string_view name) {
  return fail(ErrorCode::notAllowed, place, std::string(name));
}

// What keeps a helmet from being checked on a head at all. Faults, a report and a missing label do not: the verdict says so.
Result<void> checkTryable(const Views& views, const UnitRecord& unit, Day today) {
  using season::Bar;
  for (const season::WhyNot& why : season::standingOf(views, unit, today).reasons) {
    switch (why.bar) {
      case Bar::retired:
      case Bar::lost:
      case Bar::sentOut:
      case Bar::repair:
      case Bar::held:
      case Bar::labelDisputed:
      case Bar::labelUnreadable:
      case Bar::labelLapsed:
        return refusedBy(unit, why);
      case Bar::fault:
      case Bar::brokeSaid:
      case Bar::labelMissing:
      case Bar::labelUnknown:
      case Bar::noSheet:
      case Bar::pointsAfterReport:
      case Bar::pointUnchecked:
      case Bar::notInService:
      case Bar::twoAthletes:
      case Bar::verdict:
        break;
    }
  }
  return {};
}

// What is wrong with the unit itself, as a hold's reason and words. Nothing when only another size or model is needed.
std::vector<UnitHeld> holdsFor(const std::vector<fit::Reason>& reasons, const UnitRecord* unit) {
  std::vector<UnitHeld> holds;
  const auto add = [&](std::string reason, std::string what) {
    const auto same = [&](const auto& h) { return h.reason == reason; };
    const bool isKnown =
        std::any_of(holds.begin(), holds.end(), same) || (unit != nullptr && std::any_of(unit->holds.begin(), unit->holds.end(), same));
    if (!isKnown) holds.push_back({std::move(reason), std::move(what), false});
  };
  for (const fit::Reason& reason : reasons) {
    switch (reason.kind) {
      case fit::ReasonKind::pointFault:
        if (reason.point) add(std::string(gear::code(*reason.point)), reason.text);
        break;
      case fit::ReasonKind::labelLapsed:
        add("label", "lapsed");
        break;
      case fit::ReasonKind::labelMissing:
        add("label", "missing");
        break;
      case fit::ReasonKind::markFault:
      case fit::ReasonKind::cannotTry:
        add("fit", reason.codeText());
        break;
      case fit::ReasonKind::broken:
        add("broken", reason.text);
        break;
      case fit::ReasonKind::notReached:
      case fit::ReasonKind::markOff:
      case fit::ReasonKind::dryHair:
      case fit::ReasonKind::hairOpen:
      case fit::ReasonKind::veto:
      case fit::ReasonKind::labelUnknown:
      case fit::ReasonKind::markOpen:
      case fit::ReasonKind::pointOpen:
      case fit::ReasonKind::questionOpen:
      case fit::ReasonKind::wordOpen:
      case fit::ReasonKind::unwell:
        break;
    }
  }
  return holds;
}

// One answer of the guide as the draft that records it: points are facts about the unit, words about the athlete.
struct AnswerDrafts {
  const CheckRecord& check;
  Drafts drafts;

  void points(std::vector<std::pair<gear::Point, gear::PointFinding>> seen, bool isGroup) {
    drafts.push_back({check.unit, PointsSeen{std::move(seen), isGroup, check.id}});
  }
  void operator()(const fit::PointSeen& a) { points({{a.point, {a.state, a.what}}}, false); }
  void operator()(const fit::PointsSound&) {
    std::vector<std::pair<gear::Point, gear::PointFinding>> all;
    for (gear::Point point : gear::kPoints) all.emplace_back(point, gear::PointFinding{gear::PointState::sound, {}});
    points(std::move(all), true);
  }
  void said(season::SaidRecord record) {
    record.unit = check.unit;
    drafts.push_back({check.athlete, Said{std::move(record), check.id}});
  }
  void operator()(const fit::AthleteSaid& a) {
    season::SaidRecord record;
    record.where = a.where;
    record.side = a.side;
    record.feels = a.feels;
    record.isBroken = a.feels == fit::Feels::broke;
    said(std::move(record));
  }
  void operator()(const fit::Unwell&) {
    season::SaidRecord record;
    record.isUnwell = true;
    said(std::move(record));
  }
  // Everything else belongs to the check; answers of one touch share one fact.
  template <typename A>
  void operator()(const A& a) {
    auto* last = drafts.empty() ? nullptr : std::get_if<CheckAnswered>(&drafts.back().body);
    if (last == nullptr) {
      drafts.push_back({check.id, CheckAnswered{}});
      last = std::get_if<CheckAnswered>(&drafts.back().body);
    }
    last->answers.emplace_back(a);
  }
};

}  // namespace

Result<Drafts> pair(const Views& views, const std::string& athleteId, const std::string& unitId, Day today, bool isOldWithAthlete) {
  const AthleteRecord* athlete = views.athlete(athleteId);
  if (athlete != nullptr && athlete->isOnRoster && !athlete->openCheck.empty()) return refuse(athlete->jersey, rule::kCheckOpen);
  return pairDrafts(views, athleteId, unitId, today, isOldWithAthlete);
}

Result<Drafts> pairDrafts(const Views& views, const std::string& athleteId, const std::string& unitId, Day today, bool isOldWithAthlete) {
  const AthleteRecord* athlete = views.athlete(athleteId);
  if (athlete == nullptr) return fail(ErrorCode::notFound, "athlete " + athleteId);
  const UnitRecord* unit = views.unit(unitId);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + unitId);
  if (!athlete->isOnRoster) return refuse(athlete->jersey, rule::kOffRoster);
  const season::UnitStanding standing = season::standingOf(views, *unit, today);
  if (const season::WhyNot* why = standing.offEveryHead()) return refusedBy(*unit, *why);
  if (athlete->units == std::vector{unitId} && unit->athletes == std::vector{athleteId}) return Drafts{};

  Drafts drafts;
  for (const std::string& other : unit->athletes) {
    const AthleteRecord* wearer = views.athlete(other);
    if (other != athleteId && wearer != nullptr && !wearer->openCheck.empty()) return refuse(wearer->jersey, rule::kCheckOpen);
    drafts.push_back({unitId, UnitUnpaired{other, "other athlete"}});
  }
  for (const std::string& old : athlete->units) {
    if (old == unitId) continue;
    // Said to be broken and now off the head: nobody else gets it before it was looked at.
    if (const UnitRecord* worn = views.unit(old)) holdIfBroken(views, *worn, drafts);
    drafts.push_back({old, UnitUnpaired{athleteId, "other helmet", isOldWithAthlete}});
  }
  if (!isOldWithAthlete) {
    for (const UnitRecord* kept : season::keptBy(views, athleteId)) {
      if (kept->id != unitId) drafts.push_back({kept->id, UnitMoved{"in-hand", {}}});
    }
  }
  drafts.push_back({unitId, UnitPaired{athleteId}});
  return drafts;
}

fit::CheckKind kindDue(const Views& views, const AthleteRecord& athlete) {
  season::DueContext context;
  context.views = &views;
  context.today = Day{std::numeric_limits<std::int32_t>::max() / 2};  // no clock here: what is recorded counts
  const season::Standing standing = season::standingOf(context, athlete);
  if (standing.fit == nullptr) return fit::CheckKind::first;
  const bool isCut = athlete.hairChanged ||
                     std::any_of(athlete.said.begin(), athlete.said.end(), [](const auto& s) { return s.isHairChanged && !s.isAnswered; });
  if (isCut || standing.fit->isHairDry) return fit::CheckKind::refit;
  if (standing.last == nullptr || standing.last->kind == fit::CheckKind::look) return fit::CheckKind::look;
  switch (standing.last->verdict) {
    case fit::Verdict::adjust:
    case fit::Verdict::unfinished:
    case fit::Verdict::doNotWear:
      return fit::CheckKind::refit;  // the fit itself was not brought to an end
    case fit::Verdict::fits:
      return fit::CheckKind::look;
  }
  return fit::CheckKind::look;
}

Result<Drafts> beginCheck(const Views& views, const std::string& athleteId, fit::CheckKind kind, Day today) {
  const AthleteRecord* athlete = views.athlete(athleteId);
  if (athlete == nullptr) return fail(ErrorCode::notFound, "athlete " + athleteId);
  if (!athlete->isOnRoster) return refuse(athlete->jersey, rule::kOffRoster);
  if (!athlete->openCheck.empty()) return refuse(athlete->jersey, rule::kCheckOpen);
  if (athlete->units.empty()) return refuse(athlete->jersey, rule::kNoUnit);
  if (athlete->units.size() > 1) return refuse(athlete->jersey, rule::kTwoUnits);
  const UnitRecord* unit = views.unit(athlete->units.front());
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + athlete->units.front());
  if (unit->athletes.size() > 1) return refuse(unit->serial, rule::kTwoAthletes);
  if (auto ok = checkTryable(views, *unit, today); !ok) return tl::unexpected(ok.error());
  if (kind == fit::CheckKind::look && kindDue(views, *athlete) == fit::CheckKind::first) return refuse(athlete->jersey, rule::kNeverFitted);
  auto begun = begunIn(views, *athlete, *unit, kind);
  if (!begun) return tl::unexpected(begun.error());
  return Drafts{{"", std::move(*begun)}};
}

Result<CheckBegun> begunIn(const Views& views, const AthleteRecord& athlete, const UnitRecord& unit, fit::CheckKind kind) {
  // Out at once, out for the day: equipment work waits until staff have been told.
  const bool isUnwell =
      std::any_of(athlete.said.begin(), athlete.said.end(), [](const auto& s) { return s.isUnwell && !s.isAcknowledged && !s.isAnswered; });
  if (isUnwell) return refuse(athlete.jersey, rule::kUnwellSaid);
  if (views.sheetOf(unit) == nullptr) return fail(ErrorCode::notFound, "sheet " + unit.sheet);
  CheckBegun begun;
  begun.athlete = athlete.id;
  begun.unit = unit.id;
  begun.sheet = views.standingSheet(unit.sheet);
  begun.kind = kind;
  begun.isLabelMissing = unit.isLabelMissing;
  if (const auto span = season::lastGoodDay(views, unit)) begun.certifiedUntil = span->first;
  for (const season::EndedCheck& check : athlete.checks) {
    if (check.unit == unit.id) begun.before = check.check;
  }
  for (const season::SaidRecord& said : athlete.said) {
    if (said.isAnswered || said.isUnwell || (!said.where && !said.isBroken)) continue;
    begun.words.push_back({said.fact, said.where, said.side, said.isBroken ? fit::Feels::broke : said.feels});
  }
  return begun;
}

std::optional<fit::ColdSeen> coldNow(const Views& views, const CheckRecord& check, Instant now) {
  const UnitRecord* unit = views.unit(check.unit);
  const gear::ModelSheet* sheet = views.sheet(check.sheet);
  if (unit == nullptr || sheet == nullptr) return std::nullopt;
  const bool isSaid = std::any_of(check.answers.begin(), check.answers.end(), [](const season::AnswerRecord& record) {
    const auto* cold = std::get_if<fit::ColdSeen>(&record.answer);
    return cold != nullptr && cold->isSaid;
  });
  if (isSaid) return std::nullopt;
  const bool isCold = season::isCold(*unit, *sheet, season::climateOf(weatherFor(views, now)), check.id);
  return isCold == check.state.isCold ? std::nullopt : std::optional(fit::ColdSeen{isCold, false});
}

Result<Drafts> answer(const Views& views, const std::string& checkId, const std::vector<fit::Answer>& asked, Instant now,
                      const season::AirSource& source) {
  const CheckRecord* check = views.openCheck(checkId);
  if (check == nullptr) return fail(ErrorCode::notFound, "check " + checkId);
  const auto setup = season::setupOf(views, *check, dayOf(now));
  if (!setup) return tl::unexpected(setup.error());
  fit::State state = check->state;
  AnswerDrafts collect{*check, {}};
  std::vector<fit::Answer> answers = asked;
  const bool isOfCold = !asked.empty() && std::holds_alternative<fit::ColdSeen>(asked.front());
  if (const auto cold = coldNow(views, *check, now); cold && !isOfCold) answers.insert(answers.begin(), *cold);
  for (const fit::Answer& each : answers) {
    auto next = fit::take(*setup, state, each);
    if (!next) return tl::unexpected(next.error());
    state = std::move(*next);
    std::visit(collect, each);
  }
  for (Draft& draft : collect.drafts) {
    auto* body = std::get_if<CheckAnswered>(&draft.body);
    if (body == nullptr) continue;
    if (auto ok = carryAir(views, *body, check->unit, now, source); !ok) return tl::unexpected(ok.error());
  }
  return std::move(collect.drafts);
}

Result<Drafts> endCheck(const Views& views, const std::string& checkId, Instant now) {
  const CheckRecord* check = views.openCheck(checkId);
  if (check == nullptr) return fail(ErrorCode::notFound, "check " + checkId);
  const auto setup = season::setupOf(views, *check, dayOf(now));
  if (!setup) return tl::unexpected(setup.error());
  const fit::Assessment assessment = fit::assess(*setup, check->state);

  season::EndedCheck ended;
  ended.check = check->id;
  ended.unit = check->unit;
  ended.kind = check->kind;
  ended.verdict = assessment.verdict;
  for (const fit::Reason& reason : assessment.reasons) ended.reasons.push_back(reason.codeText());
  ended.strip = assessment.strip;
  ended.isHairDry = check->kind != fit::CheckKind::look && check->state.isHairWet == std::optional(false);
  ended.isForCold = assessment.isForCold;
  ended.dueFrom = assessment.dueFrom;
  ended.dueBy = assessment.dueBy;

  Drafts drafts{{check->id, CheckEnded{check->athlete, check->unit, std::move(ended), weatherFor(views, now), pumpedIn(*check)}}};
  if (assessment.verdict != fit::Verdict::doNotWear) return drafts;
  const auto holds = holdsFor(assessment.reasons, views.unit(check->unit));
  const UnitRecord* worn = views.unit(check->unit);
  for (UnitHeld held : holds) {
    held.isWithAthlete = worn != nullptr && season::isOut(*worn);  // until somebody says that it is in hand
    drafts.push_back({check->unit, std::move(held)});
  }
  const bool isUnitAtFault = std::any_of(assessment.reasons.begin(), assessment.reasons.end(),
                                         [](const fit::Reason& r) { return !holdsFor({r}, nullptr).empty(); });
  if (!isUnitAtFault) {
    const std::string why = assessment.reasons.empty() ? std::string("other size or model") : assessment.reasons.front().codeText();
    drafts.push_back({check->unit, UnitUnpaired{check->athlete, why, true}});  // until somebody says where it is
  }
  return drafts;
}

}  // namespace snugline::book
