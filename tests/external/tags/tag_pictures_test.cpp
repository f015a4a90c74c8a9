// SPDX-License-Identifier: Apache-2.0
// Tags printed by zint and by bwip-js, spoilt as a camera spoils them, read by the app's decoder; and element strings parsed beside the
// strict parser of bwip-js (https://github.com/metafloor/bwip-js, MIT; its table of application identifiers is GS1's).
#include <array>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <random>

#include "core/gear/tag.h"
#include "platform/tags/label_sheet.h"
#include "platform/tags/tag_decoder.h"
#include "tests/external/oracle.h"

using namespace snugline;
using namespace snugline::external;

namespace {

const Day kToday = dayOf(2026, 10, 14);
const std::string kTags = kHere + "tags/";
const std::array<std::string, 13> kWays{"plain",  "turned-8", "turned-90", "turned-180", "turned-33", "turned-200", "blurred",
                                        "skewed", "tilted",   "faint",     "noisy",      "shaded",    "all"};

std::string scratchPath(const std::string& name) {
  return std::string(SNUGLINE_BINARY_DIR) + "/external_" + std::to_string(::getpid()) + "_" + name;
}

struct Grey {
  int width = 0, height = 0;
  std::vector<std::uint8_t> pixels;
  [[nodiscard]] tags::GreyView view() const { return {pixels.data(), width, height, width}; }
};
Grey readPgm(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::string magic;
  int most = 0;
  Grey grey;
  file >> magic >> grey.width >> grey.height >> most;
  file.get();
  grey.pixels.assign(std::istreambuf_iterator<char>(file), {});
  REQUIRE(magic == "P5");
  REQUIRE(grey.pixels.size() == static_cast<std::size_t>(grey.width) * static_cast<std::size_t>(grey.height));
  return grey;
}

struct Printed {
  std::string picture;  // PNG
  std::string kind, meant;
  bool isLinear = false;
};

// How many of the spoilt pictures could not be read, by way; what is read wrong fails at once.
std::map<std::string, int> unreadIn(const std::vector<Printed>& printed) {
  std::string jobs;
  for (std::size_t i = 0; i < printed.size(); ++i)
    for (const std::string& way : kWays)
      jobs += printed[i].picture + " " + scratchPath(std::to_string(i) + way + ".pgm") + " " + way + "\n";
  ask("/usr/bin/python3 '" + kTags + "spoil.py'", jobs);
  std::map<std::string, int> unread;
  for (std::size_t i = 0; i < printed.size(); ++i) {
    for (const std::string& way : kWays) {
      // Bars are read along lines: one that runs askew across them meets no end.
      if (printed[i].isLinear && (way == "turned-33" || way == "turned-200")) continue;
      const std::string path = scratchPath(std::to_string(i) + way + ".pgm");
      const auto found = tags::readTags(readPgm(path).view());
      std::remove(path.c_str());
      INFO(printed[i].kind << " " << way << " " << printed[i].meant);
      if (found.empty() || found.front().isUnreadable) {
        ++unread[printed[i].kind + " " + way];
        continue;
      }
      CHECK(found.size() == 1);
      const auto tag = gear::parseTag(found.front().text, kToday);
      REQUIRE(tag);
      CHECK(tag->key == gear::parseTag(printed[i].meant, kToday).value().key);
    }
    std::remove(printed[i].picture.c_str());
  }
  return unread;
}

std::string itemOf(int n) {
  std::string item = "0730001100" + std::to_string(100 + n);
  return item + static_cast<char>('0' + gear::gs1CheckDigit(item));
}

}  // namespace

