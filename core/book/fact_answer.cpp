// SPDX-License-Identifier: Apache-2.0
// One answer of a check, and the words that it shares with other facts.
#include "core/book/fact_json.h"

namespace snugline::book {

namespace {

using Reader = ObjectReader;

fit::Fitted fitted(Reader& in) {
  fit::Fitted all;
  in.object("air_pa", [&](Reader& air) {
    for (std::size_t i = 0; i < gear::kPortCount; ++i) {
      if (const auto pa = air.integerIf(gear::code(static_cast<gear::Port>(i)))) all.air[i] = Pressure{*pa};
    }
  });
  in.object("pad_um", [&](Reader& pad) {
    for (std::size_t i = 0; i < gear::kPartCount; ++i) {
      if (const auto um = pad.integerIf(gear::code(static_cast<gear::Part>(i)))) all.pad[i] = Length{*um};
    }
  });
  return all;
}

}  // namespace

std::optional<gear::PointState> pointStateFromCode(std::string_view word) {
  if (word == "unseen") return gear::PointState::unseen;
  if (word == "sound") return gear::PointState::sound;
  if (word == "fault") return gear::PointState::fault;
  return std::nullopt;
}

std::optional<int> readIntIf(ObjectReader& in, std::string_view key, int low, int high) {
  const auto number = in.integerIf(key, low, high);
  return number ? std::optional<int>(static_cast<int>(*number)) : std::nullopt;
}

fit::Side readSide(ObjectReader& in) { return in.wordIf("side", fit::sideFromCode).value_or(fit::Side::both); }

std::optional<gear::LabelKind> labelKindFromCode(std::string_view word) {
  if (word == "makers-mark") return gear::LabelKind::makersMark;
  if (word == "recertification") return gear::LabelKind::recertification;
  return std::nullopt;
}
std::optional<fit::Finding> findingWord(std::string_view word) {
  const auto finding = fit::findingFromCode(word);
  return finding && fit::code(*finding) == word ? finding : std::nullopt;
}
std::optional<fit::Feels> feelsWord(std::string_view word) {
  const auto feels = fit::feelsFromCode(word);
  return feels && fit::code(*feels) == word ? feels : std::nullopt;
}

fit::Answer readAnswer(ObjectReader& in) {
  if (in.has("mark")) {
    fit::MarkSeen a;
    a.mark = in.word("mark", fit::markFromCode);
    a.finding = in.word("finding", findingWord);
    a.side = readSide(in);
    a.how = in.wordIf("how", fit::holdHowFromCode).value_or(fit::HoldHow::unsaid);
    if (const auto um = in.integerIf("gap_um")) a.gap = Length{*um};
    return a;
  }
  if (in.has("group")) return fit::GroupSnug{in.word("group", fit::lookViewFromCode)};
  if (in.has("hair_wet")) return fit::HairSeen{in.boolean("hair_wet")};
  if (in.has("cold")) return fit::ColdSeen{in.boolean("cold"), in.flag("said")};
  if (in.has("fitted")) {
    fit::Fitted a;
    in.object("fitted", [&](Reader& inner) { a = fitted(inner); });
    return a;
  }
  if (in.has("deed")) {
    fit::Adjusted a;
    a.deed = in.word("deed", fit::deedFromCode);
    a.port = in.wordIf("port", gear::portFromCode);
    a.part = in.wordIf("part", gear::partFromCode);
    a.pumps = readIntIf(in, "pumps", -1000, 1000).value_or(0);
    if (const auto pa = in.integerIf("gauge_pa")) a.air = Pressure{*pa};
    if (const auto um = in.integerIf("to_um")) a.to = Length{*um};
    return a;
  }
  if (in.has("air")) {
    fit::AirRead a;
    a.port = in.word("air", gear::portFromCode);
    a.gauge = Pressure{in.integer("gauge_pa")};
    a.isOnHead = in.boolean("on_head");
    return a;
  }
  if (in.has("question")) {
    fit::QuestionAnswered a;
    a.id = in.text("question");
    a.isYes = in.boolean("yes");
    return a;
  }
  if (in.has("point")) {
    fit::PointSeen a;
    a.point = in.word("point", gear::pointFromCode);
    a.state = in.word("state", pointStateFromCode);
    a.what = in.textOr("what");
    return a;
  }
  if (in.has("points")) {
    if (in.text("points") != "sound") in.fail(ErrorCode::unknownWord, "points");
    return fit::PointsSound{};
  }
  if (in.has("unwell")) {
    if (!in.boolean("unwell")) in.fail(ErrorCode::outOfRange, "unwell");
    return fit::Unwell{};
  }
  fit::AthleteSaid a;
  a.where = in.wordIf("where", fit::markFromCode);
  a.side = readSide(in);
  a.feels = in.word("feels", feelsWord);
  return a;
}

}  // namespace snugline::book
