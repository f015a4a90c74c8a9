// SPDX-License-Identifier: Apache-2.0
#include "core/book/view_rows_people.h"

namespace snugline::book {

void seasonsOf(LineWriter& out, const season::TeamRecord& r) {
  if (r.closedSeasons.empty()) return;
  out.key("closed_seasons").beginArray();
  for (const season::SeasonRecord& each : r.closedSeasons) {
    out.beginObject().key("season").string(each.season);
    if (each.start) out.key("start").integer(each.start->number);
    if (each.end) out.key("end").integer(each.end->number);
    out.key("closed").integer(each.closed.number).key("missing").beginArray();
    for (const std::string& unit : each.missing) out.string(unit);
    out.endArray();
    stamp(out, "stamp", each.stamp);
    out.endObject();
  }
  out.endArray();
}

void readSeasons(ObjectReader& in, season::TeamRecord& r) {
  if (!in.has("closed_seasons")) return;
  const auto dayIf = [](ObjectReader& each, std::string_view key) -> std::optional<Day> {
    const auto number = each.integerIf(key);
    return number ? std::optional(Day{static_cast<std::int32_t>(*number)}) : std::nullopt;
  };
  in.objects("closed_seasons", [&](ObjectReader& each) {
    season::SeasonRecord closed;
    closed.season = each.text("season");
    closed.start = dayIf(each, "start");
    closed.end = dayIf(each, "end");
    closed.closed = Day{static_cast<std::int32_t>(each.integer("closed"))};
    closed.missing = each.texts("missing");
    closed.stamp = stamp(each, "stamp");
    r.closedSeasons.push_back(std::move(closed));
  });
}

void turnOf(LineWriter& out, const season::UnitRecord& r) {
  if (r.collected) {
    out.key("collected").beginObject().key("season").string(r.collected->season);
    stamp(out, "stamp", r.collected->stamp);
    out.endObject();
  }
  if (r.photos.empty()) return;
  out.key("photos").beginArray();
  for (const season::PhotoRecord& each : r.photos) {
    out.beginObject().key("photo").string(each.photo).key("bytes").integer(each.bytes);
    out.key("width").integer(each.width).key("height").integer(each.height);
    if (each.of) out.key("of").string(gear::code(*each.of));
    out.text("hold", each.hold).text("what", each.what);
    stamp(out, "stamp", each.stamp);
    out.endObject();
  }
  out.endArray();
}

void readTurn(ObjectReader& in, season::UnitRecord& r) {
  in.objectIf("collected", [&](ObjectReader& inner) {
    season::CollectedRecord collected;
    collected.season = inner.text("season");
    collected.stamp = stamp(inner, "stamp");
    r.collected = std::move(collected);
  });
  if (!in.has("photos")) return;
  in.objects("photos", [&](ObjectReader& each) {
    season::PhotoRecord photo;
    photo.photo = each.text("photo");
    photo.bytes = each.integer("bytes");
    photo.width = static_cast<int>(each.integer("width"));
    photo.height = static_cast<int>(each.integer("height"));
    photo.of = each.wordIf("of", gear::pointFromCode);
    photo.hold = each.textOr("hold");
    photo.what = each.textOr("what");
    photo.stamp = stamp(each, "stamp");
    photo.fact = photo.stamp.fact;
    r.photos.push_back(std::move(photo));
  });
}

}  // namespace snugline::book
