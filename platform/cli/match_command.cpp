// SPDX-License-Identifier: Apache-2.0
// `snug match`: heads to helmets for the roster, each pair with the terms of its cost.
#include <algorithm>

#include "core/season/board.h"
#include "platform/cli/files.h"
#include "platform/cli/season_words.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

using season::Views;

constexpr const char* kOffChart = "none";  // as `snug size` calls it

// "07=A1-M-00012": a jersey, and a helmet by its serial or tag.
Result<std::pair<std::string, std::string>> pairOf(const Views& views, const std::string& text, const char* option) {
  const std::size_t split = text.find('=');
  if (split == std::string::npos || split == 0 || split + 1 == text.size())
    return fail(ErrorCode::wrongType, option, "JERSEY=SERIAL, like 07=A1-M-00012");
  const season::AthleteRecord* athlete = views.athleteByJersey(text.substr(0, split));
  if (athlete == nullptr) return fail(ErrorCode::notFound, std::string(option) + ": jersey " + text.substr(0, split));
  const std::string serial = text.substr(split + 1);
  const season::UnitRecord* found = views.unitByTag(serial);
  for (const auto& [id, unit] : views.units)
    if (unit.serial == serial && (found == nullptr || unit.id < found->id)) found = &unit;
  if (found == nullptr) return fail(ErrorCode::notFound, std::string(option) + ": helmet " + serial);
  return std::pair(athlete->id, found->id);
}

Result<season::MatchWishes> wishesOf(const Views& views, const MatchRequest& request) {
  season::MatchWishes wishes;
  wishes.keepsWorn = request.keep;
  if (!request.through.empty()) {
    const Result<Day> through = parseDay(request.through, "--through");
    if (!through) return tl::unexpected<Error>(through.error());
    wishes.through = *through;
  }
  for (const std::string& pin : request.pins) {
    const auto pair = pairOf(views, pin, "--pin");
    if (!pair) return tl::unexpected<Error>(pair.error());
    wishes.pins.push_back(*pair);
  }
  for (const std::string& exclusion : request.exclusions) {
    const auto pair = pairOf(views, exclusion, "--not");
    if (!pair) return tl::unexpected<Error>(pair.error());
    wishes.exclusions.push_back(*pair);
  }
  return wishes;
}

void writeHead(json::Writer& out, const Views& views, const std::string& athlete) {
  const season::AthleteRecord& record = *views.athlete(athlete);
  out.key("athlete").string(athleteName(record)).key("jersey").string(record.jersey).key("athlete_id").string(athlete);
}

void writePair(json::Writer& out, const Views& views, const season::MatchPair& pair) {
  out.beginObject();
  writeHead(out, views, pair.athlete);
  out.key("helmet").string(helmetName(views, pair.unit)).key("helmet_id").string(pair.unit);
  out.key("sheet").string(sheetName(views, pair.sheet)).key("size").string(pair.size).key("odds");
  if (pair.odds) {
    out.real(*pair.odds, 9);
  } else {
    out.null();
  }
  out.key("cost").real(pair.cost, 9).key("terms").beginArray();
  for (const season::PairTerm& term : pair.terms)
    out.beginObject().key("term").string(code(term.term)).key("count").integer(term.count).key("cost").real(term.cost, 9).endObject();
  out.endArray().key("tape").string(code(pair.tape)).key("try_on").boolean(pair.isTryOn);
  out.key("last_helmet").boolean(pair.isLastHelmet).key("pinned").boolean(pair.isPinned);
  out.key("why").string(sentence(pair)).endObject();
}

// By size alone, as people count; the sheets apart stand beside it.
void writeCounts(json::Writer& out, const char* key, const Views& views, const std::vector<season::SizeCount>& counts) {
  std::vector<std::pair<std::string, int>> bySize;
  for (const season::SizeCount& count : counts) {
    const std::string size = count.size.empty() ? kOffChart : count.size;
    const auto it = std::find_if(bySize.begin(), bySize.end(), [&](const auto& entry) { return entry.first == size; });
    if (it == bySize.end()) {
      bySize.emplace_back(size, count.count);
    } else {
      it->second += count.count;
    }
  }
  out.key(key).beginObject();
  for (const auto& [size, n] : bySize) out.key(size).integer(n);
  out.endObject().key(std::string(key) + "_by_sheet").beginArray();
  for (const season::SizeCount& count : counts)
    out.beginObject()
        .key("sheet")
        .string(count.size.empty() ? std::string() : sheetName(views, count.sheet))
        .key("size")
        .string(count.size.empty() ? kOffChart : count.size)
        .key("count")
        .integer(count.count)
        .endObject();
  out.endArray();
}

