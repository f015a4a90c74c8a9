// SPDX-License-Identifier: Apache-2.0
// Random histories of helmets, played through the acts and folded as the Book folds them: whoever says anything of a helmet says what its
// standing says. The oracle is the record and the other functions of core; the rules are ours and common practice, no source.
#include SNUGLINE_CATCH_HEADER

#include <rapidcheck.h>

#include <algorithm>
#include <map>

#include "core/book/acts_dock.h"
#include "core/book/acts_season.h"
#include "core/book/draft_names.h"
#include "core/book/fold.h"
#include "core/gear/model_sheet.h"
#include "core/season/board.h"
#include "core/season/spares.h"
#include "core/season/standing.h"

using namespace snugline;
using namespace snugline::book;

namespace {

constexpr int kAthletes = 3, kUnits = 4;  // the last athlete never wears one: a head that any helmet could be given to

class History {
 public:
  explicit History(std::string sheetBytes) : m_day(dayOf(2026, 10, 1)) {
    TeamFounded team{"Harrow Creek High", "Herons", "2026", {}};
    write({{"", team}});
    PracticeSet days;
    days.seasonStart = dayOf(2026, 8, 3);
    days.seasonEnd = dayOf(2026, 11, 20);
    write({{"d:1", days}});
    write({{"", SheetAdopted{std::move(sheetBytes)}}});
    for (int i = 0; i < kAthletes; ++i) write(*addAthlete(views(), {std::to_string(10 + i), "Quillbrook", "Ada", 2009}));
    for (const auto& [id, athlete] : views().athletes) athletes.push_back(id);
    std::sort(athletes.begin(), athletes.end(),
              [&](const auto& a, const auto& b) { return views().athlete(a)->jersey < views().athlete(b)->jersey; });
    for (int i = 0; i < kUnits; ++i) {
      Arrival arrival;
      arrival.tag.serial = arrival.tag.key = "A1-" + std::to_string(i);
      arrival.sheet = views().sheets.begin()->first;
      arrival.size = sheet().sizes[1].name;
      arrival.label = label(i == 0 ? 2023 : 2026);
      for (auto& point : arrival.points) point.state = gear::PointState::sound;
      if (i == 1) arrival.points[2].state = gear::PointState::unseen;
      write(*takeIn(views(), arrival, today()));
    }
    for (const auto& [id, unit] : views().units) units.push_back(id);
    std::sort(units.begin(), units.end(), [&](const auto& a, const auto& b) { return views().unit(a)->serial < views().unit(b)->serial; });
  }

  static gear::Label label(int year) { return {gear::LabelKind::recertification, year, std::nullopt, {}}; }
  [[nodiscard]] const season::Views& views() const { return m_folded.views; }
  [[nodiscard]] const gear::ModelSheet& sheet() const { return *views().sheets.begin()->second.sheet; }
  [[nodiscard]] Day today() const { return m_day; }
  [[nodiscard]] Instant now() const { return instantAt(m_day, 600 + m_minute, -300); }
  void later() { m_minute += 1; }
  void nextDay() {
    m_day = m_day.plus(1);
    m_minute = 0;
  }
  bool write(const Result<Drafts>& drafts) {
    if (drafts) write(*drafts);
    return drafts.has_value();
  }
  void write(Drafts drafts) {
    std::vector<std::string> ids;
    for (Draft& draft : drafts) {
      Fact fact;
      fact.device = "d";
      fact.n = ++m_n;
      fact.order = static_cast<std::int64_t>(m_n);
      fact.at = now();
      std::string about = draft.about;
      Body body = draft.body;
      if (!resolveNames(about, body, ids)) throw std::runtime_error("a draft names none");
      fact.body = std::move(body);
      fact.about = about.empty() ? fact.id() : about;
      ids.push_back(fact.id());
      m_folded.take(fact);
    }
    m_folded.settle();
    later();
  }
  std::vector<std::string> athletes, units;

