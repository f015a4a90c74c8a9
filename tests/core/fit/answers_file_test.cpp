// SPDX-License-Identifier: Apache-2.0
#include "core/fit/answers_file.h"

#include SNUGLINE_CATCH_HEADER
#include "tests/core/fit/check_walk.h"

using namespace snugline;
using namespace snugline::fit;
using namespace snugline::fit::testing;

namespace {

constexpr std::string_view kPoints =
    R"("points":{"certification":"ok","warning-label":"ok","shell":"ok","hardware":"ok","faceguard":"ok","liner":"ok","chin-strap":"ok"})";
constexpr std::string_view kSnug =
    R"({"mark":"brow","found":"snug"},{"mark":"ears","found":"snug"},{"mark":"nape","found":"snug"},{"mark":"chin","found":"snug"},)"
    R"({"mark":"straps","found":"snug"},{"mark":"jaw","found":"snug"},{"mark":"crown","found":"snug"},{"mark":"sides","found":"snug"},{"mark":"hold","found":"snug"})";

std::string file(const std::string& steps, const std::string& more = {}) {
  return R"({"today":"2026-10-14","season_end":"2026-11-30","certified_until":"2027-02-01","hair_wet":true,)" + std::string(kPoints) +
         R"(,"steps":[)" + steps + "]" + more + "}";
}
std::string snug(const std::string& more = {}) { return file(std::string(kSnug), more); }

struct Read {
  gear::ModelSheet sheet;
  Result<WrittenCheck> check;
  Read(gear::ModelSheet s, const std::string& text) : sheet(std::move(s)), check(parseAnswers(text, "a.json", sheet)) {}
  [[nodiscard]] Assessment now() const {
    if (!check) throw std::runtime_error(check.error().place + ": " + check.error().detail);
    return assess(check->setup, check->state);
  }
};

Error refusal(const std::string& text, gear::ModelSheet sheet = airSheet()) {
  const Read r(std::move(sheet), text);
  return r.check ? Error{ErrorCode::internal, "not refused", {}} : r.check.error();
}
void checkRefused(const std::string& text, ErrorCode code, const std::string& place, gear::ModelSheet sheet = airSheet()) {
  const Error e = refusal(text, std::move(sheet));
  INFO(text << " -> " << e.place << ": " << e.detail);
  CHECK(e.code == code);
  CHECK(e.place == place);
}

}  // namespace

TEST_CASE("A whole answers file with everything snug fits on a sheet with air, with pads and with both") {
  for (const gear::ModelSheet& sheet : {airSheet(), mixedSheet(), padSheet()}) {
    const Read r(sheet, snug());
    CHECK(r.now().verdict == Verdict::fits);
    CHECK(r.now().dueBy == dayOf(2026, 10, 17));
    CHECK(r.check->setup.today == dayOf(2026, 10, 14));
    CHECK(r.check->setup.seasonEnd == dayOf(2026, 11, 30));
  }
}

TEST_CASE("Fitted values, measured gaps, changes with what they reopen, and words come to a state") {
  const std::string steps =
      R"({"mark":"brow","found":"over","mm":38},{"did":"release","port":"crown","pumps":1},{"mark":"brow","found":"snug","mm":25})";
  const Read r(mixedSheet(), file(steps, R"(,"fitted":{"jaw-left":"25mm","jaw-right":"28mm","crown":"20kPa","sides":"2psi"})"));
  const Assessment now = r.now();
  CHECK(now.verdict == Verdict::unfinished);
  CHECK(now.strip[0] == Finding::snug);
  CHECK(now.strip[1] == Finding::unseen);
  CHECK(now.next.codeText() == "ears");
  CHECK(r.check->state.turns == 1);
  CHECK(r.check->state.fitted.pad[1] == Length{28000});
  CHECK_FALSE(r.check->state.fitted.air[0]);
  CHECK(r.check->state.pumps[0] == -1);
  CHECK(r.check->answers.size() == 12);
}

