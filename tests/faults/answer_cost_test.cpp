// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <iostream>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "fault_vfs.h"

using namespace snugline;
using namespace snugline::test;

namespace {

constexpr int kAnswersLeast = 3000;
constexpr int kWalPagesMost = 6;

struct Meter {
  FaultVfs& vfs;
  book::Book& book;
  int answers = 0, checkpoints = 0, pagesMost = 0, pages = 0;

  book::Appended put(book::Drafts drafts) {
    vfs.startCounting();
    auto added = must(book.append(std::move(drafts)));
    const auto counts = vfs.counts();
    // One number wrong is enough to say so; three thousand assertions would only slow the run.
    if (counts.walSyncs != 1 || counts.fileSyncs != 0 || counts.walPages > kWalPagesMost || counts.filePages != 0) {
      FAIL("answer " << answers << ": " << counts.walSyncs << " + " << counts.fileSyncs << " syncs, " << counts.walPages << " + "
                     << counts.filePages << " pages");
    }
    ++answers;
    pages += counts.walPages;
    pagesMost = std::max(pagesMost, counts.walPages);
    if (book.isCheckpointDue()) {
      must(book.checkpoint());
      ++checkpoints;
    }
    return added;
  }
};

}  // namespace

TEST_CASE("Every answer of a long series costs exactly one sync and at most six pages of the WAL") {
  World world;
  FaultVfs vfs("snugline-count");
  world.create().reset();
  const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, {vfs.name()}));
  Fitting f = pairUp(*book, world.today());
  Meter meter{vfs, *book};
  bool isFirst = true;
  while (meter.answers < kAnswersLeast) {
    const Day today = world.today();
    const auto kind = isFirst ? fit::CheckKind::first : fit::CheckKind::look;
    f.check = meter.put(must(book::beginCheck(book->views(), f.athlete, kind, today))).ids.front();
    const auto give = [&](const fit::Answer& given) { meter.put(must(book::answer(book->views(), f.check, {given}, world.clock.now()))); };
    if (isFirst) give(fit::HairSeen{true});
    for (fit::Mark mark : fit::kMarks) give(seen(mark));
    give(fit::PointsSound{});
    meter.put(must(book::endCheck(book->views(), f.check, world.clock.now())));
    REQUIRE(book->views().athlete(f.athlete)->checks.back().verdict == fit::Verdict::fits);
    world.clock.stepDays(1);
    isFirst = false;
  }
  std::cout << "answers " << meter.answers << ", pages of the WAL: most " << meter.pagesMost << ", mean "
            << static_cast<double>(meter.pages) / meter.answers << "; checkpoints between them " << meter.checkpoints << '\n';
  CHECK(meter.checkpoints >= meter.answers / 300);
  CHECK(must(book->verify()).isOk);
}

TEST_CASE("The first answer of a process pays once for its identity and the WAL, a checkpoint never makes the next one pay") {
  World world;
  FaultVfs vfs("snugline-first");
  world.create().reset();
  const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, {vfs.name()}));
  vfs.startCounting();
  put(*book, {{"x:1", book::NoteAdded{"a"}}});
  CHECK(vfs.counts().syncs() <= 3);
  must(book->checkpoint());
  vfs.startCounting();
  put(*book, {{"x:1", book::NoteAdded{"b"}}});
  CHECK(vfs.counts().syncs() == 1);
}

TEST_CASE("A caller that never asks for a checkpoint gets one before the index in memory grows without end") {
  World world;
  FaultVfs vfs("snugline-forced");
  world.create().reset();
  const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, {vfs.name()}));
  for (std::uint64_t i = 0; i <= book::kFactsBeforeForcedCheckpoint; ++i) put(*book, {{"x:1", book::NoteAdded{"n"}}});
  CHECK_FALSE(book->isCheckpointDue());
  CHECK(must(book->info()).devices.front().sealedTo >= book::kFactsBeforeForcedCheckpoint);
}
