// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include "core/gear/tag.h"
#include "core/gear/tag_fault.h"

using namespace snugline;
using namespace snugline::gear;

namespace {

const Day kToday = dayOf(2026, 10, 14);
using Ai = std::map<std::string, std::string>;

Tag tagOf(std::string_view text) {
  const Result<Tag> tag = parseTag(text, kToday);
  INFO(text);
  if (!tag) FAIL(tag.error().detail);
  return *tag;
}

std::string refused(std::string_view text) {
  const Result<Tag> tag = parseTag(text, kToday);
  INFO(text);
  if (tag) FAIL("read as " + std::string(code(tag->form)) + " " + tag->key);
  CHECK(tag.error().code == ErrorCode::notATag);
  // Every refusal is one that the screens and the terminal have words for.
  const std::optional<TagRefusal> refusal = refusalOf(tag.error().detail);
  REQUIRE(refusal);
  CHECK(refuse(*refusal).value() == tag.error());
  return tag.error().detail;
}

}  // namespace

TEST_CASE("A plain serial is kept as it was read") {
  for (const char* text : {"7", "HC-0042", "0042", "21ABC", "123456789012", "10AB", "a b", " 42", "(5)x", "(2024) spare", "[7]", "]A0X1",
                           "\u00C9-7", "01234567890", "010730001100001A", "\\x1e"}) {
    INFO(text);
    const Tag tag = tagOf(text);
    CHECK(tag.form == TagForm::plain);
    CHECK(tag.serial == text);
    CHECK(tag.key == text);
    CHECK(tag.ai.empty());
    CHECK(tag.made.empty());
    CHECK(tag.isCheckDigitOk);
  }
}

TEST_CASE("A plain serial has at most 64 characters, counted as people do") {
  CHECK(tagOf(std::string(64, 'x')).serial.size() == 64);
  CHECK(refused(std::string(65, 'x')).find("65") != std::string::npos);
  std::string accents;
  for (int i = 0; i < 64; ++i) accents += "\u00E9";
  CHECK(tagOf(accents).serial == accents);
  refused(accents + "x");
}

TEST_CASE("Nothing, blanks, control characters and bytes that are no text are refused") {
  refused("");
  refused("   ");
  refused("HC\t42");
  refused("HC42\n");
  refused("HC42\r");
  refused("\x1bHC42");
  refused(
      std::string_view("HC\0"
                       "42",
                       5));
  refused("HC42\x7f");
  refused("HC\u008542");
  refused(
      "HC\xff"
      "42");
  refused("\xC0\xAF");
  refused(
      "]d20107300011000017\x1e"
      "21A");
  refused(std::string(5000, 'x'));
}

TEST_CASE("An element string is split at character 29, raw or written") {
  const Tag raw = tagOf(
      "]d2010730001100001721HC42\x1d"
      "11240115");
  CHECK(raw.form == TagForm::gs1);
  CHECK(raw.ai == Ai{{"01", "07300011000017"}, {"11", "240115"}, {"21", "HC42"}});
  CHECK(raw.serial == "HC42");
  CHECK(raw.key == "010730001100001721HC42");
  CHECK(raw.made == "2024-01-15");
  CHECK(raw.isCheckDigitOk);
  CHECK(tagOf("]d2010730001100001721HC42\\x1d11240115").ai == raw.ai);
  CHECK(tagOf("]d2010730001100001721HC42\\x1D11240115").ai == raw.ai);
  CHECK(tagOf("]C1010730001100001721HC42\\x1d11240115").ai == raw.ai);
  CHECK(tagOf("]Q3010730001100001721HC42\\x1d11240115").ai == raw.ai);
  CHECK(tagOf("\x1d"
              "010730001100001721HC42\\x1d11240115")
            .ai == raw.ai);
  CHECK(tagOf("]d2\\x1d010730001100001711240115"
              "21HC42")
            .ai == raw.ai);
}

TEST_CASE("A character 29 behind a value of fixed length or at the end is passed over") {
  CHECK(tagOf("0107300011000017\x1d"
              "21HC42\x1d")
            .ai == Ai{{"01", "07300011000017"}, {"21", "HC42"}});
  refused(
      "0107300011000017\x1d\x1d"
      "21HC42");
}

TEST_CASE("Without a prefix, 01 and 14 digits are an element string where the rest is one too") {
  CHECK(tagOf("010730001100001721HC42").key == "010730001100001721HC42");
  CHECK(tagOf("01073000110000171124011521HC42").made == "2024-01-15");
  const Tag alone = tagOf("0107300011000017");
  CHECK(alone.form == TagForm::gs1);
  CHECK(alone.serial.empty());
  CHECK(alone.key == "0107300011000017");
  // The check digit says that it was meant as one, so that the slip behind it is not taken for a serial.
  CHECK(refused("010730001100001721").find("21") != std::string::npos);
  refused("010730001100001755HC42");
  CHECK(tagOf("010730001100001255HC42").form == TagForm::plain);
}

