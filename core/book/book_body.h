// SPDX-License-Identifier: Apache-2.0
// Purpose: what a Book holds between calls; the sources book_*.cpp share it, nobody else includes it. Thread: the Book's.
#pragma once

#include <exception>
#include <new>
#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <utility>
#include <vector>

#include "core/book/book.h"
#include "core/book/chain.h"
#include "core/book/fact_decode.h"
#include "core/book/fold.h"
#include "core/book/phone.h"
#include "core/book/store.h"

namespace snugline::book {

inline constexpr int kBookFormat = 1;
inline constexpr std::uint32_t kApplicationId = 0x536E7567;  // "Snug"
inline constexpr unsigned kSeatBits = 40;
[[nodiscard]] constexpr std::int64_t seatOf(std::int64_t slot, std::uint64_t n) {
  return (slot << kSeatBits) + static_cast<std::int64_t>(n);
}

// Runs work and turns what a library throws into a Result.
template <typename Work>
auto guarded(const std::string& place, Work&& work) -> decltype(work()) {
  try {
    return work();
  } catch (const std::bad_alloc&) {
    return fail(ErrorCode::outOfMemory, place);
  } catch (const std::exception& problem) {
    return fail(ErrorCode::internal, place, problem.what());
  }
}

struct DeviceEntry {
  std::int64_t slot = 0;
  std::string device;
  std::optional<PublicKey> key;
  std::uint64_t last = 0;  // highest n held
  std::int64_t lastOrder = 0;
  Chain chain{};               // at last
  std::uint64_t sealedTo = 0;  // highest n signed
  std::uint64_t foldedTo = 0;  // highest n in the stored views
  bool isForked = false;
};

// Where one fact stands in the order of all.
struct Place {
  std::int64_t order = 0;
  std::size_t device = 0;  // index into devices
  std::uint64_t n = 0;
};

// Facts of one device, one after the other, that touch one entity.
struct Run {
  std::size_t device = 0;
  std::uint64_t first = 0, count = 0;
  std::int64_t order = 0;  // of the last one
};

struct Book::Body {
  Body(ports::Keys& keysPort, ports::Clock& clockPort) : keys(keysPort), clock(clockPort) {}

  ports::Keys& keys;
  ports::Clock& clock;
  std::string path, who, incarnation;
  Access access = Access::readWrite;
  StoreOptions options;
  Database database;
  PhotoStore photos;
  Statement insertFact, readLine, readRange, readTouches;
  FactDecoder decoder;

  std::vector<DeviceEntry> devices;
  std::unordered_map<std::string, std::size_t> byDevice;
  struct Own {
    std::size_t index = 0;
    SigningKey key;
    ports::Identity identity;
  };
  std::optional<Own> own;  // known after the first write
  bool mustMint = false;   // facts of our own came in from elsewhere
  std::int64_t highestOrder = 0;
  // Device -> athlete, of every phone that ever joined, let go or not; read from the log when facts of others first come in.
  std::optional<std::unordered_map<std::string, std::string>> phones;

  Folded folded;
  std::int64_t highestFolded = 0;
  std::unordered_map<std::string, std::vector<Run>> tail;  // touches not yet stored
  std::size_t tailFacts = 0;
  std::unordered_map<std::string, std::vector<std::string>> corrections;  // fact -> those that correct it
  std::vector<std::pair<std::string, std::string>> tailCorrections;
  bool isFoldNoted = false;   // the file says that this program's fold has made the stored ones
  bool areViewsWhole = true;  // false: the stored ones could not be used, all rows are written at the next checkpoint
  bool isClosing = false;

  // book_store.cpp
  [[nodiscard]] Result<void> prepareStatements();
  [[nodiscard]] Result<void> loadDevices();
  [[nodiscard]] Result<DeviceEntry*> deviceFor(const std::string& device);  // adds it inside the caller's transaction
  [[nodiscard]] Result<void> storeLine(const DeviceEntry& device, std::uint64_t n, std::int64_t order, std::string_view line,
                                       const Chain& chain);
  // Every fact from n = from[device] + 1, in (order, device, n) order. Stops at the first error.
  [[nodiscard]] Result<void> walk(const std::vector<std::uint64_t>& from,
                                  const std::function<Result<void>(const Place&, std::string_view line, std::string_view chain)>& visit);
  [[nodiscard]] bool isBefore(const Place& a, const Place& b) const;

  // book_fold.cpp
  [[nodiscard]] Result<void> loadViews();
  // What several facts at once leave for their end.
  struct Deferred {
    std::unordered_set<std::string> subjects;    // to refold once
    bool areChecksLater = false;                 // checks are not folded fact by fact, as most will have ended
    std::unordered_set<std::string> openChecks;  // those to refold then
  };
  [[nodiscard]] Result<void> foldIn(const Fact& fact, const Place& place, Deferred* deferred = nullptr);
  [[nodiscard]] Result<void> foldDeferred(Deferred& deferred);
  [[nodiscard]] Result<void> refold(const std::string& subject);
  // Stored runs and those of the tail, by device and number, joined where one goes on where the other ends.
  [[nodiscard]] Result<std::vector<Run>> runsOf(const std::string& subject);
  void joinRuns(std::vector<Run>& runs) const;
  void noteTouch(const std::string& subject, const Place& place);
  // Facts that touch the entity, in order; unreadable ones are left out, verify names them.
  [[nodiscard]] Result<std::vector<Fact>> factsOf(const std::string& subject);
  [[nodiscard]] Result<Fact> factAt(std::size_t device, std::uint64_t n);
  [[nodiscard]] Result<std::optional<Fact>> factNamed(const std::string& id);
  [[nodiscard]] bool isCorrected(const std::string& factId) const;
  // notAllowed, kRestsOnIt: something that is not in taken stands on this fact (book_correct.cpp).
  [[nodiscard]] Result<void> checkLast(const Fact& fact, const std::set<std::string>& taken);
  [[nodiscard]] Result<void> checkUnused(const Fact& fact, const std::set<std::string>& taken);
  void noteDevice(const Fact& fact);  // what facts tell of devices: public keys, and who was heard when
  void nameOwnDevice();               // in the views
  // Everything anew, into empty views. Where the chain is asked for, a line that does not go with it is brokenChain.
  [[nodiscard]] Result<std::uint64_t> foldAll(bool isChainChecked);

