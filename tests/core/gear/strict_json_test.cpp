// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <limits>

#include "core/gear/strict_json.h"
#include "core/gear/utf8.h"

using namespace snugline;
using namespace snugline::json;

namespace {

Document parsed(std::string_view text) {
  Result<Document> document = Document::parse(text, "f");
  if (!document) FAIL(document.error().place + ": " + document.error().detail);
  return std::move(*document);
}

ErrorCode refused(std::string_view text) {
  const Result<Document> document = Document::parse(text, "f");
  REQUIRE_FALSE(document.has_value());
  CHECK(document.error().place.starts_with("f"));
  return document.error().code;
}

}  // namespace

TEST_CASE("Members are read by kind") {
  const Document document = parsed(R"({"n":-7,"s":"brow","b":true,"d":1.5,"o":{"k":1},"a":[1,2]})");
  const Node root = document.root();
  CHECK(root.integer("n", -10, 10).value() == -7);
  CHECK(root.string("s").value() == "brow");
  CHECK(root.boolean("b").value());
  CHECK(root.number("d", 0, 2).value() == 1.5);
  CHECK(root.number("n", -10, 2).value() == -7.0);
  CHECK(root.object("o").value().integer("k", 0, 5).value() == 1);
  CHECK(root.array("a").value().items().size() == 2);
  CHECK(root.members().size() == 6);
  CHECK(root.members()[1].first == "s");
  CHECK(root.members()[4].second.at("k").isInteger());
  CHECK_FALSE(root.at("x").exists());
}

TEST_CASE("An error names the path from the file down") {
  const Document document = parsed(R"({"a":[{"k":1},{"k":"x"}],"":5,"p/q":{"~":true}})");
  const Node root = document.root();
  CHECK(root.path() == "f#/");
  const Node second = root.at("a").items()[1];
  CHECK(second.path() == "f#/a/1");
  CHECK(second.integer("k", 0, 5).error() == Error{ErrorCode::wrongType, "f#/a/1/k", "a whole number"});
  CHECK(second.integer("m", 0, 5).error() == Error{ErrorCode::missingKey, "f#/a/1/m", {}});
  CHECK(root.at("p/q").at("~").path() == "f#/p~1q/~0");
  CHECK(root.at("gone").at("further").asString().error() == Error{ErrorCode::missingKey, "f#/gone/further", {}});
  CHECK(root.string("a").error() == Error{ErrorCode::wrongType, "f#/a", "text"});
  CHECK(root.at("a").string("k").error() == Error{ErrorCode::wrongType, "f#/a", "an object"});
}

TEST_CASE("Whole numbers are exact to 64 bits and what lies beyond is out of range") {
  constexpr std::int64_t kLow = std::numeric_limits<std::int64_t>::min(), kHigh = std::numeric_limits<std::int64_t>::max();
  const Document document = parsed(
      R"({"max":9223372036854775807,"min":-9223372036854775808,"big":9223372036854775808,"far":123456789012345678901234567890,"odd":9007199254740993,"real":3.0,"e":1e2})");
  const Node root = document.root();
  CHECK(root.integer("max", kLow, kHigh).value() == kHigh);
  CHECK(root.integer("min", kLow, kHigh).value() == kLow);
  CHECK(root.integer("odd", kLow, kHigh).value() == 9007199254740993);
  CHECK(root.integer("big", kLow, kHigh).error().code == ErrorCode::outOfRange);
  CHECK_FALSE(root.integer("far", kLow, kHigh).has_value());
  CHECK(root.integer("real", kLow, kHigh).error().code == ErrorCode::wrongType);
  CHECK(root.integer("e", kLow, kHigh).error().code == ErrorCode::wrongType);
  CHECK(root.integer("odd", 0, 5).error().detail == "9007199254740993, 0, 5");
  CHECK(root.number("real", 3.5, 4).error().detail == "3, 3.5, 4");
}

TEST_CASE("A key that stands twice is refused wherever it stands") {
  CHECK(Document::parse(R"({"a":1,"b":{"c":[0,{"k":1,"k":1}]}})", "f").error() == Error{ErrorCode::duplicateKey, "f#/b/c/1/k", {}});
  CHECK(Document::parse(R"({"a":1,"\u0061":2})", "f").error() == Error{ErrorCode::duplicateKey, "f#/a", {}});
  std::string many = "{";
  for (int i = 0; i < 40; ++i) many += "\"k" + std::to_string(i) + "\":1,";
  CHECK(parsed(many + "\"z\":1}").root().members().size() == 41);
  CHECK(Document::parse(many + "\"k17\":1}", "f").error() == Error{ErrorCode::duplicateKey, "f#/k17", {}});
}

