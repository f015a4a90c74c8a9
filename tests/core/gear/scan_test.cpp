// SPDX-License-Identifier: Apache-2.0
// Scans: the same tag twice, a scanner that types as on another keyboard, and serials of our own.
#include SNUGLINE_CATCH_HEADER
#include <rapidcheck.h>

#include <set>

#include "core/gear/keyboard_layout.h"
#include "core/gear/own_serial.h"
#include "core/gear/tag.h"
#include "core/gear/tag_gate.h"

using namespace snugline;
using namespace snugline::gear;

namespace {
const Day kToday = dayOf(2026, 10, 14);
Instant ms(std::int64_t at) { return {at, 0}; }
constexpr std::array kAll{KeyboardLayout::german, KeyboardLayout::french, KeyboardLayout::spanish, KeyboardLayout::capsLock};
}  // namespace

TEST_CASE("A tag seen again within a second counts once, and again after it was away for more") {
  TagGate gate;
  CHECK(gate.isNew("a", ms(0)));
  CHECK_FALSE(gate.isNew("a", ms(1000)));
  CHECK_FALSE(gate.isNew("a", ms(1900)));  // it stood there all the time
  CHECK(gate.isNew("b", ms(1900)));
  CHECK(gate.isNew("a", ms(2901)));
}