  // book_receive.cpp
  [[nodiscard]] Result<void> loadPhones();

  // book_append.cpp
  [[nodiscard]] Result<void> prepareWriting();
  [[nodiscard]] Result<std::optional<Own>> knownIdentity(std::string* because);
  [[nodiscard]] Result<void> mint(const std::string& because);
  [[nodiscard]] Result<void> openWal();
  struct Timed {
    Draft draft;
    Instant at;
    const std::string* who;
  };
  [[nodiscard]] Result<std::vector<Fact>> write(std::vector<Timed> drafts);
  [[nodiscard]] Appended appendedOf(const std::vector<Fact>& facts) const;

  // book_rebuild.cpp
  [[nodiscard]] Result<bool> areRowsAsFolded();
  [[nodiscard]] Result<bool> areTouchesAsFolded();

  // book_verify.cpp
  [[nodiscard]] Result<std::uint64_t> verifyDevice(const DeviceEntry& device, std::vector<Fault>& faults,
                                                   const std::function<bool(std::uint64_t)>& progress, std::uint64_t doneBefore);
  struct StoredSegment {
    std::uint64_t first = 0, last = 0;
    Chain chain{};
    Signature signature{};
    bool isWhole = false;  // chain and signature have their lengths
  };
  [[nodiscard]] Result<std::vector<StoredSegment>> segmentsOf(const DeviceEntry& device);

  // book_photos.cpp
  [[nodiscard]] bool isPhotoNamed(const std::string& hash) const;  // by an uncorrected fact
  void dropPhoto(const std::string& hash);                         // the file, where nothing names it any more
  void dropTakenBackPhotos();                                      // what a kill or a failing disk left of those taken back
  void provePhotos(VerifyAnswer& answer) const;

  // book_receive.cpp
  [[nodiscard]] Result<std::vector<Fact>> storeReceived(const std::vector<std::string>& lines);

  // book_phone.cpp
  [[nodiscard]] Result<void> storePhoneSegments(DeviceEntry& device, const std::vector<PhoneSegment>& segments);

  // book_checkpoint.cpp
  [[nodiscard]] Result<void> checkpoint();
  [[nodiscard]] Result<void> seal();
  [[nodiscard]] Result<void> storeViews();
  [[nodiscard]] Result<void> storeTail();
  [[nodiscard]] bool isAnythingWaiting() const;
};

// book_store.cpp
[[nodiscard]] Result<void> examineFile(const std::string& path);
[[nodiscard]] Result<Database> openStore(const std::string& path, Access access, const StoreOptions& options);
[[nodiscard]] Result<void> migrate(Database& database, int from);
[[nodiscard]] Result<Database> createStore(const std::string& path, const StoreOptions& options);
[[nodiscard]] std::string placeMark(const std::string& path);  // "device:inode", empty when there is no file
// Gives a finished file its name without ever replacing another.
[[nodiscard]] Result<void> nameFile(const std::string& from, const std::string& to);
[[nodiscard]] std::string temporaryName(const std::string& path);
void removeStore(const std::string& path);
inline constexpr std::array<std::pair<Entity, const char*>, 6> kViewTables{{{Entity::team, "view_team"},
                                                                            {Entity::person, "view_people"},
                                                                            {Entity::sheet, "view_sheets"},
                                                                            {Entity::athlete, "view_athletes"},
                                                                            {Entity::unit, "view_units"},
                                                                            {Entity::check, "view_checks"}}};
// book_photos.cpp: every photo that the views name, proved and put into another folder. made: hashes of files that were not there before.
[[nodiscard]] Result<void> copyPhotos(const season::Views& views, const PhotoStore& from, const PhotoStore& to, CopyAnswer& answer,
                                      std::vector<std::string>& made);
void takeAway(const PhotoStore& store, const std::vector<std::string>& made);
// view_devices.cpp: season::Views::devices as one text, a line a device, and back. False: it is none.
[[nodiscard]] std::string devicesText(const season::Views& views);
[[nodiscard]] bool readDevices(std::string_view text, season::Views& views);
// Calls visit(key, row) for every row of one kind, keys ascending.
void eachRow(const Folded& folded, Entity entity, const std::function<void(const std::string& key, std::string&& row)>& visit);
// One row, nothing when the entity is not there.
[[nodiscard]] std::optional<std::string> rowAt(const Folded& folded, Entity entity, const std::string& key);

}  // namespace snugline::book
