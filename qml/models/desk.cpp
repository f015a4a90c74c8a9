// SPDX-License-Identifier: Apache-2.0
#include "desk.h"

#include <new>
#include <optional>
#include <utility>

#include <QMetaObject>
#include <QPointer>
#include <QThread>
#include <QTimer>

#include "core/book/whole_record.h"
#include "core/season/privacy.h"

namespace snugline::models {

// What decides whose name is kept back, beside the athlete.
struct Retention {
  std::optional<int> years;
  bool isHeld = false;
  friend bool operator==(const Retention&, const Retention&) = default;
};

namespace {

// What the mirror has to take over after one append: copies of the records that changed, and the ids that are no more.
struct Patch {
  std::optional<season::TeamRecord> team;
  std::string ownDevice;
  std::map<std::string, season::DeviceRecord> devices;
  std::optional<std::map<std::string, season::PersonRecord>> people;
  std::optional<std::unordered_map<std::string, season::SheetRecord>> sheets;
  std::vector<season::AthleteRecord> athletes;
  std::vector<season::UnitRecord> units;
  std::vector<std::pair<std::string, season::CheckRecord>> checks;
  std::vector<std::string> gone;
};

void copyInto(Patch& patch, const season::Views& views, const std::string& id) {
  bool isKnown = false;
  if (const auto athlete = views.athletes.find(id); athlete != views.athletes.end()) {
    patch.athletes.push_back(athlete->second);
    isKnown = true;
  }
  if (const auto unit = views.units.find(id); unit != views.units.end()) {
    patch.units.push_back(unit->second);
    isKnown = true;
  }
  if (const auto check = views.openChecks.find(id); check != views.openChecks.end()) {
    patch.checks.emplace_back(id, check->second);
    isKnown = true;
  }
  if (!isKnown) patch.gone.push_back(id);
}

Retention retentionOf(const season::Views& views) {
  return views.team ? Retention{views.team->nameYears, !views.team->legalHolds.empty()} : Retention{};
}

// People and sheets are few and rarely change, so a changed count or a touched id hands over the whole map.
Patch patchOf(const season::Views& views, const book::Appended& appended, std::size_t knownPeople, std::size_t knownSheets) {
  Patch patch;
  patch.team = views.team;
  patch.ownDevice = views.ownDevice;
  patch.devices = views.devices;
  bool arePeopleTouched = views.people.size() != knownPeople, areSheetsTouched = views.sheets.size() != knownSheets;
  for (const std::string& id : appended.touched) {
    if (views.people.contains(id)) arePeopleTouched = true;
    if (views.sheets.contains(id)) areSheetsTouched = true;
    copyInto(patch, views, id);
  }
  if (arePeopleTouched) patch.people = views.people;
  if (areSheetsTouched) patch.sheets = views.sheets;
  return patch;
}

void apply(season::Views& mirror, Patch&& patch) {
  mirror.team = std::move(patch.team);
  mirror.ownDevice = std::move(patch.ownDevice);
  mirror.devices = std::move(patch.devices);
  if (patch.people) mirror.people = std::move(*patch.people);
  if (patch.sheets) mirror.sheets = std::move(*patch.sheets);
  for (const std::string& id : patch.gone) {
    mirror.openChecks.erase(id);
    mirror.athletes.erase(id);
    mirror.units.erase(id);
  }
  for (season::AthleteRecord& athlete : patch.athletes) {
    // A check that the athlete no longer has open has ended, also where the append did not name it.
    if (const auto old = mirror.athletes.find(athlete.id); old != mirror.athletes.end() && old->second.openCheck != athlete.openCheck) {
      mirror.openChecks.erase(old->second.openCheck);
    }
    std::string id = athlete.id;
    mirror.athletes.insert_or_assign(std::move(id), std::move(athlete));
  }
  for (season::UnitRecord& unit : patch.units) {
    std::string id = unit.id;
    mirror.units.insert_or_assign(std::move(id), std::move(unit));
  }
  for (auto& [id, check] : patch.checks) mirror.openChecks.insert_or_assign(id, std::move(check));
}

std::int64_t minuteOf(Instant at) {
  constexpr std::int64_t kMinuteMs = 60'000;
  return at.ms / kMinuteMs;
}

template <typename Work>
auto guarded(Work&& work) -> decltype(work()) {
  try {
    return work();
  } catch (const std::bad_alloc&) {
    return fail(ErrorCode::outOfMemory);
  } catch (const std::exception& problem) {
    return fail(ErrorCode::internal, {}, problem.what());
  }
}

}  // namespace

// Lives on the Book thread; everything here but the constructor runs there.
struct Bench : QObject {
  std::unique_ptr<ports::Clock> clock;
  std::unique_ptr<ports::Keys> keys;
  std::unique_ptr<book::Book> book;
  std::size_t knownPeople = 0;
  std::size_t knownSheets = 0;
  Retention knownRetention;