TEST_CASE("A gauge value after a change is known, with pumps or without") {
  for (const char* amount : {R"("kpa":28)", R"("pumps":2,"kpa":28)", R"("to":"28kPa")"}) {
    const Read r(airSheet(), file(R"({"did":"add","port":"crown",)" + std::string(amount) + "}"));
    REQUIRE(r.check);
    CHECK(r.check->state.fitted.air[0] == Pressure{28000});
    CHECK(r.check->state.isGauged[0]);
  }
}

TEST_CASE("A cold helmet is said once, warmed as a step, and seen again after that") {
  const std::string presses = R"({"mark":"jaw","found":"over"})", warm = R"({"did":"warm"})";
  const Read cold(airSheet(), file(presses, R"(,"cold":true,"kind":"look")"));
  CHECK(cold.now().verdict == Verdict::adjust);
  CHECK(cold.now().advice.at(0).doText() == "warm");
  const Read warmed(airSheet(), file(presses + "," + warm + "," + presses, R"(,"cold":true,"kind":"look")"));
  CHECK(warmed.now().advice.at(0).doText() == "release");
  const Read unseen(airSheet(), file(std::string(kSnug) + "," + warm, R"(,"cold":true,"kind":"look")"));
  CHECK(unseen.now().verdict == Verdict::unfinished);
  const std::string loose = R"({"mark":"sides","found":"under"},{"did":"add","port":"sides","pumps":1},)" + std::string(kSnug);
  CHECK(Read(airSheet(), file(loose, R"(,"cold":true,"kind":"look")")).now().isForCold);
  checkRefused(file(R"({"did":"warm","port":"crown"})"), ErrorCode::unknownKey, "a.json#/steps/0/port");
}

TEST_CASE("A gauging in the steps reopens hold") {
  const Read r(airSheet(), file(std::string(kSnug) + R"(,{"read":"crown","kpa":15.5,"on_head":false})"));
  CHECK(r.now().verdict == Verdict::unfinished);
  CHECK(r.now().next.codeText() == "hold");
  CHECK(r.check->state.fitted.air[0] == Pressure{15500});
}

TEST_CASE("Every step of the documented format is taken") {
  const char* steps[] = {R"({"mark":"jaw","found":"over","side":"left"})",
                         R"({"mark":"hold","found":"under","how":"rock"})",
                         R"({"mark":"ears","found":"low"})",
                         R"({"mark":"crown","found":"tight"})",
                         R"({"mark":"sides","found":"loose"})",
                         R"({"mark":"brow","found":"high"})",
                         R"({"mark":"nape","found":"fault"})",
                         R"({"mark":"brow","mm":25.4})",
                         R"({"did":"swap","part":"jaw-left","to":"28mm"})",
                         R"({"did":"swap","part":"crown-pad","to":"0.4in"})",
                         R"({"did":"swap","part":"chin-cup"})",
                         R"({"did":"swap","part":"straps"})",
                         R"({"did":"reroute","part":"straps"})",
                         R"({"did":"reroute"})",
                         R"({"did":"relength"})",
                         R"({"did":"add","port":"sides","pumps":20})",
                         R"({"did":"release","port":"crown"})"};
  for (const char* step : steps) {
    const Error e = refusal(file(step), mixedSheet());
    INFO(step << e.place << e.detail);
    CHECK(e.place == "not refused");
  }
}

TEST_CASE("The brow's millimetres decide against the word, a fault stands") {
  const auto strip = [](const std::string& step) { return Read(airSheet(), file(step)).now().strip[0]; };
  CHECK(strip(R"({"mark":"brow","found":"over","mm":25})") == Finding::snug);
  CHECK(strip(R"({"mark":"brow","found":"snug","mm":33})") == Finding::over);
  CHECK(strip(R"({"mark":"brow","found":"snug","mm":12})") == Finding::under);
  CHECK(strip(R"({"mark":"brow","found":"fault","mm":25})") == Finding::fault);
}

