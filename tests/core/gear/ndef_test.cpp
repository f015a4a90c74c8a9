// SPDX-License-Identifier: Apache-2.0
// Records of NFC tags. Source of the bytes: NFC Forum, Text Record Type Definition 1.0 (status byte, language, UTF-16) and URI Record Type
// Definition 1.0 (table 3).
#include "core/gear/ndef.h"

#include SNUGLINE_CATCH_HEADER

#include "core/gear/tag.h"

using namespace snugline;
using namespace snugline::gear;

namespace {

const Day kToday = dayOf(2026, 10, 14);

std::string bytes(std::initializer_list<int> list) {
  std::string made;
  for (const int byte : list) made += static_cast<char>(static_cast<unsigned char>(byte));
  return made;
}
NdefRecord text(const std::string& words, const std::string& language = "en") {
  return {NdefFormat::wellKnown, "T", static_cast<char>(language.size()) + language + words};
}
NdefRecord address(int beginning, const std::string& rest) { return {NdefFormat::wellKnown, "U", bytes({beginning}) + rest}; }
NdefTrouble whyNot(const std::vector<NdefRecord>& records) {
  const auto read = readNdef(records, kToday);
  REQUIRE(!read);
  return read.error().why;
}

}  // namespace

TEST_CASE("A text record is its words without the language, in either encoding and either order of bytes") {
  CHECK(readNdef({text("H-0231")}, kToday).value() == "H-0231");
  CHECK(readNdef({text("H-0231", "es-419")}, kToday).value() == "H-0231");
  CHECK(readNdef({text("H-0231", "")}, kToday).value() == "H-0231");
  const std::string big = bytes({0, 'K', 0, 0xD1}), little = bytes({'K', 0, 0xD1, 0});
  CHECK(readNdef({{NdefFormat::wellKnown, "T", bytes({0x82, 'e', 'n'}) + big}}, kToday).value() == "K\xC3\x91");
  CHECK(readNdef({{NdefFormat::wellKnown, "T", bytes({0x82, 'e', 'n', 0xFE, 0xFF}) + big}}, kToday).value() == "K\xC3\x91");
  CHECK(readNdef({{NdefFormat::wellKnown, "T", bytes({0x82, 'e', 'n', 0xFF, 0xFE}) + little}}, kToday).value() == "K\xC3\x91");
  // U+1F3C8 as a pair.
  CHECK(textOf({NdefFormat::wellKnown, "T", bytes({0x80, 0xD8, 0x3C, 0xDF, 0xC8})}).value() == "\xF0\x9F\x8F\x88");
}

TEST_CASE("An address record gets the beginning that its first byte stands for, and a Digital Link is read from it") {
  const auto link = readNdef({address(4, "example.org/01/07300011000017/21/KX-0417")}, kToday);
  REQUIRE(link);
  CHECK(*link == "https://example.org/01/07300011000017/21/KX-0417");
  CHECK(parseTag(*link, kToday).value().key == "010730001100001721KX-0417");
  CHECK(textOf(address(0, "H-1")).value() == "H-1");
  CHECK(textOf(address(1, "a.org")).value() == "http://www.a.org");
  CHECK(textOf(address(0x0D, "a")).value() == "ftp://a");
  CHECK(textOf(address(0x13, "a")).value() == "urn:a");
  CHECK(textOf(address(0x1E, "sgtin:1")).value() == "urn:epc:id:sgtin:1");
  CHECK(textOf(address(0x23, "a")).value() == "urn:nfc:a");
  CHECK(textOf(address(0x24, "a")).error() == NdefTrouble::otherKind);
  CHECK(readNdef({{NdefFormat::address, "https://example.org/01/07300011000017/21/KX-1", ""}}, kToday).value() ==
        "https://example.org/01/07300011000017/21/KX-1");
}