std::string json(const Views& views, const season::MatchAnswer& answer) {
  json::Writer out;
  out.beginObject().key("pairs").beginArray();
  for (const season::MatchPair& pair : answer.pairs) writePair(out, views, pair);
  out.endArray().key("unmatched").beginArray();
  for (const season::UnmatchedHead& head : answer.unmatched) {
    out.beginObject();
    writeHead(out, views, head.athlete);
    out.key("size").string(head.size.empty() ? kOffChart : head.size);
    out.key("sheet").string(head.size.empty() ? std::string() : sheetName(views, head.sheet));
    out.key("code").string(code(head.why)).key("tape").string(code(head.tape)).key("why").string(sentence(head)).endObject();
  }
  out.endArray().key("cost").real(answer.cost, 9);
  writeCounts(out, "short", views, answer.shortBySize);
  writeCounts(out, "spare", views, answer.spareBySize);
  out.key("spare_helmets").beginArray();
  for (const std::string& unit : answer.spares) out.string(helmetName(views, unit));
  out.endArray().key("left_out").beginArray();
  for (const season::BarredUnit& unit : answer.barred)
    out.beginObject()
        .key("helmet")
        .string(helmetName(views, unit.unit))
        .key("code")
        .string(code(unit.bar))
        .key("why")
        .string(words(unit.bar))
        .endObject();
  out.endArray().key("refused_pins").beginArray();
  for (const season::RefusedPin& pin : answer.refusedPins) {
    out.beginObject();
    writeHead(out, views, pin.athlete);
    out.key("helmet").string(helmetName(views, pin.unit)).key("code").string(code(pin.bar)).key("why").string(words(pin.bar)).endObject();
  }
  out.endArray().key("through").string(print(answer.through)).key("season_end_known").boolean(answer.isSeasonEndKnown);
  out.endObject();
  return out.take();
}

std::string jerseyCell(const std::string& jersey) { return jersey + std::string(4 - std::min<std::size_t>(jersey.size(), 3), ' '); }

std::string countsText(const Views& views, const char* heading, const std::vector<season::SizeCount>& counts) {
  if (counts.empty()) return {};
  std::string text = heading;
  const char* join = " ";
  for (const season::SizeCount& count : counts) {
    text += join + std::to_string(count.count) + ' ' +
            (count.size.empty() ? std::string("off the charts") : count.size + " of " + sheetName(views, count.sheet));
    join = ", ";
  }
  return text + '\n';
}

std::string text(const Views& views, const season::MatchAnswer& answer) {
  std::string lines =
      "Certified through " + print(answer.through) + (answer.isSeasonEndKnown ? "" : " (today; no season end lies ahead)") + ".\n";
  for (const season::MatchPair& pair : answer.pairs) {
    const season::AthleteRecord& athlete = *views.athlete(pair.athlete);
    lines += "  " + jerseyCell(athlete.jersey) + athleteName(athlete) + "  " + helmetName(views, pair.unit) + "  " + pair.size + " of " +
             sheetName(views, pair.sheet) + "\n      " + sentence(pair) + '\n';
  }
  if (!answer.unmatched.empty()) lines += "Without a helmet:\n";
  for (const season::UnmatchedHead& head : answer.unmatched) {
    const season::AthleteRecord& athlete = *views.athlete(head.athlete);
    lines += "  " + jerseyCell(athlete.jersey) + athleteName(athlete) + "\n      " + sentence(head) + '\n';
  }
  for (const season::RefusedPin& pin : answer.refusedPins)
    lines += "Not pinned: " + helmetName(views, pin.unit) + ", " + words(pin.bar) + '\n';
  lines += std::to_string(answer.pairs.size()) + " of " + std::to_string(answer.pairs.size() + answer.unmatched.size()) +
           " heads have a helmet; cost " + fixedText(answer.cost, 3) + ".\n";
  lines += countsText(views, "Short:", answer.shortBySize) + countsText(views, "Spare:", answer.spareBySize);
  if (!answer.barred.empty()) lines += "Left out: " + counted(static_cast<long long>(answer.barred.size()), "helmet") + ".\n";
  return lines + kCaution + '\n';
}

}  // namespace

Result<Reply> match(const MatchRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  const Views& views = (*opened)->views();
  const Result<season::MatchWishes> wishes = wishesOf(views, request);
  if (!wishes) return tl::unexpected<Error>(wishes.error());
  Result<season::MatchAnswer> answer = season::matchHelmets(views, *wishes, dayOf(*now));
  if (!answer) {
    Error error = answer.error();
    if (error.code == ErrorCode::inconsistent) error.place = request.pins.empty() ? "--not" : "--pin";
    return tl::unexpected<Error>(error);
  }
  const auto byJersey = [&](const auto& a, const auto& b) {
    return season::jerseyBefore(views.athlete(a.athlete)->jersey, views.athlete(b.athlete)->jersey);
  };
  std::stable_sort(answer->pairs.begin(), answer->pairs.end(), byJersey);
  std::stable_sort(answer->unmatched.begin(), answer->unmatched.end(), byJersey);
  return Reply{kDone, json(views, *answer), text(views, *answer)};
}

}  // namespace snugline::cli
