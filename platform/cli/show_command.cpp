// SPDX-License-Identifier: Apache-2.0
// `snug show`: the standing of one helmet or one athlete, from the same functions as every page.
#include "core/season/standing.h"
#include "platform/cli/files.h"
#include "platform/cli/season_words.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

using season::Views;

std::string_view codeOf(gear::PointState state) {
  switch (state) {
    case gear::PointState::unseen:
      return "unseen";
    case gear::PointState::sound:
      return "sound";
    case gear::PointState::fault:
      return "fault";
  }
  return {};
}

// What the athlete's page offers first.
std::string_view codeOf(season::RowAction action) {
  switch (action) {
    case season::RowAction::none:
      return {};
    case season::RowAction::firstFit:
      return "first";
    case season::RowAction::refit:
      return "refit";
    case season::RowAction::look:
      return "look";
    case season::RowAction::resume:
      return "resume";
    case season::RowAction::chooseHelmet:
      return "swap-helmet";
    case season::RowAction::athlete:
      return "athlete";
    case season::RowAction::close:
      return "close";
  }
  return {};
}

std::string why(const season::WhyNot& reason) {
  std::string line = words(std::optional(reason.bar));
  if (reason.point) line += ", " + words(*reason.point);
  if (reason.bar == season::Bar::held && !reason.point) line += ", " + reason.reason;
  if (reason.day) line += ", last good day " + print(*reason.day);
  return reason.text.empty() ? line : line + ": " + reason.text;
}

// What is said of the one asked for, whichever it is.
struct Shown {
  std::string title, standing, where;
  std::vector<std::string> reasons, acts, sentences;
  std::vector<const season::AthleteRecord*> with;
  std::array<fit::Finding, fit::kMarkCount> strip{};
  std::array<gear::PointState, gear::kPointCount> points{};
  std::string jersey, helmet, helmetStanding;
  std::vector<std::string> kept;  // serials that the athlete still has and is not paired with
};

void showHelmet(const Views& views, const season::UnitRecord& unit, Instant now, Shown& shown) {
  const season::UnitStanding at = season::standingOf(views, unit, dayOf(now));
  shown.standing = code(at.state);
  shown.where = code(at.where);
  shown.with = at.with;
  shown.points = at.points;
  shown.helmet = unit.serial;
  shown.helmetStanding = code(at.state);
  for (const season::WhyNot& reason : at.reasons) {
    shown.reasons.emplace_back(code(reason.bar));
    shown.sentences.push_back(why(reason));
  }
  for (const season::UnitAct act : season::actsOf(views, at, dayOf(now))) shown.acts.emplace_back(code(act));
  const season::AthleteRecord* wearer = unit.athletes.empty() ? nullptr : views.athlete(unit.athletes.back());
  if (wearer != nullptr) shown.strip = season::rowOf(views, *wearer, {now}, {}).strip;
}

void showAthlete(const Views& views, const season::AthleteRecord& athlete, Instant now, Shown& shown) {
  const season::DueRow row = season::rowOf(views, athlete, {now}, {});
  const season::UnitRecord* worn = athlete.units.empty() ? nullptr : views.unit(athlete.units.back());
  shown.where = "none";
  if (worn != nullptr) showHelmet(views, *worn, now, shown);
  shown.standing = code(row.lane);
  shown.reasons.clear();
  shown.sentences.clear();
  shown.acts.clear();
  for (const season::DueReason& reason : row.reasons) {
    shown.reasons.emplace_back(code(reason.kind));
    shown.sentences.push_back(sentence(reason));
  }
  if (const std::string_view first = codeOf(row.action); !first.empty()) shown.acts.emplace_back(first);
  if (row.action != season::RowAction::chooseHelmet) shown.acts.emplace_back("swap-helmet");
  shown.strip = row.strip;
  for (const season::UnitRecord* unit : season::keptBy(views, athlete.id)) shown.kept.push_back(unit->serial);
}

std::string json(const Shown& shown) {
  json::Writer out;
  out.beginObject().key("standing").string(shown.standing);
  writeStrings(out, "reasons", shown.reasons);
  out.key("where").string(shown.where).key("with").beginArray();
  for (const season::AthleteRecord* athlete : shown.with)
    out.beginObject().key("jersey").string(athlete->jersey).key("athlete").string(athleteName(*athlete)).endObject();
  out.endArray();
  writeStrings(out, "acts", shown.acts);
  out.key("strip").beginArray();
  for (const fit::Finding finding : shown.strip) out.string(code(finding));
  out.endArray().key("points").beginObject();
  for (const gear::Point point : gear::kPoints) out.key(code(point)).string(codeOf(shown.points[static_cast<std::size_t>(point)]));
  out.endObject().key("jersey").string(shown.jersey).key("helmet").string(shown.helmet);
  out.key("helmet_standing").string(shown.helmetStanding);
  writeStrings(out, "kept", shown.kept);
  writeStrings(out, "why", shown.sentences);
  out.endObject();
  return out.take();
}

std::string text(const Shown& shown) {
  std::string lines = shown.title + ": " + shown.standing + ", " + shown.where;
  for (const season::AthleteRecord* athlete : shown.with) lines += ' ' + athlete->jersey + ' ' + athleteName(*athlete);
  lines += '\n';
  for (const std::string& line : shown.sentences) lines += "  " + line + '\n';
  for (const std::string& serial : shown.kept) lines += "  still has " + serial + '\n';
  return lines;
}

}  // namespace

Result<Reply> show(const ShowRequest& request, Outside& outside) {
  const Result<Instant> now = parseInstant(request.at, "--at");
  if (!now) return tl::unexpected<Error>(now.error());
  if (request.jersey.empty() == request.helmet.empty()) return fail(ErrorCode::inconsistent, "--jersey", "one of --jersey and --helmet");
  const auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  const Views& views = (*opened)->views();
  Shown shown;
  if (request.helmet.empty()) {
    const season::AthleteRecord* athlete = views.athleteByJersey(request.jersey);
    if (athlete == nullptr) return fail(ErrorCode::notFound, "--jersey " + request.jersey);
    shown.title = athlete->jersey + ' ' + athleteName(*athlete);
    shown.jersey = athlete->jersey;
    showAthlete(views, *athlete, *now, shown);
  } else {
    const auto named = helmetsNamed(views, request.helmet);
    if (named.empty()) return fail(ErrorCode::notFound, "--helmet " + request.helmet);
    if (named.size() > 1)
      return fail(ErrorCode::inconsistent, "--helmet " + request.helmet, "several helmets have this serial; name the tag");
    shown.title = named.front()->serial;
    showHelmet(views, *named.front(), *now, shown);
  }
  return Reply{kDone, json(shown), text(shown)};
}

}  // namespace snugline::cli
