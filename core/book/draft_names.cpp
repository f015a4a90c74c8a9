// SPDX-License-Identifier: Apache-2.0
#include "core/book/draft_names.h"

#include <charconv>

namespace snugline::book {

namespace {

struct Resolver {
  const std::vector<std::string>& ids;
  std::string missing;

  void at(std::string& name) {
    if (name.size() < 2 || name.front() != '#') return;
    std::size_t k = 0;
    const auto [end, error] = std::from_chars(name.data() + 1, name.data() + name.size(), k);
    if (error != std::errc() || end != name.data() + name.size()) return;
    if (k < ids.size()) {
      name = ids[k];
    } else {
      missing = name;
    }
  }
  void operator()(PointsSeen& b) { at(b.check); }
  void operator()(TapeRead& b) { at(b.with); }
  void operator()(ReadingSetAside& b) { at(b.tape); }
  void operator()(UnitHeld& b) { at(b.notice); }
  void operator()(HoldReleased& b) { at(b.hold); }
  void operator()(PartChanged& b) { at(b.athlete); }
  void operator()(UnitPaired& b) { at(b.athlete); }
  void operator()(UnitUnpaired& b) { at(b.athlete); }
  void operator()(CheckBegun& b) {
    at(b.athlete);
    at(b.unit);
    at(b.before);
    for (WordRef& word : b.words) at(word.said);
  }
  void operator()(CheckEnded& b) {
    at(b.athlete);
    at(b.unit);
    at(b.outcome.unit);
  }
  void operator()(Said& b) {
    at(b.said.unit);
    at(b.check);
  }
  void operator()(SaidFollowed& b) { at(b.said); }
  void operator()(SaidAcknowledged& b) { at(b.said); }
  void operator()(CheckAnswered& b) { at(b.unit); }
  void operator()(LineSeen& b) { at(b.unit); }
  void operator()(LegalHoldEnded& b) { at(b.hold); }
  void operator()(SeasonClosed& b) {
    for (std::string& unit : b.missing) at(unit);
  }
  void operator()(UnitCollected& b) { at(b.athlete); }
  void operator()(PhotoTaken& b) { at(b.hold); }
  void operator()(Corrected& b) {
    at(b.fact);
    for (std::string& subject : b.touches) at(subject);
  }

  // Kinds that name nothing but what they are about.
  void operator()(TeamFounded&) {}
  void operator()(DeviceAdmitted&) {}
  void operator()(PersonAdded&) {}
  void operator()(PersonChanged&) {}
  void operator()(CodeSet&) {}
  void operator()(AthleteAdded&) {}
  void operator()(AthleteChanged&) {}
  void operator()(SheetAdopted&) {}
  void operator()(UnitReceived&) {}
  void operator()(LabelRead&) {}
  void operator()(NoticeIssued&) {}
  void operator()(UnitMoved&) {}
  void operator()(HairChanged&) {}
  void operator()(PracticeSet&) {}
  void operator()(WeatherNoted&) {}
  void operator()(PlaceSet&) {}
  void operator()(UnitAirRead&) {}
  void operator()(RecoverySet&) {}
  void operator()(WarningSet&) {}
  void operator()(WarningSigned&) {}
  void operator()(RetentionSet&) {}
  void operator()(EmergencySet&) {}
  void operator()(LegalHoldMade&) {}
  void operator()(PhoneJoined&) {}
  void operator()(PhoneLeft&) {}
  void operator()(NoteAdded&) {}
  void operator()(Unknown&) {}
};

}  // namespace

Result<void> resolveNames(std::string& about, Body& body, const std::vector<std::string>& ids) {
  Resolver resolver{ids, {}};
  resolver.at(about);
  std::visit(resolver, body);
  if (!resolver.missing.empty()) return fail(ErrorCode::notFound, resolver.missing);
  return {};
}

}  // namespace snugline::book
