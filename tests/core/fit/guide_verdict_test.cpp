// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;
using Lines = std::vector<std::string>;

TEST_CASE("Everything snug, sound, in date and on wet hair fits") {
  Walk w(airSheet());
  w.fit();
  CHECK(w.verdict() == Verdict::fits);
  CHECK(isFits(w.setup, w.state));
  CHECK(w.reasons().empty());
  CHECK(w.now().open.empty());
  CHECK(w.next() == "done");
}

TEST_CASE("The questions come in order: hair, the nine marks, the sheet's questions, the points, done") {
  gear::ModelSheet sheet = airSheet();
  sheet.questions = {{"faceguard-distance", "Two fingers from the nose?", "too near"}};
  Walk w(sheet);
  Lines order;
  const auto step = [&](const Answer& a) {
    order.push_back(w.next());
    w.tell(a);
  };
  step(HairSeen{true});
  for (const Mark m : kMarks) step(seen(m, Finding::snug));
  step(QuestionAnswered{"faceguard-distance", true});
  for (const Point p : gear::kPoints) step(PointSeen{p, PointState::sound, {}});
  order.push_back(w.next());
  CHECK(order == Lines{"hair", "brow", "ears", "nape", "chin", "straps", "jaw", "crown", "sides", "hold", "faceguard-distance",
                       "certification", "warning-label", "shell", "hardware", "faceguard", "liner", "chin-strap", "done"});
}

TEST_CASE("The air as fitted is asked after the hair where the setup asks for it and the sheet has air") {
  Walk w(airSheet());
  w.setup.asksFitted = true;
  CHECK(w.next() == "hair");
  w.tell(HairSeen{true});
  CHECK(w.next() == "fitted");
  w.tell(Fitted{});
  CHECK(w.next() == "brow");
  Walk pads(padSheet());
  pads.setup.asksFitted = true;
  pads.tell(HairSeen{true});
  CHECK(pads.next() == "brow");
  Walk skipped(airSheet());
  skipped.setup.asksFitted = true;
  skipped.fit();
  CHECK(skipped.next() == "done");
}

TEST_CASE("A mark that is off is the next question, before later ones that are open") {
  Walk w(airSheet());
  w.tell(HairSeen{true}).tell(seen(Mark::brow, Finding::snug)).tell(seen(Mark::ears, Finding::over));
  CHECK(w.next() == "ears");
  CHECK(w.verdict() == Verdict::adjust);
}

TEST_CASE("Each point at fault says do not wear, with the finder's words") {
  for (const Point p : gear::kPoints) {
    Walk w(airSheet());
    w.fit().tell(PointSeen{p, PointState::fault, "worn through"});
    CHECK(w.verdict() == Verdict::doNotWear);
    CHECK(w.reasons() == Lines{std::string(gear::code(p)) + "-fault"});
    CHECK(w.now().reasons.at(0).text == "worn through");
  }
}

TEST_CASE("Each point unseen leaves the check unfinished") {
  for (const Point p : gear::kPoints) {
    Walk w(airSheet());
    w.fit().tell(PointSeen{p, PointState::unseen, {}});
    CHECK(w.verdict() == Verdict::unfinished);
    CHECK(w.next() == gear::code(p));
  }
}

TEST_CASE("A crack in the shell stays within the check, and another part may be replaced and seen again") {
  Walk w(airSheet());
  w.fit().tell(PointSeen{Point::chinStrap, PointState::fault, "torn"});
  w.tell(PointsSound{});
  CHECK(w.verdict() == Verdict::doNotWear);
  w.tell(PointSeen{Point::chinStrap, PointState::sound, {}});
  CHECK(w.verdict() == Verdict::fits);
  w.tell(PointSeen{Point::shell, PointState::fault, "crack"}).tell(PointSeen{Point::shell, PointState::sound, {}});
  CHECK(w.verdict() == Verdict::doNotWear);
}

TEST_CASE("A fault of the unit is answered by holding it or replacing the part") {
  Walk w(airSheet());
  w.fit().tell(PointSeen{Point::faceguard, PointState::fault, "bare metal"}).tell(PointSeen{Point::shell, PointState::fault, "crack"});
  const auto all = w.now().advice;
  REQUIRE(all.size() == 2);
  CHECK(all[0].doText() == "hold");
  CHECK(all[0].point == Point::shell);
  CHECK(all[1].doText() == "replace");
}

TEST_CASE("A label that lapsed yesterday says do not wear, one that lapses today is good") {
  Walk w(airSheet());
  w.fit();
  w.setup.certifiedUntil = w.setup.today;
  CHECK(w.verdict() == Verdict::fits);
  w.setup.certifiedUntil = w.setup.today.plus(-1);
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.reasons() == Lines{"label-lapsed"});
}