TEST_CASE("Of several records the first that is a helmet's tag is read, and a website is one only where nothing else is") {
  const NdefRecord site = address(2, "example.org/care"), empty{};
  CHECK(readNdef({empty, text("H-0231"), text("H-0232")}, kToday).value() == "H-0231");
  CHECK(readNdef({site, text("H-0231")}, kToday).value() == "H-0231");
  CHECK(readNdef({site, text("]d20107300011000017"
                             "21KX-1")},
                 kToday)
            .value() == "]d2010730001100001721KX-1");
  CHECK(readNdef({site}, kToday).value() == "https://www.example.org/care");
  CHECK(readNdef({text("(21)7"), {NdefFormat::media, "text/vcard", "BEGIN"}, text("H-7")}, kToday).value() == "H-7");
}

TEST_CASE("What cannot be read says why, by the first record that holds anything") {
  CHECK(whyNot({}) == NdefTrouble::nothing);
  CHECK(whyNot({NdefRecord{}, text("")}) == NdefTrouble::nothing);
  CHECK(whyNot({{NdefFormat::wellKnown, "Sp", bytes({0xD1, 1, 1, 'U', 4})}}) == NdefTrouble::smartPoster);
  CHECK(whyNot({{NdefFormat::media, "image/png", "x"}, text("(21)7")}) == NdefTrouble::otherKind);
  CHECK(whyNot({{NdefFormat::external, "example.org:x", "x"}}) == NdefTrouble::otherKind);
  CHECK(whyNot({{NdefFormat::unchanged, "", "x"}}) == NdefTrouble::otherKind);
  CHECK(whyNot({text("caf\xE9")}) == NdefTrouble::notText);
  CHECK(whyNot({address(4, "caf\xE9")}) == NdefTrouble::notText);
  CHECK(whyNot({{NdefFormat::wellKnown, "T", bytes({0x80, 0xD8, 0x3C})}}) == NdefTrouble::notText);          // odd
  CHECK(whyNot({{NdefFormat::wellKnown, "T", bytes({0x80, 0xD8, 0x3C, 0, 'x'})}}) == NdefTrouble::notText);  // half a pair
  CHECK(whyNot({{NdefFormat::wellKnown, "T", bytes({0x80, 0xDF, 0xC8, 0, 'x'})}}) == NdefTrouble::notText);  // the other half
  CHECK(whyNot({{NdefFormat::wellKnown, "T", bytes({0x3F, 'e', 'n'})}}) == NdefTrouble::cutShort);
  CHECK(whyNot({{NdefFormat::wellKnown, "T", ""}}) == NdefTrouble::cutShort);
  CHECK(whyNot({{NdefFormat::wellKnown, "U", ""}}) == NdefTrouble::cutShort);
  CHECK(whyNot({text(std::string(kNdefTextMost + 1, 'x'))}) == NdefTrouble::tooLong);
  const auto refused = readNdef({text("(21)7")}, kToday);
  REQUIRE(!refused);
  CHECK(refused.error().why == NdefTrouble::notATag);
  CHECK(!refused.error().error.detail.empty());
  CHECK(whyNot({text(std::string(65, 'x'))}) == NdefTrouble::notATag);
}

TEST_CASE("A text record cut anywhere, or with any first byte, is read within its bytes or refused") {
  const std::string whole = bytes({0x82, 'e', 'n', 0xFE, 0xFF, 0xD8, 0x3C, 0xDF, 0xC8, 0, 'H'});
  for (std::size_t length = 0; length <= whole.size(); ++length) {
    for (int first = 0; first < 256; ++first) {
      std::string cut = whole.substr(0, length);
      if (!cut.empty()) cut[0] = static_cast<char>(static_cast<unsigned char>(first));
      for (const char* type : {"T", "U"}) {
        const auto read = textOf({NdefFormat::wellKnown, type, cut});
        if (read) CHECK(read->size() <= 32);
        if (read && *type == 'T') CHECK(read->size() <= 2 * cut.size());
      }
    }
  }
}

TEST_CASE("Records behind the most that are looked at are not looked at") {
  std::vector<NdefRecord> many(kNdefRecordsMost, NdefRecord{NdefFormat::media, "x/y", "z"});
  many.push_back(text("H-1"));
  CHECK(whyNot(many) == NdefTrouble::otherKind);
}
