// SPDX-License-Identifier: Apache-2.0
// `snug season`: the seasons of a Book, what came of each and what was missing when it was closed. Writes nothing.
#include "core/book/past_seasons.h"
#include "core/season/turn.h"
#include "platform/cli/files.h"
#include "platform/cli/season_words.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

constexpr std::size_t kFactsAtOnce = 8192;

Result<std::vector<book::PastSeason>> seasonsOf(book::Book& book) {
  book::PastSeasons seasons;
  while (true) {
    const Result<bool> isDone = seasons.step(book, kFactsAtOnce);
    if (!isDone) return tl::unexpected<Error>(isDone.error());
    if (*isDone) return seasons.seasons();
  }
}

void dayKey(json::Writer& out, const char* key, std::optional<Day> day) {
  out.key(key);
  if (day) {
    out.string(print(*day));
  } else {
    out.null();
  }
}

void write(json::Writer& out, const season::Views& views, const book::PastSeason& season) {
  out.beginObject().key("season").string(season.season);
  dayKey(out, "start", season.start);
  dayKey(out, "end", season.end);
  dayKey(out, "closed", season.closed);
  out.key("open").boolean(season.isOpen);
  out.key("missing").beginArray();
  for (const book::PastMissing& each : season.missing) {
    out.beginObject().key("helmet").string(helmetName(views, each.unit)).key("helmet_id").string(each.unit);
    out.key("athlete_id").string(each.athlete);
    dayKey(out, "turned_up", each.turnedUp);
    out.endObject();
  }
  out.endArray();
  out.key("athletes").integer(season.athletes()).key("helmets").integer(season.helmets()).key("handed_in").integer(season.handedIn);
  out.key("checks").beginObject();
  for (const fit::Verdict verdict : {fit::Verdict::fits, fit::Verdict::adjust, fit::Verdict::doNotWear, fit::Verdict::unfinished})
    out.key(fit::code(verdict)).integer(season.outcomes[static_cast<std::size_t>(verdict)]);
  out.endObject();
  out.key("holds").integer(season.holds).key("faults").integer(season.faults);
  out.endObject();
}

std::string line(const season::Views& views, const book::PastSeason& season) {
  std::string text = season.season + ": ";
  text += season.start && season.end ? print(*season.start) + " to " + print(*season.end) : std::string("days not set");
  text += season.closed ? ", closed " + print(*season.closed) : std::string(season.isOpen ? ", open" : ", never closed");
  text += "; " + std::to_string(season.athletes()) + " athletes, " + std::to_string(season.helmets()) + " helmets, " +
          std::to_string(season.handedIn) + " handed in";
  for (const book::PastMissing& each : season.missing)
    text += "\n  missing: " + helmetName(views, each.unit) + (each.turnedUp ? ", turned up " + print(*each.turnedUp) : std::string());
  return text + '\n';
}

}  // namespace

Result<Reply> season(const SeasonRequest& request, Outside& outside) {
  auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  book::Book& book = **opened;
  const auto seasons = seasonsOf(book);
  if (!seasons) return tl::unexpected<Error>(seasons.error());
  Reply reply;
  json::Writer out;
  out.beginObject().key("seasons").beginArray();
  for (const book::PastSeason& each : *seasons) write(out, book.views(), each);
  out.endArray();
  out.key("now").string(book.views().team ? book.views().team->season : std::string());
  out.key("between").boolean(season::between(book.views()) != nullptr).endObject();
  reply.json = out.take();
  for (const book::PastSeason& each : *seasons) reply.text += line(book.views(), each);
  return reply;
}

}  // namespace snugline::cli
