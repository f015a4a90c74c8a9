// SPDX-License-Identifier: Apache-2.0
// Photos of gear beside a Book (BOOK_FORMAT.md, Photos).
#include <sys/stat.h>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/fold.h"
#include "core/book/jpeg_shape.h"
#include "core/book/photos.h"
#include "core/book/privacy_acts.h"
#include "photo_bytes.h"

using namespace snugline;
using namespace snugline::test;
namespace fs = std::filesystem;

namespace {

struct Held {
  World world;
  std::unique_ptr<book::Book> book = world.create();
  Fitting f = pairUp(*book, world.today());
  std::string hold = put(*book, must(book::hold(book->views(), f.unit, "shell", "crack at the rim", false))).ids.front();

  std::string keep(const std::string& jpeg, const std::string& what = "") {
    return must(book::keepPhoto(*book, {f.unit, std::nullopt, hold, what}, jpeg)).ids.front();
  }
  [[nodiscard]] const std::vector<season::PhotoRecord>& photos() const { return book->views().unit(f.unit)->photos; }
  [[nodiscard]] std::string file(const std::string& jpeg) const { return book->photos().pathOf(book::hashOf(jpeg)); }
  void reopen() {
    book.reset();
    book = world.open();
  }
};

std::size_t filesIn(const std::string& folder) {
  return fs::exists(folder) ? static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), {})) : 0;
}

}  // namespace

TEST_CASE("A photo lies beside the Book under the hash of its bytes, and its hold and point stand with it") {
  Held h;
  const std::string jpeg = plainJpeg(1600, 1200);
  h.keep(jpeg, "crack, 40 mm");
  CHECK(fs::exists(h.world.path + ".photos/" + book::hashOf(jpeg) + ".jpg"));
  h.reopen();
  REQUIRE(h.photos().size() == 1);
  const season::PhotoRecord& photo = h.photos().front();
  CHECK(photo.of == gear::Point::shell);
  CHECK(photo.hold == h.hold);
  CHECK(photo.what == "crack, 40 mm");
  CHECK((photo.width == 1600 && photo.height == 1200));
  CHECK(photo.bytes == static_cast<std::int64_t>(jpeg.size()));
  CHECK(must(h.book->photos().read(photo.photo)) == jpeg);
  const auto verified = must(h.book->verify());
  CHECK(verified.isOk);
  CHECK(verified.photos == 1);
  CHECK(verified.photosLeftOver == 0);
  CHECK(must(h.book->rebuild()).wasEqual);
}

TEST_CASE("A picture that says where it was taken gets neither file nor fact") {
  Held h;
  const auto kept = book::keepPhoto(*h.book, {h.f.unit}, plainJpeg(640, 480, exifWithPlace()));
  REQUIRE_FALSE(kept);
  CHECK(kept.error().detail == book::rule::kHasExtras);
  CHECK(h.photos().empty());
  CHECK(filesIn(h.book->photos().folder()) == 0);
}

TEST_CASE("A photo that is too large, of no helmet, of no open hold, or of too many words is refused before anything is written") {
  Held h;
  std::string large = plainJpeg();
  large.insert(large.size() - 2, std::string(book::kPhotoBytesMost, 'a'));
  CHECK(book::keepPhoto(*h.book, {h.f.unit}, large).error().code == ErrorCode::tooLong);
  CHECK(book::keepPhoto(*h.book, {"nobody:9"}, plainJpeg()).error().code == ErrorCode::notFound);
  CHECK(book::keepPhoto(*h.book, {h.f.unit, {}, "nobody:9"}, plainJpeg()).error().code == ErrorCode::notFound);
  CHECK(book::keepPhoto(*h.book, {h.f.unit, {}, {}, std::string(book::kWordsLimit + 1, 'a')}, plainJpeg()).error().code ==
        ErrorCode::outOfRange);
  CHECK(filesIn(h.book->photos().folder()) == 0);
}

