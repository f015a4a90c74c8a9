// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <algorithm>

#include "core/book/roster.h"
#include "tests/core/acts/desk_world.h"

using namespace snugline;
using namespace snugline::book;
using season::kToday;

namespace {

TakeInPlan plan(const season::Views& views, const std::string& text) {
  auto done = planTakeIn(views, text, "scans.txt", kToday);
  REQUIRE(done);
  return *done;
}

}  // namespace

TEST_CASE("Scans of known helmets are noted, new ones with sheet, size and label go in, and names stay apart") {
  const DeskWorld world;
  const TakeInPlan done = plan(world.views, "A1-M-00001\r\nNEW-1,alder-a1,M,2026,ok\r\nNEW-2,alder-a1,M,2026,ok\r\n");
  CHECK(done.known == std::vector<std::string>{"A1-M-00001"});
  CHECK(done.added == std::vector<std::string>{"NEW-1", "NEW-2"});
  CHECK(done.held.empty());
  CHECK(done.refused.empty());
  // Two helmets are received, and what follows each names it by its place in the whole list.
  std::vector<std::string> about;
  for (const Draft& draft : done.drafts) about.push_back(draft.about);
  CHECK(about == std::vector<std::string>{"", "#0", "#0", "#0", "", "#4", "#4", "#4"});
}

TEST_CASE("A new helmet with a fault, a missing label or points not seen is held") {
  const DeskWorld world;
  const TakeInPlan done = plan(world.views,
                               "tag,sheet,size,label,points\n"
                               "N-1,alder-a1,M,2026,faceguard=bare metal;liner=torn\n"
                               "N-2,alder-a1,M,missing,ok\n"
                               "N-3,alder-a1,M,2026\n"
                               "N-4,alder-a1,M,2024,ok\n");
  CHECK(done.added.size() == 4);
  CHECK(done.held == done.added);
  std::vector<std::string> reasons;
  for (const Draft& draft : done.drafts) {
    if (const auto* held = std::get_if<UnitHeld>(&draft.body)) reasons.push_back(held->reason + ": " + held->what);
  }
  CHECK(std::count(reasons.begin(), reasons.end(), "faceguard: bare metal") == 1);
  CHECK(std::count(reasons.begin(), reasons.end(), "liner: torn") == 1);
  CHECK(std::count(reasons.begin(), reasons.end(), "label: missing") == 1);
  CHECK(std::count(reasons.begin(), reasons.end(), "label: lapsed") == 1);
}

TEST_CASE("A scan that says too little or what nobody knows is refused with its line, and the others go in") {
  DeskWorld world;
  season::UnitRecord& gone = world.spare();
  gone.place = season::UnitPlace::retired;
  const TakeInPlan done = plan(world.views,
                               "N-1,alder-a1\n"                    // 1: new, no size
                               "N-2,maple-m9,M,2026,ok\n"          // 2: no such sheet
                               "N-3,alder-a1,XXL,2026,ok\n"        // 3: no such size
                               "N-4,alder-a1,M,soon,ok\n"          // 4: no year
                               "N-5,alder-a1,M,2026,visor=bent\n"  // 5: no such point
                               "\x02,alder-a1,M,2026,ok\n"         // 6: control character
                               "A1-M-00009\n"                      // 7: retired
                               "N-6,alder-a1,M,2026,ok\n"          // 8: goes in
                               "N-6,alder-a1,M,2026,ok\n"          // 9: again
                               "\"N-7\n");                         // 10: quote
  CHECK(done.added == std::vector<std::string>{"N-6"});
  using Pair = std::pair<std::size_t, RowDoubt>;
  std::vector<Pair> refused;
  for (const RowNote& note : done.refused) refused.emplace_back(note.line, note.doubt);
  CHECK(refused == std::vector<Pair>{{1, RowDoubt::sizeUnknown},
                                     {2, RowDoubt::sheetUnknown},
                                     {3, RowDoubt::sizeUnknown},
                                     {4, RowDoubt::labelUnreadable},
                                     {5, RowDoubt::pointUnknown},
                                     {6, RowDoubt::tagUnreadable},
                                     {7, RowDoubt::unitRetired},
                                     {9, RowDoubt::repeated},
                                     {10, RowDoubt::badQuote}});
}

TEST_CASE("GS1 scans with a separator inside are read, a wrong check digit is refused") {
  const DeskWorld world;
  const TakeInPlan done = plan(world.views,
                               "]d2010200000000101221B2-1\x1d"
                               "11240115,alder-a1,M,2026,ok\n]d20102000000001018"
                               "21B2-2,alder-a1,M,2026,ok\n");
  REQUIRE(done.added.size() + done.refused.size() == 2);
  CHECK(done.added == std::vector<std::string>{"B2-1"});
  REQUIRE(done.refused.size() == 1);
  CHECK(done.refused[0].doubt == RowDoubt::tagUnreadable);
  CHECK(done.refused[0].text == "check digit");
}

TEST_CASE("A list that is a picture, too long or empty is refused whole") {
  const DeskWorld world;
  CHECK(planTakeIn(world.views, "\x89PNG\r\n\x1a\n....", "a", kToday).error().code == ErrorCode::notText);
  CHECK(planTakeIn(world.views, std::string(9 * 1024 * 1024, 'x'), "a", kToday).error().code == ErrorCode::tooLong);
  CHECK(planTakeIn(world.views, "", "a", kToday).error().code == ErrorCode::badRow);
}

TEST_CASE("A scan that is a tag alone goes in on hold, and its model, size and label said later bring it into service") {
  DeskWorld world;
  const TakeInPlan bare = plan(world.views, "N-9\n");
  CHECK(bare.added == std::vector<std::string>{"N-9"});
  CHECK(bare.held == bare.added);
  CHECK(bare.refused.empty());
  REQUIRE(!bare.drafts.empty());
  const auto* received = std::get_if<UnitReceived>(&bare.drafts.front().body);
  REQUIRE(received != nullptr);
  CHECK(received->sheet.empty());

  season::UnitRecord& unit = world.spare();
  unit.serial = unit.tagKey = "N-9";
  unit.sheet.clear();
  unit.size.clear();
  unit.labels.clear();
  unit.isInService = false;
  const TakeInPlan full = plan(world.views, "N-9,alder-a1,M,2026,ok\n");
  CHECK(full.known == std::vector<std::string>{"N-9"});
  CHECK(full.held.empty());
  REQUIRE(!full.drafts.empty());
  CHECK(full.drafts.front().about == unit.id);
  const auto* said = std::get_if<UnitReceived>(&full.drafts.front().body);
  REQUIRE(said != nullptr);
  CHECK(said->size == "M");
  CHECK(std::any_of(full.drafts.begin(), full.drafts.end(), [](const Draft& d) {
    const auto* moved = std::get_if<UnitMoved>(&d.body);
    return moved != nullptr && moved->to == "in-service";
  }));
}
