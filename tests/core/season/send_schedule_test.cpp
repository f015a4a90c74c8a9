// SPDX-License-Identifier: Apache-2.0
// Send-outs: nobody is left short when any plan could have helped, judged by trying every plan there is.
#include SNUGLINE_CATCH_HEADER

#include <algorithm>
#include <random>

#include "core/season/send_schedule.h"

using namespace snugline;
using namespace snugline::season;

namespace {

const Day kStart = dayOf(2026, 9, 1);

// A day by its number from the start, at the scale of these cases.
Day on(int day) { return kStart.plus(day); }

// Every day for every helmet, or never; the least number of helmet-days missing.
long long leastMissing(const ScheduleQuestion& question, std::size_t helmet, std::vector<SendOut>& sent) {
  if (helmet == question.helmets.size()) {
    const std::vector<int> there = helmetsThere(question, sent);
    long long missing = 0;
    for (std::size_t d = 0; d < there.size(); ++d)
      missing += std::max(0, headsOn(question, question.today.plus(static_cast<int>(d))) - there[d]);
    return missing;
  }
  long long least = leastMissing(question, helmet + 1, sent);
  if (!question.helmets[helmet].isRenewable) return least;
  for (Day day = question.helmets[helmet].from; day <= question.end && least > 0; day = day.plus(1)) {
    const Day back = day.plus(question.turnaround);
    sent.push_back({static_cast<int>(helmet), day, back, question.goodThrough(back)});
    least = std::min(least, leastMissing(question, helmet + 1, sent));
    sent.pop_back();
  }
  return least;
}

// What the answer says, against a count that looks at one helmet and one day at a time.
void judge(const ScheduleQuestion& question, const ScheduleAnswer& answer) {
  long long missing = 0;
  for (Day day = question.today; day <= question.end; day = day.plus(1)) {
    int there = day >= question.arriveOn ? question.arrivals : 0;
    for (std::size_t i = 0; i < question.helmets.size(); ++i) {
      Day from = question.helmets[i].from, good = question.helmets[i].lastGood;
      bool isAway = false;
      for (const SendOut& out : answer.sent) {
        if (out.helmet != static_cast<int>(i)) continue;
        CHECK(question.helmets[i].isRenewable);
        CHECK(out.back == out.sent.plus(question.turnaround));
        CHECK(out.goodThrough <= question.goodThrough(out.back));
        if (out.sent <= day) CHECK(out.sent >= from);  // not while it is away already
        isAway = isAway || (out.sent <= day && day < out.back);
        if (out.back <= day) {
          from = out.back;
          good = out.goodThrough;
        }
      }
      there += !isAway && from <= day && day <= good ? 1 : 0;
    }
    missing += std::max(0, headsOn(question, day) - there);
  }
  CHECK(missing == answer.missingDays);
  CHECK((missing == 0) == answer.missing.empty());
}

ScheduleQuestion randomCase(std::mt19937& chance) {
  const auto between = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(chance); };
  ScheduleQuestion question;
  question.today = on(0);
  question.seasonEnd = on(between(3, 6));
  const int nextStart = between(7, 10);
  question.end = on(nextStart + between(1, 4));
  question.turnaround = between(1, 4);
  const int helmets = between(1, 4);
  for (int i = 0; i < helmets; ++i) {
    SendHelmet helmet;
    helmet.from = on(between(1, 5) == 1 ? between(1, 3) : 0);
    helmet.lastGood = on(between(-1, 16));
    helmet.isRenewable = between(1, 6) != 1;
    question.helmets.push_back(helmet);
  }
  question.heads = {{on(0), question.seasonEnd, between(0, helmets)}, {on(nextStart), question.end, between(0, helmets)}};
  question.arrivals = between(1, 4) == 1 ? 1 : 0;
  question.arriveOn = on(nextStart);
  question.goodThrough = [end = question.end](Day) { return end.plus(100); };
  return question;
}

}  // namespace

