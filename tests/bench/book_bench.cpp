// SPDX-License-Identifier: Apache-2.0
// Purpose: what the Book costs beside the least that could do the job, in the same run on the same disk.
// SNUGLINE_BENCH_FACTS: size of the Book that is rebuilt (100000; the full count is 1000000). SNUGLINE_BENCH_FOLDER: where the files lie
// (the temporary folder; a folder in memory makes syncs free and the answer's figures worthless).
#include <benchmark/benchmark.h>
#include <rapidjson/document.h>
#include <sqlite3.h>
#include <stdlib.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "core/book/book.h"
#include "core/book/chain.h"
#include "core/book/past_lanes.h"
#include "core/ports/memory_ports.h"

namespace {

using namespace snugline;
using Watch = std::chrono::steady_clock;

constexpr int kAnswers = 2000;
constexpr std::size_t kFactsDefault = 100'000;

double secondsSince(Watch::time_point start) { return std::chrono::duration<double>(Watch::now() - start).count(); }
// Beside the watch, because a machine that is busy with other things says little by it.
double cpuSeconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }
double median(std::vector<double> all) {
  std::nth_element(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2), all.end());
  return all[all.size() / 2];
}

class Folder {
 public:
  Folder() {
    const char* const asked = std::getenv("SNUGLINE_BENCH_FOLDER");
    std::string name = (asked != nullptr ? std::string(asked) : std::filesystem::temp_directory_path().string()) + "/snugline-bench-XXXXXX";
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder");
    m_path = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::string at(const std::string& name) const { return m_path + '/' + name; }

 private:
  std::string m_path;
};

template <typename T>
T must(Result<T>&& result) {
  if (!result) throw std::runtime_error(result.error().place + ": " + result.error().detail);
  if constexpr (!std::is_void_v<T>) return std::move(*result);
}

// SQLite as the Book sets it, and nothing else.
class Bare {
 public:
  Bare(const std::string& path, const char* table) {
    if (sqlite3_open(path.c_str(), &m_file) != SQLITE_OK) throw std::runtime_error("bare");
    run("PRAGMA page_size=4096; PRAGMA locking_mode=EXCLUSIVE; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA "
        "wal_autocheckpoint=0; "
        "PRAGMA cache_size=-16384");
    run(table);
  }
  ~Bare() {
    sqlite3_finalize(m_insert);
    sqlite3_close_v2(m_file);
  }
  Bare(const Bare&) = delete;
  Bare& operator=(const Bare&) = delete;
  void run(const char* sql) {
    if (sqlite3_exec(m_file, sql, nullptr, nullptr, nullptr) != SQLITE_OK) throw std::runtime_error(sqlite3_errmsg(m_file));
  }
  void prepare(const char* sql) { sqlite3_prepare_v2(m_file, sql, -1, &m_insert, nullptr); }
  void insert(std::int64_t key, std::string_view a, std::string_view b) {
    sqlite3_bind_int64(m_insert, 1, key);
    sqlite3_bind_blob(m_insert, 2, a.data(), static_cast<int>(a.size()), SQLITE_STATIC);
    sqlite3_bind_blob(m_insert, 3, b.data(), static_cast<int>(b.size()), SQLITE_STATIC);
    step();
  }
  void insert(std::string_view table, std::string_view key, std::string_view value) {
    for (int i = 0; const std::string_view text : {table, key, value}) {
      sqlite3_bind_text(m_insert, ++i, text.data(), static_cast<int>(text.size()), SQLITE_STATIC);
    }
    step();
  }
  void emptyWal() { sqlite3_wal_checkpoint_v2(m_file, nullptr, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr); }