 private:
  Folded m_folded;
  Day m_day;
  int m_minute = 0;
  std::uint64_t m_n = 0;
};

std::string sheetBytes() {
  const auto read = gear::readSheetFile(std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/alder-a1.json");
  REQUIRE(read);
  return read->bytes;
}

template <typename T>
const T& oneOf(const std::vector<T>& all) {
  return all[*rc::gen::inRange<std::size_t>(0, all.size())];
}

season::ReturnRecord anyReturn() {
  const std::vector<std::string_view> who{season::kByUs, season::kByFirm, season::kByRecertifier, season::kByMaker};
  return {std::string(oneOf(who)), "put right", "note 7", *rc::gen::arbitrary<bool>(), {}};
}

// Whatever people may do next; what core refuses changes nothing.
void actOnce(History& h) {
  const std::string unit = oneOf(h.units), athlete = h.athletes[*rc::gen::inRange<std::size_t>(0, kAthletes - 1)];
  const bool isYes = *rc::gen::arbitrary<bool>();
  const gear::Point point = gear::kPoints[*rc::gen::inRange<std::size_t>(0, gear::kPointCount)];
  const season::AthleteRecord& who = *h.views().athlete(athlete);
  switch (*rc::gen::inRange(0, 20)) {
    case 0:
      h.write(pair(h.views(), athlete, unit, h.today(), isYes));
      return;
    case 1: {
      Swap swap{athlete, unit, isYes ? "other" : "", {}, *rc::gen::arbitrary<bool>(), !isYes};
      h.write(swapHelmet(h.views(), swap, h.now()));
      return;
    }
    case 2:
      h.write(hold(h.views(), unit, isYes ? std::string(gear::code(point)) : "label", "words", *rc::gen::arbitrary<bool>()));
      return;
    case 3:
      for (const season::HoldRecord& open : std::vector(h.views().unit(unit)->holds))
        h.write(releaseHold(h.views(), unit, open.fact, "ok", h.today()));
      return;
    case 4:
    case 5: {
      gear::PointFindings found;
      found[static_cast<std::size_t>(point)] = {isYes ? gear::PointState::sound : gear::PointState::fault, isYes ? "" : "torn"};
      h.write(seePoints(h.views(), unit, found, false));
      return;
    }
    case 6: {
      gear::PointFindings found;
      for (auto& each : found) each.state = gear::PointState::sound;
      h.write(seePoints(h.views(), unit, found, true));
      return;
    }
    case 7:
      h.write(readLabel(h.views(), unit, isYes ? std::optional(History::label(*rc::gen::inRange(2022, 2027))) : std::nullopt, h.today(),
                        *rc::gen::arbitrary<bool>()));
      return;
    case 8: {
      static const std::vector<std::string> kTo{"repair", "sent-out", "lost", "found", "retired"};
      const std::string to = oneOf(kTo);
      if (to != "retired" || isYes) h.write(move(h.views(), unit, to, {}, "why"));
      return;
    }
    case 9:
    case 10:
      h.write(comeBack(h.views(), unit, anyReturn(), h.today()));
      return;
    case 11:
      h.write(putInService(h.views(), unit, h.today()));
      return;
    case 12:
      h.write(toShelf(h.views(), unit, h.now()));
      return;
    case 13:
      h.write(whereNow(h.views(), unit, isYes));
      return;
    case 14: {
      season::SaidRecord said;
      said.unit = who.units.empty() ? std::string() : who.units.back();
      said.isBroken = isYes;
      said.feels = isYes ? fit::Feels::broke : fit::Feels::tight;
      said.isUnwell = !isYes && *rc::gen::arbitrary<bool>();
      if (!said.isUnwell && !isYes) said.where = fit::Mark::jaw;
      h.write({{athlete, Said{said, {}}}});
      return;
    }
    case 15:
      for (const season::SaidRecord& said : std::vector(who.said)) h.write({{athlete, SaidAcknowledged{said.fact, isYes, {}}}});
      return;
    case 16:
      h.write(beginCheck(h.views(), athlete, kindDue(h.views(), who), h.today()));
      return;
    case 17:
    case 18: {
      if (who.openCheck.empty()) return;
      std::vector<fit::Answer> answers{fit::HairSeen{true}};
      for (const fit::Mark mark : fit::kMarks)
        answers.emplace_back(fit::MarkSeen{mark, fit::Finding::snug, fit::Side::both, fit::HoldHow::unsaid, {}});
      if (isYes) answers.emplace_back(fit::PointsSound{});
      if (!isYes) answers.emplace_back(fit::PointSeen{point, gear::PointState::fault, "crack"});
      h.write(answer(h.views(), who.openCheck, answers, h.now()));
      h.write(endCheck(h.views(), who.openCheck, h.now()));
      return;
    }
    default:
      h.nextDay();
  }
}

// A crack's hold is gone only by retirement, or mended with a label read after that.
void checkCracks(const History& h, std::map<std::string, std::string>& cracks) {
  for (const std::string& id : h.units) {
    for (const season::HoldRecord& open : h.views().unit(id)->holds) {
      if (open.reason == "shell" && open.what != kNotSeenYet) cracks.emplace(open.fact, id);
    }
  }
  std::erase_if(cracks, [&](const auto& crack) {
    const season::UnitRecord& unit = *h.views().unit(crack.second);
    if (std::any_of(unit.holds.begin(), unit.holds.end(), [&](const auto& open) { return open.fact == crack.first; })) return false;
    const bool isMended = unit.returned && !unit.labels.empty() && !unit.returned->paper.empty() &&
                          (unit.returned->by == season::kByRecertifier || unit.returned->by == season::kByMaker) &&
                          isAfter(unit.labels.back().stamp, unit.returned->stamp);
    RC_ASSERT(unit.place == season::UnitPlace::retired || isMended);
    return true;
  });
}

void checkOneAnswer(const History& h, const std::string& id) {
  const season::Views& views = h.views();
  const season::UnitRecord& unit = *views.unit(id);
  const season::UnitStanding at = season::standingOf(views, unit, h.today());
  const season::WhyNot* bar = at.offEveryHead();
  const std::string& head = h.athletes.back();  // wears nothing, has no check open

  // What may be worn may be given, by the plain act, by matching and as a spare; and nothing else may.
  const auto given = pair(views, head, id, h.today());
  const auto isTaken = [&] {  // from somebody with a check open
    return std::any_of(unit.athletes.begin(), unit.athletes.end(), [&](const auto& a) { return !views.athlete(a)->openCheck.empty(); });
  };
  if (bar != nullptr) RC_ASSERT(!given);
  if (bar == nullptr && !isTaken()) RC_ASSERT(given.has_value());
  season::MatchWishes wishes;
  wishes.through = h.today();
  const auto explained = season::explainPair(views, wishes, h.today(), head, id);
  RC_ASSERT(explained.has_value());
  RC_ASSERT(explained->bar == at.mainBar());
  const auto spares = season::sparesFor(views, head, {}, h.today());
  RC_ASSERT(spares.has_value());
  const bool isOffered = std::any_of(spares->offers.begin(), spares->offers.end(), [&](const auto& spare) { return spare.unit == id; });
  RC_ASSERT(isOffered == (bar == nullptr && unit.athletes.empty() && at.where == season::Where::withUs));

  // What it says of itself.
  RC_ASSERT(at.mayBeWorn() == (at.state == season::UnitState::inService));
  const bool isLabelGood = at.lastGood && gear::judge(*at.lastGood, h.today()) == gear::LabelState::good && !unit.isLabelDisputed;
  RC_ASSERT(isLabelGood || at.points.front() != gear::PointState::sound);
  RC_ASSERT((at.where == season::Where::withAthlete) == !at.with.empty());
  if (!unit.keptBy.empty()) {
    const auto kept = season::keptBy(views, unit.keptBy);
    RC_ASSERT(std::find(kept.begin(), kept.end(), &unit) != kept.end());
  }

  // What leads out of it is what core allows.
  const auto acts = season::actsOf(views, at, h.today());
  const auto offers = [&](season::UnitAct act) { return std::find(acts.begin(), acts.end(), act) != acts.end(); };
  RC_ASSERT(offers(season::UnitAct::inService) == (!unit.isInService && putInService(views, id, h.today()).has_value()));
  const season::ReturnRecord byUs{std::string(season::kByUs), "put right", {}, true, {}};
  RC_ASSERT(offers(season::UnitAct::back) ==
            (comeBack(views, id, byUs, h.today()).has_value() || move(views, id, "found", {}).has_value()));
  RC_ASSERT(offers(season::UnitAct::toShelf) == toShelf(views, id, h.now()).has_value());
  RC_ASSERT(offers(season::UnitAct::giveTo) == isOffered);
  const bool canRelease = std::any_of(unit.holds.begin(), unit.holds.end(),
                                      [&](const auto& open) { return releaseHold(views, id, open.fact, "ok", h.today()).has_value(); });
  RC_ASSERT(offers(season::UnitAct::release) == (canRelease && at.where != season::Where::repair && at.where != season::Where::sentOut &&
                                                 at.where != season::Where::lost && at.where != season::Where::retired));
  const auto inHand = whereNow(views, id, false);
  if (offers(season::UnitAct::whereNow)) RC_ASSERT(inHand.has_value() && !inHand->empty());
  const auto known = season::knownCause(at);
  if (known && offers(season::UnitAct::hold)) RC_ASSERT(hold(views, id, known->reason, known->what, false).has_value());

  // Whoever wears what may not be worn stands under Do not wear; a report that was acknowledged has its own rule there.
  for (const std::string& athlete : unit.athletes) {
    const season::DueRow row = season::rowOf(views, *views.athlete(athlete), {h.now()}, {});
    const bool isStopped = std::any_of(at.reasons.begin(), at.reasons.end(), [](const season::WhyNot& why) {
      return why.bar != season::Bar::pointsAfterReport && why.bar != season::Bar::notInService;
    });
    if (isStopped) RC_ASSERT(row.lane == season::Lane::doNotWear);
  }
}

}  // namespace

TEST_CASE("Over random histories the helmet's standing, the acts, matching, spares and the board give one answer") {
  const std::string bytes = sheetBytes();
  CHECK(rc::check("histories", [&] {
    History h(bytes);
    std::map<std::string, std::string> cracks;
    const int length = *rc::gen::inRange(5, 60);
    for (int i = 0; i < length; ++i) {
      actOnce(h);
      checkCracks(h, cracks);
      for (const std::string& id : h.units) checkOneAnswer(h, id);
    }
  }));
}
