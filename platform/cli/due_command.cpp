// SPDX-License-Identifier: Apache-2.0
// `snug due`: the board. Weather comes with the arithmetic of air; until then it is read, checked, and said not to be judged.
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
    conditions.temperature = *temperature;
  }
  if (!request.elevation.empty()) {
    const Result<Elevation> elevation = parseElevation(request.elevation, "--elevation");
    if (!elevation) return tl::unexpected<Error>(elevation.error());
    conditions.elevation = *elevation;
  }
  return conditions;
}

std::vector<std::string> notJudged(const season::Conditions& conditions) {
  std::vector<std::string> lines;
  if (conditions.temperature)
    lines.push_back("Temperature " + print(*conditions.temperature, UnitSystem::metric) + " noted, not judged yet");
  if (conditions.elevation) lines.push_back("Elevation " + print(*conditions.elevation, UnitSystem::metric) + " noted, not judged yet");
  return lines;
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

  season::Board board;
  board.build((*opened)->views(), {*now}, *conditions);
  const std::vector<std::string> notes = notJudged(*conditions);
  json::Writer out;
  out.beginObject().key("rows").beginArray();
  for (const season::DueRow& row : board.rows()) writeRow(out, row);
  out.endArray();
  out.key("at").string(print(*now));
  writeStrings(out, "why", notes);
  out.endObject();

  Reply reply;
  reply.json = out.take();
  const season::DueRow* before = nullptr;
  for (const season::DueRow& row : board.rows()) {
    if (before == nullptr || before->lane != row.lane) reply.text += words(row.lane) + '\n';
    reply.text += textRow(row);
    before = &row;
  }
  if (board.rows().empty()) reply.text = "Nobody is on the roster yet.\n";
  for (const std::string& note : notes) reply.text += note + ".\n";
  return reply;
}

}  // namespace snugline::cli
