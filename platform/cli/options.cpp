// SPDX-License-Identifier: Apache-2.0
// The one place that knows the options library. CLI11 2.1.2 needs fallthrough() so that --json may stand after a subcommand, and its
// own exit codes (100 and up) are all bad input here.
#include <CLI/CLI.hpp>
#include <memory>

#include "platform/cli/requests.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

constexpr int kMostAthletes = 5000;  // what the demo world is made for (ours)
constexpr int kMostSeasons = 20;     // likewise

struct Requests {
  SizeRequest size;
  GuideRequest guide;
  TagRequest tag;
  AirRequest air;
  LeakRequest leak;
  SheetRequest sheet;
  GaugeRequest gauge;
  DueRequest due;
  ShowRequest show;
  MatchRequest match;
  PlanRequest plan;
  SwapRequest swap;
  NoticeRequest notice;
  SeasonRequest season;
  RosterRequest roster;
  TakeInRequest takeIn;
  BookRequest book;
  DemoRequest demo;
};

const char* const kSheetHelp = "model sheet: its id (one installed, or adopted by --book) or a file";
const char* const kBookHelp = "the Book, a file";
const char* const kAtHelp = "time as YYYY-MM-DDThh:mm:ss with an offset, like -05:00 or Z";

void addFitCommands(CLI::App& app, Requests& r, Parsed& parsed) {
  CLI::App* size = app.add_subcommand("size", "Shell size from tape readings, with its odds");
  size->add_option("--sheet", r.size.sheet, kSheetHelp)->required();
  size->add_option("--tape", r.size.tape, "readings with a unit, parted by commas: 575mm,577mm")
      ->required()
      ->allow_extra_args(false)
      ->take_all();
  size->add_option("--book", r.size.book, kBookHelp);
  size->callback([&r, &parsed] { parsed.run = [request = r.size](Outside& o) { return cli::size(request, o); }; });

  CLI::App* guide = app.add_subcommand("guide", "Run a whole check from recorded answers");
  guide->add_option("--sheet", r.guide.sheet, kSheetHelp)->required();
  guide->add_option("--answers", r.guide.answers, "the answers, a JSON file")->required();
  guide->add_option("--book", r.guide.book, kBookHelp);
  guide->add_flag("--expect-fits", r.guide.expectsFits, "exit 1 unless the verdict is fits");
  guide->callback([&r, &parsed] { parsed.run = [request = r.guide](Outside& o) { return cli::guide(request, o); }; });

  CLI::App* sheet = app.add_subcommand("sheet", "Check a model sheet, or compare two");
  sheet->require_subcommand(1);
  CLI::App* faults = sheet->add_subcommand("check", "Every fault of a model sheet's file at once");
  faults->add_option("FILE", r.sheet.first, "the model sheet, a JSON file")->required();
  faults->callback([&r, &parsed] { parsed.run = [request = r.sheet](Outside& o) { return cli::sheet(request, o); }; });
  CLI::App* compare = sheet->add_subcommand("compare", "What is different between two model sheets");
  compare->add_option("A", r.sheet.first, kSheetHelp)->required();
  compare->add_option("B", r.sheet.second, kSheetHelp)->required();
  compare->add_option("--book", r.sheet.book, kBookHelp);
  compare->callback([&r, &parsed] {
    r.sheet.deed = SheetDeed::compare;
    parsed.run = [request = r.sheet](Outside& o) { return cli::sheet(request, o); };
  });

  CLI::App* tag = app.add_subcommand("tag", "What a scanned or typed tag says");
  tag->add_option("TEXT", r.tag.text, "the text; character 29 raw or written as \\x1d")->required();
  tag->add_option("--at", r.tag.at, std::string(kAtHelp) + "; settles two-digit years, today when left out");
  tag->callback([&r, &parsed] { parsed.run = [request = r.tag](Outside& o) { return cli::tag(request, o); }; });
}