  Result<book::Appended> append(book::Drafts drafts) { return book->append(std::move(drafts)); }
  Patch patch(const book::Appended& appended) {
    Patch made = patchOf(book->views(), appended, knownPeople, knownSheets);
    knownPeople = book->views().people.size();
    knownSheets = book->views().sheets.size();
    const Retention retention = retentionOf(book->views());
    if (retention != knownRetention) {
      for (const auto& [id, athlete] : book->views().athletes) made.athletes.push_back(athlete);
    }
    knownRetention = retention;
    for (season::AthleteRecord& athlete : made.athletes) season::keepNameBack(book->views().team, athlete, dayOf(clock->now()));
    return made;
  }
};

struct Desk::Body {
  MakeClock makeClock;
  MakeKeys makeKeys;
  std::unique_ptr<ports::Clock> clock;  // the GUI thread's own
  season::Views mirror;
  std::string person;
  book::PhotoStore photos;
  QTimer second;
  std::int64_t minute = 0;  // of the clock, as last told
  bool isOpen = false;
  QThread thread;
  Bench* bench = nullptr;  // deleted on its own thread

  // Runs work on the Book thread, in the order handed over.
  template <typename Work>
  void post(Work&& work) {
    QMetaObject::invokeMethod(bench, std::forward<Work>(work), Qt::QueuedConnection);
  }
};

Desk::Desk(MakeClock makeClock, MakeKeys makeKeys, QObject* parent) : QObject(parent), m_body(std::make_unique<Body>()) {
  m_body->makeClock = std::move(makeClock);
  m_body->makeKeys = std::move(makeKeys);
  m_body->clock = m_body->makeClock();
  m_body->bench = new Bench;
  m_body->bench->moveToThread(&m_body->thread);
  m_body->thread.setObjectName(QStringLiteral("Book"));
  m_body->thread.start();
  // Days turn and practices pass while the glass lies on the bench, and a device that slept wakes at another hour.
  constexpr int kSecondMs = 1000;
  m_body->minute = minuteOf(m_body->clock->now());
  m_body->second.setInterval(kSecondMs);
  connect(&m_body->second, &QTimer::timeout, this, &Desk::askClock);
  m_body->second.start();
}

void Desk::askClock() {
  const std::int64_t minute = minuteOf(now());
  if (std::exchange(m_body->minute, minute) != minute && m_body->isOpen) emit timeTurned();
}

Desk::~Desk() {
  Bench* bench = m_body->bench;
  QThread* thread = &m_body->thread;
  m_body->post([bench, thread] {
    bench->book.reset();
    delete bench;
    thread->quit();
  });
  m_body->thread.wait();
}

void Desk::open(const QString& path, const book::TeamFounded& ifMissing) {
  Bench* bench = m_body->bench;
  const MakeClock& makeClock = m_body->makeClock;
  const MakeKeys& makeKeys = m_body->makeKeys;
  m_body->post([this, bench, makeClock, makeKeys, file = path.toStdString(), ifMissing] {
    bench->clock = makeClock();
    bench->keys = makeKeys();
    auto outcome = guarded([&]() -> Result<std::unique_ptr<book::Book>> {
      auto made = book::Book::create(file, ifMissing, *bench->keys, *bench->clock);
      if (made || made.error().code != ErrorCode::fileExists) return made;
      return book::Book::open(file, book::Access::readWrite, *bench->keys, *bench->clock);
    });
    if (!outcome) {
      QMetaObject::invokeMethod(
          this, [this, error = outcome.error()] { emit failed(error); }, Qt::QueuedConnection);
      return;
    }
    bench->book = std::move(*outcome);
    bench->knownPeople = bench->book->views().people.size();
    bench->knownSheets = bench->book->views().sheets.size();
    bench->knownRetention = retentionOf(bench->book->views());
    auto copy = std::make_shared<season::Views>(bench->book->views());
    season::keepNamesBack(*copy, dayOf(bench->clock->now()));
    QMetaObject::invokeMethod(
        this,
        [this, copy, photos = bench->book->photos()] {
          m_body->photos = photos;
          m_body->mirror = std::move(*copy);
          m_body->isOpen = true;
          emit opened();
        },
        Qt::QueuedConnection);
  });
}

const std::string& Desk::device() const { return m_body->mirror.ownDevice; }
const book::PhotoStore& Desk::photos() const { return m_body->photos; }
bool Desk::isOpen() const { return m_body->isOpen; }
const season::Views& Desk::views() const { return m_body->mirror; }
Instant Desk::now() const { return m_body->clock->now(); }
Day Desk::today() const { return dayOf(now()); }
const std::string& Desk::person() const { return m_body->person; }

void Desk::setPerson(const std::string& person) {
  if (m_body->person == person) return;
  m_body->person = person;
  m_body->post([bench = m_body->bench, person] {
    if (bench->book) bench->book->setPerson(person);
  });
  emit personChanged();
}

// One write on the Book thread: `make` says what to append (or corrects), and the outcome comes back with the patch of the mirror.
template <typename Write>
static void runWrite(Bench& bench, Desk* desk, const QPointer<QObject>& context, Desk::Done done, Write&& write,
                     const std::function<void(Patch&&)>& take) {
  bool isWriteFault = false;
  Result<book::Appended> outcome = guarded([&]() -> Result<book::Appended> {
    if (!bench.book) return fail(ErrorCode::notFound, "book");
    return write(isWriteFault);
  });
  auto patch = std::make_shared<Patch>();
  if (outcome) *patch = bench.patch(*outcome);
  QMetaObject::invokeMethod(
      desk,
      [desk, context, done = std::move(done), outcome = std::move(outcome), patch, take, isWriteFault] {
        if (outcome) {
          take(std::move(*patch));
          emit desk->changed(outcome->touched);
        } else if (isWriteFault) {
          emit desk->failed(outcome.error());
        }
        if (context && done) done(outcome);
      },
      Qt::QueuedConnection);
  // Sealing and the stored views come after the answer has been handed back, so that no answer waits for them.
  if (!bench.book || !bench.book->isCheckpointDue()) return;
  if (const auto sealed = guarded([&] { return bench.book->checkpoint(); }); !sealed) {
    QMetaObject::invokeMethod(
        desk, [desk, error = sealed.error()] { emit desk->failed(error); }, Qt::QueuedConnection);
  }
}

void Desk::submit(Job job, QObject* context, Done done) {
  m_body->post([this, bench = m_body->bench, job = std::move(job), context = QPointer<QObject>(context), done = std::move(done)] {
    runWrite(
        *bench, this, context, done,
        [&](bool& isWriteFault) -> Result<book::Appended> {
          auto drafts = job(bench->book->views(), bench->clock->now());
          if (!drafts) return tl::unexpected<Error>(drafts.error());
          if (drafts->empty()) return book::Appended{};
          auto appended = bench->append(std::move(*drafts));
          isWriteFault = !appended;
          return appended;
        },
        [this](Patch&& patch) { apply(m_body->mirror, std::move(patch)); });
  });
}

void Desk::correct(std::vector<std::string> facts, QObject* context, Done done) {
  m_body->post([this, bench = m_body->bench, facts = std::move(facts), context = QPointer<QObject>(context), done = std::move(done)] {
    runWrite(
        *bench, this, context, done, [&](bool&) -> Result<book::Appended> { return bench->book->correct(facts); },
        [this](Patch&& patch) { apply(m_body->mirror, std::move(patch)); });
  });
}

// Read on the Book thread and handed back here.
template <typename Answer, typename Read>
static void readHere(Bench& bench, Desk* desk, const QPointer<QObject>& context, std::function<void(const Answer&)> done, Read&& read) {
  auto answer = guarded([&]() -> Answer {
    if (!bench.book) return fail(ErrorCode::notFound, "book");
    return read(*bench.book);
  });
  QMetaObject::invokeMethod(
      desk,
      [context, done = std::move(done), answer = std::move(answer)] {
        if (context && done) done(answer);
      },
      Qt::QueuedConnection);
}

void Desk::work(Work work, QObject* context, Done done) {
  m_body->post([this, bench = m_body->bench, work = std::move(work), context = QPointer<QObject>(context), done = std::move(done)] {
    runWrite(
        *bench, this, context, done, [&](bool&) -> Result<book::Appended> { return work(*bench->book, bench->clock->now()); },
        [this](Patch&& patch) { apply(m_body->mirror, std::move(patch)); });
  });
}

void Desk::history(const std::string& entity, QObject* context, Facts done) {
  m_body->post([this, bench = m_body->bench, entity, context = QPointer<QObject>(context), done = std::move(done)] {
    readHere(*bench, this, context, done, [&](book::Book& book) { return book.history(entity); });
  });
}

void Desk::read(Reading reading, QObject* context, std::function<void(const Result<bool>&)> done) {
  m_body->post([this, bench = m_body->bench, reading = std::move(reading), context = QPointer<QObject>(context), done = std::move(done)] {
    readHere(*bench, this, context, done, reading);
  });
}

void Desk::wholeRecord(const std::string& athlete, QObject* context, Facts done) {
  m_body->post([this, bench = m_body->bench, athlete, context = QPointer<QObject>(context), done = std::move(done)] {
    readHere(*bench, this, context, done, [&](book::Book& book) { return book::wholeRecord(book, athlete); });
  });
}

}  // namespace snugline::models