TEST_CASE("A wrong check digit is said and the tag is read all the same") {
  const Tag tag = tagOf("0107300011000018");
  CHECK(tag.form == TagForm::gs1);
  CHECK_FALSE(tag.isCheckDigitOk);
  CHECK(tag.ai.at("01") == "07300011000018");
  CHECK_FALSE(tagOf("]d2010730001100001821HC42").isCheckDigitOk);
  CHECK_FALSE(tagOf("https://example.org/01/07300011000018/21/HC42").isCheckDigitOk);
  CHECK_FALSE(tagOf("(8003)07300011000018X").isCheckDigitOk);
  CHECK(tagOf("(8003)07300011000017X").isCheckDigitOk);
}

TEST_CASE("The bracketed form for people reads like the scan") {
  const Tag tag = tagOf("(01)07300011000017(21)HC42(11)240115");
  CHECK(tag.form == TagForm::gs1);
  CHECK(tag.key == tagOf("]d2010730001100001721HC42").key);
  CHECK(tag.made == "2024-01-15");
  CHECK(tagOf("(01)07300011000017(21)A(7)B").serial == "A(7)B");
  CHECK(tagOf("(01)07300011000017(21)A(30)").serial == "A(30)");
  refused("(01)07300011000017(21)");
  refused("(01)0730001100001(21)A");
  refused("(17)260101(01)07300011000017");
}

TEST_CASE("A serial never stands without its trade item") {
  CHECK(refused("]d221HC42") == "serial-alone 0 0 0");
  CHECK(refused("(21)HC42") == "serial-alone 0 0 0");
  CHECK(refused("21HC42\x1d"
                "11240115") == "serial-alone 0 0 0");
  CHECK(refused("]d2800407300011\x1d"
                "21HC42") == "serial-alone 0 0 0");
  CHECK(refused("https://example.org/21/HC42") == "serial-alone 0 0 0");
}

TEST_CASE("A tag that names no helmet and no model is refused") {
  refused("]d211240115");
  refused("]d210LOT7");
  refused("]d29912");
  refused("]d2");
  refused("\x1d");
}

TEST_CASE("An asset of either kind names a unit by itself") {
  const Tag returnable = tagOf("]d2800307300011000017UNIT9");
  CHECK(returnable.serial == "UNIT9");
  CHECK(returnable.key == "800307300011000017UNIT9");
  CHECK(tagOf("]d2800307300011000017").serial.empty());
  const Tag asset = tagOf("]C18004730001100001-77\\x1d11230600");
  CHECK(asset.serial == "730001100001-77");
  CHECK(asset.key == "8004730001100001-77");
  CHECK(asset.made == "2023-06");
  refused("]d2800317300011000017UNIT9");
  refused("]d280030730001100001");
}

TEST_CASE("The identifiers of the company's own are kept, up to their lengths") {
  const Tag tag = tagOf(
      "]d20107300011000017"
      "90A\x1d"
      "91" +
      std::string(90, 'b') +
      "\x1d"
      "99z\x1d"
      "10L7");
  CHECK(tag.ai.at("90") == "A");
  CHECK(tag.ai.at("91") == std::string(90, 'b'));
  CHECK(tag.ai.at("99") == "z");
  CHECK(tag.ai.at("10") == "L7");
  refused("]d2010730001100001790" + std::string(31, 'b'));
  refused("]d2010730001100001791" + std::string(91, 'b'));
  refused("]d2010730001100001710" + std::string(21, 'b'));
  refused("]d2010730001100001721" + std::string(21, 'b'));
  refused("]d28004" + std::string(31, 'b'));
  refused("]d2800307300011000017" + std::string(17, 'b'));
}

TEST_CASE("Characters that GS1 does not encode are refused inside a value") {
  CHECK(tagOf("]d2010730001100001721a!\"%&'()*+").serial == "a!\"%&'()*+");
  CHECK(tagOf("]d2010730001100001721,-./:;<=>?_Z9").serial == ",-./:;<=>?_Z9");
  for (const char* bad : {"a b", "a#b", "a$b", "a@b", "a[b", "a\\b", "a^b", "a`b", "a{b", "a|b", "a~b", "\u00E9"}) {
    INFO(bad);
    refused(std::string("]d2010730001100001721") + bad);
  }
}

TEST_CASE("An identifier that is not ours, or one twice with two values, is refused") {
  CHECK(refused("]d2010730001100001717260101").find("17") != std::string::npos);
  refused(
      "]d2010730001100001721A\x1d"
      "21B");
  CHECK(tagOf("]d2010730001100001721A\x1d"
              "21A")
            .serial == "A");
}

TEST_CASE("The day a helmet was made is read with its century, and day 00 leaves the month") {
  const auto made = [](const std::string& six, Day today) { return parseTag("]d2010730001100001711" + six, today).value().made; };
  CHECK(made("240115", kToday) == "2024-01-15");
  CHECK(made("240100", kToday) == "2024-01");
  CHECK(made("240229", kToday) == "2024-02-29");
  CHECK(made("760101", kToday) == "2076-01-01");
  CHECK(made("770101", kToday) == "1977-01-01");
  CHECK(made("000101", kToday) == "2000-01-01");
  CHECK(made("990101", dayOf(2060, 1, 1)) == "2099-01-01");
  CHECK(made("100101", dayOf(2060, 1, 1)) == "2110-01-01");
  CHECK(made("110101", dayOf(2060, 1, 1)) == "2011-01-01");
  for (const char* bad : {"241301", "240001", "240132", "230229", "240431", "24011", "24O115", "2401150"}) {
    INFO(bad);
    refused(std::string("]d2010730001100001711") + bad);
  }
}