// Reference: zint (Debian), which refuses what GS1 does not allow (--werror).
TEST_CASE("Tags that zint prints are read turned, blurred, skewed, tilted, faint, noisy and shaded") {
  std::vector<Printed> printed;
  const std::array<std::pair<const char*, const char*>, 3> gs1{{{"71", "zint data matrix"}, {"58", "zint qr"}, {"16", "zint code 128"}}};
  const std::array<std::pair<const char*, const char*>, 4> plain{
      {{"71", "zint data matrix"}, {"58", "zint qr"}, {"20", "zint code 128"}, {"8", "zint code 39"}}};
  int n = 0;
  const auto print = [&](const std::string& options, const std::string& data, Printed made) {
    made.picture = scratchPath("zint" + std::to_string(++n) + ".png");
    ask("zint --werror --scale 4 --quietzones " + options + " -o '" + made.picture + "' -d '" + data + "' && echo done", "");
    printed.push_back(std::move(made));
  };
  for (int i = 0; i < 3; ++i) {
    const std::string serial = "KX-" + std::to_string(410 + i);
    for (const auto& [code, kind] : gs1)
      print(std::string("--gs1 -b ") + code, "[01]" + itemOf(i) + "[21]" + serial,
            {{}, kind, "(01)" + itemOf(i) + "(21)" + serial, std::string(code) == "16"});
    for (const auto& [code, kind] : plain) {
      const bool isLinear = std::string(code) == "20" || std::string(code) == "8";
      print(std::string("-b ") + code, serial, {{}, kind, serial, isLinear});
    }
  }
  int all = 0;
  for (const auto& [what, count] : unreadIn(printed)) {
    WARN(what << ": " << count << " not read");
    all += count;
  }
  CHECK(all == 0);
}

TEST_CASE("Labels of our own are read as they are drawn") {
  for (const std::string serial : {"K7QD-00042-T", "ABCD-99999-B"}) {
    const tags::MatrixCode code = tags::matrixOf(serial);
    REQUIRE(code.width > 0);
    constexpr int kModule = 6, kQuiet = 4;
    const int wide = (code.width + 2 * kQuiet) * kModule, high = (code.height + 2 * kQuiet) * kModule;
    Grey grey{wide, high, std::vector<std::uint8_t>(static_cast<std::size_t>(wide) * static_cast<std::size_t>(high), 255)};
    for (int y = 0; y < code.height * kModule; ++y)
      for (int x = 0; x < code.width * kModule; ++x)
        if (code.dark[static_cast<std::size_t>(y / kModule * code.width + x / kModule)])
          grey.pixels[static_cast<std::size_t>((y + kQuiet * kModule) * wide + x + kQuiet * kModule)] = 0;
    const auto found = tags::readTags(grey.view());
    REQUIRE(found.size() == 1);
    CHECK(found.front().text == serial);
  }
  CHECK(tags::matrixOf(std::string(5000, 'x')).width == 0);
}

TEST_CASE("A picture that makes no sense has no tags, and a tag outside the part looked at is not found") {
  CHECK(tags::readTags({}).empty());
  const std::vector<std::uint8_t> white(64, 255);
  CHECK(tags::readTags({white.data(), 8, 8, 4}).empty());
  CHECK(tags::readTags({white.data(), 8, 8, 8}, {0.9, 0.9, 0.0, 0.0}).empty());
  CHECK(tags::readTags({white.data(), 8, 8, 8}).empty());
}

#ifdef SNUGLINE_NODE
namespace {
// Fetched once into the build tree, at the version and the hash that package-lock.json names.
std::vector<std::string> askStrict(const std::string& jobs) {
  const std::string fetched = SNUGLINE_FETCHED;
  ask("cd '" + fetched +
          "' && { [ -d node_modules/bwip-js ] || '" SNUGLINE_NPM "' ci --ignore-scripts --no-audit --no-fund >/dev/null 2>&1; }",
      "");
  return ask("'" SNUGLINE_NODE "' '" + kTags + "strict.js' '" + fetched + "'", jobs);
}
}  // namespace

