// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <algorithm>

#include "core/book/roster.h"

using namespace snugline;
using namespace snugline::book;

namespace {

const Day kToday = dayOf(2026, 10, 14);

RosterPlan plan(const season::Views& views, const std::string& text) {
  const auto read = readRoster(text, "team.csv");
  REQUIRE(read);
  return planRoster(views, *read, kToday);
}

// What the Book would hold after these drafts, as far as a roster goes.
season::Views after(season::Views views, const RosterPlan& done) {
  std::vector<std::string> ids;
  for (const Draft& draft : done.drafts) {
    const std::string id = draft.about.empty()            ? "d:" + std::to_string(1000 + views.athletes.size())
                           : draft.about.starts_with('#') ? ids.at(std::stoul(draft.about.substr(1)))
                                                          : draft.about;
    ids.push_back(id);
    season::AthleteRecord& athlete = views.athletes[id];
    athlete.id = id;
    if (const auto* added = std::get_if<AthleteAdded>(&draft.body)) {
      athlete.jersey = added->jersey;
      athlete.family = added->family;
      athlete.given = added->given;
      athlete.birthYear = added->birthYear;
    } else if (const auto* changed = std::get_if<AthleteChanged>(&draft.body)) {
      if (changed->jersey) athlete.jersey = *changed->jersey;
      if (changed->family) athlete.family = *changed->family;
      if (changed->given) athlete.given = *changed->given;
      if (changed->birthYear) athlete.birthYear = changed->birthYear;
      if (changed->isOnRoster) athlete.isOnRoster = *changed->isOnRoster;
    } else if (const auto* tape = std::get_if<TapeRead>(&draft.body)) {
      athlete.tapes.push_back({tape->readings, {}});
    } else {
      FAIL("a roster writes nothing else");
    }
  }
  return views;
}

const std::string kRoster =
    "No,Last,First,Born,Head mm\n"
    "07,Merriwold,Teo,2010,561\n"
    "00,Nettlecombe,Ari,2011,\n"
    "12,Okonwara,Chidi,2009,574\n";

}  // namespace

TEST_CASE("A roster goes in, and the same roster again changes nothing") {
  const RosterPlan first = plan({}, kRoster);
  CHECK(first.added == 3);
  CHECK(first.questioned.empty());
  CHECK(first.drafts.size() == 5);  // three people, two heads
  const season::Views views = after({}, first);
  const RosterPlan again = plan(views, kRoster);
  CHECK(again.added == 0);
  CHECK(again.changed == 0);
  CHECK(again.unchanged == 3);
  CHECK(again.drafts.empty());
}

TEST_CASE("Each question of a roster is answered by itself, and what is answered goes in or stays out") {
  const std::string text =
      "No,Last,First,Born,Head mm\n33,Hirasaki,Kaito,2012,650\n34,Ilvarsson,Dag,2012,57\n12,Marsh,Teo,1926,570\n12,Boyd,Kit,2011,560\n";
  const auto read = readRoster(text, "team.csv");
  REQUIRE(read);
  const RosterPlan open = planRoster({}, *read, kToday);
  REQUIRE(open.questioned.size() == 5);
  const auto tapes = [](const RosterPlan& plan) {
    return std::count_if(plan.drafts.begin(), plan.drafts.end(), [](const Draft& d) { return std::holds_alternative<TapeRead>(d.body); });
  };
  const auto added = [](const RosterPlan& plan, const char* family) {
    for (const Draft& draft : plan.drafts)
      if (const auto* one = std::get_if<AthleteAdded>(&draft.body); one != nullptr && one->family == family) return *one;
    return AthleteAdded{};
  };
  CHECK(tapes(open) == 2);
  CHECK_FALSE(added(open, "Marsh").birthYear);
  const RowAnswers answers{{{2, RowDoubt::headTooLarge}, RowAnswer::asWritten},
                           {{3, RowDoubt::headTooSmall}, RowAnswer::asWritten},
                           {{4, RowDoubt::birthYearUnlikely}, RowAnswer::asWritten},
                           {{4, RowDoubt::sameJersey}, RowAnswer::leftOut}};
  const RosterPlan done = planRoster({}, *read, kToday, answers);
  CHECK(done.questioned.size() == open.questioned.size());  // each keeps its place, answered or not
  CHECK(tapes(done) == 3);                                  // 650 mm was read again; a tape cannot read 57 mm
  CHECK(added(done, "Marsh").birthYear == 1926);
  CHECK(added(done, "Marsh").jersey.empty());
  CHECK(added(done, "Boyd").jersey == "12");
  CHECK_FALSE(canStand(open.questioned[1]));
}

