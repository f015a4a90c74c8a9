// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;
using season::EndedCheck;
using season::SaidRecord;

bool endsWith(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

bool isEveryMarkSeen(const EndedCheck& ended) {
  return std::none_of(ended.strip.begin(), ended.strip.end(), [](fit::Finding f) { return f == fit::Finding::unseen; });
}

// Two devices may end one check; the worse of the two verdicts stands.
int badness(fit::Verdict verdict) {
  switch (verdict) {
    case fit::Verdict::fits:
      return 0;
    case fit::Verdict::unfinished:
      return 1;
    case fit::Verdict::adjust:
      return 2;
    case fit::Verdict::doNotWear:
      return 3;
  }
  return 3;
}

// Whether the check saw what the word is about. Whoever recorded the check says what was left open in its reasons.
bool isAnsweredBy(const SaidRecord& said, const EndedCheck& ended) {
  if (said.isUnwell) return false;  // only a person closes that
  const auto left = [&](std::string_view code) {
    return std::find(ended.reasons.begin(), ended.reasons.end(), code) != ended.reasons.end();
  };
  const bool isBroken = said.isBroken || said.feels == fit::Feels::broke;
  if (isBroken && left("broken")) return false;
  if (said.isHairChanged && (ended.kind == fit::CheckKind::look || !isEveryMarkSeen(ended))) return false;
  if (said.where) {
    const std::string open = std::string(fit::code(*said.where)) + "-said";
    return ended.strip[static_cast<std::size_t>(*said.where)] != fit::Finding::unseen && !left(open);
  }
  if (isBroken) return ended.verdict != fit::Verdict::unfinished;
  const bool isWordLeft = std::any_of(ended.reasons.begin(), ended.reasons.end(), [](const auto& r) { return endsWith(r, "-said"); });
  return isEveryMarkSeen(ended) && !isWordLeft;
}

struct AthleteFold {
  AthleteRecord& record;
  AthleteNotes& notes;
  const Fact& fact;

  void pairings() const {
    record.units.clear();
    for (const auto& pairing : notes.pairings) record.units.push_back(pairing.unit);
    if (notes.pairings.empty()) {
      record.pairedAs.clear();
      record.paired.reset();
    } else {
      record.pairedAs = notes.pairings.back().stamp.fact;
      record.paired = notes.pairings.back().stamp;
    }
  }
  void openCheck() const { record.openCheck = notes.open.empty() ? std::string() : notes.open.back().check; }

  void operator()(const AthleteAdded& b) const {
    if (fact.id() != record.id) return;
    record.jersey = b.jersey;
    record.family = b.family;
    record.given = b.given;
    record.birthYear = b.birthYear;
    record.added = stampOf(fact);
  }
  void operator()(const AthleteChanged& b) const {
    if (b.jersey) record.jersey = *b.jersey;
    if (b.family) record.family = *b.family;
    if (b.given) record.given = *b.given;
    if (b.birthYear) record.birthYear = b.birthYear;
    if (!b.isOnRoster) return;
    if (*b.isOnRoster) {
      record.left.reset();
    } else if (!record.left) {
      record.left = stampOf(fact);
    }
    record.isOnRoster = *b.isOnRoster;
  }
  void operator()(const TapeRead& b) const {
    const auto known = std::find_if(record.tapes.begin(), record.tapes.end(), [&](const auto& t) { return t.stamp.fact == b.with; });
    const bool isFirst = known == record.tapes.end();
    season::TapeRecord& tape = isFirst ? record.tapes.emplace_back() : *known;
    if (isFirst) tape.stamp = stampOf(fact);
    for (std::size_t i = 0; i < b.readings.size(); ++i) {
      tape.readings.push_back(b.readings[i]);
      tape.names.push_back(fact.id() + '/' + std::to_string(i));
    }
  }
  void operator()(const ReadingSetAside& b) const {
    const std::string name = b.tape + '/' + std::to_string(b.place);
    for (season::TapeRecord& tape : record.tapes) {
      const auto found = std::find(tape.names.begin(), tape.names.end(), name);
      if (found == tape.names.end()) continue;
      const auto reading = tape.readings.begin() + (found - tape.names.begin());
      tape.aside.push_back({*reading, name, b.reason, stampOf(fact)});
      tape.readings.erase(reading);
      tape.names.erase(found);
    }
  }
  void operator()(const PartChanged& b) const {
    const bool isFirst = !record.partChanged || notes.partUnit != fact.about;
    if (isFirst) forgetParts();
    // All nine stay all nine, whatever else was changed.
    const bool isAllNine = b.reopens == fit::MarkSet{} || (!isFirst && record.partMarks == fit::MarkSet{});
    record.partMarks = isAllNine ? fit::MarkSet{} : record.partMarks | b.reopens;
    if (b.reopens != fit::MarkSet{}) record.changedParts.push_back(b.part);
    record.partChanged = stampOf(fact);
    notes.partUnit = fact.about;
  }
  void forgetParts() const {
    record.partChanged.reset();
    record.partMarks = {};
    record.changedParts.clear();
    notes.partUnit.clear();
  }
  void operator()(const UnitPaired&) const {
    const auto same = [&](const auto& p) { return p.unit == fact.about; };
    std::erase_if(notes.pairings, same);
    notes.pairings.push_back({fact.about, stampOf(fact)});
    record.had.reset();
    pairings();
  }
  void operator()(const UnitUnpaired& b) const {
    const bool hadIt = std::any_of(notes.pairings.begin(), notes.pairings.end(), [&](const auto& p) { return p.unit == fact.about; });
    handBack();
    if (hadIt && notes.pairings.empty()) record.had = season::HadRecord{fact.about, b.reason, stampOf(fact)};
  }
  void operator()(const UnitCollected& b) const {
    if (b.athlete == record.id) {
      handBack();
      if (notes.pairings.empty()) record.had.reset();
    }
  }
  void handBack() const {
    std::erase_if(notes.pairings, [&](const auto& p) { return p.unit == fact.about; });
    pairings();
    if (notes.partUnit != fact.about) return;
    forgetParts();
  }
  void operator()(const CheckBegun& b) const {
    AthleteNotes::OpenCheck open;
    open.check = fact.id();
    open.unit = b.unit;
    if (record.hairChanged) open.hairFact = record.hairChanged->fact;
    if (record.partChanged) open.partFact = record.partChanged->fact;
    open.saidBefore = record.said.size();
    for (const WordRef& word : b.words) open.words.push_back(word.said);
    notes.open.push_back(std::move(open));
    openCheck();
  }
  void operator()(const CheckEnded& b) const {
    EndedCheck ended = b.outcome;
    ended.check = fact.about;
    ended.unit = b.unit;
    ended.stamp = stampOf(fact);
    ended.climate = season::climateOf(b.conditions);
    const auto known = std::find_if(notes.open.begin(), notes.open.end(), [&](const auto& o) { return o.check == fact.about; });
    const bool isFirstEnd = known != notes.open.end();
    if (isFirstEnd) {
      settle(*known, ended);
      notes.open.erase(known);
      openCheck();
    }
    std::erase_if(notes.saidIn, [&](const auto& entry) { return entry.second == fact.about; });
    if (isFirstEnd) {
      record.checks.push_back(std::move(ended));
      return;
    }
    const auto before = std::find_if(record.checks.begin(), record.checks.end(), [&](const auto& c) { return c.check == fact.about; });
    if (before == record.checks.end()) {
      record.checks.push_back(std::move(ended));
    } else if (badness(ended.verdict) >= badness(before->verdict)) {
      record.checks.erase(before);
      record.checks.push_back(std::move(ended));
    }
  }
  void settle(const AthleteNotes::OpenCheck& begun, const EndedCheck& ended) const {
    for (std::size_t i = 0; i < record.said.size(); ++i) {
      SaidRecord& said = record.said[i];
      if (said.isAnswered) continue;
      const auto in = notes.saidIn.find(said.fact);
      const bool isNamed = std::find(begun.words.begin(), begun.words.end(), said.fact) != begun.words.end();
      const bool isWithin = in != notes.saidIn.end() && in->second == begun.check;
      // Words without a place are not put to the guide one by one; having been there when it began is enough.
      const bool isPlain = !said.where && !said.isBroken && i < begun.saidBefore;
      if ((isNamed || isWithin || isPlain) && isAnsweredBy(said, ended)) said.isAnswered = true;
    }
    if (!isEveryMarkSeen(ended)) return;
    const bool isFit = ended.kind != fit::CheckKind::look;
    if (isFit && record.hairChanged && record.hairChanged->fact == begun.hairFact) record.hairChanged.reset();
    if (record.partChanged && record.partChanged->fact == begun.partFact && notes.partUnit == ended.unit) {
      forgetParts();
    }
  }
  void operator()(const Said& b) const {
    SaidRecord said = b.said;
    said.fact = fact.id();
    said.at = fact.at;
    if (!b.check.empty()) notes.saidIn[said.fact] = b.check;
    record.said.push_back(std::move(said));
  }
  void operator()(const SaidFollowed& b) const { follow(record.said, b); }
  void operator()(const SaidAcknowledged& b) const { acknowledge(record.said, b); }
  void operator()(const HairChanged&) const { record.hairChanged = stampOf(fact); }

  void operator()(const LineSeen& b) const {
    record.lines.push_back({b.unit, b.brow, b.straps, b.hold, season::climateOf(b.conditions), stampOf(fact)});
  }

  void operator()(const WarningSigned& b) const {
    record.signatures.push_back({b.season, b.text, b.language, b.as, b.initials, b.isOnPaper, stampOf(fact)});
  }
  void operator()(const LegalHoldMade& b) const { foldHold(record.legalHolds, fact, b); }
  void operator()(const LegalHoldEnded& b) const { foldHold(record.legalHolds, b); }

  void operator()(const PhoneJoined& b) const {
    std::erase_if(record.phones, [&](const auto& phone) { return phone.device == b.device; });
    record.phones.push_back({b.device, b.publicKey, stampOf(fact)});
  }
  void operator()(const PhoneLeft& b) const {
    std::erase_if(record.phones, [&](const auto& phone) { return phone.device == b.device; });
  }

  // Facts that touch no athlete.
  void operator()(const SeasonClosed&) const {}
  void operator()(const PhotoTaken&) const {}
  void operator()(const NoticeIssued&) const {}
  void operator()(const TeamFounded&) const {}
  void operator()(const DeviceAdmitted&) const {}
  void operator()(const PersonAdded&) const {}
  void operator()(const PersonChanged&) const {}
  void operator()(const CodeSet&) const {}
  void operator()(const SheetAdopted&) const {}
  void operator()(const UnitReceived&) const {}
  void operator()(const LabelRead&) const {}
  void operator()(const PointsSeen&) const {}
  void operator()(const UnitHeld&) const {}
  void operator()(const HoldReleased&) const {}
  void operator()(const UnitMoved&) const {}
  void operator()(const CheckAnswered&) const {}
  void operator()(const PracticeSet&) const {}
  void operator()(const WeatherNoted&) const {}
  void operator()(const PlaceSet&) const {}
  void operator()(const UnitAirRead&) const {}
  void operator()(const RecoverySet&) const {}
  void operator()(const WarningSet&) const {}
  void operator()(const RetentionSet&) const {}
  void operator()(const EmergencySet&) const {}
  void operator()(const Corrected&) const {}
  void operator()(const NoteAdded&) const {}
  void operator()(const Unknown&) const {}
};

}  // namespace

void foldAthlete(AthleteRecord& record, AthleteNotes& notes, const Fact& fact) { std::visit(AthleteFold{record, notes, fact}, fact.body); }

}  // namespace snugline::book
