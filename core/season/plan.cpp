// SPDX-License-Identifier: Apache-2.0
#include "core/season/plan.h"

#include <algorithm>
#include <map>
#include <new>
#include <tuple>

#include "core/season/match_table.h"
#include "core/season/plan_parts.h"
#include "core/season/sheet_chain.h"

namespace snugline::season {

namespace {

std::string text(double value) {
  std::string printed = std::to_string(value);
  while (printed.find('.') != std::string::npos && (printed.back() == '0' || printed.back() == '.')) {
    const bool isPoint = printed.back() == '.';
    printed.pop_back();
    if (isPoint) break;
  }
  return printed;
}

Result<void> within(const char* wish, double value, double low, double high) {
  if (value >= low && value <= high) return {};
  return fail(ErrorCode::outOfRange, wish, text(value) + ", " + text(low) + ", " + text(high));
}

Result<void> check(const PlanWishes& w) {
  for (const Result<void>& answer :
       {within("season", w.season, 1990, 2198), within("turnaround", w.turnaround, 1, 366), within("cover", w.cover, 0.5, 0.9999),
        within("returning", w.returning, 0, 1), within("newcomers", w.newcomers.value_or(0), 0, 100000),
        within("newcomer-age", w.newcomerAge, 5, 60), within("last-age", w.lastAge, 5, 99),
        within("tem", static_cast<double>(w.tem.um), static_cast<double>(fit::kTemLowest.um), static_cast<double>(fit::kTemHighest.um))})
    if (!answer) return answer;
  return {};
}

// The season asked for, and the same days a year later. Where the Book says nothing of that year, its dates are those of the Book's
// season in that year, else our own.
Result<void> setCalendar(const Views& views, PlanAnswer& answer) {
  const int year = answer.season;
  answer.start = dayOf(year, kSeasonStartMonth, 1);
  answer.end = dayOf(year, kSeasonEndMonth, 30);
  answer.areDatesAssumed = true;
  if (views.team && views.team->seasonStart && views.team->seasonEnd) {
    const int months = 12 * (year - civil(*views.team->seasonStart).year);
    answer.start = addMonths(*views.team->seasonStart, months);
    answer.end = addMonths(*views.team->seasonEnd, months);
    answer.areDatesAssumed = months != 0;
  }
  answer.nextSeason = year + 1;
  answer.nextStart = addMonths(answer.start, 12);
  answer.nextEnd = addMonths(answer.end, 12);
  const int days = daysBetween(answer.today, answer.nextEnd);
  if (days >= 0 && days <= kScheduleDays) return {};
  const int now = civil(answer.today).year;
  return fail(ErrorCode::outOfRange, "season", std::to_string(year) + ", " + std::to_string(now - 1) + ", " + std::to_string(now + 2));
}

bool isGoneForGood(const UnitRecord& unit) { return unit.place == UnitPlace::retired || unit.place == UnitPlace::lost; }

// Nothing against it but a label that has lapsed, held for that or not: what a send-out is for.
bool isLapsedOnly(const UnitStanding& standing) {
  const bool isHeldForIt = standing.why(Bar::held) != nullptr;
  return standing.why(Bar::labelLapsed) != nullptr && std::all_of(standing.reasons.begin(), standing.reasons.end(), [&](const WhyNot& why) {
           if (why.bar == Bar::held) return why.reason == "label";
           const bool isOfHold = why.bar == Bar::notInService || why.bar == Bar::pointUnchecked;
           return why.bar == Bar::labelLapsed || isOfWearer(why.bar) || (isOfHold && isHeldForIt);
         });
}

class Planning {
 public:
  Planning(const Views& views, const PlanWishes& wishes, PlanAnswer& answer)
      : m_views(views), m_standings(views, answer.today), m_wishes(wishes), m_answer(answer) {}

  Result<void> run() {
    for (const auto& [id, unit] : m_views.units)
      if (!isGoneForGood(unit)) m_units.push_back(&unit);
    std::sort(m_units.begin(), m_units.end(), [](const auto* a, const auto* b) { return idBefore(a->id, b->id); });
    if (auto set = setSheets(); !set) return set;
    for (const UnitRecord* unit : m_units) addUnit(*unit);
    std::stable_sort(m_answer.lapsing.begin(), m_answer.lapsing.end(),
                     [](const Lapsing& a, const Lapsing& b) { return a.lastGood.first < b.lastGood.first; });
    if (auto added = addHeads(m_views, m_wishes, m_kinds, m_answer); !added) return added;
    for (PlanKind& kind : m_kinds.all())
      if (auto planned = plan(kind); !planned) return planned;
    gatherBatches();
    return {};
  }