TEST_CASE("A clock that was set back counts a tag anew") {
  TagGate gate;
  CHECK(gate.isNew("a", ms(100'000)));
  CHECK_FALSE(gate.isNew("a", ms(99'500)));
  CHECK(gate.isNew("a", ms(10)));
}

TEST_CASE("More tags in view than are kept in mind count twice rather than take memory") {
  TagGate gate;
  for (std::size_t i = 0; i <= kTagsInView; ++i) CHECK(gate.isNew("tag " + std::to_string(i), ms(0)));
  CHECK(gate.isNew("tag 0", ms(1)));
  CHECK_FALSE(gate.isNew("tag 8", ms(1)));
}

TEST_CASE("A GS1 tag typed on another keyboard is noticed, whatever the keyboard") {
  for (const std::string sent : {"]d20107300011000017"
                                 "21KX-0417/Y",
                                 "(01)07300011000017(21)AZ-99"}) {
    REQUIRE(parseTag(sent, kToday));
    CHECK_FALSE(wrongLayout(sent, kToday));
    for (const KeyboardLayout layout : kAll) {
      const std::string shown = shownOn(layout, sent);
      if (shown == sent) continue;
      const auto guess = wrongLayout(shown, kToday);
      // Caps lock over brackets and digits leaves a sound tag with another serial; nothing can tell that.
      if (layout == KeyboardLayout::capsLock && sent.front() == '(') continue;
      REQUIRE(guess);
      CHECK(guess->meant == sent);
    }
  }
}

TEST_CASE("A French keyboard turns the digits of a bare GS1 tag, and that is noticed") {
  const std::string sent = "010730001100001721417";
  const auto guess = wrongLayout(shownOn(KeyboardLayout::french, sent), kToday);
  REQUIRE(guess);
  CHECK(guess->layout == KeyboardLayout::french);
  CHECK(guess->meant == sent);
}

TEST_CASE("A plain serial is questioned only where it has letters that no tag has") {
  CHECK_FALSE(wrongLayout("KX-0417", kToday));
  CHECK_FALSE(wrongLayout("zebra", kToday));
  const auto german = wrongLayout(shownOn(KeyboardLayout::german, "KX-0417"), kToday);
  REQUIRE(german);
  CHECK(german->meant == "KX-0417");
  CHECK_FALSE(wrongLayout("\xFF", kToday));
}

TEST_CASE("A dash that a scanner on a German or Spanish keyboard types as a slash is noticed, and one that is as it is may stand") {
  // The key beside the right shift key has / on a US keyboard and - on a German and a Spanish one: the keyboards themselves.
  const auto slash = wrongLayout("KX/0417", kToday);
  REQUIRE(slash);
  CHECK(slash->meant == "KX-0417");
  CHECK(slash->isScanner);
  CHECK(slash->isAsRead);
  const auto quote = wrongLayout(shownOn(KeyboardLayout::spanish, "KX-0417"), kToday);
  REQUIRE(quote);
  CHECK(quote->meant == "KX-0417");
  CHECK_FALSE(quote->isScanner);
  CHECK_FALSE(wrongLayout("KX-0417/B", kToday));  // it has its dash
  CHECK_FALSE(wrongLayout("https://host.example/a/7", kToday));
}

TEST_CASE("A tag or label of our own from a scanner set to another keyboard is read back for sure") {
  // What a US keyboard shows for the keys that a German one has for these characters.
  const auto tag = wrongLayout("*01(07300011000017*21(AY/99", kToday);
  REQUIRE(tag);
  CHECK(tag->layout == KeyboardLayout::german);
  CHECK(tag->isScanner);
  CHECK_FALSE(tag->isAsRead);
  CHECK(tag->meant == "(01)07300011000017(21)AZ-99");
  CHECK(rc::check("labels of our own", [] {
    const auto number = *rc::gen::inRange<std::uint32_t>(1, kOwnSerialMost);
    const std::string serial = ownSerial("zy7q", number);
    std::string shown = serial;
    for (char& c : shown) c = c == '-' ? '/' : c == 'Z' ? 'Y' : c == 'Y' ? 'Z' : c;
    const auto guess = wrongLayout(shown, kToday);
    RC_ASSERT(guess.has_value());
    RC_ASSERT(guess->meant == serial);
    RC_ASSERT(!guess->isAsRead);
  }));
}

TEST_CASE("One or two characters, or signs alone, are asked about; a whole serial is not") {
  const auto doubt = [](const char* text) { return doubtOf(parseTag(text, kToday).value()); };
  CHECK(doubt("7") == TagDoubt::tooShort);
  CHECK(doubt("H2") == TagDoubt::tooShort);
  CHECK(doubt("\xC3\x91"
              "1") == TagDoubt::tooShort);  // two characters, three bytes
  CHECK(doubt("--/.") == TagDoubt::onlySigns);
  CHECK(doubt("-") == TagDoubt::onlySigns);
  CHECK_FALSE(doubt("K-1"));
  CHECK_FALSE(
      doubt("]d201073000110000172"
            "17"));  // its check digit says that it is whole
}

TEST_CASE("A sound tag is never questioned, and what is meant is always a tag") {
  CHECK(rc::check("sound tags", [] {
    const auto serial = *rc::gen::container<std::string>(rc::gen::elementOf(std::string("ABCXYZabcxyz0189-/_.")));
    const std::string sent = "]d2010730001100001721" + serial.substr(0, 18) + "7";
    RC_ASSERT(parseTag(sent, kToday).has_value());
    RC_ASSERT(!wrongLayout(sent, kToday));
    for (const KeyboardLayout layout : kAll) {
      const auto guess = wrongLayout(shownOn(layout, sent), kToday);
      RC_ASSERT(guess.has_value());
      RC_ASSERT(parseTag(guess->meant, kToday).has_value());
    }
  }));
}

TEST_CASE("A serial of our own reads back, in either case, and is a plain serial to everybody else") {
  const std::string serial = ownSerial("k7qdabcdefghi", 42);
  CHECK(serial.starts_with("K7QD-00042-"));
  const auto own = readOwnSerial(serial);
  REQUIRE(own);
  CHECK(own->device == "K7QD");
  CHECK(own->number == 42);
  CHECK(own->isCheckOk);
  const auto tag = parseTag(serial, kToday);
  REQUIRE(tag);
  CHECK(tag->form == TagForm::plain);
  CHECK(tag->key == serial);
  CHECK(ownSerial("k7qdabcdefghi", 0).empty());
  CHECK(ownSerial("k7qdabcdefghi", kOwnSerialMost + 1).empty());
  CHECK(ownSerial("k7q", 1).empty());
  CHECK_FALSE(readOwnSerial("A1-M-00001"));
}

TEST_CASE("One wrong letter or digit in a serial of our own is told by its last letter") {
  CHECK(rc::check("one slip", [] {
    const auto number = *rc::gen::inRange<std::uint32_t>(1, kOwnSerialMost);
    const std::string serial = ownSerial("k7qd", number);
    const std::string letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567", digits = "0123456789";
    for (std::size_t i = 0; i < serial.size(); ++i) {
      if (serial[i] == '-') continue;
      const bool isDigit = i > 4 && i < 10;
      for (const char c : isDigit ? digits : letters) {
        std::string slip = serial;
        slip[i] = c;
        if (slip == serial) continue;
        const auto read = readOwnSerial(slip);
        RC_ASSERT(!read || !read->isCheckOk);
      }
    }
  }));
}

TEST_CASE("No two numbers of one device give one serial") {
  std::set<std::string> all;
  for (std::uint32_t n = 1; n <= kOwnSerialMost; n += 7) all.insert(ownSerial("abcd", n));
  CHECK(all.size() == (kOwnSerialMost + 6) / 7);
}
