// SPDX-License-Identifier: Apache-2.0
// From a tag to a helmet that is in: what is read, asked, written and taken back.
#include <algorithm>

#include "core/book/acts_dock.h"
#include "core/book/acts_season.h"
#include "core/season/turn.h"
#include "qml/models/collect_model.h"
#include "qml/models/scan_reading.h"
#include "qml/models/sentences_gear.h"

namespace snugline::models {

namespace {

constexpr std::size_t kJerseyDigits = 3;
constexpr std::size_t kStraysMost = 50;

bool isJersey(const std::string& read) {
  return !read.empty() && read.size() <= kJerseyDigits &&
         std::all_of(read.begin(), read.end(), [](char c) { return c >= '0' && c <= '9'; });
}

std::string deviceIn(const std::string& fact) { return fact.substr(0, fact.rfind(':')); }

}  // namespace

void CollectModel::begin() {
  m_isOpen = true;
  forgetQuestions();
  m_query.clear();
  findGivers();
  findLast();
  emit changed();
}

void CollectModel::leave() {
  m_isOpen = false;
  m_waiting.clear();
}

void CollectModel::forgetQuestions() {
  m_refusal.clear();
  m_meant.clear();
  m_away.clear();
  m_stray.reset();
  m_asked.clear();
}

void CollectModel::scan(const QString& text) {
  if (text.trimmed().isEmpty() || !m_desk->isOpen()) return;
  if (m_isBusy) {
    m_waiting.push_back(text);
    return;
  }
  read(text);
}

void CollectModel::read(const QString& text) {
  forgetQuestions();
  const ScanReading reading = readScan(text, m_desk->today());
  if (!reading.tag) {
    m_meant = reading.meant;
    m_refusal = reading.refusal;
    emit changed();
    return;
  }
  book::TagMeaning meaning = book::meaningOf(m_desk->views(), *reading.tag);
  if (meaning.units.empty() && isJersey(reading.read)) {
    // A number was typed and no tag: whose helmet is meant is asked, not guessed.
    for (const auto& [id, athlete] : m_desk->views().athletes) {
      if (athlete.jersey == reading.read) meaning.units.insert(meaning.units.end(), athlete.units.begin(), athlete.units.end());
    }
    std::sort(meaning.units.begin(), meaning.units.end());
    if (!meaning.units.empty()) {
      m_asked = std::move(meaning.units);
      m_askedScan = reading.read;
      emit changed();
      return;
    }
  }
  if (meaning.units.size() == 1) return place(meaning.units.front());
  m_askedScan = reading.read;
  if (meaning.units.empty()) {
    m_refusal = reading.doubt;
    m_meant = reading.meant;
    m_stray = *reading.tag;
    std::erase(m_strays, reading.read);
    m_strays.push_back(reading.read);
    if (m_strays.size() > kStraysMost) m_strays.erase(m_strays.begin());
  } else {
    m_asked = std::move(meaning.units);
  }
  emit changed();
}

void CollectModel::place(const std::string& id) {
  const season::UnitRecord* helmet = unit(id);
  if (helmet == nullptr || !m_desk->views().team) return;
  const bool isIn = season::isCollected(*helmet, m_desk->views().team->season);
  const bool isAway = helmet->place == season::UnitPlace::repair || helmet->place == season::UnitPlace::sentOut;
  if (isAway && !isIn) {
    m_away = id;
    emit changed();
    return;
  }
  write(id, std::nullopt);
}

void CollectModel::takeMeant() {
  if (m_meant.empty()) return;
  const QString meant = text(m_meant);
  forgetQuestions();
  scan(meant);
}

void CollectModel::chooseAsked(const QString& id) {
  const bool isOne = std::find(m_asked.begin(), m_asked.end(), utf8(id)) != m_asked.end();
  if (!isOne || m_isBusy) return;
  forgetQuestions();
  place(utf8(id));
}

void CollectModel::putAside() {
  forgetQuestions();
  emit changed();
}

void CollectModel::sayBack(const QString& by, const QString& done, const QString& paper, bool isCleaned) {
  if (m_away.empty() || m_isBusy) return;
  const std::string id = m_away;
  forgetQuestions();
  m_lastReturn = season::ReturnRecord{utf8(by), utf8(done.trimmed()), utf8(paper.trimmed()), isCleaned, {}};
  write(id, m_lastReturn);
}

void CollectModel::takeStray() {
  if (!m_stray || m_isBusy) return;
  const gear::Tag tag = *m_stray;
  const std::string read = m_askedScan;
  forgetQuestions();
  submit([tag](const season::Views& views, Instant now) { return book::handInNew(views, tag, dayOf(now)); },
         [this, read](const book::Appended& appended) {
           std::erase(m_strays, read);
           m_lastUnit = appended.ids.empty() ? std::string() : appended.ids.front();
           m_lastCame = Came::isNew;
           if (const season::UnitRecord* helmet = unit(m_lastUnit))
             m_last.did(appended.ids, tr("Taken in, on hold: %1").arg(text(helmet->serial)), m_lastUnit);
           emit counted(text(m_lastUnit));
         });
}

void CollectModel::handIn(const QString& id) {
  if (m_isBusy) return;
  forgetQuestions();
  place(utf8(id));
}

void CollectModel::write(const std::string& id, const std::optional<season::ReturnRecord>& returned) {
  const season::UnitRecord* helmet = unit(id);
  if (helmet == nullptr) return;
  const Came came = returned                                   ? Came::wasBack
                    : helmet->place == season::UnitPlace::lost ? Came::wasLost
                    : helmet->athletes.empty()                 ? Came::fromShelf
                                                               : Came::fromAthlete;
  const QString serial = text(helmet->serial);
  submit(
      [id, returned](const season::Views& views, Instant now) {
        return book::handIn(views, {id, {}, returned}, now);
      },
      [this, id, came, serial](const book::Appended& appended) {
        if (appended.ids.empty()) {
          // The same tag once more, perhaps in the same second: what is shown of it stays.
          if (m_lastUnit != id) m_lastCame = Came::already;
          m_lastUnit = id;
          return;
        }
        m_lastUnit = id;
        m_lastCame = came;
        m_last.did(appended.ids, tr("Handed in: %1").arg(serial), id);
        emit counted(text(id));
      });
}

void CollectModel::markLost(const QString& id, const QString& reason) {
  if (m_isBusy) return;
  forgetQuestions();
  const season::UnitRecord* helmet = unit(utf8(id));
  const QString serial = helmet == nullptr ? QString() : text(helmet->serial);
  submit([unit = utf8(id), why = utf8(reason.trimmed())](const season::Views& views,
                                                         Instant) { return book::move(views, unit, "lost", {}, why); },
         [this, serial](const book::Appended& appended) { m_last.did(appended.ids, tr("Marked as lost: %1").arg(serial)); });
}

void CollectModel::hold(const QString& what) {
  const season::UnitRecord* helmet = unit(m_lastUnit);
  if (m_isBusy || helmet == nullptr) return;
  const QString serial = text(helmet->serial);
  submit([unit = m_lastUnit, words = utf8(what.trimmed())](const season::Views& views,
                                                           Instant) { return book::hold(views, unit, "other", words, false); },
         [this, serial](const book::Appended& appended) { m_last.did(appended.ids, tr("On hold: %1").arg(serial), m_lastUnit); });
}

void CollectModel::submit(Desk::Job job, std::function<void(const book::Appended&)> then) {
  m_isBusy = true;
  emit changed();
  m_desk->submit(std::move(job), this, [this, then = std::move(then)](const Result<book::Appended>& outcome) {
    if (outcome) {
      then(*outcome);
    } else {
      m_refusal = errorSentence(outcome.error());
    }
    finished();
  });
}

void CollectModel::finished() {
  m_isBusy = false;
  findGivers();
  emit changed();
  if (m_waiting.empty()) return;
  const QString next = m_waiting.front();
  m_waiting.pop_front();
  read(next);
}

// Only what is not known yet is looked up: by its fact, one read each.
void CollectModel::findGivers() {
  if (m_isFinding || !m_desk->isOpen()) return;
  std::vector<std::string> facts;
  for (const season::UnitRecord* helmet : collectedUnits()) {
    if (!m_givers.contains(helmet->collected->stamp.fact)) facts.push_back(helmet->collected->stamp.fact);
  }
  if (facts.empty()) return;
  m_isFinding = true;
  auto found = std::make_shared<std::map<std::string, std::string>>();
  m_desk->read(
      [facts, found](book::Book& book) -> Result<bool> {
        for (const std::string& id : facts) {
          const auto fact = book.fact(id);
          if (!fact) return tl::unexpected<Error>(fact.error());
          const auto* collected = std::get_if<book::UnitCollected>(&fact->body);
          (*found)[id] = collected == nullptr ? std::string() : collected->athlete;
        }
        return true;
      },
      this,
      [this, found](const Result<bool>& outcome) {
        m_isFinding = false;
        if (!outcome) m_refusal = errorSentence(outcome.error());
        m_givers.insert(found->begin(), found->end());
        emit changed();
        if (outcome) findGivers();  // what came in while it was read
      });
}

// After a restart: what this device handed in last, today, is shown as the last, and can be taken back.
void CollectModel::findLast() {
  if (!m_lastUnit.empty()) return;
  for (const season::UnitRecord* helmet : collectedUnits()) {
    const season::Stamp& stamp = helmet->collected->stamp;
    if (deviceIn(stamp.fact) != m_desk->device() || dayOf(stamp.at) != m_desk->today()) continue;
    m_lastUnit = helmet->id;
    m_lastCame = Came::fromAthlete;
    if (m_last.words().isEmpty()) m_last.did({stamp.fact}, tr("Handed in: %1").arg(text(helmet->serial)), helmet->id);
    return;
  }
}

void CollectModel::undoLast() {
  if (m_isBusy) return;
  forgetQuestions();
  m_last.undo();
}

}  // namespace snugline::models
