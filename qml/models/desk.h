// SPDX-License-Identifier: Apache-2.0
// Purpose: the screens' way to the Book. A Book lives on its own thread; a Desk lives on the GUI thread, keeps a mirror of the views
// there, and hands jobs over. A job runs on the Book thread against the Book's own views, what it drafts is appended in one durable
// transaction, and only then is `done` called here: the next question shows when the answer is on disk.
// Ownership: the Desk owns thread and Book. Thread: GUI thread only; jobs must not touch Qt objects.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include <QObject>
#include <QString>

#include "core/book/acts.h"
#include "core/book/book.h"
#include "core/ports/ports.h"
#include "core/season/board.h"
#include "core/season/record.h"

namespace snugline::models {

class Desk : public QObject {
  Q_OBJECT
 public:
  using Job = std::function<Result<book::Drafts>(const season::Views& views, Instant now)>;
  using Done = std::function<void(const Result<book::Appended>& outcome)>;
  using MakeClock = std::function<std::unique_ptr<ports::Clock>()>;
  using MakeKeys = std::function<std::unique_ptr<ports::Keys>()>;

  Desk(MakeClock makeClock, MakeKeys makeKeys, QObject* parent = nullptr);
  ~Desk() override;  // waits for what was handed over, checkpoints, closes

  // Opens the file on the Book thread; `opened` or `failed` follows. A missing file is founded with this team.
  void open(const QString& path, const book::TeamFounded& ifMissing);

  [[nodiscard]] bool isOpen() const;
  [[nodiscard]] const std::string& device() const;       // this device's name in the open Book; empty before its first entry
  [[nodiscard]] const book::PhotoStore& photos() const;  // of the open Book; for reading only, photos.h writes
  [[nodiscard]] const season::Views& views() const;      // the mirror, as of the last acknowledged fact; names kept back are out of it
  [[nodiscard]] Instant now() const;                     // the injected clock
  [[nodiscard]] Day today() const;
  void askClock();  // at once, instead of within a second: timeTurned if the minute is another

  // Who the next facts are by; empty when nobody said so.
  void setPerson(const std::string& person);
  [[nodiscard]] const std::string& person() const;

  // A longer piece of work on the Book thread that appends by itself; what it appended comes into the mirror as from submit.
  using Work = std::function<Result<book::Appended>(book::Book& book, Instant now)>;
  void work(Work work, QObject* context, Done done);
  // done is not called once context is gone. Jobs run in the order of the calls.
  void submit(Job job, QObject* context, Done done);
  void correct(std::vector<std::string> facts, QObject* context, Done done);  // all of them in one append: Book::correct
  using Facts = std::function<void(const Result<std::vector<book::Fact>>&)>;
  void history(const std::string& entity, QObject* context, Facts done);
  // One piece of a longer reading, on the Book thread; true: it was the last one. Others' jobs come between the pieces.
  using Reading = std::function<Result<bool>(book::Book& book)>;
  void read(Reading reading, QObject* context, std::function<void(const Result<bool>&)> done);
  void wholeRecord(const std::string& athlete, QObject* context, Facts done);  // core/book/whole_record.h

 signals:
  void opened();
  void failed(const snugline::Error& error);              // the Book could not be opened, or a write failed: nothing was half done
  void changed(const std::vector<std::string>& touched);  // before `done`, after the mirror
  void timeTurned();                                      // another minute by the injected clock: what is shown of now is to be made anew
  void personChanged();

 private:
  struct Body;
  std::unique_ptr<Body> m_body;
};

}  // namespace snugline::models
