// SPDX-License-Identifier: Apache-2.0
// Purpose: one Book file: the log, the views kept from it, and this device's identity in it. One process, one connection: a second opener
// gets bookInUse. Every append is durable (one sync) before it returns, and views follow in memory at once; the stored views are a
// checkpoint that is brought up to the log at close, at a seal and after a kill (BOOK_FORMAT.md, Views).
// Thread: a Book is confined to one thread. No exception leaves it.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/book/chain.h"
#include "core/book/fact.h"
#include "core/book/photo_store.h"
#include "core/ports/ports.h"
#include "core/season/record.h"

namespace snugline::book {

// What is wrong with one fact or device. what: "altered", "missing", "forked", "unsigned", "unreadable".
struct Fault {
  std::string device;
  std::uint64_t n = 0;
  std::string what;
  friend bool operator==(const Fault&, const Fault&) = default;
};
// A photo that an uncorrected fact names, and what is wrong with its file. what: "missing", "altered", "unreadable".
struct PhotoFault {
  std::string unit, fact, photo, what;
  friend bool operator==(const PhotoFault&, const PhotoFault&) = default;
};
struct VerifyAnswer {
  std::uint64_t facts = 0;
  std::vector<Fault> faults;
  std::uint64_t photos = 0;  // files that hold, each counted once
  std::vector<PhotoFault> photoFaults;
  std::uint64_t photosLeftOver = 0;  // files that no uncorrected fact names; harmless
  bool isOk = true;                  // neither faults nor photoFaults
};
// What was backed up or restored; photos that were missing or altered were left out.
struct CopyAnswer {
  std::uint64_t facts = 0, photos = 0;
  std::vector<PhotoFault> photoFaults;
};
struct DeviceState {
  std::string device;
  std::uint64_t facts = 0;
  std::uint64_t sealedTo = 0;
  bool isOwn = false;
};
struct InfoAnswer {
  std::uint64_t facts = 0;
  std::vector<DeviceState> devices;
  std::string team, season;
  int format = 0;
};

struct Appended {
  std::vector<std::string> ids;      // of the new facts, in order
  std::vector<std::string> touched;  // entities whose records changed
};

struct PhoneReports;
struct SignedWords {
  PublicKey publicKey{};  // of this device
  Signature signature{};
};

enum class Access : std::uint8_t { readWrite, readOnly };

// For a long history at once (demo, import): each draft with its own time and person. The clock is not asked.
struct BulkDraft {
  Draft draft;
  Instant at;
  std::string who;
};
// How a file is reached. vfs: name of an SQLite VFS that the process has registered; empty for the ordinary one.
struct StoreOptions {
  std::string vfs;
  DiskCalls photoDisk = plainDisk();  // what photos are written through
};
// More own facts than this since the last checkpoint and append() makes one itself, after its own commit.
inline constexpr std::uint64_t kFactsBeforeCheckpoint = 256;
inline constexpr std::uint64_t kFactsBeforeForcedCheckpoint = 4096;

class Book {
 public:
  // A new file: team-founded by this device. Errors: fileExists, cannotWrite, noKey.
  [[nodiscard]] static Result<std::unique_ptr<Book>> create(const std::string& path, const TeamFounded& team, ports::Keys& keys,
                                                            ports::Clock& clock, const StoreOptions& options = {});
  // Errors: cannotRead, notABook, damagedBook, newerBook, bookInUse, readOnly.
  [[nodiscard]] static Result<std::unique_ptr<Book>> open(const std::string& path, Access access, ports::Keys& keys, ports::Clock& clock,
                                                          const StoreOptions& options = {});
  ~Book();  // checkpoint and close; never throws
  Book(const Book&) = delete;
  Book& operator=(const Book&) = delete;

  void setPerson(const std::string& who);  // who the next facts are by
  [[nodiscard]] const season::Views& views() const;
  [[nodiscard]] const season::UnitRecord* unitByTag(const std::string& tagKey) const;  // hash look-up