TEST_CASE("The same picture is one file: twice for one helmet is refused, for two helmets it stays until both took it back") {
  Held h;
  const std::string jpeg = plainJpeg();
  const std::string first = h.keep(jpeg);
  CHECK(book::keepPhoto(*h.book, {h.f.unit}, jpeg).error().detail == book::rule::kPhotoKept);
  const Fitting other = pairUp(*h.book, h.world.today(), "08", "HC-002");
  const std::string second = must(book::keepPhoto(*h.book, {other.unit}, jpeg)).ids.front();
  CHECK(filesIn(h.book->photos().folder()) == 1);
  must(book::removePhoto(*h.book, h.f.unit, first));
  CHECK(fs::exists(h.file(jpeg)));
  CHECK(must(h.book->verify()).isOk);
  must(book::removePhoto(*h.book, other.unit, second));
  CHECK_FALSE(fs::exists(h.file(jpeg)));
  CHECK(must(h.book->verify()).isOk);
}

TEST_CASE("A photo taken back is gone from the disk, and its entry from the helmet") {
  Held h;
  const std::string jpeg = plainJpeg();
  const std::string fact = h.keep(jpeg);
  must(book::removePhoto(*h.book, h.f.unit, fact));
  CHECK(h.photos().empty());
  CHECK(filesIn(h.book->photos().folder()) == 0);
  CHECK(h.book->photos().read(book::hashOf(jpeg)).error().detail == book::rule::kPhotoMissing);
  CHECK(book::removePhoto(*h.book, h.f.unit, fact).error().code == ErrorCode::notFound);
  h.reopen();
  CHECK(must(h.book->verify()).isOk);
}

TEST_CASE("While a legal hold of anybody stands no photo is taken back") {
  Held h;
  const std::string jpeg = plainJpeg();
  const std::string fact = h.keep(jpeg);
  const std::string stand = put(*h.book, must(book::makeLegalHold(h.book->views(), h.f.athlete, "a claim"))).ids.front();
  CHECK(book::removePhoto(*h.book, h.f.unit, fact).error().detail == book::rule::kPhotoOnHold);
  CHECK(fs::exists(h.file(jpeg)));
  put(*h.book, must(book::endLegalHold(h.book->views(), h.f.athlete, stand, "settled")));
  must(book::removePhoto(*h.book, h.f.unit, fact));
  CHECK_FALSE(fs::exists(h.file(jpeg)));
}

TEST_CASE("A file that outlived its correction is deleted when the Book is next opened, one that nothing names is let be") {
  Held h;
  const std::string taken = plainJpeg(8, 8, {}, "taken"), loose = plainJpeg(8, 8, {}, "loose");
  must(book::removePhoto(*h.book, h.f.unit, h.keep(taken)));
  h.book.reset();
  // As after a kill between the correction and the deletion, and between a file and its fact.
  const book::PhotoStore store = book::PhotoStore::beside(h.world.path);
  must(store.put(taken));
  must(store.put(loose));
  writeFile(store.pathOf(book::hashOf(loose)) + ".new-1", "half");
  h.book = h.world.open({}, book::Access::readOnly);
  CHECK(filesIn(store.folder()) == 3);
  h.reopen();
  CHECK(must(store.list()) == std::vector<std::string>{book::hashOf(loose)});
  CHECK(filesIn(store.folder()) == 1);
  const auto verified = must(h.book->verify());
  CHECK(verified.isOk);
  CHECK(verified.photosLeftOver == 1);
}