TEST_CASE("Points are ok, fault or unseen, as a word or with what is wrong") {
  const auto verdict = [](const std::string& shell) {
    std::string text = snug();
    const std::string from = R"("shell":"ok")";
    text.replace(text.find(from), from.size(), R"("shell":)" + shell);
    const Read r(airSheet(), text);
    return r.now();
  };
  CHECK(verdict(R"("fault")").verdict == Verdict::doNotWear);
  CHECK(verdict(R"({"state":"fault","what":"crack at the ear"})").reasons.at(0).text == "crack at the ear");
  CHECK(verdict(R"("unseen")").verdict == Verdict::unfinished);
  CHECK(verdict(R"("unseen")").open.at(0).codeText() == "shell");
  CHECK(verdict(R"({"state":"ok"})").verdict == Verdict::fits);
}

TEST_CASE("A word counts as later than every step and leaves the check unfinished") {
  const Read r(airSheet(), snug(R"(,"says":[{"where":"jaw-left","feels":"tight"}])"));
  CHECK(r.now().verdict == Verdict::unfinished);
  CHECK(r.now().strip[static_cast<std::size_t>(Mark::jaw)] == Finding::unseen);
  CHECK(r.check->state.wordSides[static_cast<std::size_t>(Mark::jaw)] == Side::left);
  CHECK(Read(airSheet(), snug(R"(,"says":[{"where":"crown","feels":"slips"}])")).now().verdict == Verdict::unfinished);
  CHECK(Read(airSheet(), snug(R"(,"says":[{"feels":"broke"}])")).now().verdict == Verdict::doNotWear);
  CHECK(Read(airSheet(), snug(R"(,"says":[])")).now().verdict == Verdict::fits);
}

TEST_CASE("Unwell gives unfinished with stop next") {
  CHECK(Read(airSheet(), snug(R"(,"unwell":true)")).now().verdict == Verdict::unfinished);
  CHECK(Read(airSheet(), snug(R"(,"unwell":true)")).now().next.codeText() == "stop");
  CHECK(Read(airSheet(), snug(R"(,"unwell":false)")).now().verdict == Verdict::fits);
}

TEST_CASE("The kind is first when it is not said, and dry hair counts for first and refit only") {
  const auto verdict = [](const std::string& kind) {
    std::string text = snug(kind);
    text.replace(text.find("\"hair_wet\":true"), 15, "\"hair_wet\":false");
    return Read(airSheet(), text).now();
  };
  CHECK(verdict("").verdict == Verdict::adjust);
  CHECK(verdict("").reasons.at(0).codeText() == "dry-hair");
  CHECK(verdict(R"(,"kind":"refit")").verdict == Verdict::adjust);
  CHECK(verdict(R"(,"kind":"look")").verdict == Verdict::fits);
}

TEST_CASE("The label: a missing date is unfinished, a passed one and a missing label are do not wear, a near one caps the due date") {
  const auto with = [](const std::string& label) {
    std::string text = snug();
    const std::string from = R"("certified_until":"2027-02-01")";
    text.replace(text.find(from), from.size(), label);
    return Read(airSheet(), text).now();
  };
  CHECK(with(R"("label_missing":false)").verdict == Verdict::unfinished);
  CHECK(with(R"("label_missing":true)").verdict == Verdict::doNotWear);
  CHECK(with(R"("certified_until":"2026-10-13")").verdict == Verdict::doNotWear);
  CHECK(with(R"("certified_until":"2026-10-14")").verdict == Verdict::fits);
  CHECK(with(R"("certified_until":"2026-10-16")").dueBy == dayOf(2026, 10, 16));
}

