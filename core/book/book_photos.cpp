// SPDX-License-Identifier: Apache-2.0
// A Book's photos: proved, copied, and gone when nothing names them any more.
#include <algorithm>
#include <set>

#include "core/book/book_body.h"

namespace snugline::book {

namespace {

const char* wordOf(const Error& error) {
  if (error.code == ErrorCode::cannotRead) return "unreadable";
  return error.detail == rule::kPhotoMissing ? "missing" : "altered";
}

// Units by id, so that two runs say the same in the same order.
std::vector<const season::UnitRecord*> unitsWithPhotos(const season::Views& views) {
  std::vector<const season::UnitRecord*> units;
  for (const auto& [id, unit] : views.units) {
    if (!unit.photos.empty()) units.push_back(&unit);
  }
  std::sort(units.begin(), units.end(), [](const auto* a, const auto* b) { return a->id < b->id; });
  return units;
}

}  // namespace

bool Book::Body::isPhotoNamed(const std::string& hash) const {
  const auto names = [&](const season::PhotoRecord& each) { return each.photo == hash; };
  return std::any_of(folded.views.units.begin(), folded.views.units.end(),
                     [&](const auto& unit) { return std::any_of(unit.second.photos.begin(), unit.second.photos.end(), names); });
}

void Book::Body::dropPhoto(const std::string& hash) {
  // What cannot be deleted now is deleted when the Book is next opened.
  if (!isPhotoNamed(hash)) (void)photos.remove(hash);
}

// Only what a known fact named and a correction took back: a file that nothing known names may be a later version's.
void Book::Body::dropTakenBackPhotos() {
  const auto kept = photos.list();
  if (!kept) return;
  photos.removeDrafts();
  std::set<std::string> unnamed(kept->begin(), kept->end());
  for (const auto& [id, unit] : folded.views.units) {
    for (const season::PhotoRecord& photo : unit.photos) unnamed.erase(photo.photo);
  }
  if (unnamed.empty()) return;
  for (const auto& [id, by] : corrections) {
    if (!isCorrected(id)) continue;
    const auto fact = factNamed(id);
    if (!fact || !*fact) continue;
    if (const auto* taken = std::get_if<PhotoTaken>(&(*fact)->body); taken != nullptr && unnamed.contains(taken->photo)) {
      (void)photos.remove(taken->photo);
    }
  }
}

void Book::Body::provePhotos(VerifyAnswer& answer) const {
  std::set<std::string> named, whole;
  for (const season::UnitRecord* unit : unitsWithPhotos(folded.views)) {
    for (const season::PhotoRecord& photo : unit->photos) {
      named.insert(photo.photo);
      if (whole.contains(photo.photo)) continue;
      if (const auto bytes = photos.read(photo.photo)) {
        whole.insert(photo.photo);
      } else {
        answer.photoFaults.push_back({unit->id, photo.fact, photo.photo, wordOf(bytes.error())});
      }
    }
  }
  answer.photos = whole.size();
  if (const auto kept = photos.list()) {
    const auto isLeft = [&](const std::string& hash) { return !named.contains(hash); };
    answer.photosLeftOver = static_cast<std::uint64_t>(std::count_if(kept->begin(), kept->end(), isLeft));
  }
}

Result<void> copyPhotos(const season::Views& views, const PhotoStore& from, const PhotoStore& to, CopyAnswer& answer,
                        std::vector<std::string>& made) {
  std::set<std::string> copied;
  for (const season::UnitRecord* unit : unitsWithPhotos(views)) {
    for (const season::PhotoRecord& photo : unit->photos) {
      if (copied.contains(photo.photo)) continue;
      const auto bytes = from.read(photo.photo);
      if (!bytes) {
        answer.photoFaults.push_back({unit->id, photo.fact, photo.photo, wordOf(bytes.error())});
        continue;
      }
      const auto kept = to.put(*bytes);
      if (!kept && kept.error().code == ErrorCode::notAllowed) {  // named by its hash, and yet not what a photo may be
        answer.photoFaults.push_back({unit->id, photo.fact, photo.photo, "altered"});
        continue;
      }
      if (!kept) return tl::unexpected<Error>(kept.error());
      if (kept->isNew) made.push_back(kept->hash);
      copied.insert(photo.photo);
    }
  }
  answer.photos = copied.size();
  return {};
}

void takeAway(const PhotoStore& store, const std::vector<std::string>& made) {
  for (const std::string& hash : made) (void)store.remove(hash);
  store.removeFolderIfBare();  // also when its first file failed
}

}  // namespace snugline::book
