// SPDX-License-Identifier: Apache-2.0
#include "core/season/send_schedule.h"

#include <algorithm>
#include <new>
#include <string>
#include <tuple>

namespace snugline::season {

namespace {

constexpr int kTurnaroundMost = 366;

// What may still happen to one helmet while a plan is made.
struct Pending {
  int helmet = 0;
  Day lastGood, from;
};

class Planner {
 public:
  explicit Planner(const ScheduleQuestion& question)
      : m_question(question), m_days(static_cast<std::size_t>(daysBetween(question.today, question.end) + 1)), m_heads(m_days) {
    for (std::size_t d = 0; d < m_days; ++d) m_heads[d] = headsOn(question, dayAt(d));
    for (std::size_t i = 0; i < question.helmets.size(); ++i)
      m_pending.push_back({static_cast<int>(i), question.helmets[i].lastGood, question.helmets[i].from});
  }

  // Sends helmets that lapse before `through`, none before `notBefore` nor on a day after `until`, at most `most`, the soonest to lapse
  // first, each on the first day on which nobody misses it. A helmet that has lapsed is missed already: it can go at any time.
  void send(Day through, Day notBefore, Day until, std::size_t most) {
    std::vector<Pending*> open;
    for (Pending& p : m_pending)
      if (isWorthSending(p, through)) open.push_back(&p);
    std::sort(open.begin(), open.end(), [](const Pending* a, const Pending* b) {
      return std::tie(a->lastGood, a->from, a->helmet) < std::tie(b->lastGood, b->from, b->helmet);
    });
    std::vector<int> there = helmetsThere(m_question, m_sent);
    std::size_t sent = 0;
    for (Day day = std::max(notBefore, m_question.today); day <= until && sent < most && !open.empty(); day = day.plus(1)) {
      std::vector<Pending*> later;
      bool isFull = false;  // whoever lapses later is missed on the same days, and more
      for (Pending* p : open) {
        const Day good = goodThrough(*p, day.plus(m_question.turnaround));
        const bool mayGo = !isFull && sent < most && day >= p->from && good >= through;
        isFull = isFull || (mayGo && isMissed(there, *p, day));
        if (!mayGo || isFull) {
          later.push_back(p);
          continue;
        }
        take(there, *p, day, good);
        ++sent;
      }
      open = std::move(later);
    }
  }

  // Helmets missing at worst on the days on which a helmet sent now could be back, or one sent after the season would not be back yet.
  [[nodiscard]] std::size_t missedBeforeReturn(Day sentAfter) const {
    const std::vector<int> there = helmetsThere(m_question, m_sent);
    int most = 0;
    for (std::size_t d = static_cast<std::size_t>(m_question.turnaround); d < m_days; ++d)
      if (dayAt(d) < sentAfter.plus(m_question.turnaround)) most = std::max(most, m_heads[d] - there[d]);
    return static_cast<std::size_t>(most);
  }

  // The first day from which a renewal holds to the end: sent earlier, a helmet would have to go twice.
  [[nodiscard]] Day lastsFrom(Day sentAfter) const {
    Day day = std::max(sentAfter, m_question.today);
    while (day < m_question.end && m_question.goodThrough(day.plus(m_question.turnaround)) < m_question.end) day = day.plus(1);
    return day;
  }

  [[nodiscard]] ScheduleAnswer answer() const {
    ScheduleAnswer answer;
    answer.sent = m_sent;
    std::sort(answer.sent.begin(), answer.sent.end(),
              [](const SendOut& a, const SendOut& b) { return std::tie(a.sent, a.helmet) < std::tie(b.sent, b.helmet); });
    const std::vector<int> there = helmetsThere(m_question, m_sent);
    for (std::size_t d = 0; d < m_days; ++d) {
      const int missing = m_heads[d] - there[d];
      if (missing <= 0) continue;
      answer.missingDays += missing;
      const Day day = dayAt(d);
      if (answer.missing.empty() || answer.missing.back().last.plus(1) != day) answer.missing.push_back({day, day, 0});
      answer.missing.back().last = day;
      answer.missing.back().most = std::max(answer.missing.back().most, missing);
    }
    return answer;
  }

