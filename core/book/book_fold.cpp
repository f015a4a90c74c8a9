// SPDX-License-Identifier: Apache-2.0
// Views kept from the log: loading them, folding what is new, folding an entity anew when a fact comes late or is corrected.
#include <algorithm>
#include <charconv>
#include <tuple>

#include "core/book/book_body.h"
#include "core/book/fact_json.h"
#include "core/book/view_rows.h"

namespace snugline::book {

namespace {

template <typename Map, typename Visit>
void eachKey(const Map& map, const Visit& visit) {
  std::vector<const std::string*> keys;
  keys.reserve(map.size());
  for (const auto& entry : map) keys.push_back(&entry.first);
  std::sort(keys.begin(), keys.end(), [](const auto* a, const auto* b) { return *a < *b; });
  for (const std::string* key : keys) visit(*key);
}

template <typename Map>
const typename Map::mapped_type& notesAt(const Map& map, const std::string& key) {
  static const typename Map::mapped_type kNone{};
  const auto it = map.find(key);
  return it == map.end() ? kNone : it->second;
}

}  // namespace

std::optional<std::string> rowAt(const Folded& folded, Entity entity, const std::string& key) {
  const season::Views& views = folded.views;
  const auto row = [&](const auto& map, const auto& make) -> std::optional<std::string> {
    const auto it = map.find(key);
    return it == map.end() ? std::nullopt : std::optional<std::string>(make(it->second));
  };
  switch (entity) {
    case Entity::team:
      return views.team && views.team->id == key ? std::optional<std::string>(rowOf(*views.team)) : std::nullopt;
    case Entity::person:
      return row(views.people, [](const auto& r) { return rowOf(r); });
    case Entity::sheet:
      return row(views.sheets, [](const auto& r) { return rowOf(r); });
    case Entity::athlete:
      return row(views.athletes, [&](const auto& r) { return rowOf(r, notesAt(folded.athleteNotes, key)); });
    case Entity::unit:
      return row(views.units, [&](const auto& r) { return rowOf(r, notesAt(folded.unitNotes, key)); });
    case Entity::check:
      return row(views.openChecks, [&](const auto& r) { return rowOf(r, notesAt(folded.checkNotes, key)); });
    case Entity::other:
      return std::nullopt;
  }
  return std::nullopt;
}

void eachRow(const Folded& folded, Entity entity, const std::function<void(const std::string&, std::string&&)>& visit) {
  const season::Views& views = folded.views;
  const auto give = [&](const std::string& key) {
    if (auto row = rowAt(folded, entity, key)) visit(key, std::move(*row));
  };
  switch (entity) {
    case Entity::team:
      if (views.team) give(views.team->id);
      return;
    case Entity::person:
      return eachKey(views.people, give);
    case Entity::sheet:
      return eachKey(views.sheets, give);
    case Entity::athlete:
      return eachKey(views.athletes, give);
    case Entity::unit:
      return eachKey(views.units, give);
    case Entity::check:
      return eachKey(views.openChecks, give);
    case Entity::other:
      return;
  }
}

Result<void> Book::Body::loadViews() {
  auto list = database.prepare("SELECT fact, by FROM corrections");
  if (!list) return tl::unexpected<Error>(list.error());
  while (true) {
    const auto row = list->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (!*row) break;
    corrections[std::string(list->bytes(0))].emplace_back(list->bytes(1));
  }
  auto sign = database.prepare("SELECT value FROM meta WHERE key = 'folds'");
  if (!sign) return tl::unexpected<Error>(sign.error());
  const auto noted = sign->step();
  if (!noted) return tl::unexpected<Error>(noted.error());
  isFoldNoted = *noted && sign->bytes(0) == foldSign();
  sign->reset();
  auto heard = database.prepare("SELECT value FROM meta WHERE key = 'heard'");
  if (!heard) return tl::unexpected<Error>(heard.error());
  const auto isHeard = heard->step();
  if (!isHeard) return tl::unexpected<Error>(isHeard.error());
  RowReader reader;
  // What a program made that knew other kinds lacks what came of theirs.
  bool isReadable = isFoldNoted && *isHeard && readDevices(heard->bytes(0), folded.views);
  heard->reset();
  for (const auto& [entity, table] : kViewTables) {
    auto rows = database.prepare(std::string("SELECT key, value FROM ") + table);
    if (!rows) return tl::unexpected<Error>(rows.error());
    while (isReadable) {
      const auto row = rows->step();
      if (!row) return tl::unexpected<Error>(row.error());
      if (!*row) break;
      isReadable = reader.read(entity, rows->bytes(0), rows->bytes(1), folded);
    }
  }
  for (const DeviceEntry& device : devices) {
    if (device.foldedTo > device.last) isReadable = false;  // views of facts that are no longer there
  }
  if (!isReadable) {
    const auto anew = foldAll(false);
    return anew ? Result<void>() : Result<void>(tl::unexpected<Error>(anew.error()));
  }

  // What was folded before the last stop is in the rows; the rest is folded now, and some of it may come late.
  std::vector<std::uint64_t> from;
  for (const DeviceEntry& device : devices) from.push_back(device.foldedTo);
  auto newest = database.prepare("SELECT max(ord) FROM facts WHERE seat > ?1 AND seat <= ?2");
  if (!newest) return tl::unexpected<Error>(newest.error());
  for (const DeviceEntry& device : devices) {
    // Order grows with n, so the last folded fact of a device is its highest.
    newest->bind(1, seatOf(device.slot, device.foldedTo) - 1).bind(2, seatOf(device.slot, device.foldedTo));
    const auto row = newest->step();
    if (!row) return tl::unexpected<Error>(row.error());
    if (*row) highestFolded = std::max(highestFolded, newest->integer(0));
    newest->reset();
  }
  Deferred deferred;
  const auto done = walk(from, [&](const Place& place, std::string_view line, std::string_view) -> Result<void> {
    auto fact = decoder.decode(line, devices[place.device].device);
    if (!fact) return {};  // verify names it; the rest of the Book stays readable
    return foldIn(*fact, place, &deferred);
  });
  return done ? foldDeferred(deferred) : done;
}

Result<std::uint64_t> Book::Body::foldAll(bool isChainChecked) {
  folded = {};
  nameOwnDevice();
  tail.clear();
  corrections.clear();
  tailCorrections.clear();
  highestFolded = 0;
  tailFacts = 0;
  areViewsWhole = false;
  std::vector<Chain> chains;
  for (DeviceEntry& device : devices) {
    device.foldedTo = 0;
    chains.push_back(chainStart(device.device));
  }
  std::uint64_t count = 0;
  Deferred deferred;
  deferred.areChecksLater = true;
  const auto done = walk({}, [&](const Place& place, std::string_view line, std::string_view stored) -> Result<void> {
    ++count;
    const std::string& device = devices[place.device].device;
    if (isChainChecked) {
      Chain& chain = chains[place.device];
      chain = chainStep(chain, line);
      if (bytesOf(chain) != stored) return fail(ErrorCode::brokenChain, device + ':' + std::to_string(place.n));
    }
    auto fact = decoder.decode(line, device);
    if (!fact) return {};
    return foldIn(*fact, place, &deferred);
  });
  if (!done) return tl::unexpected<Error>(done.error());
  if (auto ok = foldDeferred(deferred); !ok) return tl::unexpected<Error>(ok.error());
  return count;
}

Result<void> Book::Body::foldDeferred(Deferred& deferred) {
  deferred.subjects.merge(deferred.openChecks);
  for (const std::string& subject : deferred.subjects) {
    if (auto ok = refold(subject); !ok) return ok;
  }
  folded.settle();
  return {};
}

void Book::Body::noteDevice(const Fact& fact) {
  season::DeviceRecord& heard = folded.views.devices[fact.device];
  if (heard.latest.ms <= fact.at.ms) heard = {fact.at, fact.who};
  const auto note = [&](const std::string& device, const std::string& hex) {
    PublicKey key{};
    const auto known = byDevice.find(device);
    if (known != byDevice.end() && fromHex(hex, key) && deviceOf(key) == device) devices[known->second].key = key;
  };
  if (const auto* founded = std::get_if<TeamFounded>(&fact.body)) note(fact.device, founded->publicKey);
  if (const auto* admitted = std::get_if<DeviceAdmitted>(&fact.body)) note(admitted->device, admitted->publicKey);
  if (const auto* joined = std::get_if<PhoneJoined>(&fact.body)) {
    note(joined->device, joined->publicKey);
    if (phones) phones->emplace(joined->device, fact.about);
  }
}

bool Book::Body::isCorrected(const std::string& factId) const {
  const auto it = corrections.find(factId);
  if (it == corrections.end()) return false;
  // A correction that was itself corrected counts no more. Each names an earlier fact, so this ends.
  return std::any_of(it->second.begin(), it->second.end(), [&](const std::string& by) { return by != factId && !isCorrected(by); });
}

Result<Fact> Book::Body::factAt(std::size_t device, std::uint64_t n) {
  const std::string name = devices[device].device + ':' + std::to_string(n);
  readLine.bind(1, seatOf(devices[device].slot, n));
  const auto row = readLine.step();
  if (!row) return tl::unexpected<Error>(row.error());
  if (!*row) {
    readLine.reset();
    return fail(ErrorCode::notFound, name);
  }
  auto fact = decoder.decode(readLine.bytes(0), name);
  readLine.reset();
  return fact;
}

Result<std::optional<Fact>> Book::Body::factNamed(const std::string& id) {
  const auto colon = id.rfind(':');
  if (colon == std::string::npos) return std::optional<Fact>();
  const auto known = byDevice.find(id.substr(0, colon));
  std::uint64_t n = 0;
  const auto [end, error] = std::from_chars(id.data() + colon + 1, id.data() + id.size(), n);
  if (known == byDevice.end() || error != std::errc() || end != id.data() + id.size()) return std::optional<Fact>();
  if (n == 0 || n > devices[known->second].last) return std::optional<Fact>();
  auto fact = factAt(known->second, n);
  if (!fact) return tl::unexpected<Error>(fact.error());
  return std::optional<Fact>(std::move(*fact));
}

void Book::Body::noteTouch(const std::string& subject, const Place& place) {
  std::vector<Run>& runs = tail[subject];
  if (!runs.empty() && runs.back().device == place.device && runs.back().first + runs.back().count == place.n) {
    ++runs.back().count;
    runs.back().order = place.order;
  } else {
    runs.push_back({place.device, place.n, 1, place.order});
  }
}

void Book::Body::joinRuns(std::vector<Run>& runs) const {
  std::sort(runs.begin(), runs.end(), [&](const Run& a, const Run& b) {
    return std::pair(devices[a.device].slot, a.first) < std::pair(devices[b.device].slot, b.first);
  });
  std::size_t kept = 0;
  for (std::size_t i = 1; i < runs.size(); ++i) {
    Run& before = runs[kept];
    if (before.device == runs[i].device && before.first + before.count == runs[i].first) {
      before.count += runs[i].count;
      before.order = runs[i].order;
    } else {
      runs[++kept] = runs[i];
    }
  }
  if (!runs.empty()) runs.resize(kept + 1);
}

Result<std::vector<Run>> Book::Body::runsOf(const std::string& subject) {
  std::vector<Run> runs;
  // Rows that cannot be used do not count when everything is folded anew.
  if (areViewsWhole) {
    std::unordered_map<std::int64_t, std::size_t> bySlot;
    for (std::size_t i = 0; i < devices.size(); ++i) bySlot.emplace(devices[i].slot, i);
    readTouches.bind(1, std::string_view(subject));
    while (true) {
      const auto row = readTouches.step();
      if (!row) return tl::unexpected<Error>(row.error());
      if (!*row) break;
      const auto device = bySlot.find(readTouches.integer(0));
      if (device == bySlot.end()) continue;
      const auto first = static_cast<std::uint64_t>(readTouches.integer(1)), count = static_cast<std::uint64_t>(readTouches.integer(2));
      runs.push_back({device->second, first, count, readTouches.integer(3)});
    }
    readTouches.reset();
  }
  if (const auto it = tail.find(subject); it != tail.end()) runs.insert(runs.end(), it->second.begin(), it->second.end());
  joinRuns(runs);
  return runs;
}

Result<std::vector<Fact>> Book::Body::factsOf(const std::string& subject) {
  const auto runs = runsOf(subject);
  if (!runs) return tl::unexpected<Error>(runs.error());
  std::vector<Fact> facts;
  for (const Run& run : *runs) {
    const std::int64_t slot = devices[run.device].slot;
    readRange.bind(1, seatOf(slot, run.first)).bind(2, seatOf(slot, run.first + run.count));
    while (true) {
      const auto row = readRange.step();
      if (!row) return tl::unexpected<Error>(row.error());
      if (!*row) break;
      auto fact = decoder.decode(readRange.bytes(1), devices[run.device].device);
      if (fact) facts.push_back(std::move(*fact));
    }
    readRange.reset();
  }
  // Runs come device by device; mostly there is one, and this finds everything in place.
  std::sort(facts.begin(), facts.end(),
            [](const Fact& a, const Fact& b) { return std::tie(a.order, a.device, a.n) < std::tie(b.order, b.device, b.n); });
  return facts;
}

Result<void> Book::Body::refold(const std::string& subject) {
  const auto facts = factsOf(subject);
  if (!facts) return tl::unexpected<Error>(facts.error());
  const auto entityOf = [&](const Fact& fact) {
    const Touches all(fact);
    const auto touch = std::find_if(all.begin(), all.end(), [&](const Touch& t) { return *t.id == subject; });
    return touch == all.end() ? Entity::other : touch->entity;
  };
  for (const Fact& fact : *facts) folded.forget(entityOf(fact), subject);
  for (const Fact& fact : *facts) {
    if (!isCorrected(fact.id())) folded.take(fact, entityOf(fact), subject);
  }
  if (folded.changed[static_cast<std::size_t>(Entity::sheet)].contains(subject)) folded.restate(subject);
  return {};
}

Result<void> Book::Body::foldIn(const Fact& fact, const Place& place, Deferred* deferred) {
  noteDevice(fact);
  const Touches touched(fact);
  const bool mayBeLate = fact.order <= highestFolded;
  highestFolded = std::max(highestFolded, fact.order);
  ++tailFacts;
  const auto anew = [&](const std::string& subject) -> Result<void> {
    if (deferred == nullptr) return refold(subject);
    deferred->subjects.insert(subject);
    return {};
  };
  if (const auto* corrected = std::get_if<Corrected>(&fact.body)) {
    for (const Touch& touch : touched) noteTouch(*touch.id, place);
    corrections[corrected->fact].push_back(fact.id());
    tailCorrections.emplace_back(corrected->fact, fact.id());
    std::vector<std::string> subjects = corrected->touches;
    auto named = factNamed(corrected->fact);
    if (named && *named) {
      for (std::string& subject : touches(**named)) {
        if (std::find(subjects.begin(), subjects.end(), subject) == subjects.end()) subjects.push_back(std::move(subject));
      }
    }
    for (const std::string& subject : subjects) {
      if (auto ok = anew(subject); !ok) return ok;
    }
    if (deferred == nullptr) folded.settle();
    return {};
  }
  const bool isOut = !corrections.empty() && isCorrected(fact.id());
  for (const Touch& touch : touched) {
    const bool isWaiting = deferred != nullptr && deferred->subjects.contains(*touch.id);
    bool isLate = false;
    if (mayBeLate && !isOut && !isWaiting) {
      const auto runs = runsOf(*touch.id);
      if (!runs) return tl::unexpected<Error>(runs.error());
      const auto after = [&](const Run& run) { return isBefore(place, {run.order, run.device, run.first + run.count - 1}); };
      isLate = std::any_of(runs->begin(), runs->end(), after);
    }
    noteTouch(*touch.id, place);
    if (isOut || isWaiting) continue;
    if (isLate) {
      if (auto ok = anew(*touch.id); !ok) return ok;
    } else if (deferred != nullptr && deferred->areChecksLater && touch.entity == Entity::check) {
      if (std::holds_alternative<CheckBegun>(fact.body)) deferred->openChecks.insert(*touch.id);
      if (std::holds_alternative<CheckEnded>(fact.body)) deferred->openChecks.erase(*touch.id);
    } else {
      folded.take(fact, touch.entity, *touch.id);
    }
  }
  if (deferred == nullptr) folded.settle();
  return {};
}

}  // namespace snugline::book