 private:
  void step() {
    if (sqlite3_step(m_insert) != SQLITE_DONE) throw std::runtime_error(sqlite3_errmsg(m_file));
    sqlite3_reset(m_insert);
  }
  sqlite3* m_file = nullptr;
  sqlite3_stmt* m_insert = nullptr;
};

std::string sheetBytes() {
  std::ifstream file(std::string(SNUGLINE_SOURCE_DIR) + "/demo/data/sheets/alder-a1.json", std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

fit::MarkSeen seen(fit::Mark mark) {
  fit::MarkSeen answer;
  answer.mark = mark;
  answer.finding = fit::Finding::snug;
  return answer;
}

// One athlete's whole check, naming its beginning as "#first".
void addCheck(std::vector<book::BulkDraft>& drafts, const std::string& athlete, const std::string& unit, const std::string& sheet,
              Instant at) {
  const std::string check = "#" + std::to_string(drafts.size());
  const auto add = [&](const std::string& about, book::Body body) { drafts.push_back({{about, std::move(body)}, at, ""}); };
  book::CheckBegun begun;
  begun.athlete = athlete;
  begun.unit = unit;
  begun.sheet = sheet;
  begun.kind = fit::CheckKind::look;
  begun.certifiedUntil = dayOf(at).plus(300);
  add("", std::move(begun));
  for (const fit::Mark mark : fit::kMarks) add(check, book::CheckAnswered{{seen(mark)}});
  book::PointsSeen points;
  for (const gear::Point point : gear::kPoints) points.points.push_back({point, {gear::PointState::sound, {}}});
  points.isGroup = true;
  points.check = check;
  add(unit, std::move(points));
  book::CheckEnded ended;
  ended.athlete = athlete;
  ended.unit = ended.outcome.unit = unit;
  ended.outcome.kind = fit::CheckKind::look;
  ended.outcome.verdict = fit::Verdict::fits;
  ended.outcome.strip.fill(fit::Finding::snug);
  ended.outcome.dueFrom = dayOf(at).plus(5);
  ended.outcome.dueBy = dayOf(at).plus(7);
  add(check, std::move(ended));
}

struct World {
  Folder folder;
  ports::MemoryClock clock{instantAt(dayOf(2026, 10, 14), 930, -300)};
  ports::MemoryKeys keys{3};
  std::string path = folder.at("team.book");
  std::unique_ptr<book::Book> book = must(book::Book::create(path, {"Harrow Creek High", "Herons", "2026", ""}, keys, clock));
  std::vector<std::string> athletes, units;
  std::string sheet;

  explicit World(int heads) {
    std::vector<book::BulkDraft> drafts;
    const auto add = [&](const std::string& about, book::Body body) { drafts.push_back({{about, std::move(body)}, clock.now(), ""}); };
    add("", book::SheetAdopted{sheetBytes()});
    sheet = book::touches(must(book->fact(must(book->appendBulk(std::move(drafts))).front()))).front();
    drafts.clear();
    for (int i = 0; i < heads; ++i) {
      add("", book::AthleteAdded{std::to_string(i % 100), "Family" + std::to_string(i), "Given", 2010});
      add("", book::UnitReceived{"HC-" + std::to_string(i), "HC-" + std::to_string(i), sheet, "M", ""});
      add("#" + std::to_string(3 * i + 1), book::UnitPaired{"#" + std::to_string(3 * i)});
    }
    const auto ids = must(book->appendBulk(std::move(drafts)));
    for (std::size_t i = 0; i < ids.size(); i += 3) {
      athletes.push_back(ids[i]);
      units.push_back(ids[i + 1]);
    }
    must(book->checkpoint());
  }
};

// An answer on disk, beside one bare insert of the same bytes at the same settings, turn by turn.
void durableAnswer(benchmark::State& state) {
  for (auto unused : state) {
    (void)unused;
    World world(1);
    Bare bare(world.folder.at("bare.db"), "CREATE TABLE log(n INTEGER PRIMARY KEY, line BLOB, chain BLOB)");
    bare.prepare("INSERT INTO log VALUES(?1, ?2, ?3)");
    const std::string chain(32, 'x');
    std::vector<double> ours, theirs;
    std::string check;
    for (int i = 0; i < kAnswers; ++i) {
      if (i % 9 == 0) {
        std::vector<book::BulkDraft> drafts;
        addCheck(drafts, world.athletes.front(), world.units.front(), world.sheet, world.clock.now());
        drafts.resize(1);
        check = must(world.book->appendBulk(std::move(drafts))).front();
      }
      std::vector<book::Draft> drafts{{check, book::CheckAnswered{{seen(fit::kMarks[static_cast<std::size_t>(i % 9)])}}}};
      auto start = Watch::now();
      const auto added = must(world.book->append(std::move(drafts)));
      ours.push_back(secondsSince(start));
      const std::string line = must(book::encode(must(world.book->fact(added.ids.front()))));
      start = Watch::now();
      bare.insert(i, line, chain);
      theirs.push_back(secondsSince(start));
      if (world.book->isCheckpointDue()) {
        must(world.book->checkpoint());
        bare.emptyWal();
        bare.insert(-i - 1, line, chain);  // so that neither opens its WAL within an answer
      }
    }
    state.SetIterationTime(median(ours));
    state.counters["bare_us"] = median(theirs) * 1e6;
    state.counters["of_bare"] = median(theirs) / median(ours);
  }
}
BENCHMARK(durableAnswer)->UseManualTime()->Iterations(1)->Unit(benchmark::kMicrosecond);

std::vector<std::string> linesOf(const std::string& path) {
  std::vector<std::string> lines;
  sqlite3* file = nullptr;
  sqlite3_stmt* select = nullptr;
  sqlite3_open_v2(path.c_str(), &file, SQLITE_OPEN_READWRITE, nullptr);
  sqlite3_prepare_v2(file, "SELECT line FROM facts ORDER BY seat", -1, &select, nullptr);
  while (sqlite3_step(select) == SQLITE_ROW) {
    lines.emplace_back(static_cast<const char*>(sqlite3_column_blob(select, 0)), static_cast<std::size_t>(sqlite3_column_bytes(select, 0)));
  }
  sqlite3_finalize(select);
  sqlite3_close_v2(file);
  return lines;
}

// The least that views from a log can cost: hash and parse every line, insert the rows that come of it.
double leastCost(const std::string& file, const std::vector<std::string>& lines, const std::string& dump) {
  std::vector<std::string_view> cells;
  for (std::size_t at = 0; at < dump.size();) {
    const std::size_t tab = dump.find('\t', at), second = dump.find('\t', tab + 1), end = dump.find('\n', second + 1);
    for (const auto& [from, to] : {std::pair(at, tab), std::pair(tab + 1, second), std::pair(second + 1, end)}) {
      cells.push_back(std::string_view(dump).substr(from, to - from));
    }
    at = end + 1;
  }
  const auto start = Watch::now();
  book::Chain chain{};
  std::size_t members = 0;
  for (const std::string& line : lines) {
    chain = book::chainStep(chain, line);
    rapidjson::Document document;
    document.Parse<rapidjson::kParseValidateEncodingFlag>(line.data(), line.size());
    members += document.MemberCount();
  }
  benchmark::DoNotOptimize(members);
  Bare bare(file, "CREATE TABLE view(kind TEXT, key TEXT, value TEXT, PRIMARY KEY(kind, key)) WITHOUT ROWID");
  bare.prepare("INSERT INTO view VALUES(?1, ?2, ?3)");
  bare.run("BEGIN");
  for (std::size_t i = 0; i + 2 < cells.size(); i += 3) bare.insert(cells[i], cells[i + 1], cells[i + 2]);
  bare.run("COMMIT");
  bare.emptyWal();
  return secondsSince(start);
}

// Looks, week after week, until the Book holds as many facts as asked; how many there are then.
std::uint64_t fill(World& world) {
  const char* const asked = std::getenv("SNUGLINE_BENCH_FACTS");
  const std::size_t wanted = asked != nullptr ? static_cast<std::size_t>(std::atoll(asked)) : kFactsDefault;
  std::uint64_t facts = must(world.book->info()).facts;
  while (facts < wanted) {
    std::vector<book::BulkDraft> drafts;
    for (std::size_t i = 0; i < world.athletes.size() * 5; ++i) {
      addCheck(drafts, world.athletes[i % world.athletes.size()], world.units[i % world.units.size()], world.sheet, world.clock.now());
      if (i % world.athletes.size() == 0) world.clock.stepDays(7);
    }
    facts += must(world.book->appendBulk(std::move(drafts))).size();
  }
  must(world.book->checkpoint());
  return facts;
}

void rebuild(benchmark::State& state) {
  for (auto unused : state) {
    (void)unused;
    World world(150);
    const auto writing = Watch::now();
    const std::uint64_t before = must(world.book->info()).facts, facts = fill(world);
    const double written = secondsSince(writing);
    const std::string dump = must(world.book->dumpViews());
    const double equal = cpuSeconds();
    const auto answer = must(world.book->rebuild());
    const double whenEqual = cpuSeconds() - equal;
    if (!answer.wasEqual || answer.facts != facts) state.SkipWithError("views differ");

    world.book.reset();
    const auto opening = Watch::now();
    world.book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock));
    const double opened = secondsSince(opening);
    world.book.reset();
    const auto lines = linesOf(world.path);
    {
      sqlite3* file = nullptr;
      sqlite3_open_v2(world.path.c_str(), &file, SQLITE_OPEN_READWRITE, nullptr);
      sqlite3_exec(file, "DELETE FROM view_athletes; DELETE FROM touches", nullptr, nullptr, nullptr);
      sqlite3_close_v2(file);
    }
    world.book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock));
    double cpu = cpuSeconds();
    const auto start = Watch::now();
    if (must(world.book->rebuild()).wasEqual) state.SkipWithError("nothing was missing");
    const double whole = secondsSince(start), wholeCpu = cpuSeconds() - cpu;
    if (must(world.book->dumpViews()) != dump) state.SkipWithError("views differ");
    cpu = cpuSeconds();
    const double least = leastCost(world.folder.at("least.db"), lines, dump), leastCpu = cpuSeconds() - cpu;
    const auto verifying = Watch::now();
    if (!must(world.book->verify()).isOk) state.SkipWithError("does not verify");
    state.counters["verify_s"] = secondsSince(verifying);
    state.SetIterationTime(whole);
    state.counters["facts"] = static_cast<double>(facts);
    state.counters["least_s"] = least;
    state.counters["of_least"] = whole / least;
    state.counters["cpu_s"] = wholeCpu;
    state.counters["least_cpu_s"] = leastCpu;
    state.counters["of_least_cpu"] = wholeCpu / leastCpu;
    state.counters["equal_cpu_s"] = whenEqual;
    state.counters["open_s"] = opened;
    state.counters["bulk_facts_per_s"] = static_cast<double>(facts - before) / written;
  }
}
BENCHMARK(rebuild)->UseManualTime()->Iterations(1)->Unit(benchmark::kSecond);