TEST_CASE("Tags that bwip-js prints are read from spoilt pictures too") {
  std::vector<Printed> printed;
  std::string jobs;
  const auto add = [&](const std::string& code, const std::string& kind, const std::string& data, bool isLinear) {
    const std::string path = scratchPath("bwip" + std::to_string(printed.size()) + ".png");
    jobs += "print " + code + " " + path + " " + data + "\n";
    printed.push_back({path, kind, data, isLinear});
  };
  for (int i = 0; i < 3; ++i) {
    const std::string element = "(01)" + itemOf(i) + "(21)BZ-" + std::to_string(77 + i);
    add("gs1datamatrix", "bwip-js data matrix", element, false);
    add("gs1qrcode", "bwip-js qr", element, false);
    add("gs1-128", "bwip-js code 128", element, true);
    add("datamatrix", "bwip-js data matrix", "BZ-" + std::to_string(i), false);
    add("code39", "bwip-js code 39", "BZ-" + std::to_string(i), true);
  }
  for (const std::string& line : askStrict(jobs)) REQUIRE(line == "yes");
  int all = 0;
  for (const auto& [what, count] : unreadIn(printed)) {
    WARN(what << ": " << count << " not read");
    all += count;
  }
  CHECK(all == 0);
}

// Ours reads a wrong check digit and says so; theirs refuses it. Everything else must be judged alike.
TEST_CASE("Element strings, sound and broken, are judged as the strict parser of bwip-js judges them") {
  std::mt19937 chance(11);
  const auto below = [&](int n) { return std::uniform_int_distribution<int>(0, n - 1)(chance); };
  const std::string letters = "ABCXYZabcxyz0123456789-._/!\"%&'*+,:;<=>?";
  const auto word = [&](int most) {
    std::string made;
    for (int n = 1 + below(most); n > 0; --n) made += letters[static_cast<std::size_t>(below(static_cast<int>(letters.size())))];
    return made;
  };
  std::vector<std::string> cases;
  for (int i = 0; i < 420; ++i) {
    std::string item = itemOf(below(100));
    std::string serial = word(20), made = std::to_string(200000 + below(60) * 100 + (1 + below(12)) * 0 + 101 + below(28) * 0), text;
    made = std::string("2") + static_cast<char>('0' + below(6)) + (below(2) ? "0" : "1") + static_cast<char>('0' + 1 + below(2)) + "1" +
           static_cast<char>('0' + below(10));
    switch (i % 14) {
      case 0:
        text = "(01)" + item + "(21)" + serial;
        break;
      case 1:
        text = "(01)" + item + "(21)" + serial + "(10)" + word(20) + "(11)" + made;
        break;
      case 2:
        item.back() = static_cast<char>('0' + (item.back() - '0' + 1 + below(8)) % 10);
        text = "(01)" + item + "(21)" + serial;
        break;
      case 3:
        text = "(21)" + serial;
        break;
      case 4:
        text = "(01)" + item + "(21)" + std::string(21, 'A');
        break;
      case 5:
        text = "(01)" + item.substr(1) + "(21)" + serial;
        break;
      case 6:
        text = "(01)" + item + "(11)" + made.substr(0, 2) + "13" + made.substr(4);
        break;
      case 7:
        text = "(01)" + item + "(11)" + made.substr(0, 4) + "32";
        break;
      case 8:
        text = "(01)" + item + "(21)A" + (below(2) ? "#" : "~") + serial.substr(0, 10);
        break;
      case 9:
        text = "(8004)" + (below(2) ? "7300011" + word(20) : word(30));
        break;
      case 10:
        text = "(01)" + item + "(11)" + made.substr(0, 4) + "00";
        break;
      case 11:
        text = "(8003)" + itemOf(below(100)) + word(16);
        break;
      case 12:
        text = "(01)" + item + "(91)" + word(90);
        break;
      default:
        text = "(01)" + item + "(11)" + made + "0";
        break;
    }
    cases.push_back(text);
  }
  std::string jobs;
  for (const std::string& text : cases) jobs += "parse " + text + "\n";
  const auto answers = askStrict(jobs);
  REQUIRE(answers.size() == cases.size());
  int sound = 0;
  for (std::size_t i = 0; i < cases.size(); ++i) {
    const auto tag = gear::parseTag(cases[i], kToday);
    const bool isSound = tag && tag->isCheckDigitOk;
    INFO(cases[i] << " -> " << answers[i] << (tag ? "" : " / ours: " + tag.error().detail));
    CHECK(isSound == (answers[i] == "yes"));
    sound += isSound ? 1 : 0;
  }
  CHECK(sound > 100);
  CHECK(sound < 320);
}
#endif
