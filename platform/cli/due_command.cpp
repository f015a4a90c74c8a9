// SPDX-License-Identifier: Apache-2.0
// `snug due`: the board, judged by the weather given, else by the weather that the Book noted last.
#include <algorithm>

#include "core/season/board.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

Result<season::Conditions> conditionsOf(const DueRequest& request) {
  season::Conditions conditions;
  if (!request.temperature.empty()) {
    const Result<Temperature> temperature = parseTemperature(request.temperature, "--temperature");
    if (!temperature) return tl::unexpected<Error>(temperature.error());
    const Result<Temperature> believed = air::believed(*temperature, "--temperature");
    if (!believed) return tl::unexpected<Error>(believed.error());
    conditions.temperature = *temperature;
  }
  if (!request.elevation.empty()) {
    const Result<Elevation> elevation = parseElevation(request.elevation, "--elevation");
    if (!elevation) return tl::unexpected<Error>(elevation.error());
    const Result<Elevation> believed = air::believed(*elevation, "--elevation");
    if (!believed) return tl::unexpected<Error>(believed.error());
    conditions.elevation = *elevation;
  }
  return conditions;
}

// What the rows were judged by, and what was not judged, for people.
std::vector<std::string> notesOn(const season::Board& board) {
  std::vector<std::string> lines;
  const season::WeatherNow& weather = board.weather;
  if (weather.notedAt && (weather.conditions.temperature || weather.conditions.elevation)) {
    std::string line = "Weather as noted " + print(*weather.notedAt) + ':';
    if (weather.conditions.temperature) line += ' ' + print(*weather.conditions.temperature, UnitSystem::metric);
    if (weather.conditions.elevation) line += ' ' + print(*weather.conditions.elevation, UnitSystem::metric);
    if (weather.isOld) line += ", more than a day ago";
    lines.push_back(line);
  }
  for (const season::ClockDoubt& doubt : board.clocks) {
    lines.push_back((doubt.isOwn ? "The clock of this device was changed: its own last entry is of "
                                 : "The clock of device " + doubt.device + " is far off: it has an entry of ") +
                    print(doubt.latest));
  }
  if (const int count = board.airUnknown; count > 0)
    lines.push_back("No weather was noted when the air of " + std::to_string(count) + (count == 1 ? " helmet" : " helmets") +
                    " was set, so it is not judged");
  return lines;
}

void writeWeather(json::Writer& out, const season::WeatherNow& weather) {
  constexpr int kMilli = 1000;
  const season::Conditions& c = weather.conditions;
  out.key("weather").beginObject();
  const auto number = [&](const char* key, std::optional<std::int64_t> thousandths) {
    out.key(key);
    if (thousandths) {
      out.real(static_cast<double>(*thousandths) / kMilli, 3);
    } else {
      out.null();
    }
  };
  number("celsius", c.temperature ? std::optional(c.temperature->mk - Temperature{}.mk) : std::nullopt);
  number("elevation_m", c.elevation ? std::optional(c.elevation->mm) : std::nullopt);
  number("ambient_kpa", season::ambientOf(c) ? std::optional(season::ambientOf(c)->pa) : std::nullopt);
  out.key("place").string(c.place).key("old").boolean(weather.isOld).endObject();
  out.key("weather_at");
  if (weather.notedAt) {
    out.string(print(*weather.notedAt));
  } else {
    out.null();
  }
}

std::string nameOf(const season::DueRow& row) { return row.given.empty() ? row.family : row.given + ' ' + row.family; }

void writeDay(json::Writer& out, const char* key, const season::DueRow& row, Day day) {
  out.key(key);
  if (row.reasons.empty()) {
    out.null();
  } else {
    out.string(print(day));
  }
}

void writeRow(json::Writer& out, const season::DueRow& row) {
  std::vector<std::string> codes, why;
  for (const season::DueReason& reason : row.reasons) {
    codes.emplace_back(code(reason.kind));
    why.push_back(sentence(reason));
  }
  out.beginObject().key("athlete").string(nameOf(row)).key("jersey").string(row.jersey);
  out.key("helmet").string(row.serial).key("lane").string(code(row.lane));
  writeStrings(out, "reasons", codes);
  writeDay(out, "due_from", row, row.dueFrom);
  writeDay(out, "due_by", row, row.dueBy);
  writeStrings(out, "why", why);
  out.key("athlete_id").string(row.athlete).key("helmet_id").string(row.unit);
  out.key("strip").beginArray();
  for (const fit::Finding f : row.strip) out.string(code(f));
  out.endArray().endObject();
}

std::string textRow(const season::DueRow& row) {
  std::string line =
      "  " + row.jersey + std::string(4 - std::min<std::size_t>(row.jersey.size(), 3), ' ') + nameOf(row) + "  " + strip(row.strip);
  line += "  " + (row.serial.empty() ? std::string("no helmet") : row.serial) + '\n';
  for (const season::DueReason& reason : row.reasons) line += "      " + sentence(reason) + " (by " + print(reason.dueBy) + ")\n";
  return line;
}

}  // namespace

Result<Reply> due(const DueRequest& request, Outside& outside) {
  const Result<Instant> now = parseInstant(request.at, "--at");
  if (!now) return tl::unexpected<Error>(now.error());
  const Result<season::Conditions> conditions = conditionsOf(request);
  if (!conditions) return tl::unexpected<Error>(conditions.error());
  const auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());

  const season::Board board = season::boardOf((*opened)->views(), {*now}, *conditions);
  const std::vector<std::string> notes = notesOn(board);
  json::Writer out;
  out.beginObject().key("rows").beginArray();
  for (const season::DueRow& row : board.rows) writeRow(out, row);
  out.endArray();
  out.key("at").string(print(*now));
  writeWeather(out, board.weather);
  out.key("air_unknown").integer(board.airUnknown);
  out.key("clocks").beginArray();
  for (const season::ClockDoubt& doubt : board.clocks)
    out.beginObject()
        .key("device")
        .string(doubt.device)
        .key("own")
        .boolean(doubt.isOwn)
        .key("latest")
        .string(print(doubt.latest))
        .endObject();
  out.endArray();
  writeStrings(out, "why", notes);
  out.endObject();

  Reply reply;
  reply.json = out.take();
  const season::DueRow* before = nullptr;
  for (const season::DueRow& row : board.rows) {
    if (before == nullptr || before->lane != row.lane) reply.text += words(row.lane) + '\n';
    reply.text += textRow(row);
    before = &row;
  }
  if (board.rows.empty()) reply.text = "Nobody is on the roster yet.\n";
  for (const std::string& note : notes) reply.text += note + ".\n";
  return reply;
}

}  // namespace snugline::cli