void addAirCommands(CLI::App& app, Requests& r, Parsed& parsed) {
  CLI::App* air = app.add_subcommand("air", "What became of the air in a bladder at another temperature or elevation");
  air->add_option("--set", r.air.set, "gauge pressure when it was set, like 20kPa or 2.9psi")->required();
  air->add_option("--at", r.air.at, "temperature when it was set, like 22C or 71F")->required();
  air->add_option("--now", r.air.now, "temperature now")->required();
  CLI::Option* setElevation =
      air->add_option("--set-elevation", r.air.setElevation, "where it was set, like 180m or 590ft; sea level when left out");
  CLI::Option* nowElevation = air->add_option("--now-elevation", r.air.nowElevation, "where it is now; sea level when left out");
  air->add_option("--set-ambient", r.air.setAmbient, "a barometer's pressure when it was set, absolute, like 98kPa")
      ->excludes(setElevation);
  air->add_option("--now-ambient", r.air.nowAmbient, "a barometer's pressure now, absolute")->excludes(nowElevation);
  air->callback([&r, &parsed] { parsed.run = [request = r.air](Outside& o) { return cli::air(request, o); }; });

  CLI::App* leak = app.add_subcommand("leak", "Whether a bladder loses air, from readings of several days");
  leak->add_option("--readings", r.leak.readings,
                   "a CSV file with columns time, kpa, celsius, elevation_m, and refill where air was put in")
      ->required();
  leak->add_option("--sheet", r.leak.sheet, kSheetHelp);
  leak->add_option("--book", r.leak.book, kBookHelp);
  leak->callback([&r, &parsed] { parsed.run = [request = r.leak](Outside& o) { return cli::leak(request, o); }; });

  CLI::App* gauge = app.add_subcommand("gauge", "What the bytes of a Bluetooth gauge say");
  gauge->add_option("HEX", r.gauge.hex, "the value as hex digits in the order sent, like FD9D1200")->required();
  gauge->add_option("--characteristic", r.gauge.characteristic, "2A6D, 2A6E, 2A19, 2A29, 2A24 or 2A25")->required();
  gauge->callback([&r, &parsed] { parsed.run = [request = r.gauge](Outside& o) { return cli::gauge(request, o); }; });
}

void addSeasonCommands(CLI::App& app, Requests& r, Parsed& parsed) {
  CLI::App* due = app.add_subcommand("due", "Who is due, in what order, and why");
  due->add_option("--book", r.due.book, kBookHelp)->required();
  due->add_option("--at", r.due.at, kAtHelp)->required();
  due->add_option("--temperature", r.due.temperature, "air where the helmets are, like 4C or 39F");
  due->add_option("--elevation", r.due.elevation, "above the sea, like 180m or 590ft");
  due->callback([&r, &parsed] { parsed.run = [request = r.due](Outside& o) { return cli::due(request, o); }; });

  CLI::App* show = app.add_subcommand("show", "The standing of one athlete or one helmet, as every page shows it");
  show->add_option("--book", r.show.book, kBookHelp)->required();
  show->add_option("--at", r.show.at, kAtHelp)->required();
  show->add_option("--jersey", r.show.jersey, "number of the athlete");
  show->add_option("--helmet", r.show.helmet, "serial or tag of the helmet");
  show->callback([&r, &parsed] { parsed.run = [request = r.show](Outside& o) { return cli::show(request, o); }; });

  CLI::App* roster = app.add_subcommand("roster", "Take a roster in from a spreadsheet's file");
  roster->add_option("FILE", r.roster.file, "the roster: comma, semicolon or tab, with a row of headings")->required();
  roster->add_option("--book", r.roster.book, kBookHelp)->required();
  roster->add_option("--at", r.roster.at, std::string(kAtHelp) + "; now when left out");
  roster->callback([&r, &parsed] { parsed.run = [request = r.roster](Outside& o) { return cli::roster(request, o); }; });

  CLI::App* takeIn = app.add_subcommand("take-in", "Take helmets in from a list of scans");
  takeIn->add_option("--book", r.takeIn.book, kBookHelp)->required();
  takeIn->add_option("--tags", r.takeIn.tags, "one scan a line: tag, or tag,sheet,size,label year[,points]")->required();
  takeIn->add_option("--at", r.takeIn.at, std::string(kAtHelp) + "; now when left out");
  takeIn->callback([&r, &parsed] { parsed.run = [request = r.takeIn](Outside& o) { return cli::takeIn(request, o); }; });
}