TEST_CASE("What is not JSON is refused with its line and column") {
  for (const char* text :
       {"",      " ",     "{",     "{}x",        "{} {}",    "{'a':1}",  "{a:1}",   "[1,]",      "{\"a\":1,}", "[01]",          "[+1]",
        "[ .5]", "[1. ]", "[NaN]", "[Infinity]", "// c\n{}", "\"a\nb\"", "\"\\x\"", "\"\\u12\"", "tru",        "\xEF\xBB\xBF{}"}) {
    INFO(text);
    CHECK(refused(text) == ErrorCode::notJson);
  }
  CHECK(Document::parse("{\n  \"a\" 1}", "f").error().detail.starts_with("byte 8, line 2, column 7"));
}

TEST_CASE("Text that is not UTF-8 is refused, raw or escaped") {
  for (const char* text : {"\"\xff\"", "\"\xC0\xAF\"", "\"\xED\xA0\x80\"", "\"\xF4\x90\x80\x80\"", "\"\xE2\x82\"", "\"\\ud800\"",
                           "\"\\udc00\"", "\"\\ud800\\u0041\""}) {
    INFO(text);
    CHECK(refused(text) == ErrorCode::notJson);
  }
  CHECK(parsed("\"\\ud83c\\udfc8\"").root().asString().value() == "\U0001F3C8");
}

TEST_CASE("A zero byte ends nothing, and an escaped one is kept") {
  CHECK(refused(std::string_view("{}\0{\"a\":1}", 9)) == ErrorCode::notJson);
  CHECK(parsed("\"a\\u0000b\"").root().asString().value() == std::string("a\0b", 3));
}

TEST_CASE("Nesting beyond the limit is refused before anything is built") {
  const std::string deep(kDepthLimit, '['), up(kDepthLimit, ']');
  CHECK(Document::parse(deep + up, "f").has_value());
  CHECK(refused("[" + deep + up + "]") == ErrorCode::notJson);
  CHECK(refused(std::string(1000000, '[')) == ErrorCode::notJson);
  CHECK(Document::parse("\"" + std::string(1000, '[') + "\\\"[\"", "f").has_value());
}

TEST_CASE("Members that are not on the list are refused by name") {
  const Document document = parsed(R"({"a":1,"b":2})");
  CHECK(document.root().onlyKeys({"a", "b", "c"}).has_value());
  CHECK(document.root().onlyKeys({"a"}).error() == Error{ErrorCode::unknownKey, "f#/b", {}});
  CHECK(document.root().at("a").onlyKeys({}).error().code == ErrorCode::wrongType);
}

TEST_CASE("A document may be moved and its nodes are found anew") {
  Document first = parsed(R"({"a":{"b":5}})");
  const Document second = std::move(first);
  CHECK(second.root().at("a").at("b").path() == "f#/a/b");
}

TEST_CASE("The writer writes in the order given and is read back") {
  Writer out;
  out.beginObject().key("s").string("a\"\n\u00E9").key("i").integer(-5).key("b").boolean(false).key("r").real(1.005, 2).key("n").null();
  out.key("a").beginArray().integer(1).raw("{\"x\":2}").endArray().endObject();
  const std::string text = out.take();
  CHECK(text == "{\"s\":\"a\\\"\\n\u00E9\",\"i\":-5,\"b\":false,\"r\":1.00,\"n\":null,\"a\":[1,{\"x\":2}]}");
  CHECK(parsed(text).root().string("s").value() == "a\"\n\u00E9");
}

TEST_CASE("A writer starts anew after its text was taken") {
  Writer out;
  CHECK(out.beginArray().endArray().take() == "[]");
  CHECK(out.beginObject().key("").string("").endObject().take() == "{\"\":\"\"}");
}

TEST_CASE("A real number never depends on the machine's language and is never minus zero") {
  Writer out;
  out.beginArray().real(-0.0001, 2).real(-1.5, 1).real(std::numeric_limits<double>::quiet_NaN(), 1).real(1e20, 0).endArray();
  CHECK(out.take() == "[0.00,-1.5,null,100000000000000000000]");
}

TEST_CASE("Bytes that are no text are written as a mark, so that the output stays JSON") {
  Writer out;
  const std::string text = out.string(
                                  "a\xff"
                                  "b\xE2\x82")
                               .take();
  CHECK(parsed(text).root().asString().value() ==
        "a\uFFFD"
        "b\uFFFD\uFFFD");
}

TEST_CASE("Printable text has no control characters of either set") {
  CHECK(gear::isPrintable("Helm 7 \u00E9\u4E2D"));
  CHECK_FALSE(gear::isPrintable("a\tb"));
  CHECK_FALSE(gear::isPrintable("a\x7f"));
  CHECK_FALSE(gear::isPrintable("a\u0085"));
  CHECK_FALSE(gear::isPrintable("a\xff"));
  CHECK(gear::codePoints("a\u00E9\u4E2D\U0001F3C8") == 4);
}
