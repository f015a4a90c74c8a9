// SPDX-License-Identifier: Apache-2.0
#include SNUGLINE_CATCH_HEADER

#include <string>

#include "core/book/code.h"
#include "core/book/code_gate.h"
#include "core/ports/memory_ports.h"

using namespace snugline;
using namespace snugline::book;

namespace {

constexpr CodeCost kCheap{1, 8};  // the least that Argon2id takes: what is tested is not its cost

CodeHash hashOf(const std::string& digits) {
  const auto made = hashCode(digits, CodeSalt{1, 2, 3}, kCheap);
  REQUIRE(made);
  return *made;
}

std::string hex(const CodeHash& hash) {
  constexpr const char* kDigits = "0123456789abcdef";
  std::string text;
  for (const std::uint8_t byte : hash.hash) {
    text += kDigits[byte >> 4];
    text += kDigits[byte & 15];
  }
  return text;
}

}  // namespace

TEST_CASE("A code is taken with six to twelve digits that are no run") {
  CHECK(checkCode("480219"));
  CHECK(checkCode("480219480219"));
  for (const char* bad : {"", "4802", "48021", "4802194802194", "48021a", "48 219", "-80219", "４８０２１９"}) {
    INFO(bad);
    REQUIRE_FALSE(checkCode(bad));
    CHECK(checkCode(bad).error().code == ErrorCode::outOfRange);
  }
  for (const char* bad : {"000000", "777777", "123456", "654321", "890123", "024680", "111111111111"}) {
    INFO(bad);
    REQUIRE_FALSE(checkCode(bad));
    CHECK(checkCode(bad).error().detail == rule::kCodeGuessable);
  }
}

TEST_CASE("A code is known again by its hash, and only that code") {
  const CodeHash kept = hashOf("480219");
  CHECK(*isCode(kept, "480219"));
  for (const char* other : {"480218", "4802190", "048021", "", "480219 ", "999999999999999999999"}) {
    INFO(other);
    CHECK_FALSE(*isCode(kept, other));
  }
  CHECK_FALSE(hashOf("480219").hash == hashCode("480219", CodeSalt{9}, kCheap)->hash);  // the salt counts
}

// Made with the argon2 program as Debian 12 packages it (0~20171227): printf 480219 | argon2 snugline-salt-16 -id -t 2 -k 65536 -p 1 -l 32
// -r
TEST_CASE("The hash is Argon2id as the reference program makes it") {
  CodeSalt salt{};
  const std::string text = "snugline-salt-16";
  std::copy(text.begin(), text.end(), salt.begin());
  const auto made = hashCode("480219", salt);
  REQUIRE(made);
  CHECK(hex(*made) == "c3e35c101dd02b35b04394a363324db4139a565e8fc338078c3f9a690ae7572a");
}

TEST_CASE("A hash that would cost too much to check is refused and not tried") {
  CodeHash kept = hashOf("480219");
  kept.cost.memoryKib = kCodeCostMost.memoryKib + 1;
  REQUIRE_FALSE(isCode(kept, "480219"));
  kept = hashOf("480219");
  kept.cost.passes = kCodeCostMost.passes + 1;
  REQUIRE_FALSE(isCode(kept, "480219"));
}

TEST_CASE("The wait grows with every miss after the third and never shrinks") {
  CHECK(waitAfter(0) == 0);
  CHECK(waitAfter(2) == 0);
  CHECK(waitAfter(3) > 0);
  for (std::uint32_t n = 1; n < 40; ++n) CHECK(waitAfter(n) >= waitAfter(n - 1));
  CHECK(waitAfter(4'000'000'000U) == kWaitMostMs);
}

TEST_CASE("A right code opens and strikes out the misses before it") {
  ports::MemoryAttempts attempts;
  CodeGate gate(attempts);
  const CodeHash kept = hashOf("480219");
  CHECK(*gate.tryCode(kept, "111119") == CodeGate::Outcome::wrong);
  CHECK(*gate.tryCode(kept, "111118") == CodeGate::Outcome::wrong);
  CHECK(attempts.load()->misses == 2);
  CHECK(*gate.tryCode(kept, "480219") == CodeGate::Outcome::right);
  CHECK(gate.misses() == 0);
  CHECK(attempts.load()->misses == 0);
}

TEST_CASE("Whose code it was is said where several hold the tablet") {
  ports::MemoryAttempts attempts;
  CodeGate gate(attempts);
  const std::vector<CodeHash> people{hashOf("480219"), hashOf("730145"), hashOf("902817")};
  std::size_t which = 9;
  CHECK(*gate.tryCode(people, "902817", which) == CodeGate::Outcome::right);
  CHECK(which == 2);
}

TEST_CASE("While a wait runs not even the right code opens") {
  ports::MemoryAttempts attempts;
  CodeGate gate(attempts);
  const CodeHash kept = hashOf("480219");
  for (int i = 0; i < 3; ++i) CHECK(*gate.tryCode(kept, "111119") == CodeGate::Outcome::wrong);
  REQUIRE(gate.waitMs() == waitAfter(3));
  CHECK(*gate.tryCode(kept, "480219") == CodeGate::Outcome::waiting);
  gate.passed(waitAfter(3) - 1);
  CHECK(*gate.tryCode(kept, "480219") == CodeGate::Outcome::waiting);
  gate.passed(1);
  CHECK(*gate.tryCode(kept, "480219") == CodeGate::Outcome::right);
}

TEST_CASE("A restart ends no wait and gives no free try") {
  ports::MemoryAttempts attempts;
  const CodeHash kept = hashOf("480219");
  for (int i = 0; i < 3; ++i) {
    CodeGate gate(attempts);  // killed after each try
    CHECK(*gate.tryCode(kept, "111119") == CodeGate::Outcome::wrong);
  }
  CodeGate gate(attempts);
  CHECK(gate.waitMs() == waitAfter(3));
  gate.passed(kWaitKeptEachMs);
  gate.passed(1);  // not worth a write
  CodeGate again(attempts);
  CHECK(again.waitMs() == waitAfter(3) - kWaitKeptEachMs);
  again.passed(-1'000'000);  // a clock set back is not time that went by
  CHECK(again.waitMs() == waitAfter(3) - kWaitKeptEachMs);
}

TEST_CASE("A gate whose misses cannot be kept stays shut") {
  ports::FailingAttempts attempts;
  CodeGate gate(attempts);
  CHECK(gate.waitMs() == kWaitMostMs);
  gate.passed(kWaitMostMs);
  REQUIRE_FALSE(gate.tryCode(hashOf("480219"), "480219"));
}

TEST_CASE("A wild number on the disk is no longer a wait than the longest") {
  ports::MemoryAttempts attempts;
  REQUIRE(attempts.keep({4'000'000'000U, 9'000'000'000'000}));
  CodeGate gate(attempts);
  CHECK(gate.waitMs() == kWaitMostMs);
  gate.passed(kWaitMostMs);
  CHECK(*gate.tryCode(hashOf("480219"), "480219") == CodeGate::Outcome::right);
}