TEST_CASE("A missing label says do not wear, an unknown date leaves the check unfinished") {
  Walk w(airSheet());
  w.fit();
  w.setup.certifiedUntil.reset();
  CHECK(w.verdict() == Verdict::unfinished);
  CHECK(w.reasons() == Lines{"label-unknown"});
  CHECK(w.next() == "certification");
  w.setup.isLabelMissing = true;
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.reasons() == Lines{"label-missing"});
}

TEST_CASE("A fault at brow, nape, straps, jaw, crown, sides or hold says do not wear at once") {
  for (const Mark m : {Mark::brow, Mark::nape, Mark::straps, Mark::jaw, Mark::crown, Mark::sides}) {
    Walk w(airSheet());
    w.fit().tell(seen(m, Finding::fault));
    CHECK(w.verdict() == Verdict::doNotWear);
    CHECK(w.reasons() == Lines{std::string(code(m)) + "-fault"});
  }
  Walk w(airSheet());
  w.fit().tell(seen(Mark::hold, Finding::fault));
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.reasons() == Lines{"hold-not-tried"});
}

TEST_CASE("A fault at ears or chin can be adjusted first and says do not wear once its ways are used up") {
  for (const Mark m : {Mark::ears, Mark::chin}) {
    Walk w(bareSheet("bare"));
    w.fit().tell(seen(m, Finding::fault));
    CHECK(w.verdict() == Verdict::adjust);
    for (int i = 0; i < 8 && w.verdict() == Verdict::adjust; ++i) {
      const auto all = w.now().advice;
      const auto change = std::find_if(all.begin(), all.end(), [](const Advice& a) { return a.kind == AdviceKind::change; });
      REQUIRE(change != all.end());
      w.tell(Adjusted{*change->deed, change->port, change->part, 0, std::nullopt, change->to}).allSnug().tell(seen(m, Finding::fault));
    }
    CHECK(w.verdict() == Verdict::doNotWear);
    CHECK(w.hasReason(std::string(code(m)) + "-not-reached"));
  }
}

TEST_CASE("A question answered no is a veto with its own words") {
  gear::ModelSheet sheet = airSheet();
  sheet.questions = {{"soft-cover", "Is the cover allowed?", "not allowed"}, {"sight", "Sight lines free?", "blocked"}};
  Walk w(sheet);
  w.fit();
  CHECK(w.verdict() == Verdict::fits);
  w.tell(QuestionAnswered{"sight", false});
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.reasons() == Lines{"sight-no"});
  w.tell(QuestionAnswered{"sight", true});
  CHECK(w.verdict() == Verdict::fits);
  CHECK(w.refusal(QuestionAnswered{"nose", true}) == ErrorCode::unknownWord);
}

TEST_CASE("A question not answered leaves the check unfinished") {
  gear::ModelSheet sheet = padSheet();
  sheet.questions = {{"sight", "Sight lines free?", "blocked"}};
  Walk w(sheet);
  w.tell(HairSeen{true}).tell(PointsSound{}).allSnug();
  CHECK(w.verdict() == Verdict::unfinished);
  CHECK(w.reasons() == Lines{"sight-open"});
  CHECK(w.next() == "sight");
}

TEST_CASE("Dry hair means adjust for a first fit and a refit, nothing for a look") {
  for (const CheckKind kind : {CheckKind::first, CheckKind::refit}) {
    Walk w(airSheet(), kind);
    w.tell(HairSeen{false}).tell(PointsSound{}).allSnug();
    CHECK(w.verdict() == Verdict::adjust);
    CHECK(w.reasons() == Lines{"dry-hair"});
    Walk open(airSheet(), kind);
    open.tell(PointsSound{}).allSnug();
    CHECK(open.verdict() == Verdict::unfinished);
    CHECK(open.next() == "hair");
  }
  Walk look(airSheet(), CheckKind::look);
  look.tell(HairSeen{false}).tell(PointsSound{}).allSnug();
  CHECK(look.verdict() == Verdict::fits);
  Walk unasked(airSheet(), CheckKind::look);
  CHECK(unasked.next() == "brow");
  unasked.tell(PointsSound{}).allSnug();
  CHECK(unasked.verdict() == Verdict::fits);
}

TEST_CASE("Do not wear comes before adjust, adjust before unfinished, unfinished before fits") {
  Walk w(airSheet());
  CHECK(w.verdict() == Verdict::unfinished);
  w.tell(HairSeen{true}).tell(seen(Mark::jaw, Finding::over));
  CHECK(w.verdict() == Verdict::adjust);
  w.tell(PointSeen{Point::shell, PointState::fault, "crack"});
  CHECK(w.verdict() == Verdict::doNotWear);
  const auto all = w.reasons();
  CHECK(all.at(0) == "shell-fault");
  CHECK(all.at(1) == "jaw-over");
  CHECK(all.at(2) == "brow-open");
}

