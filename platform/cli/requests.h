// SPDX-License-Identifier: Apache-2.0
// Purpose: what each command of `snug` is asked, as plain text from the command line, and what it answers. Options are read in
// options.cpp and nowhere else; commands parse quantities and times themselves, so that an error names the option.
// A command prints nothing: it returns a whole Reply or an Error, so that nothing is half done or half said. Thread: one.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/ports/ports.h"
#include "core/quantity/result.h"
#include "core/season/plan.h"

namespace snugline::cli {

inline constexpr int kDone = 0;      // done
inline constexpr int kAnswerNo = 1;  // the answer is no
inline constexpr int kBadInput = 2;  // bad input, one line on standard error

struct Reply {
  int exitCode = kDone;
  std::string json;  // exactly one object, no newline at its end
  std::string text;  // for people; lines end with a newline
};

// The edges that commands use; injected, so that tests can hand in others.
struct Outside {
  ports::Clock& clock;
  ports::Keys& keys;
  std::string programFolder;  // where the executable lies, to find the sheets installed beside it; may be empty
};

struct SizeRequest {
  std::string sheet, book;
  std::vector<std::string> tape;
};
enum class SheetDeed : std::uint8_t { check, compare };
struct SheetRequest {
  SheetDeed deed = SheetDeed::check;
  std::string first, second, book;  // compare: ids or files
};
struct GuideRequest {
  std::string sheet, book, answers;
  bool expectsFits = false;
};
struct TagRequest {
  std::string text, at;
};
struct AirRequest {
  std::string set, at, now;
  std::string setElevation, nowElevation;  // sea level where left out
  std::string setAmbient, nowAmbient;      // a barometer's, absolute, instead of the elevation
};
struct LeakRequest {
  std::string readings, sheet, book;
};
struct GaugeRequest {
  std::string hex, characteristic;
};
struct DueRequest {
  std::string book, at, temperature, elevation;
};
struct ShowRequest {
  std::string book, at, jersey, helmet;  // helmet: serial or tag
};
struct MatchRequest {
  std::string book, at, through;
  std::vector<std::string> pins, exclusions;  // JERSEY=SERIAL
  bool keep = false;
};
struct PlanRequest {
  std::string book, at, turnaround, cover, returning, sheet;
  int season = 0;
  std::optional<double> newcomers;
  int newcomerAge = season::kNewcomerAge;
  int lastAge = season::kLastAge;
};
struct SwapRequest {
  std::string book, jersey, at, here;
  std::string give, reason, what;  // give: serial or tag; empty only looks
  bool isOldWithAthlete = false, isOldGood = false;
};
enum class NoticeDeed : std::uint8_t { list, progress, issue, release };
struct NoticeRequest {
  NoticeDeed deed = NoticeDeed::list;
  std::string book, at;
  std::string notice, reason;        // progress, release
  std::vector<std::string> helmets;  // release: serials or tags
  std::string text, day, sheet, made, lot, serials;
  bool takesUnknown = false, isLook = false;
};
struct SeasonRequest {
  std::string book;
};
struct RosterRequest {
  std::string file, book, at;
};
struct TakeInRequest {
  std::string tags, book, at;
};
enum class BookDeed : std::uint8_t { create, verify, info, rebuild, backup, restore };
struct BookRequest {
  BookDeed deed = BookDeed::info;
  std::string book, file;  // file: the backup written or read
  std::string team, mascot, season;
};
struct DemoRequest {
  std::string out;
  int athletes = 64;
  int seasons = 1;
  std::uint64_t seed = 1;
};

[[nodiscard]] Result<Reply> size(const SizeRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> sheet(const SheetRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> guide(const GuideRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> tag(const TagRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> air(const AirRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> leak(const LeakRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> gauge(const GaugeRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> show(const ShowRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> due(const DueRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> match(const MatchRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> plan(const PlanRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> swap(const SwapRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> notice(const NoticeRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> season(const SeasonRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> roster(const RosterRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> takeIn(const TakeInRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> book(const BookRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> demo(const DemoRequest& request, Outside& outside);
[[nodiscard]] Result<Reply> check(Outside& outside);

// Reads the command line. Either a command to run, or an exit code with what to print.
struct Parsed {
  std::function<Result<Reply>(Outside&)> run;  // empty when there is nothing to run
  bool isJson = false;
  int exitCode = kDone;
  std::string out, error;  // error: one line, no newline
};
[[nodiscard]] Parsed parseOptions(int argc, const char* const* argv);

}  // namespace snugline::cli