TEST_CASE("A head of 650 mm at fourteen is questioned and not written down, and the rest of the row goes in") {
  const std::string text = "No,Last,First,Born,Head mm\n33,Hirasaki,Kaito,2012,650\n34,Ilvarsson,Dag,2012,57\n";
  const RosterPlan done = plan({}, text);
  CHECK(done.added == 2);
  REQUIRE(done.questioned.size() == 2);
  CHECK(done.questioned[0].line == 2);
  CHECK(done.questioned[0].doubt == RowDoubt::headTooLarge);
  CHECK(done.questioned[1].doubt == RowDoubt::headTooSmall);
  CHECK(std::none_of(done.drafts.begin(), done.drafts.end(), [](const Draft& d) { return std::holds_alternative<TapeRead>(d.body); }));
  const RosterPlan again = plan(after({}, done), text);
  CHECK(again.unchanged == 2);
  CHECK(again.questioned.size() == 2);  // still asked
}

TEST_CASE("A new number, a corrected name and a new head are changes of the same person") {
  const season::Views views = after({}, plan({}, kRoster));
  const RosterPlan moved = plan(views, "No,Last,First\n45,Merriwold,Teo\n");
  CHECK(moved.changed == 1);
  REQUIRE(moved.drafts.size() == 1);
  CHECK(std::get<AthleteChanged>(moved.drafts[0].body).jersey == "45");
  const RosterPlan renamed = plan(views, "No,Last,First\n07,Merriwold,Teodor\n");
  CHECK(renamed.changed == 1);
  CHECK(std::get<AthleteChanged>(renamed.drafts[0].body).given == "Teodor");
  const RosterPlan taped = plan(views, "No,Last,First,Head\n07,Merriwold,Teo,563 mm\n");
  CHECK(taped.changed == 1);
  CHECK(std::holds_alternative<TapeRead>(taped.drafts.at(0).body));
}

TEST_CASE("A number whose nought a spreadsheet ate is no new number") {
  const season::Views views = after({}, plan({}, kRoster));
  const RosterPlan eaten = plan(views, "No,Last,First\n7,Merriwold,Teo\n0,Nettlecombe,Ari\n");
  CHECK(eaten.unchanged == 2);
  CHECK(eaten.drafts.empty());
  season::Views plain = views;
  for (auto& [id, athlete] : plain.athletes) {
    if (athlete.jersey == "07") athlete.jersey = "7";
  }
  CHECK(plan(plain, "No,Last,First\n07,Merriwold,Teo\n").changed == 1);  // the other way round it says more
}

TEST_CASE("Two people with one number go in and are asked about") {
  const RosterPlan done = plan({}, "No,Last,First\n7,Merriwold,Teo\n7,Okonwara,Chidi\n");
  CHECK(done.added == 2);
  REQUIRE(done.questioned.size() == 2);
  CHECK(done.questioned[0].doubt == RowDoubt::sameJersey);
  const RosterPlan other = plan(after({}, plan({}, kRoster)), "No,Last,First\n12,Wexcombe,Ari\n");
  CHECK(other.added == 1);
  REQUIRE(other.questioned.size() == 1);
  CHECK(other.questioned[0].text == "12");
}

TEST_CASE("An unlikely birth year is asked about and not written down") {
  const RosterPlan done = plan({}, "No,Last,First,Born\n7,Merriwold,Teo,1962\n8,Okonwara,Chidi,2026\n");
  CHECK(done.added == 2);
  REQUIRE(done.questioned.size() == 2);
  CHECK(done.questioned[0].doubt == RowDoubt::birthYearUnlikely);
  CHECK_FALSE(std::get<AthleteAdded>(done.drafts[0].body).birthYear.has_value());
}

TEST_CASE("Somebody who had left the roster comes back as the same person") {
  season::Views views = after({}, plan({}, kRoster));
  for (auto& [id, athlete] : views.athletes) athlete.isOnRoster = false;
  const RosterPlan back = plan(views, kRoster);
  CHECK(back.added == 0);
  CHECK(back.changed == 3);
  CHECK(std::get<AthleteChanged>(back.drafts[0].body).isOnRoster == true);
}

TEST_CASE("Brothers with one family name are told apart, accents and case are not needed for that") {
  const season::Views views = after({}, plan({}, "No,Last,First\n1,Núñezalde,Joaquín\n2,Núñezalde,Gael\n"));
  const RosterPlan again = plan(views, "No,Last,First\n2,NUNEZALDE,Gael\n1,Núñezalde,JOAQUIN\n");
  CHECK(again.added == 0);
  CHECK(again.changed == 2);  // the spelling, not the person
  CHECK(std::get<AthleteChanged>(again.drafts[0].body).family == "NUNEZALDE");
}

TEST_CASE("What the file had wrong is passed on with its lines") {
  const RosterPlan done = plan({}, "No,Last,First\n1,Ashgarrow,Abel\nx,Bramwick,Adem\n");
  CHECK(done.added == 1);
  REQUIRE(done.refused.size() == 1);
  CHECK(done.refused[0].line == 3);
}