TEST_CASE("Unwell stops the work: unfinished, next is stop, no advice, never fits") {
  Walk w(airSheet());
  w.fit().tell(Unwell{});
  CHECK(w.verdict() == Verdict::unfinished);
  CHECK(w.next() == "stop");
  CHECK(w.reasons() == Lines{"unwell"});
  w.tell(seen(Mark::brow, Finding::over));
  CHECK(w.next() == "stop");
  CHECK(w.now().advice.empty());
  w.setup.certifiedUntil = w.setup.today.plus(-1);
  CHECK(w.verdict() == Verdict::doNotWear);
  CHECK(w.next() == "stop");
}

TEST_CASE("A measured brow gap decides: over above the band, under below it, snug on its ends") {
  Walk w(airSheet());
  w.fit();
  const auto found = [&](std::int64_t um, Finding said) {
    w.tell(browAt(um, said));
    return w.mark(Mark::brow).finding;
  };
  CHECK(found(32000, Finding::over) == Finding::snug);
  CHECK(found(19000, Finding::under) == Finding::snug);
  CHECK(found(32001, Finding::snug) == Finding::over);
  CHECK(found(18999, Finding::snug) == Finding::under);
  CHECK(found(38000, Finding::under) == Finding::over);
  CHECK(found(25400, Finding::fault) == Finding::fault);
  CHECK(w.mark(Mark::brow).gap == Length{25400});
  w.tell(seen(Mark::brow, Finding::over));
  CHECK(w.mark(Mark::brow).finding == Finding::over);
  CHECK_FALSE(w.mark(Mark::brow).gap);
}

TEST_CASE("A group of a look answers its three marks at one touch and says so") {
  Walk w(airSheet(), CheckKind::look);
  w.tell(GroupSnug{LookView::front}).tell(GroupSnug{LookView::side});
  CHECK(w.next() == "crown");
  w.tell(GroupSnug{LookView::hold}).tell(PointsSound{});
  CHECK(w.verdict() == Verdict::fits);
  for (const Mark m : kMarks) CHECK(w.mark(m).isInGroup);
  w.tell(seen(Mark::jaw, Finding::snug));
  CHECK_FALSE(w.mark(Mark::jaw).isInGroup);
}

TEST_CASE("After a first fit or refit the next look is due in 1 to 3 days, after a look in 5 to 7") {
  for (const CheckKind kind : {CheckKind::first, CheckKind::refit, CheckKind::look}) {
    Walk w(airSheet(), kind);
    w.fit();
    const bool isLook = kind == CheckKind::look;
    CHECK(daysBetween(w.setup.today, w.now().dueFrom) == (isLook ? 5 : 1));
    CHECK(daysBetween(w.setup.today, w.now().dueBy) == (isLook ? 7 : 3));
    w.setup.certifiedUntil = w.setup.today.plus(2);
    CHECK(w.now().dueBy == w.setup.today.plus(2));
    CHECK(w.now().dueFrom == w.setup.today.plus(isLook ? 2 : 1));
    w.setup.certifiedUntil = w.setup.today;
    CHECK(w.now().dueBy == w.setup.today);
    CHECK(w.now().dueFrom == w.setup.today);
  }
}

TEST_CASE("What does not fit is due today") {
  Walk w(airSheet());
  CHECK(w.now().dueBy == w.setup.today);
  w.fit().tell(seen(Mark::brow, Finding::over));
  CHECK(w.now().dueFrom == w.setup.today);
  CHECK(w.now().dueBy == w.setup.today);
}

TEST_CASE("Every code of the guide reads back") {
  for (const CheckKind k : {CheckKind::first, CheckKind::refit, CheckKind::look}) CHECK(checkKindFromCode(code(k)) == k);
  for (const Deed d : {Deed::add, Deed::release, Deed::swap, Deed::reroute, Deed::relength}) CHECK(deedFromCode(code(d)) == d);
  for (const Feels f : {Feels::tight, Feels::loose, Feels::broke}) CHECK(feelsFromCode(code(f)) == f);
  for (const Verdict v : {Verdict::unfinished, Verdict::fits, Verdict::adjust, Verdict::doNotWear}) CHECK(verdictFromCode(code(v)) == v);
  CHECK(code(Verdict::doNotWear) == "do-not-wear");
  CHECK(feelsFromCode("hurts") == Feels::tight);
  CHECK(feelsFromCode("presses") == Feels::tight);
  for (const char* word : {"slips", "slides", "moves"}) CHECK(feelsFromCode(word) == Feels::loose);
  CHECK_FALSE(verdictFromCode("good"));
  CHECK_FALSE(deedFromCode("pump"));
  CHECK_FALSE(feelsFromCode("odd"));
  CHECK_FALSE(checkKindFromCode("second"));
}