TEST_CASE("Questions of the sheet are answered by their id") {
  gear::ModelSheet sheet = airSheet();
  sheet.questions = {{"sight", "Sight lines free?", "blocked"}};
  CHECK(Read(sheet, snug(R"(,"questions":{"sight":true})")).now().verdict == Verdict::fits);
  CHECK(Read(sheet, snug(R"(,"questions":{"sight":false})")).now().verdict == Verdict::doNotWear);
  CHECK(Read(sheet, snug()).now().verdict == Verdict::unfinished);
  checkRefused(snug(R"(,"questions":{"nose":true})"), ErrorCode::unknownWord, "a.json#/questions/nose", sheet);
  checkRefused(snug(R"(,"questions":{"sight":1})"), ErrorCode::wrongType, "a.json#/questions/sight", sheet);
}

TEST_CASE("Only today is needed, everything else missing is simply not seen") {
  const Read r(airSheet(), R"({"today":"2026-10-14"})");
  CHECK(r.now().verdict == Verdict::unfinished);
  CHECK(r.now().next.codeText() == "hair");
  checkRefused("{}", ErrorCode::missingKey, "a.json#/today");
}

TEST_CASE("A port or part that the sheet lacks is named with its place") {
  checkRefused(file(R"({"mark":"brow","found":"over"},{"did":"release","port":"crown","pumps":1})"), ErrorCode::unknownPort,
               "a.json#/steps/1/port", padSheet());
  checkRefused(file(R"({"did":"swap","part":"jaw-left","to":"25mm"})"), ErrorCode::unknownPort, "a.json#/steps/0/part");
  checkRefused(file(R"({"read":"jaw-left","kpa":9})"), ErrorCode::unknownPort, "a.json#/steps/0/read", mixedSheet());
  checkRefused(file("", R"(,"fitted":{"crown":"20kPa"})"), ErrorCode::unknownPort, "a.json#/fitted/crown", padSheet());
  CHECK(refusal(file(R"({"did":"add","port":"sides","pumps":1})"), padSheet()).detail == "sides; a port or part of the sheet pads");
}

TEST_CASE("Words that nobody says are refused, with the words that are") {
  checkRefused(file(R"({"mark":"chest","found":"snug"})"), ErrorCode::unknownWord, "a.json#/steps/0/mark");
  checkRefused(file(R"({"mark":"brow","found":"fine"})"), ErrorCode::unknownWord, "a.json#/steps/0/found");
  checkRefused(file(R"({"mark":"brow","found":"unseen"})"), ErrorCode::unknownWord, "a.json#/steps/0/found");
  checkRefused(file(R"({"mark":"jaw","found":"snug","side":"front"})"), ErrorCode::unknownWord, "a.json#/steps/0/side");
  checkRefused(file(R"({"mark":"hold","found":"under","how":"shake"})"), ErrorCode::unknownWord, "a.json#/steps/0/how");
  checkRefused(file(R"({"did":"pump","port":"crown"})"), ErrorCode::unknownWord, "a.json#/steps/0/did");
  checkRefused(file(R"({"did":"add","port":"chin","pumps":1})"), ErrorCode::unknownWord, "a.json#/steps/0/port");
  checkRefused(snug(R"(,"kind":"second")"), ErrorCode::unknownWord, "a.json#/kind");
  checkRefused(snug(R"(,"says":[{"where":"knee","feels":"tight"}])"), ErrorCode::unknownWord, "a.json#/says/0/where");
  checkRefused(snug(R"(,"says":[{"where":"brow-left","feels":"tight"}])"), ErrorCode::unknownWord, "a.json#/says/0/where");
  checkRefused(snug(R"(,"says":[{"where":"jaw","feels":"odd"}])"), ErrorCode::unknownWord, "a.json#/says/0/feels");
  CHECK(refusal(file(R"({"mark":"brow","found":"fine"})")).detail == "fine; snug, over, under, fault");
  std::string point = snug();
  point.replace(point.find(R"("shell":"ok")"), 12, R"("shell":"good")");
  checkRefused(point, ErrorCode::unknownWord, "a.json#/points/shell");
}