void addPlanCommands(CLI::App& app, Requests& r, Parsed& parsed) {
  CLI::App* match = app.add_subcommand("match", "Heads to helmets for the whole roster, and why");
  match->add_option("--book", r.match.book, kBookHelp)->required();
  match->add_flag("--keep", r.match.keep, "whoever wears a helmet that can be given keeps it");
  match->add_option("--pin", r.match.pins, "JERSEY=SERIAL, this head gets this helmet; may be said again")
      ->allow_extra_args(false)
      ->take_all();
  match->add_option("--not", r.match.exclusions, "JERSEY=SERIAL, this head does not; may be said again")
      ->allow_extra_args(false)
      ->take_all();
  match->add_option("--through", r.match.through, "certified through this day, YYYY-MM-DD; the season's end when left out");
  match->add_option("--at", r.match.at, std::string(kAtHelp) + "; now when left out");
  match->callback([&r, &parsed] { parsed.run = [request = r.match](Outside& o) { return cli::match(request, o); }; });

  CLI::App* plan = app.add_subcommand("plan", "What lapses, what goes out when, and what to order for the next season");
  plan->add_option("--book", r.plan.book, kBookHelp)->required();
  plan->add_option("--season", r.plan.season, "the season that runs or ran last, a year; orders are for the next")->required();
  plan->add_option("--at", r.plan.at, std::string(kAtHelp) + "; now when left out");
  plan->add_option("--turnaround", r.plan.turnaround, "how long a helmet is away, like 42d or 6w");
  plan->add_option("--cover", r.plan.cover, "chance that a size is enough, like 0.95 or 95%");
  plan->add_option("--returning", r.plan.returning, "chance that a head returns, like 0.85 or 85%");
  plan->add_option("--newcomers", r.plan.newcomers, "how many new heads to expect; as many as leave when left out");
  plan->add_option("--newcomer-age", r.plan.newcomerAge, "their age in years");
  plan->add_option("--last-age", r.plan.lastAge, "nobody returns past this age in years");
  plan->add_option("--sheet", r.plan.sheet, "model for new heads, an id that the Book has adopted; the most frequent when left out");
  plan->callback([&r, &parsed] { parsed.run = [request = r.plan](Outside& o) { return cli::plan(request, o); }; });

  CLI::App* season = app.add_subcommand("season", "The seasons of a Book, and what was missing when each was closed");
  season->add_option("--book", r.season.book, kBookHelp)->required();
  season->callback([&r, &parsed] { parsed.run = [request = r.season](Outside& o) { return cli::season(request, o); }; });
}

void addNoticeDeed(CLI::App& notice, Requests& r, Parsed& parsed, NoticeDeed deed, const char* name, const char* help) {
  CLI::App* sub = notice.add_subcommand(name, help);
  sub->fallthrough();
  sub->add_option("--book", r.notice.book, kBookHelp)->required();
  if (deed == NoticeDeed::progress || deed == NoticeDeed::release)
    sub->add_option("--notice", r.notice.notice, "the notice, as list names it")->required();
  if (deed == NoticeDeed::release) {
    sub->add_option("--helmet", r.notice.helmets, "serial or tag; may be said again")->required()->allow_extra_args(false)->take_all();
    sub->add_option("--reason", r.notice.reason, "why it is let go, in words")->required();
  }
  if (deed == NoticeDeed::issue) {
    sub->add_option("--text", r.notice.text, "the notice in the maker's words")->required();
    sub->add_option("--day", r.notice.day, "day of the notice, YYYY-MM-DD; today when left out");
    sub->add_option("--sheet", r.notice.sheet, "only this model, an id that the Book has adopted");
    sub->add_option("--made", r.notice.made, "only made in these years: 2019, 2019..2021, 2019..");
    sub->add_option("--lot", r.notice.lot, "only of this lot");
    sub->add_option("--serials", r.notice.serials, "only serials from one to another: KX-0410..KX-1200");
    sub->add_flag("--take-unknown", r.notice.takesUnknown, "also helmets whose year made or lot is not known");
    sub->add_flag("--look", r.notice.isLook, "only say what it would hold");
  }
  sub->add_option("--at", r.notice.at, std::string(kAtHelp) + "; now when left out");
  sub->callback([&r, &parsed, deed] {
    r.notice.deed = deed;
    parsed.run = [request = r.notice](Outside& o) { return cli::notice(request, o); };
  });
}

void addHelmetCommands(CLI::App& app, Requests& r, Parsed& parsed) {
  CLI::App* swap = app.add_subcommand("swap", "The spares for one head, best first, and why; or the swap itself");
  swap->add_option("--book", r.swap.book, kBookHelp)->required();
  swap->add_option("--jersey", r.swap.jersey, "the athlete's number")->required();
  swap->add_option("--here", r.swap.here, "the shelf where you stand; its helmets come first among equals");
  CLI::Option* give = swap->add_option("--give", r.swap.give, "give this spare now, by serial or tag; the helmet worn goes on hold");
  swap->add_option("--reason", r.swap.reason, "why the old one is held: a point such as shell, or label, fit, broken, other")->needs(give);
  swap->add_option("--what", r.swap.what, "the same in words")->needs(give);
  swap->add_flag("--old-with-athlete", r.swap.isOldWithAthlete, "the old one is not in our hands yet")->needs(give);
  swap->add_flag("--old-good", r.swap.isOldGood, "nothing is wrong with the old one: it goes back to the shelf")->needs(give);
  swap->add_option("--at", r.swap.at, std::string(kAtHelp) + "; now when left out");
  swap->callback([&r, &parsed] { parsed.run = [request = r.swap](Outside& o) { return cli::swap(request, o); }; });

  CLI::App* notice = app.add_subcommand("notice", "A maker's notice: which helmets it holds, and how far it has come");
  notice->require_subcommand(1);
  addNoticeDeed(*notice, r, parsed, NoticeDeed::list, "list", "Every notice in the Book");
  addNoticeDeed(*notice, r, parsed, NoticeDeed::progress, "progress", "One notice: what is still on hold");
  addNoticeDeed(*notice, r, parsed, NoticeDeed::issue, "issue", "Hold every helmet that a notice means, now and when it comes");
  addNoticeDeed(*notice, r, parsed, NoticeDeed::release, "release", "Let helmets of a notice go, each with a reason");
}

