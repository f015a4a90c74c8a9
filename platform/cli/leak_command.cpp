// SPDX-License-Identifier: Apache-2.0
// `snug leak`: whether a bladder loses air, after correcting for temperature and the air around.
#include <array>
#include <cmath>
#include <cstdio>

#include "platform/cli/files.h"
#include "platform/cli/leak_readings.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

std::string both(double pascals) {
  const Pressure whole = Pressure::pascals(std::llround(pascals));
  std::array<char, 64> kpa{};
  std::snprintf(kpa.data(), kpa.size(), "%.2f kPa (", whole.kpa());
  return kpa.data() + print(whole, UnitSystem::us) + ')';
}

std::string sentence(air::LeftOut why) {
  switch (why) {
    case air::LeftOut::notInOrder:
      return "its time lies before a reading further up";
    case air::LeftOut::beforeRefill:
      return "its time lies before the last refill further up";
    case air::LeftOut::notBelieved:
      return "its values cannot be believed";
    case air::LeftOut::onlyOne:
      return "it stands alone between refills, with nothing to compare it with";
    case air::LeftOut::beyondTheMost:
      return "only the latest " + std::to_string(air::kReadingsMost) + " are used";
  }
  return {};
}

std::string whyOf(const air::Leak& leak, Pressure allowance) {
  const std::string used =
      std::to_string(leak.used) + " readings in " + std::to_string(leak.runs.size()) + (leak.runs.size() == 1 ? " run" : " runs");
  if (!leak.hasSlope) return "Nothing can be said yet: no two readings at different times between refills";
  const std::string change = (leak.paPerWeek < 0 ? "loses " : "gains ") + both(std::abs(leak.paPerWeek)) + " a week";
  const std::string bounds = both(leak.low) + " and " + both(leak.high);
  if (!leak.hasInterval)
    return "It " + change + " by " + used + ", carried to 20 \u00B0C and sea level; slopes lie between " + bounds +
           " a week, too few readings for a 95 % interval, so it is not called leaking";
  return "It " + change + " by " + used + ", carried to 20 \u00B0C and sea level; 95 % interval " + bounds +
         " a week; leaking when all of it lies below " + both(-static_cast<double>(allowance.pa)) + " a week, " +
         (leak.isLeaking ? "and it does" : "and it does not");
}

void writeReal(json::Writer& out, const char* key, bool isThere, double pascals) {
  out.key(key);
  if (isThere) {
    out.real(pascals / 1000.0, 9);
  } else {
    out.null();
  }
}

Result<Pressure> allowanceOf(const LeakRequest& request, Outside& outside) {
  if (request.sheet.empty()) return air::kLeakAllowanceUnsaid;
  const Result<gear::ModelSheet> sheet = findSheet(request.sheet, request.book, outside);
  if (!sheet) return tl::unexpected<Error>(sheet.error());
  if (sheet->air.empty()) return fail(ErrorCode::unknownPort, "--sheet " + request.sheet, "this sheet has no air");
  return sheet->leakPerWeek;
}

}  // namespace

Result<Reply> leak(const LeakRequest& request, Outside& outside) {
  const Result<Pressure> allowance = allowanceOf(request, outside);
  if (!allowance) return tl::unexpected<Error>(allowance.error());
  const Result<std::string> bytes = readFile(request.readings, kReadingsLimitBytes);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  const Result<ReadingsFile> file = parseReadings(*bytes, request.readings);
  if (!file) return tl::unexpected<Error>(file.error());
  const air::Leak leak = air::leakOf(file->readings, *allowance);
  const std::string why = whyOf(leak, *allowance);

  json::Writer out;
  out.beginObject();
  writeReal(out, "kpa_per_week", leak.hasSlope, leak.paPerWeek);
  writeReal(out, "low", leak.hasSlope, leak.low);
  writeReal(out, "high", leak.hasSlope, leak.high);
  out.key("leaking").boolean(leak.isLeaking);
  out.key("used").integer(static_cast<std::int64_t>(leak.used)).key("left_out").integer(static_cast<std::int64_t>(leak.leftOut.size()));
  out.key("left_out_why").beginArray();
  for (const air::LeftOutReading& l : leak.leftOut) {
    out.beginObject().key("line").integer(static_cast<std::int64_t>(file->lines[l.index])).key("why").string(sentence(l.why));
    out.key("code").string(code(l.why)).endObject();
  }
  out.endArray().key("interval").boolean(leak.hasInterval).key("runs").integer(static_cast<std::int64_t>(leak.runs.size()));
  out.key("allowance_kpa").real(allowance->kpa(), 3).key("why").string(why).endObject();

  Reply reply;
  reply.json = out.take();
  reply.text = std::string(leak.isLeaking ? "Leaking. " : "Not called leaking. ") + why + ".\n";
  for (const air::LeftOutReading& l : leak.leftOut)
    reply.text += "Left out, " + request.readings + ':' + std::to_string(file->lines[l.index]) + ": " + sentence(l.why) + '\n';
  reply.text += std::string(kCaution) + '\n';
  return reply;
}

}  // namespace snugline::cli
