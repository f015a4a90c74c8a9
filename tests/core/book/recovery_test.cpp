// SPDX-License-Identifier: Apache-2.0
// The key on the recovery sheet: what it looks like, which mistypings are named, and that it opens once.
#include SNUGLINE_CATCH_HEADER
#include <algorithm>
#include <set>

#include "book_world.h"
#include "core/book/code_gate.h"
#include "core/book/people.h"
#include "core/book/recovery.h"
#include "core/book/rights.h"

using namespace snugline;
using namespace snugline::book;
using namespace snugline::test;

namespace {

constexpr CodeCost kCheap{1, 8};

std::string freshKey(std::uint64_t seed) {
  ports::MemoryKeys keys{seed};
  return must(makeRecoveryKey(keys));
}
CodeHash hashedKey(const std::string& key) { return must(hashRecoveryKey(key, CodeSalt{4, 5}, kCheap)); }

}  // namespace

TEST_CASE("A recovery key is six groups of five digits, other for other chance, and reads back as printed") {
  std::set<std::string> keys;
  std::array<int, 10> counts{};
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    const std::string key = freshKey(seed);
    REQUIRE(key.size() == kRecoveryDigits);
    CHECK(must(readRecoveryKey(grouped(key))) == key);
    for (std::size_t i = 0; i < key.size(); ++i) {
      if (i % kRecoveryGroupDigits != kRecoveryGroupDigits - 1) ++counts[static_cast<std::size_t>(key[i] - '0')];
    }
    keys.insert(key);
  }
  CHECK(keys.size() == 400);
  CHECK(grouped(std::string(30, '0')) == "00000 00000 00000 00000 00000 00000");
  // 9,600 digits of chance: each near 960. Chi square with 9 degrees of freedom, 99.99 % point 33.7 (common statistical tables).
  double chi = 0;
  for (const int count : counts) chi += (count - 960.0) * (count - 960.0) / 960.0;
  CHECK(chi < 33.7);
}

TEST_CASE("Every single mistyped digit and every exchange of neighbours or of groups is named with its group") {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const std::string key = freshKey(seed);
    for (std::size_t i = 0; i < key.size(); ++i) {
      const std::string group = "group " + std::to_string(i / kRecoveryGroupDigits + 1);
      for (char digit = '0'; digit <= '9'; ++digit) {
        std::string typed = key;
        typed[i] = digit;
        if (digit == key[i]) continue;
        REQUIRE_FALSE(readRecoveryKey(typed));
        CHECK(readRecoveryKey(typed).error().detail == group);
      }
      std::string typed = key;
      if (i % kRecoveryGroupDigits == kRecoveryGroupDigits - 1 || key[i] == key[i + 1]) continue;
      std::swap(typed[i], typed[i + 1]);
      REQUIRE_FALSE(readRecoveryKey(typed));
      CHECK(readRecoveryKey(typed).error().detail == group);
    }
    for (std::size_t a = 0; a < kRecoveryGroups; ++a) {
      for (std::size_t b = a + 1; b < kRecoveryGroups; ++b) {
        std::string typed = key;
        std::swap_ranges(typed.begin() + static_cast<long>(a * 5), typed.begin() + static_cast<long>(a * 5 + 5),
                         typed.begin() + static_cast<long>(b * 5));
        CHECK_FALSE(readRecoveryKey(typed));
      }
    }
  }
}

TEST_CASE("What is no key is refused for its length, blanks and hyphens let be") {
  const std::string key = freshKey(3);
  for (const std::string& bad :
       {std::string(), key.substr(1), key + "1", "x" + key.substr(1), std::string(30, 'a'), std::string(10000, '1')}) {
    REQUIRE_FALSE(readRecoveryKey(bad));
    CHECK(readRecoveryKey(bad).error().detail == "length");
  }
  std::string hyphened = grouped(key);
  std::replace(hyphened.begin(), hyphened.end(), ' ', '-');
  CHECK(must(readRecoveryKey(hyphened)) == key);
}

TEST_CASE("The key shares its misses and waits with the codes, and a killed app gives no free try") {
  ports::MemoryAttempts attempts;
  const std::string key = freshKey(5), other = freshKey(6);
  const CodeHash kept = hashedKey(key);
  const CodeHash code = must(hashCode("480219", CodeSalt{1}, kCheap));
  {
    CodeGate gate(attempts);
    CHECK(*gate.tryCode(code, "111119") == CodeGate::Outcome::wrong);
    CHECK(*gate.tryRecovery(kept, other) == CodeGate::Outcome::wrong);
  }
  CodeGate gate(attempts);  // started anew
  CHECK(gate.misses() == 2);
  CHECK(*gate.tryRecovery(kept, other) == CodeGate::Outcome::wrong);
  CHECK(*gate.tryRecovery(kept, key) == CodeGate::Outcome::waiting);
  gate.passed(kWaitMostMs);
  CHECK(*gate.tryRecovery(kept, key) == CodeGate::Outcome::right);
  CHECK(gate.misses() == 0);
}

TEST_CASE("Using the key gives a trainer a code and puts another key in its place, in one transaction") {
  World world;
  const auto book = world.create();
  const std::string trainer = put(*book, must(addPerson(book->views(), {"Maren Tollgate", "MT", "admin"}))).ids.front();
  const std::string staff = put(*book, must(addPerson(book->views(), {"Silvio Kestrelby", "SK", "staff"}))).ids.front();
  const CodeHash first = hashedKey(freshKey(5)), next = hashedKey(freshKey(6)), code = must(hashCode("480219", CodeSalt{1}, kCheap));
  put(*book, must(setRecovery(book->views(), first)));
  REQUIRE(book->views().team->recovery);
  CHECK(book->views().team->recovery->key == first);
  CHECK(recover(book->views(), staff, code, next).error().detail == rule::kNeedsAdmin);
  CHECK(recover(book->views(), "nobody:1", code, next).error().code == ErrorCode::notFound);
  book->setPerson(trainer);
  put(*book, must(recover(book->views(), trainer, code, next)));
  CHECK(book->views().team->recovery->key == next);  // the old sheet opens nothing any more
  CHECK_FALSE(*isRecoveryKey(book->views().team->recovery->key, freshKey(5)));
  CHECK(*isRecoveryKey(book->views().team->recovery->key, freshKey(6)));
  CHECK(book->views().people.at(trainer).code == code);
  CHECK(book->views().team->recovery->stamp.who == trainer);
  const auto dump = must(book->dumpViews());
  CHECK(must(book->rebuild()).wasEqual);
  CHECK(must(book->dumpViews()) == dump);
}

TEST_CASE("The file holds no digit of the key in a row, only its hash") {
  World world;
  const std::string key = freshKey(8);
  {
    const auto book = world.create();
    put(*book, must(setRecovery(book->views(), hashedKey(key))));
  }
  std::string bytes = bytesOfFile(world.path);
  CHECK(bytes.find(key) == std::string::npos);
  CHECK(bytes.find(grouped(key)) == std::string::npos);
  CHECK(bytes.find(key.substr(0, 10)) == std::string::npos);
}
