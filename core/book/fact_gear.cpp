// SPDX-License-Identifier: Apache-2.0
// Facts about what happens to helmets beside their points: notices of a maker, and lists of marks.
#include "core/book/fact_json.h"
#include "core/book/fold.h"

namespace snugline::book {

namespace {
constexpr int kYearMost = 9999;

Body readNoticeIssued(ObjectReader& in) {
  NoticeIssued b;
  b.text = in.text("text");
  b.day = in.day("day");
  b.scope = readScope(in);
  return b;
}
}  // namespace

void marks(LineWriter& out, std::string_view key, fit::MarkSet set) {
  if (set == fit::MarkSet{}) return;
  out.key(key).beginArray();
  for (const fit::Mark mark : fit::kMarks) {
    if (set.has(mark)) out.string(fit::code(mark));
  }
  out.endArray();
}

fit::MarkSet marks(ObjectReader& in, std::string_view key) {
  fit::MarkSet set;
  if (!in.has(key)) return set;
  for (const std::string& word : in.texts(key)) {
    const auto mark = fit::markFromCode(word);
    if (mark) {
      set.add(*mark);
    } else {
      in.fail(ErrorCode::unknownWord, key, word);
    }
  }
  // An empty list would not come out again as it went in.
  if (set == fit::MarkSet{}) in.fail(ErrorCode::outOfRange, key, "empty");
  return set;
}

void writeScope(LineWriter& out, const season::NoticeScope& scope) {
  out.text("sheet", scope.sheet);
  if (scope.yearFrom) out.key("year_from").integer(*scope.yearFrom);
  if (scope.yearTo) out.key("year_to").integer(*scope.yearTo);
  out.text("lot", scope.lot).text("serial_from", scope.serialFrom).text("serial_to", scope.serialTo);
  out.flag("takes_unknown", scope.takesUnknown);
}

season::NoticeScope readScope(ObjectReader& in) {
  season::NoticeScope scope;
  scope.sheet = in.textOr("sheet");
  if (const auto year = in.integerIf("year_from", 0, kYearMost)) scope.yearFrom = static_cast<int>(*year);
  if (const auto year = in.integerIf("year_to", 0, kYearMost)) scope.yearTo = static_cast<int>(*year);
  scope.lot = in.textOr("lot");
  scope.serialFrom = in.textOr("serial_from");
  scope.serialTo = in.textOr("serial_to");
  scope.takesUnknown = in.flag("takes_unknown");
  return scope;
}

void returnOf(LineWriter& out, const season::ReturnRecord& r) {
  out.text("by", r.by).text("done", r.done).text("paper", r.paper).flag("cleaned", r.isCleaned);
}
void readReturn(ObjectReader& in, season::ReturnRecord& r) {
  r.by = in.textOr("by");
  r.done = in.textOr("done");
  r.paper = in.textOr("paper");
  r.isCleaned = in.flag("cleaned");
}

void addGearReaders(std::unordered_map<std::string_view, BodyReader>& readers) {
  // Braces keep the order of reading the order of writing.
  readers["unit-received"] = [](ObjectReader& in) -> Body {
    return UnitReceived{in.text("serial"), in.text("tag_key"), in.text("sheet"), in.text("size"), in.textOr("made"), in.textOr("lot")};
  };
  readers["unit-held"] = [](ObjectReader& in) -> Body {
    return UnitHeld{in.text("reason"), in.textOr("what"), in.flag("with_athlete"), in.textOr("notice")};
  };
  readers["hold-released"] = [](ObjectReader& in) -> Body { return HoldReleased{in.text("hold"), in.text("reason")}; };
  readers["unit-moved"] = [](ObjectReader& in) -> Body {
    UnitMoved b{in.text("to"), in.textOr("where"), in.textOr("reason")};
    readReturn(in, b.returned);
    return b;
  };
  readers["part-changed"] = [](ObjectReader& in) -> Body {
    return PartChanged{in.text("part"), in.textOr("what"), in.textOr("athlete"), marks(in, "reopens")};
  };
  readers["unit-paired"] = [](ObjectReader& in) -> Body { return UnitPaired{in.text("athlete")}; };
  readers["unit-unpaired"] = [](ObjectReader& in) -> Body {
    return UnitUnpaired{in.text("athlete"), in.text("reason"), in.flag("still_with")};
  };
  readers["notice-issued"] = readNoticeIssued;
}

void foldNotice(season::TeamRecord& record, const Fact& fact) {
  const auto* issued = std::get_if<NoticeIssued>(&fact.body);
  if (issued == nullptr) return;
  record.notices.push_back({fact.id(), issued->text, issued->day, issued->scope, stampOf(fact)});
}

}  // namespace snugline::book
