// SPDX-License-Identifier: Apache-2.0
#include "core/book/photos.h"

#include <algorithm>

#include "core/book/written.h"

namespace snugline::book {

namespace {

Result<PhotoTaken> draftOf(const season::Views& views, const NewPhoto& photo) {
  const season::UnitRecord* unit = views.unit(photo.unit);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + photo.unit);
  if (auto ok = checkWritten(photo.what, 0, kWordsLimit, "what"); !ok) return tl::unexpected<Error>(ok.error());
  PhotoTaken taken;
  taken.of = photo.of;
  taken.hold = photo.hold;
  taken.what = photo.what;
  if (photo.hold.empty()) return taken;
  const auto hold = std::find_if(unit->holds.begin(), unit->holds.end(), [&](const auto& each) { return each.fact == photo.hold; });
  if (hold == unit->holds.end()) return fail(ErrorCode::notFound, "hold " + photo.hold);
  if (!taken.of) taken.of = gear::pointFromCode(hold->reason);
  return taken;
}

}  // namespace

Result<Appended> keepPhoto(Book& book, const NewPhoto& photo, std::string_view jpeg) {
  auto taken = draftOf(book.views(), photo);
  if (!taken) return tl::unexpected<Error>(taken.error());
  const PhotoStore& store = book.photos();
  const auto kept = store.put(jpeg);
  if (!kept) return tl::unexpected<Error>(kept.error());
  const season::UnitRecord* unit = book.views().unit(photo.unit);
  const auto isSame = [&](const season::PhotoRecord& each) { return each.photo == kept->hash; };
  if (std::any_of(unit->photos.begin(), unit->photos.end(), isSame)) {
    return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kPhotoKept));
  }
  taken->photo = kept->hash;
  taken->bytes = kept->bytes;
  taken->width = kept->width;
  taken->height = kept->height;
  auto appended = book.append({Draft{photo.unit, std::move(*taken)}});
  // Nothing names it, unless the append failed after it was on the disk: then what the Book says next time decides.
  if (!appended && kept->isNew) (void)store.remove(kept->hash);
  return appended;
}

Result<void> mayRemovePhoto(const season::Views& views, const std::string& unitId, const std::string& fact) {
  const season::UnitRecord* unit = views.unit(unitId);
  if (unit == nullptr) return fail(ErrorCode::notFound, "unit " + unitId);
  const auto isIt = [&](const season::PhotoRecord& each) { return each.fact == fact; };
  if (std::none_of(unit->photos.begin(), unit->photos.end(), isIt)) return fail(ErrorCode::notFound, "photo " + fact);
  // Which athletes wore this helmet once is not in the views, so anybody's hold keeps every photo.
  bool isHeld = views.team && !views.team->legalHolds.empty();
  for (const auto& [id, athlete] : views.athletes) isHeld = isHeld || !athlete.legalHolds.empty();
  if (isHeld) return fail(ErrorCode::notAllowed, unit->serial, std::string(rule::kPhotoOnHold));
  return {};
}

Result<Appended> removePhoto(Book& book, const std::string& unit, const std::string& fact) {
  if (auto may = mayRemovePhoto(book.views(), unit, fact); !may) return tl::unexpected<Error>(may.error());
  return book.correct({fact});
}

}  // namespace snugline::book