 private:
  Result<void> setSheets() {
    std::map<std::string, int> uses;
    for (const UnitRecord* unit : m_units)
      if (m_views.sheetOf(*unit) != nullptr) ++uses[m_views.standingSheet(unit->sheet)];
    const std::string& newSheet = m_views.standingSheet(m_wishes.newSheet);
    if (!newSheet.empty()) {
      if (m_views.sheet(newSheet) == nullptr) return fail(ErrorCode::notFound, newSheet);
      uses.emplace(newSheet, 0);
    }
    if (uses.empty())  // nothing on the shelf: any sheet that counts
      for (const SheetRecord* record : standingSheets(m_views)) uses.emplace(record->hash, 0);
    std::vector<std::pair<std::string, const gear::ModelSheet*>> sheets;
    for (const auto& [hash, n] : uses) sheets.emplace_back(hash, m_views.sheet(hash));
    std::sort(sheets.begin(), sheets.end(),
              [](const auto& a, const auto& b) { return std::tie(a.second->id, a.first) < std::tie(b.second->id, b.first); });
    int most = -1;
    for (const auto& [hash, sheet] : sheets) {
      m_kinds.addSheet(hash, sheet);
      if (uses.at(hash) <= most) continue;
      most = uses.at(hash);
      m_answer.newSheet = hash;
    }
    if (!newSheet.empty()) m_answer.newSheet = newSheet;
    return {};
  }

  [[nodiscard]] static std::optional<Day> ageLimitOf(const UnitRecord& unit, const gear::ModelSheet& sheet) {
    const gear::Label* first = nullptr;
    for (const LabelRecord& record : unit.labels)
      if (record.label.kind == gear::LabelKind::makersMark && (first == nullptr || record.label.year < first->year)) first = &record.label;
    if (first == nullptr || sheet.ageLimitMonths <= 0) return std::nullopt;
    return addMonths(gear::certifiedOn(*first).first, sheet.ageLimitMonths).plus(-1);
  }

  // Back on this day with a label of that year.
  [[nodiscard]] static Day renewed(const gear::ModelSheet& sheet, Day back) {
    const gear::Label label{gear::LabelKind::recertification, civil(back).year, std::nullopt, {}};
    return gear::lastGoodDay(label, sheet.certificationMonths, std::nullopt, 0).first;
  }

  void addUnit(const UnitRecord& unit) {
    const UnitStanding standing = m_standings.of(unit);
    const std::optional<Bar> bar = standing.mainBar();
    PlanKind* kind = m_kinds.find(m_views.standingSheet(unit.sheet), unit.size);
    const auto good = lastGoodDay(m_views, unit);
    if (kind == nullptr) return;
    const std::optional<Day> limit = ageLimitOf(unit, *kind->model);
    const bool isRenewable = !limit || *limit >= m_answer.nextEnd;
    if (good && good->first < m_answer.nextEnd)
      m_answer.lapsing.push_back({unit.id, kind->sheet, unit.size, *good, whenOf(good->first), isRenewable, bar});
    const Day away = m_answer.today.plus(m_wishes.turnaround);  // nobody said when it comes back: as long as one that goes today
    SendHelmet helmet{m_answer.today, m_answer.today, limit, isRenewable};
    if (bar == Bar::sentOut) {
      helmet.from = away;
      helmet.lastGood = limit ? std::min(*limit, renewed(*kind->model, away)) : renewed(*kind->model, away);
    } else if (good && (!bar || isLapsedOnly(standing))) {
      helmet.lastGood = good->first;
    } else {
      ++kind->notCounted;
      return;
    }
    kind->helmets.push_back(helmet);
    kind->units.push_back(unit.id);
  }

  [[nodiscard]] LapseWhen whenOf(Day lastGood) const {
    if (lastGood < m_answer.today) return LapseWhen::before;
    if (lastGood < m_answer.end) return LapseWhen::thisSeason;
    return lastGood < m_answer.nextStart ? LapseWhen::betweenSeasons : LapseWhen::nextSeason;
  }

