// SPDX-License-Identifier: Apache-2.0
// What the Book tells a phone, as one line.
#include "core/book/fact_json.h"
#include "core/book/phone_json.h"

namespace snugline::book {

namespace {

constexpr std::int64_t kOffsetMost = 840;
constexpr int kMinutesOfDay = 24 * 60;
constexpr int kStrapPointsMost = 12;
constexpr std::int64_t kLargestN = (std::int64_t{1} << 40) - 1;

void writeOutcome(LineWriter& out, const PhoneOutcome& each) {
  const WordOutcome& o = each.outcome;
  out.beginObject()
      .key("said")
      .string(o.said)
      .key("said_at_ms")
      .integer(o.saidAt.ms)
      .key("said_offset_min")
      .integer(o.saidAt.offsetMinutes);
  out.key("seen_at_ms").integer(o.seenAt.ms).key("seen_offset_min").integer(o.seenAt.offsetMinutes);
  out.text("check", o.check).key("where").string(fit::code(o.where));
  if (o.side != fit::Side::both) out.key("side").string(fit::code(o.side));
  out.key("feels").string(fit::code(o.feels)).key("found").string(fit::code(o.found)).key("verdict").string(fit::code(o.verdict));
  out.flag("other_helmet", o.isOtherHelmet).key("done").beginArray();
  for (const Done& done : each.done) {
    out.beginObject();
    writeAnswer(out, done.change);
    if (done.direction != 0) out.key("direction").integer(done.direction);
    out.endObject();
  }
  out.endArray().endObject();
}

Instant readInstant(ObjectReader& in, std::string_view ms, std::string_view offset) {
  Instant at;
  at.ms = in.integer(ms);
  at.offsetMinutes = static_cast<std::int32_t>(in.integer(offset, -kOffsetMost, kOffsetMost));
  return at;
}

PhoneOutcome readOutcome(ObjectReader& in) {
  PhoneOutcome each;
  WordOutcome& o = each.outcome;
  o.said = in.text("said");
  o.saidAt = readInstant(in, "said_at_ms", "said_offset_min");
  o.seenAt = readInstant(in, "seen_at_ms", "seen_offset_min");
  o.check = in.textOr("check");
  o.where = in.word("where", fit::markFromCode);
  if (const auto side = in.wordIf("side", fit::sideFromCode)) o.side = *side;
  o.feels = in.word("feels", feelsWord);
  o.found = in.word("found", findingWord);
  o.verdict = in.word("verdict", fit::verdictFromCode);
  o.isOtherHelmet = in.flag("other_helmet");
  in.objects("done", [&](ObjectReader& inner) {
    Done done;
    if (const auto direction = inner.integerIf("direction", -1, 1)) done.direction = static_cast<int>(*direction);
    const fit::Answer answer = readAnswer(inner);
    const auto* change = std::get_if<fit::Adjusted>(&answer);
    if (change == nullptr) return inner.fail(ErrorCode::wrongType, "deed");
    done.change = *change;
    each.done.push_back(done);
  });
  return each;
}

}  // namespace

Result<std::string> encodeAnswers(const PhoneAnswers& answers) {
  LineWriter out;
  out.beginObject().key("snugline_answers").integer(1).key("device").string(answers.device).key("athlete").string(answers.athlete);
  out.key("jersey")
      .string(answers.jersey)
      .key("taken")
      .integer(static_cast<std::int64_t>(answers.taken))
      .key("order")
      .integer(answers.order);
  out.key("at_ms").integer(answers.at.ms).key("offset_min").integer(answers.at.offsetMinutes);
  out.key("practice_minute").integer(answers.practiceMinute);
  out.key("due_from").string(snugline::print(answers.dueFrom)).key("due_by").string(snugline::print(answers.dueBy));
  out.key("is_due").boolean(answers.isDue);
  if (answers.helmet) {
    out.key("helmet")
        .beginObject()
        .key("crown_air")
        .boolean(answers.helmet->hasCrownAir)
        .key("side_air")
        .boolean(answers.helmet->hasSideAir);
    out.key("jaw_air").boolean(answers.helmet->hasJawAir).key("strap_points").integer(answers.helmet->strapPoints).endObject();
  }
  out.key("outcomes").beginArray();
  for (const PhoneOutcome& each : answers.outcomes) writeOutcome(out, each);
  out.endArray().endObject();
  if (!out.isText() || !out.isInRange()) return fail(ErrorCode::wrongType, "answers");
  return out.take();
}

Result<PhoneAnswers> decodeAnswers(std::string_view line) {
  PhoneAnswers answers;
  const auto read = readObject(line, "answers", [&](ObjectReader& in) {
    (void)in.integer("snugline_answers", 1, 1);
    answers.device = in.text("device");
    answers.athlete = in.text("athlete");
    answers.jersey = in.text("jersey");
    answers.taken = static_cast<std::uint64_t>(in.integer("taken", 0, kLargestN));
    answers.order = in.integer("order", 0);
    answers.at = readInstant(in, "at_ms", "offset_min");
    answers.practiceMinute = static_cast<int>(in.integer("practice_minute", 0, kMinutesOfDay - 1));
    answers.dueFrom = in.day("due_from");
    answers.dueBy = in.day("due_by");
    answers.isDue = in.boolean("is_due");
    in.objectIf("helmet", [&](ObjectReader& inner) {
      PhoneHelmet helmet;
      helmet.hasCrownAir = inner.boolean("crown_air");
      helmet.hasSideAir = inner.boolean("side_air");
      helmet.hasJawAir = inner.boolean("jaw_air");
      helmet.strapPoints = static_cast<int>(inner.integer("strap_points", 0, kStrapPointsMost));
      answers.helmet = helmet;
    });
    in.objects("outcomes", [&](ObjectReader& each) { answers.outcomes.push_back(readOutcome(each)); });
  });
  if (!read) return tl::unexpected<Error>(read.error());
  return answers;
}

}  // namespace snugline::book