TEST_CASE("A Digital Link says the same as the element string") {
  const Tag link = tagOf("https://id.example.org/01/07300011000017/21/HC42?11=240115");
  CHECK(link.form == TagForm::digitalLink);
  CHECK(link.ai == Ai{{"01", "07300011000017"}, {"11", "240115"}, {"21", "HC42"}});
  CHECK(link.key == tagOf("]d2010730001100001721HC42").key);
  CHECK(link.serial == "HC42");
  CHECK(link.made == "2024-01-15");
  CHECK(tagOf("HTTP://example.org:8080/gear/01/07300011000017/10/L7/21/HC42/").ai.at("10") == "L7");
  CHECK(tagOf("https://example.org/01/07300011000017").serial.empty());
  CHECK(tagOf("https://example.org/8004/730001100001-77").key == "8004730001100001-77");
  CHECK(tagOf("https://example.org/8003/07300011000017UNIT9#top").serial == "UNIT9");
}

TEST_CASE("A Digital Link is percent-decoded, and its other attributes are passed over") {
  CHECK(tagOf("https://example.org/01/07300011000017/21/A%2FB%3f").serial == "A/B?");
  CHECK(tagOf("https://example.org/01/07300011000017/21/A+B").serial == "A+B");
  CHECK(tagOf("https://example.org/01/07300011000017?linkType=all&17=260101;99=own%25").ai.at("99") == "own%");
  refused("https://example.org/01/07300011000017/21/A%2");
  refused("https://example.org/01/07300011000017/21/A%zz");
  refused("https://example.org/01/07300011000017/21/A%20B");
  refused("https://example.org/01/07300011000017/21/A%1DB");
  refused("https://example.org/01/07300011000017/21/A%00");
}

TEST_CASE("A key in the host's own path does not hide the one behind it") {
  CHECK(tagOf("https://example.org/01/shop/01/07300011000017/21/HC42").key == "010730001100001721HC42");
  CHECK(tagOf("https://example.org/01/07300011000017/21/01").serial == "01");
}

TEST_CASE("A Digital Link with a slip is refused, and any other address is a plain serial") {
  refused("https://example.org/01/0730001100001/21/HC42");
  refused("https://example.org/01/07300011000017/21");
  refused("https://example.org/01/07300011000017/22/X/21/HC42");
  refused("https://example.org/01/07300011000017/8004/X");
  refused("https://example.org/01/07300011000017?21=HC42");
  refused("https:///01/07300011000017");
  CHECK(tagOf("https://example.org/helmets/42").form == TagForm::plain);
  CHECK(tagOf("https://example.org?01=07300011000017").form == TagForm::plain);
  CHECK(tagOf("ftp://example.org/01/07300011000017").form == TagForm::plain);
}

TEST_CASE("Check digits weigh 3 and 1 from the right") {
  CHECK(gs1CheckDigit("0") == 0);
  CHECK(gs1CheckDigit("1") == 7);
  CHECK(gs1CheckDigit("10") == 9);
  CHECK(gs1CheckDigit("") == 0);
  CHECK(gs1CheckDigit("12a") == -1);
}

TEST_CASE("Every text cut short or with one byte changed is read or refused, never more") {
  for (const std::string text : {"]d2010730001100001721HC42\\x1d11240115", "https://example.org/01/07300011000017/21/A%2FB?11=240115",
                                 "(01)07300011000017(21)HC42(11)240115"}) {
    for (std::size_t i = 0; i < text.size(); ++i) {
      const Result<Tag> cut = parseTag(std::string_view(text).substr(0, i), kToday);
      if (cut) CHECK_FALSE(cut->key.empty());
      for (int c = 0; c < 256; ++c) {
        std::string changed = text;
        changed[i] = static_cast<char>(c);
        const Result<Tag> tag = parseTag(changed, kToday);
        if (tag) REQUIRE_FALSE(tag->key.empty());
        if (!tag) REQUIRE(tag.error().code == ErrorCode::notATag);
      }
    }
  }
}

TEST_CASE("A refusal goes into an error and comes out as it was, whatever its identifier holds") {
  for (int i = 0; i <= static_cast<int>(TagFault::namesNoHelmet); ++i) {
    const TagRefusal made{static_cast<TagFault>(i), i % 2 == 0 ? "01 x 7" : "", static_cast<std::size_t>(i), 3, 400};
    CHECK(refusalOf(refuse(made).value().detail) == made);
  }
  CHECK_FALSE(refusalOf("no code of ours 0 0 0"));
  CHECK_FALSE(refusalOf("blanks"));
  CHECK_FALSE(refusalOf("blanks one 0 0"));
}
