// SPDX-License-Identifier: Apache-2.0
// `snug book`: founding, proving, backing up. Every answer has the same four keys, so that a script reads them alike.
#include "core/book/book.h"

#include <map>
#include <optional>

#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

constexpr const char* kTeamUnnamed = "Team";  // a Book must name its team; it can be named better later

struct Told {
  book::InfoAnswer info;
  std::vector<book::Fault> faults{};
  bool isOk = true;
  // Only where the deed looked at the photos.
  std::optional<std::uint64_t> photos{};
  std::vector<book::PhotoFault> photoFaults{};
  std::uint64_t photosLeftOver = 0;
  std::map<std::string, std::string> serials{};  // of the helmets that photoFaults name
};

void noteSerials(Told& told, const season::Views& views) {
  for (const book::PhotoFault& f : told.photoFaults) {
    if (const season::UnitRecord* unit = views.unit(f.unit)) told.serials[f.unit] = unit->serial;
  }
}

std::string countOf(std::uint64_t count, const std::string& what) { return std::to_string(count) + ' ' + what + (count == 1 ? "" : "s"); }

// What is said of the photos that went along; nothing where there are none.
std::string photosToo(const book::CopyAnswer& copied) {
  std::string said = copied.photos > 0 ? " and " + countOf(copied.photos, "photo") : "";
  if (!copied.photoFaults.empty()) said += ", without " + countOf(copied.photoFaults.size(), "photo");
  return said;
}

std::string json(const Told& told) {
  json::Writer out;
  out.beginObject().key("facts").integer(static_cast<std::int64_t>(told.info.facts));
  out.key("devices").beginArray();
  for (const book::DeviceState& d : told.info.devices) {
    out.beginObject().key("device").string(d.device).key("facts").integer(static_cast<std::int64_t>(d.facts));
    out.key("sealed_to").integer(static_cast<std::int64_t>(d.sealedTo)).key("own").boolean(d.isOwn).endObject();
  }
  out.endArray().key("ok").boolean(told.isOk).key("faults").beginArray();
  for (const book::Fault& f : told.faults) {
    out.beginObject()
        .key("device")
        .string(f.device)
        .key("n")
        .integer(static_cast<std::int64_t>(f.n))
        .key("what")
        .string(f.what)
        .endObject();
  }
  out.endArray();
  if (told.photos) {
    out.key("photos").integer(static_cast<std::int64_t>(*told.photos)).key("photo_faults").beginArray();
    for (const book::PhotoFault& f : told.photoFaults) {
      const auto serial = told.serials.find(f.unit);
      out.beginObject().key("helmet").string(serial == told.serials.end() ? std::string() : serial->second);
      out.key("helmet_id").string(f.unit).key("fact").string(f.fact).key("photo").string(f.photo);
      out.key("what").string(f.what).endObject();
    }
    out.endArray().key("photos_left_over").integer(static_cast<std::int64_t>(told.photosLeftOver));
  }
  out.key("team").string(told.info.team).key("season").string(told.info.season);
  out.key("format").integer(told.info.format).endObject();
  return out.take();
}

Reply replyOf(const Told& told, const std::string& said) {
  Reply reply;
  reply.exitCode = told.isOk ? kDone : kAnswerNo;
  reply.json = json(told);
  reply.text = said + '\n';
  for (const book::DeviceState& d : told.info.devices) {
    reply.text += "  device " + d.device + ": " + std::to_string(d.facts) + " facts, signed to " + std::to_string(d.sealedTo) +
                  (d.isOwn ? ", this device\n" : "\n");
  }
  for (const book::Fault& f : told.faults) reply.text += "  fact " + std::to_string(f.n) + " of device " + f.device + ": " + f.what + '\n';
  for (const book::PhotoFault& f : told.photoFaults) {
    const auto serial = told.serials.find(f.unit);
    reply.text += "  photo of helmet " + (serial == told.serials.end() ? f.unit : serial->second) + ", fact " + f.fact + ": " + f.what +
                  " (" + f.photo + ".jpg)\n";
  }
  if (told.photosLeftOver > 0) reply.text += "  " + countOf(told.photosLeftOver, "photo file") + " that no fact names, harmless\n";
  return reply;
}