// The lanes of the last weeks from a long log, in the pieces that the screens take: an answer may have to wait for one piece. The limit is
// ours: what people take for at once (0.1 s: R. B. Miller, Response time in man-computer conversational transactions, 1968).
constexpr double kAtOnceMs = 100;
void pastLanes(benchmark::State& state) {
  for (auto unused : state) {
    (void)unused;
    World world(150);
    fill(world);
    std::vector<Instant> times;
    for (int week = season::kLaneWeeks; week >= 0; --week) {
      const Instant now = world.clock.now();
      times.push_back({now.ms - week * 7LL * 24 * 3600 * 1000, now.offsetMinutes});
    }
    book::PastLanes lanes(times);
    const auto start = Watch::now();
    double longest = 0;
    bool isDone = false;
    while (!isDone) {
      const auto piece = Watch::now();
      isDone = must(lanes.step(*world.book, 4096));
      longest = std::max(longest, secondsSince(piece) * 1e3);
    }
    state.SetIterationTime(secondsSince(start));
    if (lanes.counts().back() != season::lanesAt(world.book->views(), times.back())) state.SkipWithError("not what the board says");
    state.counters["piece_ms"] = longest;
    state.counters["of_limit"] = longest / kAtOnceMs;
  }
}
BENCHMARK(pastLanes)->UseManualTime()->Iterations(1)->Unit(benchmark::kSecond);

}  // namespace