void addBookDeed(CLI::App& book, Requests& r, Parsed& parsed, BookDeed deed, const char* name, const char* help) {
  CLI::App* sub = book.add_subcommand(name, help);
  sub->fallthrough();
  const bool hasBackup = deed == BookDeed::backup || deed == BookDeed::restore;
  if (hasBackup) {
    const char* const option = deed == BookDeed::backup ? "FILE,--out" : "FILE,--from";
    sub->add_option(option, r.book.file, deed == BookDeed::backup ? "the backup to write" : "the backup to read")->required();
    sub->add_option("--book", r.book.book, kBookHelp)->required();
  } else {
    sub->add_option("BOOK,--book", r.book.book, kBookHelp)->required();
  }
  if (deed == BookDeed::create) {
    sub->add_option("--team", r.book.team, "name of the school or club");
    sub->add_option("--mascot", r.book.mascot, "name of the team");
    sub->add_option("--season", r.book.season, "the season, a year");
  }
  sub->callback([&r, &parsed, deed] {
    r.book.deed = deed;
    parsed.run = [request = r.book](Outside& o) { return cli::book(request, o); };
  });
}

void addBookCommands(CLI::App& app, Requests& r, Parsed& parsed) {
  CLI::App* book = app.add_subcommand("book", "The Book itself");
  book->require_subcommand(1);
  addBookDeed(*book, r, parsed, BookDeed::create, "new", "Found a new Book");
  addBookDeed(*book, r, parsed, BookDeed::verify, "verify", "Check every chain and signature; exit 1 when one does not hold");
  addBookDeed(*book, r, parsed, BookDeed::info, "info", "What is in the Book");
  addBookDeed(*book, r, parsed, BookDeed::rebuild, "rebuild", "Make the views anew from the log; exit 1 when the kept ones differed");
  addBookDeed(*book, r, parsed, BookDeed::backup, "backup", "Write every fact to one backup file");
  addBookDeed(*book, r, parsed, BookDeed::restore, "restore", "Make a new Book from a backup");

  CLI::App* demo = app.add_subcommand("demo", "Write a Book of invented people, the same for the same seed");
  demo->add_option("--out", r.demo.out, "the Book to write, a new file")->required();
  demo->add_option("--athletes", r.demo.athletes, "how many athletes")->check(CLI::Range(1, kMostAthletes));
  demo->add_option("--seasons", r.demo.seasons, "how many seasons")->check(CLI::Range(1, kMostSeasons));
  demo->add_option("--seed", r.demo.seed, "any whole number");
  demo->callback([&r, &parsed] { parsed.run = [request = r.demo](Outside& o) { return cli::demo(request, o); }; });

  app.add_subcommand("check", "Test this installation")->callback([&parsed] { parsed.run = [](Outside& o) { return cli::check(o); }; });
}

}  // namespace

Parsed parseOptions(int argc, const char* const* argv) {
  Parsed parsed;
  auto requests = std::make_unique<Requests>();
  CLI::App app{
      "snug: helmets that are certified, sound and snug, from a terminal.\n"
      "Quantities take a unit (575mm, 22.5in, 20kPa, 22C, 180m). Follow the helmet maker's instructions and local rules; they come first.",
      "snug"};
  app.set_version_flag("--version", std::string("snug ") + SNUGLINE_VERSION);
  app.add_flag("--json", parsed.isJson, "answer with one JSON object");
  app.require_subcommand(1);
  app.fallthrough();
  addFitCommands(app, *requests, parsed);
  addAirCommands(app, *requests, parsed);
  addSeasonCommands(app, *requests, parsed);
  addPlanCommands(app, *requests, parsed);
  addHelmetCommands(app, *requests, parsed);
  addBookCommands(app, *requests, parsed);
  for (CLI::App* sub : app.get_subcommands({})) sub->fallthrough();
  try {
    app.parse(argc, argv);
  } catch (const CLI::CallForVersion& version) {
    parsed.out = std::string(version.what()) + '\n';
    parsed.run = nullptr;
  } catch (const CLI::Success&) {  // --help, of the command that was named last when one was
    parsed.out = app.help();
    parsed.run = nullptr;
  } catch (const CLI::ParseError& error) {
    parsed.exitCode = kBadInput;
    parsed.error = oneLine(std::string("snug: ") + error.what() + "; see snug --help");
    parsed.run = nullptr;
  }
  return parsed;
}

}  // namespace snugline::cli