TEST_CASE("No size is ever short in the plan when a plan exists for it, in 3000 small cases tried in full") {
  std::mt19937 chance(20261120);
  int shortAnyway = 0, sentInSeason = 0;
  for (int i = 0; i < 3000; ++i) {
    const ScheduleQuestion question = randomCase(chance);
    const auto answer = scheduleSendOuts(question);
    REQUIRE(answer.has_value());
    INFO("case " << i);
    judge(question, *answer);
    std::vector<SendOut> sent;
    const long long least = leastMissing(question, 0, sent);
    CHECK((answer->missingDays == 0) == (least == 0));
    CHECK(answer->missingDays >= least);
    shortAnyway += least > 0 ? 1 : 0;
    sentInSeason +=
        std::any_of(answer->sent.begin(), answer->sent.end(), [&](const auto& s) { return s.sent <= question.seasonEnd; }) ? 1 : 0;
  }
  CHECK(shortAnyway > 300);
  CHECK(shortAnyway < 2700);
  CHECK(sentInSeason > 100);
}

TEST_CASE("Large sizes are never short either where slack is enough for one helmet at a time") {
  std::mt19937 chance(7);
  for (int i = 0; i < 200; ++i) {
    const auto between = [&](int low, int high) { return std::uniform_int_distribution<int>(low, high)(chance); };
    ScheduleQuestion question;
    question.today = dayOf(2026, 8, 3);
    question.seasonEnd = dayOf(2026, 11, 20);
    question.end = dayOf(2027, 11, 20);
    question.turnaround = between(5, 40);
    const int helmets = between(20, 200), lapsing = 100 / question.turnaround;
    for (int h = 0; h < helmets; ++h)
      question.helmets.push_back(
          {h < lapsing ? question.today.plus(question.turnaround * (h + 1) - 1) : dayOf(2027, 6, 30), question.today, {}, true});
    question.heads = {{question.today, question.seasonEnd, helmets - 1}, {dayOf(2027, 8, 3), question.end, helmets}};
    question.goodThrough = [](Day back) { return dayOf(civil(back).year + 1, 12, 31); };
    const auto answer = scheduleSendOuts(question);
    REQUIRE(answer.has_value());
    CHECK(answer->missing.empty());
    judge(question, *answer);
  }
}

TEST_CASE("What nobody misses waits until the season is over") {
  ScheduleQuestion question;
  question.today = dayOf(2026, 10, 1);
  question.seasonEnd = dayOf(2026, 11, 20);
  question.end = dayOf(2027, 11, 20);
  for (int h = 0; h < 10; ++h) question.helmets.push_back({h < 3 ? dayOf(2026, 10, 20) : dayOf(2027, 12, 31), question.today, {}, true});
  question.heads = {{question.today, question.seasonEnd, 7}, {dayOf(2027, 8, 3), question.end, 10}};
  question.goodThrough = [](Day back) { return dayOf(civil(back).year + 1, 12, 31); };
  const auto answer = scheduleSendOuts(question);
  REQUIRE(answer.has_value());
  REQUIRE(answer->sent.size() == 3);
  for (const SendOut& out : answer->sent) CHECK(out.sent == dayOf(2026, 11, 21));
  question.heads[0].heads = 8;  // now one of them would be missed from 21 October on
  CHECK(scheduleSendOuts(question)->sent.at(0).sent == dayOf(2026, 10, 1));
}

TEST_CASE("A yearly renewal waits for the year whose label lasts through the next season") {
  ScheduleQuestion question;
  question.today = dayOf(2026, 10, 1);
  question.seasonEnd = dayOf(2026, 11, 20);
  question.end = dayOf(2027, 11, 20);
  question.turnaround = 14;
  question.helmets = {{dayOf(2026, 12, 31), question.today, {}, true}};
  question.heads = {{dayOf(2027, 8, 3), question.end, 1}};
  question.goodThrough = [](Day back) { return dayOf(civil(back).year, 12, 31); };
  const auto answer = scheduleSendOuts(question);
  REQUIRE(answer.has_value());
  REQUIRE(answer->sent.size() == 1);
  CHECK(answer->sent[0].back == dayOf(2027, 1, 1));
  CHECK(answer->missing.empty());
}

TEST_CASE("A turnaround or a span that cannot be meant is refused") {
  ScheduleQuestion question;
  question.today = dayOf(2026, 10, 1);
  question.end = dayOf(2027, 10, 1);
  question.turnaround = 0;
  CHECK(scheduleSendOuts(question).error().code == ErrorCode::outOfRange);
  question.turnaround = 42;
  question.end = dayOf(2026, 9, 30);
  CHECK(scheduleSendOuts(question).error().code == ErrorCode::outOfRange);
}