 private:
  [[nodiscard]] Day dayAt(std::size_t d) const { return m_question.today.plus(static_cast<int>(d)); }
  [[nodiscard]] std::size_t indexOf(Day day) const {
    return static_cast<std::size_t>(std::clamp(daysBetween(m_question.today, day), 0, static_cast<int>(m_days)));
  }
  [[nodiscard]] const SendHelmet& helmet(const Pending& p) const { return m_question.helmets[static_cast<std::size_t>(p.helmet)]; }
  [[nodiscard]] Day goodThrough(const Pending& p, Day back) const {
    const Day good = m_question.goodThrough(back);
    return helmet(p).ageLimit ? std::min(good, *helmet(p).ageLimit) : good;
  }
  [[nodiscard]] bool isWorthSending(const Pending& p, Day through) const {
    return helmet(p).isRenewable && p.lastGood < through && (!helmet(p).ageLimit || *helmet(p).ageLimit >= through);
  }
  // Would somebody go without on a day on which this helmet is good here now and would be away?
  [[nodiscard]] bool isMissed(const std::vector<int>& there, const Pending& p, Day day) const {
    const std::size_t end = std::min(indexOf(day.plus(m_question.turnaround)), indexOf(p.lastGood.plus(1)));
    for (std::size_t d = indexOf(day); d < end; ++d)
      if (there[d] <= m_heads[d]) return true;
    return false;
  }
  void take(std::vector<int>& there, Pending& p, Day day, Day good) {
    const Day back = day.plus(m_question.turnaround);
    for (std::size_t d = indexOf(day); d < indexOf(p.lastGood.plus(1)); ++d) --there[d];
    for (std::size_t d = indexOf(back); d < indexOf(good.plus(1)); ++d) ++there[d];
    m_sent.push_back({p.helmet, day, back, good});
    p.lastGood = good;
    p.from = back;
  }

  const ScheduleQuestion& m_question;
  std::size_t m_days;
  std::vector<int> m_heads;
  std::vector<Pending> m_pending;
  std::vector<SendOut> m_sent;
};

ScheduleAnswer sparing(const ScheduleQuestion& question) {
  Planner planner(question);
  const Day after = planner.lastsFrom(question.seasonEnd.plus(1));
  if (question.today <= question.seasonEnd)
    planner.send(question.seasonEnd, question.today, question.seasonEnd, planner.missedBeforeReturn(after));
  planner.send(question.end, after, question.end, question.helmets.size());
  return planner.answer();
}

ScheduleAnswer early(const ScheduleQuestion& question) {
  Planner planner(question);
  planner.send(question.end, question.today, question.end, question.helmets.size());
  return planner.answer();
}

std::size_t inSeason(const ScheduleAnswer& answer, Day seasonEnd) {
  return static_cast<std::size_t>(
      std::count_if(answer.sent.begin(), answer.sent.end(), [&](const SendOut& s) { return s.sent <= seasonEnd; }));
}

}  // namespace

int headsOn(const ScheduleQuestion& question, Day day) {
  for (const HeadSpan& span : question.heads)
    if (span.first <= day && day <= span.last) return span.heads;
  return 0;
}

std::vector<int> helmetsThere(const ScheduleQuestion& question, const std::vector<SendOut>& sent) {
  const int days = daysBetween(question.today, question.end) + 1;
  std::vector<int> change(static_cast<std::size_t>(days) + 1, 0);
  const auto span = [&](Day first, Day last, int by) {  // first to last, both there
    const int from = std::clamp(daysBetween(question.today, first), 0, days),
              to = std::clamp(daysBetween(question.today, last) + 1, 0, days);
    if (from >= to) return;
    change[static_cast<std::size_t>(from)] += by;
    change[static_cast<std::size_t>(to)] -= by;
  };
  std::vector<std::vector<SendOut>> trips(question.helmets.size());
  for (const SendOut& out : sent) trips[static_cast<std::size_t>(out.helmet)].push_back(out);
  for (std::size_t i = 0; i < trips.size(); ++i) {
    Day from = question.helmets[i].from, good = question.helmets[i].lastGood;
    std::sort(trips[i].begin(), trips[i].end(), [](const SendOut& a, const SendOut& b) { return a.sent < b.sent; });
    for (const SendOut& trip : trips[i]) {
      span(from, std::min(good, trip.sent.plus(-1)), 1);
      from = trip.back;
      good = trip.goodThrough;
    }
    span(from, good, 1);
  }
  span(question.arriveOn, question.end, question.arrivals);
  std::vector<int> there(static_cast<std::size_t>(days));
  int now = 0;
  for (std::size_t d = 0; d < there.size(); ++d) there[d] = now += change[d];
  return there;
}

Result<ScheduleAnswer> scheduleSendOuts(const ScheduleQuestion& question) try {
  const int days = daysBetween(question.today, question.end);
  if (days < 0 || days > kScheduleDays) return fail(ErrorCode::outOfRange, "days", std::to_string(days));
  if (question.turnaround < 1 || question.turnaround > kTurnaroundMost)
    return fail(ErrorCode::outOfRange, "turnaround", std::to_string(question.turnaround) + ", 1, " + std::to_string(kTurnaroundMost));
  ScheduleAnswer spare = sparing(question);
  if (spare.missingDays == 0) return spare;
  ScheduleAnswer soon = early(question);
  if (soon.missingDays != spare.missingDays) return soon.missingDays < spare.missingDays ? soon : spare;
  return inSeason(soon, question.seasonEnd) < inSeason(spare, question.seasonEnd) ? soon : spare;
} catch (const std::bad_alloc&) {
  return fail(ErrorCode::outOfMemory);
}

}  // namespace snugline::season