TEST_CASE("A photo altered by one byte anywhere, cut short, lengthened or put elsewhere is named with its helmet and fact") {
  Held h;
  const std::string jpeg = plainJpeg();
  const std::string fact = h.keep(jpeg), path = h.file(jpeg);
  const auto faults = [&] { return must(h.book->verify()).photoFaults; };
  const auto named = [&](const char* what) { return std::vector<book::PhotoFault>{{h.f.unit, fact, book::hashOf(jpeg), what}}; };
  for (std::size_t i = 0; i < jpeg.size(); ++i) {
    std::string altered = jpeg;
    altered[i] = static_cast<char>(altered[i] ^ 1);
    writeFile(path, altered);
    if (faults() != named("altered")) FAIL("byte " << i);
  }
  writeFile(path, jpeg.substr(0, jpeg.size() - 1));
  CHECK(faults() == named("altered"));
  writeFile(path, jpeg + "x");
  CHECK(faults() == named("altered"));
  writeFile(path, std::string(book::kPhotoBytesMost + 1, 'x'));
  CHECK(faults() == named("altered"));
  writeFile(path, "");
  CHECK(faults() == named("altered"));
  fs::remove(path);
  CHECK(faults() == named("missing"));
  CHECK_FALSE(must(h.book->verify()).isOk);
  writeFile(h.world.folder.at("elsewhere.jpg"), jpeg);
  fs::create_symlink(h.world.folder.at("elsewhere.jpg"), path);
  CHECK(faults() == named("altered"));
  fs::remove(path);
  fs::create_directory(path);
  CHECK(faults() == named("altered"));
  fs::remove(path);
  REQUIRE(::mkfifo(path.c_str(), 0600) == 0);  // nobody writes into it: reading must not wait
  CHECK(faults() == named("altered"));
  fs::remove(path);
  fs::remove(h.book->photos().folder());
  CHECK(faults() == named("missing"));
  // The same bytes kept once more put it right.
  must(h.book->photos().put(jpeg));
  CHECK(must(h.book->verify()).isOk);
}

TEST_CASE("A backup takes the photos along and restoring brings them back; what is missing or altered is said and stops nothing") {
  Held h;
  const std::string whole = plainJpeg(8, 8, {}, "whole"), lost = plainJpeg(8, 8, {}, "lost"), spoilt = plainJpeg(8, 8, {}, "spoilt"),
                    back = plainJpeg(8, 8, {}, "back");
  h.keep(whole);
  const std::string lostFact = h.keep(lost), spoiltFact = h.keep(spoilt);
  must(book::removePhoto(*h.book, h.f.unit, h.keep(back)));
  fs::remove(h.file(lost));
  writeFile(h.file(spoilt), "x");
  const std::string backup = h.world.folder.at("team.backup"), again = h.world.folder.at("again.book");
  const auto saved = must(h.book->backup(backup));
  CHECK(saved.facts == must(h.book->info()).facts);
  CHECK(saved.photos == 1);
  CHECK(saved.photoFaults == std::vector<book::PhotoFault>{{h.f.unit, lostFact, book::hashOf(lost), "missing"},
                                                           {h.f.unit, spoiltFact, book::hashOf(spoilt), "altered"}});
  CHECK(must(book::PhotoStore::beside(backup).list()) == std::vector<std::string>{book::hashOf(whole)});

  const auto restored = must(book::Book::restore(backup, again, h.world.keys, h.world.clock));
  CHECK(restored.photos == 1);
  CHECK(restored.photoFaults.size() == 2);
  const auto copy = h.world.open(again);
  CHECK(must(copy->photos().read(book::hashOf(whole))) == whole);
  CHECK(copy->photos().folder() == again + ".photos");
  CHECK(must(copy->verify()).photoFaults.size() == 2);
  CHECK(must(copy->verify()).faults.empty());

  // A photo altered in the backup is not brought back as if it were whole.
  writeFile(book::PhotoStore::beside(backup).pathOf(book::hashOf(whole)), "x");
  const auto third = must(book::Book::restore(backup, h.world.folder.at("third.book"), h.world.keys, h.world.clock));
  CHECK(third.photos == 0);
  CHECK(third.photoFaults.size() == 3);
  CHECK_FALSE(fs::exists(h.world.folder.at("third.book.photos")));
}

TEST_CASE("A backup or restore that is refused leaves no photos") {
  Held h;
  h.keep(plainJpeg());
  const std::string backup = h.world.folder.at("team.backup");
  writeFile(backup, "mine");
  CHECK(h.book->backup(backup).error().code == ErrorCode::fileExists);
  CHECK_FALSE(fs::exists(backup + ".photos"));
  fs::remove(backup);
  must(h.book->backup(backup));
  writeFile(h.world.folder.at("there.book"), "mine");
  CHECK(book::Book::restore(backup, h.world.folder.at("there.book"), h.world.keys, h.world.clock).error().code == ErrorCode::fileExists);
  CHECK_FALSE(fs::exists(h.world.folder.at("there.book.photos")));
}
