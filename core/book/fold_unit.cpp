// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"
#include "core/season/season_air.h"

namespace snugline::book {

namespace {

using season::UnitPlace;
using season::UnitRecord;

std::string_view deviceIn(std::string_view factId) { return factId.substr(0, factId.rfind(':')); }

// In question while another device's latest reading differs from the last one, until two readings agree after it.
bool isInQuestion(const std::vector<UnitNotes::Reading>& readings) {
  if (readings.empty()) return false;
  const auto& last = readings.back();
  int agreeing = 0;  // with the last one, after the reading looked at
  std::vector<std::string_view> seen;
  for (auto it = readings.rbegin(); it != readings.rend(); ++it) {
    const std::string_view device = deviceIn(it->fact);
    if (it->label == last.label) {
      ++agreeing;
    } else if (device != deviceIn(last.fact) && std::find(seen.begin(), seen.end(), device) == seen.end() && agreeing < 2) {
      return true;
    }
    seen.push_back(device);
  }
  return false;
}

struct UnitFold {
  UnitRecord& record;
  UnitNotes& notes;
  const Fact& fact;

  void operator()(const UnitReceived& b) const {
    if (fact.id() != record.id) {
      if (record.lot.empty()) record.lot = b.lot;
      // A unit that was taken in by its tag alone: its model and size are said later, once.
      if (!record.sheet.empty()) return;
      record.sheet = b.sheet;
      record.size = b.size;
      return;
    }
    record.serial = b.serial;
    record.tagKey = b.tagKey;
    record.sheet = b.sheet;
    record.size = b.size;
    record.made = b.made;
    record.lot = b.lot;
    record.received = stampOf(fact);
  }
  void operator()(const LabelRead& b) const {
    notes.readings.push_back({fact.id(), b.label});
    record.isLabelUnreadable = !b.label && b.isUnreadable;
    record.isLabelMissing = !b.label && !b.isUnreadable;
    if (b.label) record.labels.push_back({*b.label, stampOf(fact)});
    record.isLabelDisputed = isInQuestion(notes.readings);
  }
  void operator()(const PointsSeen& b) const {
    for (const auto& [point, finding] : b.points) {
      // "All seven sound" at one touch of a check never undoes a fault.
      const bool isFault = record.points.glance(point).state == gear::PointState::fault;
      if (isFault && b.isGroup && !b.check.empty() && finding.state == gear::PointState::sound) continue;
      record.points.see(point, {finding, stampOf(fact), b.isGroup});
    }
  }
  void operator()(const UnitHeld& b) const {
    record.holds.push_back({fact.id(), b.reason, b.what, stampOf(fact), b.notice});
    whereNow(b.isWithAthlete);
  }
  void operator()(const HoldReleased& b) const {
    std::erase_if(record.holds, [&](const auto& hold) { return hold.fact == b.hold; });
  }
  void operator()(const UnitMoved& b) const {
    if (b.to == "shelf") {
      record.shelf = b.where;
      return;
    }
    if (b.to == "in-hand" || b.to == "with-athlete") return whereNow(b.to == "with-athlete");
    const UnitPlace here = record.athletes.empty() ? UnitPlace::shelf : UnitPlace::withAthlete;
    if (b.to == "in-service") {
      record.isInService = true;
      record.place = here;
    } else if (b.to == "back") {
      record.isInService = false;
      record.place = here;
      record.points = {};  // back from elsewhere: everything is open again
      record.returned = b.returned;
      record.returned->stamp = stampOf(fact);
      season::forgetAir(record);
      notes.readings.clear();
      record.isLabelDisputed = false;
    } else {
      const std::optional<UnitPlace> away = b.to == "repair"     ? std::optional(UnitPlace::repair)
                                            : b.to == "sent-out" ? std::optional(UnitPlace::sentOut)
                                            : b.to == "retired"  ? std::optional(UnitPlace::retired)
                                            : b.to == "lost"     ? std::optional(UnitPlace::lost)
                                                                 : std::nullopt;
      if (!away) return;
      record.isInService = false;
      record.place = *away;
    }
    record.placeWords = b.where;
    if (b.to != "in-service") whereNow(false);
  }
  void whereNow(bool isWithAthlete) const {
    record.isInHand = !isWithAthlete && !record.athletes.empty();
    if (!isWithAthlete) record.keptBy.clear();
  }
  void operator()(const UnitPaired& b) const {
    std::erase(record.athletes, b.athlete);
    record.athletes.push_back(b.athlete);
    record.isInHand = false;
    record.keptBy.clear();
    if (record.place == UnitPlace::shelf) record.place = UnitPlace::withAthlete;
  }
  void operator()(const UnitUnpaired& b) const {
    std::erase(record.athletes, b.athlete);
    if (record.athletes.empty()) record.isInHand = false;
    if (b.isStillWith) record.keptBy = b.athlete;
    if (record.athletes.empty() && record.place == UnitPlace::withAthlete) record.place = UnitPlace::shelf;
  }
  void operator()(const UnitCollected& b) const { foldCollected(record, fact, b); }
  void operator()(const PhotoTaken& b) const { foldPhoto(record, fact, b); }

  // Facts that change no unit.
  void operator()(const SeasonClosed&) const {}
  void operator()(const PartChanged&) const {}
  void operator()(const CheckEnded& b) const {
    foldPumped(record, fact, b);
    record.isInHand = false;  // it was on the head
  }
  void operator()(const TeamFounded&) const {}
  void operator()(const DeviceAdmitted&) const {}
  void operator()(const PersonAdded&) const {}
  void operator()(const PersonChanged&) const {}
  void operator()(const CodeSet&) const {}
  void operator()(const AthleteAdded&) const {}
  void operator()(const AthleteChanged&) const {}
  void operator()(const TapeRead&) const {}
  void operator()(const ReadingSetAside&) const {}
  void operator()(const SheetAdopted&) const {}
  void operator()(const CheckBegun&) const {}
  void operator()(const CheckAnswered& b) const { foldAir(record, fact, b); }
  void operator()(const UnitAirRead& b) const { foldAir(record, fact, b); }
  void operator()(const Said&) const {}
  void operator()(const SaidFollowed&) const {}
  void operator()(const SaidAcknowledged&) const {}
  void operator()(const HairChanged&) const {}
  void operator()(const PracticeSet&) const {}
  void operator()(const WeatherNoted&) const {}
  void operator()(const PlaceSet&) const {}
  void operator()(const LineSeen&) const {}
  void operator()(const RecoverySet&) const {}
  void operator()(const WarningSet&) const {}
  void operator()(const WarningSigned&) const {}
  void operator()(const RetentionSet&) const {}
  void operator()(const EmergencySet&) const {}
  void operator()(const LegalHoldMade&) const {}
  void operator()(const LegalHoldEnded&) const {}
  void operator()(const NoticeIssued&) const {}
  void operator()(const PhoneJoined&) const {}
  void operator()(const PhoneLeft&) const {}
  void operator()(const Corrected&) const {}
  void operator()(const NoteAdded&) const {}
  void operator()(const Unknown&) const {}
};

}  // namespace

void foldUnit(UnitRecord& record, UnitNotes& notes, const Fact& fact) { std::visit(UnitFold{record, notes, fact}, fact.body); }

}  // namespace snugline::book