  // Who may do what: rights.h. Errors of append and correct also: notAllowed with a rule of it.
  // All or nothing, one transaction, one sync. A draft may name an earlier one of the same call as "#0", "#1" in its ids.
  [[nodiscard]] Result<Appended> append(std::vector<Draft> drafts);
  // Takes all these facts out of the fold, latest first, in one append; what was taken out before is passed over. All or nothing: notFound,
  // or notAllowed with rule::kRestsOnIt where a later fact that is not in the list stands on one of them (undo.h).
  [[nodiscard]] Result<Appended> correct(const std::vector<std::string>& facts);

  // Many drafts in one transaction with one sync; ids are returned in order. "#0" names the first draft of this call. Call it in pieces of
  // some ten thousand. The Book's identity comes from Keys: a Keys that gives a fixed seed and mark makes the same bytes every time.
  [[nodiscard]] Result<std::vector<std::string>> appendBulk(std::vector<BulkDraft> drafts);

  // True once kFactsBeforeCheckpoint own facts are waiting: call checkpoint() when the answer has been acknowledged.
  [[nodiscard]] bool isCheckpointDue() const;
  // Signs what is not yet signed and brings the stored views up to the log. Cheap when nothing is new.
  [[nodiscard]] Result<void> checkpoint();

  // Facts about one entity, in order, corrected ones included.
  [[nodiscard]] Result<std::vector<Fact>> history(const std::string& entity);
  // One fact by its id. Errors: notFound, and those of the codec.
  [[nodiscard]] Result<Fact> fact(const std::string& id);
  // The log in pieces, in the order of all facts: at most so many from where the cursor stands, each with whether it counts (nothing took
  // it back). True: there are more. Unreadable ones are left out, verify names them.
  struct Cursor {
    std::map<std::string, std::uint64_t> read;  // by device, the last n
  };
  using Reading = std::function<void(Fact&& fact, bool counts)>;
  [[nodiscard]] Result<bool> read(Cursor& cursor, std::size_t most, const Reading& visit);
  // Facts of other devices as lines, late and in any order, those of one device contiguous from what is held; all or nothing. What a device
  // writes that ever joined as an athlete's phone is held to PHONE_FORMAT.md: else notAllowed with kPhoneOther, place: the fact.
  [[nodiscard]] Result<Appended> receive(const std::vector<std::string>& lines);

  // What an athlete's phone wrote (phone_exchange.h asks first whether it may): new lines into the log, with the segments that prove them.
  // Errors: notAllowed with kPhoneTwice where a held line has other bytes; then nothing is taken.
  [[nodiscard]] Result<Appended> receivePhone(const PhoneReports& reports);
  [[nodiscard]] std::int64_t highestOrder() const;
  // Signed with this device's key, which is made when there is none yet. words begin with a mark of their own, so that none of them can be
  // taken for a segment.
  [[nodiscard]] Result<SignedWords> signWords(std::string_view words);

  [[nodiscard]] Result<VerifyAnswer> verify(const std::function<bool(std::uint64_t done)>& progress = {});
  [[nodiscard]] Result<InfoAnswer> info();
  // Views made anew from the log, compared with the kept ones, then stored.
  struct RebuildAnswer {
    std::uint64_t facts = 0;
    bool wasEqual = true;
  };
  [[nodiscard]] Result<RebuildAnswer> rebuild();
  // Every view row, ordered by table and key, one "table\tkey\tvalue" a line. Equal means equal.
  [[nodiscard]] Result<std::string> dumpViews();

  // Segments in one file (BOOK_FORMAT.md, Backup); written beside and renamed. Errors: fileExists, diskFull, cannotWrite.
  // The photos that the Book names go along, beside it.
  [[nodiscard]] Result<CopyAnswer> backup(const std::string& path);
  // A new Book file from a backup, with its photos; every segment is checked first. The next writer gets a new identity.
  [[nodiscard]] static Result<CopyAnswer> restore(const std::string& backupPath, const std::string& bookPath, ports::Keys& keys,
                                                  ports::Clock& clock);

  // Where the photos lie (photos.h keeps and removes them).
  [[nodiscard]] const PhotoStore& photos() const;

 private:
  struct Body;
  explicit Book(std::unique_ptr<Body> body);
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::book