TEST_CASE("Wrong types, keys and amounts are refused at their place") {
  checkRefused("[]", ErrorCode::wrongType, "a.json#/");
  checkRefused(R"({"today":"2026-02-30"})", ErrorCode::notADate, "a.json#/today");
  checkRefused(R"({"today":20261014})", ErrorCode::wrongType, "a.json#/today");
  checkRefused(snug(R"(,"colour":"red")"), ErrorCode::unknownKey, "a.json#/colour");
  checkRefused(snug(R"(,"unwell":"no")"), ErrorCode::wrongType, "a.json#/unwell");
  checkRefused(snug(R"(,"says":{})"), ErrorCode::wrongType, "a.json#/says");
  checkRefused(snug(R"(,"says":[{"where":"jaw"}])"), ErrorCode::missingKey, "a.json#/says/0/feels");
  checkRefused(file(R"("brow")"), ErrorCode::wrongType, "a.json#/steps/0");
  checkRefused(file(R"({"found":"snug"})"), ErrorCode::missingKey, "a.json#/steps/0");
  checkRefused(file(R"({"mark":"brow"})"), ErrorCode::missingKey, "a.json#/steps/0/found");
  checkRefused(file(R"({"mark":"brow","found":"snug","did":"add"})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"mark":"brow","found":"snug","mm":-1})"), ErrorCode::outOfRange, "a.json#/steps/0/mm");
  checkRefused(file(R"({"mark":"brow","found":"snug","mm":"25"})"), ErrorCode::wrongType, "a.json#/steps/0/mm");
  checkRefused(file(R"({"mark":"jaw","found":"snug","mm":25})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"mark":"jaw","found":"over","how":"twist"})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"did":"add","port":"crown","pumps":-2})"), ErrorCode::outOfRange, "a.json#/steps/0/pumps");
  checkRefused(file(R"({"did":"add","port":"crown","pumps":0})"), ErrorCode::outOfRange, "a.json#/steps/0/pumps");
  checkRefused(file(R"({"did":"add","port":"crown","pumps":1.5})"), ErrorCode::wrongType, "a.json#/steps/0/pumps");
  checkRefused(file(R"({"did":"add","port":"crown","kpa":301})"), ErrorCode::outOfRange, "a.json#/steps/0/kpa");
  checkRefused(file(R"({"did":"add","port":"crown","part":"jaw-left","pumps":1})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"did":"add","pumps":1})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"did":"reroute","port":"crown"})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"did":"swap"})"), ErrorCode::inconsistent, "a.json#/steps/0");
  checkRefused(file(R"({"did":"swap","part":"jaw-left","to":"28"})"), ErrorCode::missingUnit, "a.json#/steps/0/to", padSheet());
  checkRefused(file(R"({"did":"swap","part":"jaw-left","to":"60mm"})"), ErrorCode::outOfRange, "a.json#/steps/0", padSheet());
  checkRefused(file("", R"(,"fitted":{"crown":"20"})"), ErrorCode::missingUnit, "a.json#/fitted/crown");
  checkRefused(file("", R"(,"fitted":{"crown":"25mm"})"), ErrorCode::notAQuantity, "a.json#/fitted/crown");
  checkRefused(file("", R"(,"fitted":{"crown":"17psia"})"), ErrorCode::notAQuantity, "a.json#/fitted/crown");
  checkRefused(file("", R"(,"fitted":{"lid":"25mm"})"), ErrorCode::unknownKey, "a.json#/fitted/lid");
  checkRefused(file("", R"(,"fitted":{"jaw-left":25})"), ErrorCode::wrongType, "a.json#/fitted/jaw-left");
}

TEST_CASE("What is no JSON, or not read at all, is refused by its name") {
  CHECK(refusal("{").code == ErrorCode::notJson);
  CHECK(refusal(R"({"today":"2026-10-14","today":"2026-10-15"})").code == ErrorCode::duplicateKey);
  const gear::ModelSheet sheet = airSheet();
  const auto missing = readAnswersFile("/nowhere/answers.json", sheet);
  REQUIRE_FALSE(missing);
  CHECK(missing.error().place == "/nowhere/answers.json");
}