  Result<void> plan(PlanKind& kind) {
    Order order{kind.sheet, kind.size, kind.returning, kind.newcomers, kind.next.enoughFor(m_wishes.cover), 0, kind.notCounted, 0, 0};
    const bool doRenewalsLast = renewed(*kind.model, m_answer.nextStart) >= m_answer.nextEnd;
    for (const SendHelmet& helmet : kind.helmets)
      order.good += helmet.lastGood >= m_answer.nextEnd || (helmet.isRenewable && doRenewalsLast) ? 1 : 0;
    order.order = std::max(0, order.enough - order.good);
    order.covered = kind.next.atMost(order.enough);
    if (kind.next.expected() > 0 || !kind.helmets.empty() || kind.notCounted > 0) m_answer.orders.push_back(order);

    ScheduleQuestion question;
    question.today = m_answer.today;
    question.end = m_answer.nextEnd;
    question.seasonEnd = m_answer.end;
    question.turnaround = m_wishes.turnaround;
    question.helmets = kind.helmets;
    if (m_answer.today <= m_answer.end) question.heads.push_back({std::max(m_answer.today, m_answer.start), m_answer.end, kind.wornNow});
    question.heads.push_back({std::max(m_answer.today, m_answer.nextStart), m_answer.nextEnd, order.enough});
    question.arrivals = order.order;
    question.arriveOn = m_answer.nextStart;
    question.goodThrough = [model = kind.model](Day back) { return renewed(*model, back); };
    const auto schedule = scheduleSendOuts(question);
    if (!schedule) return tl::unexpected<Error>(schedule.error());
    for (const MissingSpan& span : schedule->missing) m_answer.missing.push_back({kind.sheet, kind.size, span.first, span.last, span.most});
    for (const SendOut& out : schedule->sent)
      m_sent.push_back({out.sent, out.back, kind.units[static_cast<std::size_t>(out.helmet)], &kind});
    return {};
  }

  void gatherBatches() {
    std::stable_sort(m_sent.begin(), m_sent.end(), [](const Sent& a, const Sent& b) { return a.day < b.day; });
    for (const Sent& sent : m_sent) {
      if (m_answer.batches.empty() || m_answer.batches.back().send != sent.day) m_answer.batches.push_back({sent.day, sent.back, {}, {}});
      Batch& batch = m_answer.batches.back();
      batch.units.push_back(sent.unit);
      if (batch.sizes.empty() || batch.sizes.back().sheet != sent.kind->sheet || batch.sizes.back().size != sent.kind->size)
        batch.sizes.push_back({sent.kind->sheet, sent.kind->size, 0});
      ++batch.sizes.back().count;
    }
    for (Batch& batch : m_answer.batches) std::sort(batch.units.begin(), batch.units.end(), idBefore);
  }

  struct Sent {
    Day day, back;
    std::string unit;
    const PlanKind* kind = nullptr;
  };

  const Views& m_views;
  Standings m_standings;
  const PlanWishes& m_wishes;
  PlanAnswer& m_answer;
  std::vector<const UnitRecord*> m_units;
  PlanKinds m_kinds;
  std::vector<Sent> m_sent;
};

}  // namespace

std::string_view code(LapseWhen w) {
  switch (w) {
    case LapseWhen::before:
      return "before";
    case LapseWhen::thisSeason:
      return "this-season";
    case LapseWhen::betweenSeasons:
      return "between-seasons";
    case LapseWhen::nextSeason:
      return "next-season";
  }
  return {};
}

void PlanKinds::addSheet(const std::string& hash, const gear::ModelSheet* sheet) {
  m_sheets[hash] = {static_cast<int>(m_kinds.size()), sheet};
  for (const gear::SizeBand& band : sheet->sizes) {
    PlanKind kind;
    kind.sheet = hash;
    kind.size = band.name;
    kind.model = sheet;
    m_kinds.push_back(std::move(kind));
  }
}

PlanKind* PlanKinds::find(const std::string& sheet, const std::string& size) {
  const auto it = m_sheets.find(sheet);
  if (it == m_sheets.end()) return nullptr;
  for (std::size_t i = 0; i < it->second.second->sizes.size(); ++i)
    if (it->second.second->sizes[i].name == size) return &m_kinds[static_cast<std::size_t>(it->second.first) + i];
  return nullptr;
}

int PlanKinds::firstOf(const std::string& sheet) const {
  const auto it = m_sheets.find(sheet);
  return it == m_sheets.end() ? -1 : it->second.first;
}

const gear::ModelSheet* PlanKinds::sheet(const std::string& hash) const {
  const auto it = m_sheets.find(hash);
  return it == m_sheets.end() ? nullptr : it->second.second;
}

Result<PlanAnswer> planSeason(const Views& views, const PlanWishes& wishes, Day today) try {
  if (auto checked = check(wishes); !checked) return tl::unexpected<Error>(checked.error());
  PlanAnswer answer;
  answer.today = today;
  answer.season = wishes.season;
  if (auto set = setCalendar(views, answer); !set) return tl::unexpected<Error>(set.error());
  if (auto run = Planning(views, wishes, answer).run(); !run) return tl::unexpected<Error>(run.error());
  return answer;
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

}  // namespace snugline::season
