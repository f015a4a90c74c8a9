// SPDX-License-Identifier: Apache-2.0
// Photos on a disk that is full, cannot be written or loses its power, and a program that is killed between a file and its fact.
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>

#include SNUGLINE_CATCH_HEADER
#include "book_world.h"
#include "core/book/fold.h"
#include "core/book/photos.h"
#include "photo_bytes.h"

using namespace snugline;
using namespace snugline::test;
namespace fs = std::filesystem;

namespace {

// The k-th call of the disk answers with this errno, and every one after it while it is broken for good.
struct BrokenDisk {
  int failAt = 0, reason = 0, calls = 0;
  bool isForGood = false;
  [[nodiscard]] bool fails() {
    ++calls;
    if (failAt == 0 || calls < failAt || (calls > failAt && !isForGood)) return false;
    errno = reason;
    return true;
  }
};
book::DiskCalls through(BrokenDisk& disk) {
  const book::DiskCalls plain = book::plainDisk();
  return {// A disk that fills up takes some of the bytes first.
          [&disk, plain](int file, const char* bytes, std::size_t count) {
            return disk.fails() ? std::int64_t{-1} : plain.write(file, bytes, count > 7 ? count / 2 : count);
          },
          [&disk, plain](int file) { return disk.fails() ? -1 : plain.sync(file); },
          [&disk, plain](const char* from, const char* to) { return disk.fails() ? -1 : plain.rename(from, to); }};
}

std::size_t filesIn(const std::string& folder) {
  return fs::exists(folder) ? static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), {})) : 0;
}

}  // namespace

TEST_CASE("A photo that a failing disk stops leaves neither file nor fact, whichever call fails, and says why") {
  struct Sort {
    int reason;
    ErrorCode said;
  };
  for (const Sort sort : {Sort{ENOSPC, ErrorCode::diskFull}, Sort{EROFS, ErrorCode::readOnly}, Sort{EIO, ErrorCode::cannotWrite}}) {
    for (const bool isForGood : {false, true}) {
      for (int k = 1;; ++k) {
        World world;
        BrokenDisk disk;
        world.create().reset();
        book::StoreOptions options;
        options.photoDisk = through(disk);
        const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, options));
        const Fitting f = pairUp(*book, world.today());
        const auto facts = must(book->info()).facts;
        disk = {k, sort.reason, 0, isForGood};
        const auto kept = book::keepPhoto(*book, {f.unit}, plainJpeg());
        if (disk.calls < k) {
          CHECK(kept.has_value());
          CHECK(k > 8);  // halves of the bytes, the file, the rename, both folders
          break;
        }
        INFO("call " << k);
        REQUIRE_FALSE(kept);
        CHECK(kept.error().code == sort.said);
        CHECK(must(book->info()).facts == facts);
        CHECK(filesIn(book->photos().folder()) == 0);
        CHECK(must(book->verify()).isOk);
        // The disk came back.
        disk = {};
        CHECK(book::keepPhoto(*book, {f.unit}, plainJpeg()).has_value());
        CHECK(must(book->verify()).photos == 1);
      }
    }
  }
}

TEST_CASE("A backup that a full disk stops while photos are copied is not there, nor are its photos") {
  World world;
  BrokenDisk disk;
  world.create().reset();
  book::StoreOptions options;
  options.photoDisk = through(disk);
  const auto book = must(book::Book::open(world.path, book::Access::readWrite, world.keys, world.clock, options));
  const Fitting f = pairUp(*book, world.today());
  for (const char* words : {"one", "two", "three"}) must(book::keepPhoto(*book, {f.unit}, plainJpeg(8, 8, {}, words)));
  const std::string backup = world.folder.at("team.backup");
  for (const int k : {1, 5, 12, 20}) {
    INFO("call " << k);
    disk = {k, ENOSPC, 0, false};
    const auto saved = book->backup(backup);
    REQUIRE_FALSE(saved);
    CHECK(saved.error().code == ErrorCode::diskFull);
    CHECK_FALSE(fs::exists(backup));
    CHECK_FALSE(fs::exists(backup + ".photos"));
  }
  disk = {};
  CHECK(must(book->backup(backup)).photos == 3);
}

TEST_CASE("A picture that cannot be deleted now is deleted when the Book is next opened") {
  World world;
  world.create().reset();
  const std::string jpeg = plainJpeg();
  const std::string path = book::PhotoStore::beside(world.path).pathOf(book::hashOf(jpeg));
  {
    const auto book = world.open();
    const Fitting f = pairUp(*book, world.today());
    const std::string fact = must(book::keepPhoto(*book, {f.unit}, jpeg)).ids.front();
    // A folder of the file's name that holds something cannot be unlinked by anybody.
    fs::remove(path);
    fs::create_directory(path);
    must(book::removePhoto(*book, f.unit, fact));
    CHECK(fs::exists(path));
  }
  fs::remove(path);
  writeFile(path, jpeg);
  world.open().reset();
  CHECK_FALSE(fs::exists(path));
}

TEST_CASE("Killed anywhere while photos are kept and taken back: every fact has its file, and no file is half") {
  World world;
  std::string unit;
  {
    const auto book = world.create();
    unit = pairUp(*book, world.today()).unit;
  }
  for (const int stop : {1, 2, 3, 7, 12, 20}) {
    int ends[2];
    REQUIRE(::pipe(ends) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
      ::close(ends[0]);
      const auto book = world.tryOpen();
      if (!book) _exit(1);
      for (std::uint32_t i = 1;; ++i) {
        const std::string jpeg = plainJpeg(8, 8, {}, std::to_string(stop) + " " + std::to_string(i) + std::string(40'000, 'x'));
        const auto kept = book::keepPhoto(**book, {unit}, jpeg);
        if (!kept) _exit(2);
        if (i % 3 == 0 && !book::removePhoto(**book, unit, kept->ids.front())) _exit(3);
        if (::write(ends[1], &i, sizeof i) != static_cast<ssize_t>(sizeof i)) _exit(4);
      }
    }
    ::close(ends[1]);
    std::uint32_t done = 0;
    while (done < static_cast<std::uint32_t>(stop) && ::read(ends[0], &done, sizeof done) == static_cast<ssize_t>(sizeof done)) {
    }
    ::kill(child, SIGKILL);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    CHECK(WIFSIGNALED(status));
    ::close(ends[0]);
    const auto book = world.open();
    const auto verified = must(book->verify());
    CHECK(verified.isOk);
    CHECK(verified.photos >= static_cast<std::uint64_t>(stop - stop / 3));
    CHECK(verified.photosLeftOver <= 6);  // one a kill at most
    for (const auto& hash : must(book->photos().list())) CHECK(book->photos().read(hash).has_value());
    CHECK(filesIn(book->photos().folder()) == must(book->photos().list()).size());
  }
}
