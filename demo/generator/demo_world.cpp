// SPDX-License-Identifier: Apache-2.0
#include "demo/generator/demo_world.h"

#include <array>
#include <cstdio>
#include <memory>

#include "core/book/book.h"
#include "demo/generator/dice.h"
#include "demo/generator/scribe.h"
#include "demo/generator/story.h"

namespace snugline::demo {

namespace {

constexpr int kAthletesMost = 5000, kSeasonsMost = 20;
constexpr std::int64_t kPhotoBeforeMs = 30LL * 60 * 1000;

class FixedClock : public ports::Clock {
 public:
  explicit FixedClock(Instant now) : m_now(now) {}
  Instant now() override { return m_now; }

 private:
  Instant m_now;
};

// The key and the file's mark come from the seed; where they are kept is the caller's.
class SeededKeys : public ports::Keys {
 public:
  SeededKeys(ports::Keys& keeper, std::uint64_t seed) : m_keeper(keeper), m_dice(seed ^ 0x5EEDC0DEULL) {}
  Result<std::optional<ports::Identity>> find(const std::string& incarnation) override { return m_keeper.find(incarnation); }
  Result<void> keep(const std::string& incarnation, const ports::Identity& identity) override {
    return m_keeper.keep(incarnation, identity);
  }
  Result<ports::Seed> freshSeed() override {
    ports::Seed seed{};
    for (std::uint8_t& byte : seed) byte = static_cast<std::uint8_t>(m_dice.next() & 0xFFU);
    return seed;
  }
  Result<std::string> freshMark() override {
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string mark;
    for (int i = 0; i < 32; ++i) mark += kHex[m_dice.below(kHex.size())];
    return mark;
  }

 private:
  ports::Keys& m_keeper;
  Dice m_dice;
};

// Nothing half done is left behind.
void removeBook(const std::string& path) {
  for (const char* end : {"", "-wal", "-shm", "-journal"}) std::remove((path + end).c_str());
}

// The painted picture with the first helmet that is held for its shell, else for anything, taken half an hour before now.
Result<void> addPhoto(book::Book& book, const Options& options) {
  const season::UnitRecord* held = nullptr;
  for (const auto& [id, unit] : book.views().units) {
    if (unit.holds.empty()) continue;
    const auto rank = [](const season::UnitRecord& each) { return std::pair(each.holds.front().reason != "shell", each.serial); };
    if (held == nullptr || rank(unit) < rank(*held)) held = &unit;
  }
  if (held == nullptr) return {};
  const auto kept = book.photos().put(builtInPhoto());
  if (!kept) return tl::unexpected<Error>(kept.error());
  const season::HoldRecord& hold = held->holds.front();
  book::PhotoTaken taken{kept->hash, kept->bytes, kept->width, kept->height, gear::pointFromCode(hold.reason), hold.fact, {}};
  const Instant now = nowOf(options);
  const auto added =
      book.appendBulk({{book::Draft{held->id, std::move(taken)}, {now.ms - kPhotoBeforeMs, now.offsetMinutes}, hold.stamp.who}});
  if (added) return {};
  (void)book.photos().remove(kept->hash);
  book.photos().removeFolderIfBare();
  return tl::unexpected<Error>(added.error());
}

}  // namespace

Instant nowOf(const Options& options) { return instantAt(options.today, options.minute, options.offsetMinutes); }

Result<std::uint64_t> makeDemo(const std::string& path, const Options& options, ports::Keys& keys) {
  if (options.athletes < 1 || options.athletes > kAthletesMost) {
    return fail(ErrorCode::outOfRange, "athletes", std::to_string(options.athletes) + ", 1, " + std::to_string(kAthletesMost));
  }
  if (options.seasons < 1 || options.seasons > kSeasonsMost) {
    return fail(ErrorCode::outOfRange, "seasons", std::to_string(options.seasons) + ", 1, " + std::to_string(kSeasonsMost));
  }
  if (builtInSheets().size() < 3) return fail(ErrorCode::notFound, "model sheets of the demo");
  SeededKeys seeded(keys, options.seed);
  FixedClock clock(Story::openingOf(options));
  std::uint64_t facts = 0;
  {
    auto book = book::Book::create(path, {"Harrow Creek High", "Herons", std::to_string(civil(dayOf(Story::openingOf(options))).year), {}},
                                   seeded, clock);
    if (!book) return tl::unexpected(book.error());
    Scribe scribe(**book);
    Story story(scribe, options);
    if (story.tell()) {
      auto done = addPhoto(**book, options);
      if (done) done = (*book)->checkpoint();
      const auto info = (*book)->info();
      if (done && info) return info->facts;
      const Error error = done ? info.error() : done.error();
      book->reset();
      removeBook(path);
      return tl::unexpected(error);
    }
    facts = scribe.facts();
    const Error error =
        scribe.isOk() ? Error{ErrorCode::notAllowed, path, "stopped after " + std::to_string(facts) + " facts"} : scribe.error();
    book->reset();
    removeBook(path);
    return tl::unexpected(error);
  }
}

}  // namespace snugline::demo