// What a Book file holds, opened for reading only.
Result<Reply> tell(const std::string& path, const std::string& said, Outside& outside) {
  const auto opened = openBook(path, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  Result<book::InfoAnswer> info = (*opened)->info();
  if (!info) return tl::unexpected<Error>(info.error());
  const std::string whole = said + std::to_string(info->facts) + " facts";
  return replyOf({std::move(*info)}, whole);
}

Result<Reply> create(const BookRequest& request, Outside& outside) {
  book::TeamFounded team;
  team.name = request.team.empty() ? kTeamUnnamed : request.team;
  team.mascot = request.mascot;
  team.season = request.season.empty() ? std::to_string(civil(dayOf(outside.clock.now())).year) : request.season;
  {
    const auto made = book::Book::create(request.book, team, outside.keys, outside.clock);
    if (!made) return tl::unexpected<Error>(made.error());
    if (const Result<void> done = (*made)->checkpoint(); !done) return tl::unexpected<Error>(done.error());
  }
  return tell(request.book, "Founded " + request.book + ": ", outside);
}

Result<Reply> verify(const BookRequest& request, Outside& outside) {
  const auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  Result<book::VerifyAnswer> answer = (*opened)->verify();
  if (!answer) return tl::unexpected<Error>(answer.error());
  Result<book::InfoAnswer> info = (*opened)->info();
  if (!info) return tl::unexpected<Error>(info.error());
  info->facts = answer->facts;
  std::string said = request.book + (answer->isOk ? ": every fact and signature holds, " : ": does not verify, ") +
                     std::to_string(answer->facts) + " facts";
  if (answer->photos > 0) said += ", " + countOf(answer->photos, "photo") + " as taken";
  Told told{std::move(*info),
            std::move(answer->faults),
            answer->isOk,
            answer->photos,
            std::move(answer->photoFaults),
            answer->photosLeftOver,
            {}};
  noteSerials(told, (*opened)->views());
  return replyOf(told, said);
}

Result<Reply> rebuild(const BookRequest& request, Outside& outside) {
  const auto opened = openBook(request.book, book::Access::readWrite, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  const Result<book::Book::RebuildAnswer> answer = (*opened)->rebuild();
  if (!answer) return tl::unexpected<Error>(answer.error());
  Result<book::InfoAnswer> info = (*opened)->info();
  if (!info) return tl::unexpected<Error>(info.error());
  const std::string said =
      request.book + (answer->wasEqual ? ": views made anew, as they were" : ": views made anew, the kept ones differed");
  return replyOf({std::move(*info), {}, answer->wasEqual}, said);
}

Result<Reply> backup(const BookRequest& request, Outside& outside) {
  const auto opened = openBook(request.book, book::Access::readWrite, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  Result<book::CopyAnswer> copied = (*opened)->backup(request.file);
  if (!copied) return tl::unexpected<Error>(copied.error());
  Result<book::InfoAnswer> info = (*opened)->info();
  if (!info) return tl::unexpected<Error>(info.error());
  const std::string said = "Wrote " + std::to_string(copied->facts) + " facts" + photosToo(*copied) + " to " + request.file;
  Told told{std::move(*info), {}, true, copied->photos, std::move(copied->photoFaults), 0, {}};
  noteSerials(told, (*opened)->views());
  return replyOf(told, said);
}

Result<Reply> restore(const BookRequest& request, Outside& outside) {
  Result<book::CopyAnswer> copied = book::Book::restore(request.file, request.book, outside.keys, outside.clock);
  if (!copied) return tl::unexpected<Error>(copied.error());
  const auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  Result<book::InfoAnswer> info = (*opened)->info();
  if (!info) return tl::unexpected<Error>(info.error());
  const std::string said =
      "Restored " + request.book + " from " + request.file + ": " + std::to_string(info->facts) + " facts" + photosToo(*copied);
  Told told{std::move(*info), {}, true, copied->photos, std::move(copied->photoFaults), 0, {}};
  noteSerials(told, (*opened)->views());
  return replyOf(told, said);
}

}  // namespace

Result<Reply> book(const BookRequest& request, Outside& outside) {
  switch (request.deed) {
    case BookDeed::create:
      return create(request, outside);
    case BookDeed::verify:
      return verify(request, outside);
    case BookDeed::info:
      return tell(request.book, request.book + ": ", outside);
    case BookDeed::rebuild:
      return rebuild(request, outside);
    case BookDeed::backup:
      return backup(request, outside);
    case BookDeed::restore:
      return restore(request, outside);
  }
  return fail(ErrorCode::internal, "book", "an unknown deed");
}

}  // namespace snugline::cli
