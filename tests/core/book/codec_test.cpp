// SPDX-License-Identifier: Apache-2.0
#include <rapidcheck.h>

#include SNUGLINE_CATCH_HEADER
#include "core/book/chain.h"
#include "core/book/fact.h"
#include "fact_maker.h"

using namespace snugline;
using namespace snugline::test;

namespace {

book::Fact factWith(FactMaker& maker, std::string about, book::Body body) {
  book::Fact fact;
  fact.device = "abcdefghijklm";
  fact.n = static_cast<std::uint64_t>(maker.pick(1, 1'000'000));
  fact.order = maker.pick(1, 1'000'000);
  fact.at = {1'700'000'000'000 + maker.pick(0, 1'000'000), maker.pick(-840, 840)};
  fact.who = maker.toss() ? "abcdefghijklm:2" : "";
  fact.about = about.empty() ? fact.id() : std::move(about);
  fact.body = std::move(body);
  return fact;
}

constexpr const char* kPlain =
    R"({"device":"abcdefghijklm","n":3,"order":9,"at_ms":1792000000000,"offset_min":-300,"who":"","kind":"hair-changed","v":1,"about":"abcdefghijklm:2","body":{}})";
std::string with(std::string_view from, std::string_view to) {
  std::string line = kPlain;
  const auto at = line.find(from);
  if (at == std::string::npos) throw std::runtime_error("nothing to replace");
  return line.replace(at, from.size(), to);
}
ErrorCode codeOf(const std::string& line) {
  const auto fact = book::decode(line);
  return fact ? ErrorCode::internal : fact.error().code;
}

}  // namespace

TEST_CASE("Every kind of fact comes out of its line as it went in") {
  for (int kind = 0; kind < FactMaker::kKinds; ++kind) {
    CHECK(rc::check("kind " + std::to_string(kind), [kind] {
      FactMaker maker(*rc::gen::arbitrary<std::uint64_t>());
      auto [about, body] = maker.draft(kind);
      const auto fact = factWith(maker, about, std::move(body));
      const auto line = book::encode(fact);
      RC_ASSERT(line.has_value());
      const auto back = book::decode(*line);
      RC_ASSERT(back.has_value());
      RC_ASSERT(back->id() == fact.id());
      RC_ASSERT(back->order == fact.order);
      RC_ASSERT(back->at == fact.at);
      RC_ASSERT(back->who == fact.who);
      RC_ASSERT(back->about == fact.about);
      RC_ASSERT(back->body.index() == fact.body.index());
      RC_ASSERT(book::kindOf(back->body) == book::kindOf(fact.body));
      RC_ASSERT(book::touches(*back) == book::touches(fact));
      // Equal bytes again: nothing of the body was lost on the way.
      const auto again = book::encode(*back);
      RC_ASSERT(again.has_value());
      RC_ASSERT(*again == *line);
    }));
  }
}

