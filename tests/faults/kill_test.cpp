// SPDX-License-Identifier: Apache-2.0
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"

using namespace snugline;
using namespace snugline::test;

namespace {

// Writes note after note and says each number once it is acknowledged; never comes back.
[[noreturn]] void writeUntilKilled(World& world, int out) {
  const auto book = world.tryOpen();
  if (!book) _exit(1);
  for (std::uint32_t i = 1;; ++i) {
    if (!(*book)->append({{"x:1", book::NoteAdded{std::to_string(i)}}, {"x:2", book::NoteAdded{std::to_string(i)}}})) _exit(2);
    if (::write(out, &i, sizeof i) != static_cast<ssize_t>(sizeof i)) _exit(3);
    if (i % 40 == 0 && !(*book)->checkpoint()) _exit(4);
  }
}

}  // namespace

TEST_CASE("Whatever was acknowledged before a kill is there after it, and nothing by halves") {
  World world;
  world.create().reset();
  std::uint32_t before = 0;
  for (const std::uint32_t stop : {1U, 2U, 39U, 40U, 41U, 97U}) {
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
      ::close(ends[0]);
      writeUntilKilled(world, ends[1]);
    }
    ::close(ends[1]);
    std::uint32_t acknowledged = 0, each = 0;
    while (acknowledged < stop && ::read(ends[0], &each, sizeof each) == static_cast<ssize_t>(sizeof each)) acknowledged = each;
    ::kill(child, SIGKILL);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status));
    while (::read(ends[0], &each, sizeof each) == static_cast<ssize_t>(sizeof each)) acknowledged = each;
    ::close(ends[0]);
    CHECK(acknowledged >= stop);

    const auto book = world.open();
    const auto first = must(book->history("x:1")).size(), second = must(book->history("x:2")).size();
    CHECK(first == second);
    CHECK(first >= before + acknowledged);
    CHECK(first <= before + acknowledged + 1);  // one may have been on its way
    CHECK(must(book->verify()).isOk);
    CHECK(must(book->rebuild()).wasEqual);
    before = static_cast<std::uint32_t>(first);
  }
}

TEST_CASE("A fit that was killed in the middle is where it was, and only the last answer can be missing") {
  World world;
  Fitting f;
  {
    const auto book = world.create();
    f = pairUp(*book, world.today());
    beginCheck(*book, f, world.today());
  }
  const pid_t child = ::fork();
  REQUIRE(child >= 0);
  if (child == 0) {
    const auto book = world.tryOpen();
    if (!book) _exit(1);
    const auto give = [&](const fit::Answer& given) {
      const auto drafts = book::answer((*book)->views(), f.check, {given}, world.clock.now());
      if (!drafts || !(*book)->append(*drafts)) _exit(2);
    };
    give(fit::HairSeen{true});
    give(seen(fit::Mark::brow, fit::Finding::over));
    _exit(0);
  }
  int status = 0;
  REQUIRE(::waitpid(child, &status, 0) == child);
  REQUIRE(status == 0);
  const auto book = world.open();
  const auto* check = book->views().openCheck(f.check);
  REQUIRE(check != nullptr);
  CHECK(check->answers.size() == 2);
  CHECK(check->state.isHairWet == true);
  CHECK(check->state.marks[0].finding == fit::Finding::over);
}
