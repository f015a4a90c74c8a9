// SPDX-License-Identifier: Apache-2.0
// The turn of a season, helmets collected, photos of faults: bodies of facts and what the fold makes of them.
#include <algorithm>

#include "core/book/chain.h"
#include "core/book/fact_json.h"
#include "core/book/fold.h"

namespace snugline::book {

namespace {

Body readSeasonClosed(ObjectReader& in) {
  SeasonClosed b;
  b.season = in.text("season");
  b.day = in.day("day");
  if (in.has("missing")) {
    b.missing = in.texts("missing");
    // An empty list would not come out again as it went in.
    if (b.missing.empty()) in.fail(ErrorCode::outOfRange, "missing", "empty");
  }
  return b;
}

Body readPhotoTaken(ObjectReader& in) {
  PhotoTaken b;
  b.photo = in.text("photo");
  PublicKey hash{};  // as long as a hash
  if (!fromHex(b.photo, hash)) in.fail(ErrorCode::wrongType, "photo", "64 hex digits");
  b.bytes = in.integer("bytes", 1, kPhotoBytesMost);
  b.width = static_cast<int>(in.integer("width", 1, kPhotoSideMost));
  b.height = static_cast<int>(in.integer("height", 1, kPhotoSideMost));
  b.of = in.wordIf("of", gear::pointFromCode);
  b.hold = in.textOr("hold");
  b.what = in.textOr("what");
  return b;
}

}  // namespace

void writeBody(LineWriter& out, const SeasonClosed& b) {
  out.key("season").string(b.season).key("day").string(print(b.day));
  if (b.missing.empty()) return;
  out.key("missing").beginArray();
  for (const std::string& unit : b.missing) out.string(unit);
  out.endArray();
}
void writeBody(LineWriter& out, const UnitCollected& b) {
  out.key("season").string(b.season).text("athlete", b.athlete).text("where", b.where);
}
void writeBody(LineWriter& out, const PhotoTaken& b) {
  out.key("photo").string(b.photo).key("bytes").integer(b.bytes).key("width").integer(b.width).key("height").integer(b.height);
  if (b.of) out.key("of").string(gear::code(*b.of));
  out.text("hold", b.hold).text("what", b.what);
}

void addSeasonReaders(std::unordered_map<std::string_view, BodyReader>& readers) {
  readers["season-closed"] = readSeasonClosed;
  // Braces keep the order of reading the order of writing.
  readers["unit-collected"] = [](ObjectReader& in) -> Body {
    return UnitCollected{in.text("season"), in.textOr("athlete"), in.textOr("where")};
  };
  readers["photo-taken"] = readPhotoTaken;
}

void foldSeason(season::TeamRecord& record, const Fact& fact) {
  const auto* closed = std::get_if<SeasonClosed>(&fact.body);
  if (closed == nullptr) return;
  season::SeasonRecord made{closed->season, std::nullopt, std::nullopt, closed->day, closed->missing, stampOf(fact)};
  if (closed->season == record.season) {
    made.start = record.seasonStart;
    made.end = record.seasonEnd;
  }
  const auto before = std::find_if(record.closedSeasons.begin(), record.closedSeasons.end(),
                                   [&](const season::SeasonRecord& each) { return each.season == closed->season; });
  if (before != record.closedSeasons.end()) {
    // Closed again, perhaps on a device that did not know of the next one: when it was played is known from the first time.
    if (!made.start) made.start = before->start;
    if (!made.end) made.end = before->end;
    record.closedSeasons.erase(before);
  }
  record.closedSeasons.push_back(std::move(made));
}

void foldCollected(season::UnitRecord& record, const Fact& fact, const UnitCollected& body) {
  std::erase(record.athletes, body.athlete);
  record.isInHand = !record.athletes.empty();
  record.keptBy.clear();
  // Lost ones come to light when everything is carried in.
  const bool isHere = record.place == season::UnitPlace::withAthlete || record.place == season::UnitPlace::lost;
  if (record.athletes.empty() && isHere) {
    record.place = season::UnitPlace::shelf;
    record.placeWords.clear();
  }
  if (!body.where.empty()) record.shelf = body.where;
  record.collected = season::CollectedRecord{body.season, stampOf(fact)};
}

void foldPhoto(season::UnitRecord& record, const Fact& fact, const PhotoTaken& body) {
  record.photos.push_back({fact.id(), body.photo, body.bytes, body.width, body.height, body.of, body.hold, body.what, stampOf(fact)});
}

}  // namespace snugline::book