TEST_CASE("The values of a body are the ones that were written") {
  FactMaker maker(5);
  fit::Adjusted change;
  change.deed = fit::Deed::swap;
  change.part = gear::Part::crownPad;
  change.to = Length{28'000};
  const auto fact = factWith(maker, "abcdefghijklm:4", book::CheckAnswered{{change}});
  const auto back = book::decode(*book::encode(fact));
  REQUIRE(back);
  const auto& answers = std::get<book::CheckAnswered>(back->body).answers;
  REQUIRE(answers.size() == 1);
  CHECK(std::get<fit::Adjusted>(answers.front()) == change);
  CHECK(book::kindOf(back->body) == "adjusted");
}

TEST_CASE("Keys in any order and blanks between them are read; a line feed is not") {
  const auto fact = book::decode(
      R"({ "body":{}, "about":"abcdefghijklm:2", "v":1, "kind":"hair-changed", "who":"", "offset_min":0, "at_ms":0, "order":9, "n":3, "device":"abcdefghijklm" })");
  REQUIRE(fact);
  CHECK(fact->id() == "abcdefghijklm:3");
  CHECK(codeOf(with("\"body\"", "\n\"body\"")) == ErrorCode::notJson);
}

TEST_CASE("A line that is not a fact is refused with the place named") {
  CHECK(codeOf("") == ErrorCode::notJson);
  CHECK(codeOf("[]") == ErrorCode::wrongType);
  CHECK(codeOf(with("\"n\":3", "\"n\":3,\"n\":3")) == ErrorCode::duplicateKey);
  CHECK(codeOf(with("\"n\":3", "\"n\":3.0")) == ErrorCode::wrongType);
  CHECK(codeOf(with("\"n\":3", "\"n\":0")) == ErrorCode::outOfRange);
  CHECK(codeOf(with("\"n\":3,", "")) == ErrorCode::missingKey);
  CHECK(codeOf(with("\"at_ms\":1792000000000", "\"at_ms\":9007199254740992")) == ErrorCode::outOfRange);
  CHECK(codeOf(with("\"body\":{}", "\"body\":{\"colour\":1}")) == ErrorCode::unknownKey);
  CHECK(codeOf(with("\"v\":1", "\"v\":1,\"x\":1")) == ErrorCode::unknownKey);
  CHECK(codeOf(with("\"body\":{}", "\"body\":{\"words\":3}")) == ErrorCode::wrongType);
  CHECK(codeOf(with("hair-changed", "mark-seen")) == ErrorCode::missingKey);
  CHECK(codeOf(with("\"body\":{}", "\"body\":{\"words\":\"\xff\"}")) == ErrorCode::notJson);
  CHECK(codeOf(with("\"body\":{}", "\"body\":{\"words\":\"\\ud800\"}")) == ErrorCode::notJson);
  CHECK(codeOf(with("\"body\":{}", "\"body\":{\"words\":\"" + std::string(book::kFactLimitBytes, 'a') + "\"}")) == ErrorCode::tooLong);
  std::string deep = with("hair-changed", "later-kind");
  deep.insert(deep.find("\"body\":") + 7, std::string(20'000, '['));
  CHECK(codeOf(deep) == ErrorCode::notJson);
  const auto wrong = book::decode(with("\"body\":{}", "\"body\":{\"words\":3}"), "fact abc");
  REQUIRE_FALSE(wrong);
  CHECK(wrong.error().place == "fact abc#/body/words");
}

TEST_CASE("A kind that does not go with its answers is refused") {
  const std::string body = R"("body":{"answers":[{"hair_wet":true}]})";
  CHECK(book::decode([&] {
          std::string line = with("hair-changed", "hair-seen");
          return line.replace(line.find("\"body\":{}"), 9, body);
        }())
            .has_value());
  std::string line = with("hair-changed", "air-read");
  CHECK(codeOf(line.replace(line.find("\"body\":{}"), 9, body)) == ErrorCode::inconsistent);
}

TEST_CASE("Unknown kinds and newer versions are known as such, whatever their bodies hold") {
  const auto kind = book::decode(with("\"hair-changed\",\"v\":1", "\"helmet-dreamt\",\"v\":4"));
  REQUIRE(kind);
  CHECK(std::get<book::Unknown>(kind->body).kind == "helmet-dreamt");
  CHECK(std::get<book::Unknown>(kind->body).version == 4);
  CHECK(book::touches(*kind) == std::vector<std::string>{"abcdefghijklm:2"});
  const auto version = book::decode(with("\"v\":1,\"about\":\"abcdefghijklm:2\",\"body\":{}",
                                         "\"v\":2,\"about\":\"abcdefghijklm:2\",\"body\":{\"new\":[1,{}]},\"more\":1"));
  REQUIRE(version);
  CHECK(book::kindOf(version->body) == "hair-changed");
  CHECK_FALSE(book::encode(*version));
}

TEST_CASE("Text that is not UTF-8 is not written down") {
  FactMaker maker(1);
  const auto line = book::encode(factWith(maker, "abcdefghijklm:2", book::NoteAdded{"a\xff"}));
  REQUIRE_FALSE(line);
  CHECK(line.error().code == ErrorCode::notText);
}

TEST_CASE("The chain and the device id are what the format says") {
  // Computed with Python's hashlib.blake2b(digest_size=32) and base64.b32encode.
  book::PublicKey key{};
  for (std::size_t i = 0; i < key.size(); ++i) key[i] = static_cast<std::uint8_t>(i);
  CHECK(book::deviceOf(key) == "zmxvcyh4d57ak");
  CHECK(book::hexOf(book::chainStart("abcdefghijklm")) == "8e94424793cda03896bfb7d25ef794f90e54392a9f11b00440ba6777e751fed3");
  CHECK(book::hexOf(book::chainStep(book::chainStart("abcdefghijklm"), "{}")) ==
        "c305df83d8a656df994e0b305a1d0b47fc65b329cba126334e9c68d5c53f7469");
}
