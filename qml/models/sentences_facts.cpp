// SPDX-License-Identifier: Apache-2.0
// What the log says about a helmet or an athlete, one line a fact.
#include <variant>

#include <QCoreApplication>
#include <QLocale>
#include <QTime>

#include "qml/models/sentences.h"
#include "qml/models/sentences_air.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_standing.h"
#include "qml/models/sentences_units.h"

namespace snugline::models {

namespace {
struct Said {
  Q_DECLARE_TR_FUNCTIONS(Timeline)
};

QString nameOf(const season::Views& views, const std::string& athlete) {
  const season::AthleteRecord* record = views.athlete(athlete);
  return record == nullptr ? Said::tr("an athlete") : athleteName(*record);
}

QString serialOf(const season::Views& views, const std::string& unit) {
  const season::UnitRecord* record = views.unit(unit);
  return record == nullptr ? Said::tr("a helmet") : text(record->serial);
}

QString pointsWords(const book::PointsSeen& seen) {
  QStringList faults, sound;
  for (const auto& [point, finding] : seen.points) {
    if (finding.state == gear::PointState::fault) {
      faults.append(finding.what.empty() ? pointName(point) : Said::tr("%1: %2").arg(pointName(point), text(finding.what)));
    } else if (finding.state == gear::PointState::sound) {
      sound.append(pointName(point));
    }
  }
  if (!faults.isEmpty()) return Said::tr("Fault found. %1").arg(faults.join(Said::tr("; ", "between faults")));
  if (seen.isGroup) return Said::tr("All seven points sound, seen together");
  return Said::tr("Sound: %1").arg(PlainWords::list(sound));
}

QString movedWords(const book::UnitMoved& moved) {
  QString words;
  if (moved.to == "in-service") words = Said::tr("In service");
  if (moved.to == "repair") words = Said::tr("Sent to repair");
  if (moved.to == "sent-out") words = Said::tr("Sent out for recertification");
  if (moved.to == "back")
    words =
        moved.returned.by.empty() ? Said::tr("Back with us") : Said::tr("Back with us: %1").arg(StandingWords::returned(moved.returned));
  if (moved.to == "retired") words = Said::tr("Retired");
  if (moved.to == "lost") words = Said::tr("Lost");
  if (moved.to == "in-hand") return Said::tr("In our hands");
  if (moved.to == "with-athlete") return Said::tr("With the athlete");
  if (moved.to == "shelf")
    return moved.where.empty() ? Said::tr("No shelf of its own") : Said::tr("Belongs on %1", "shelf").arg(text(moved.where));
  if (words.isEmpty()) words = text(moved.to);
  if (!moved.where.empty()) words = Said::tr("%1: %2").arg(words, text(moved.where));
  return moved.reason.empty() ? words : Said::tr("%1. Why: %2").arg(words, text(moved.reason));
}

QString heldWords(const book::UnitHeld& held) {
  const QString words = holdWords({{}, held.reason, held.what, {}});
  return held.isWithAthlete ? Said::tr("On hold: %1, still with the athlete").arg(words) : Said::tr("On hold: %1").arg(words);
}

// Both units: a history is read by people with either gauge.
QString readWords(const book::UnitAirRead& read) {
  const QString gauge = Said::tr("%1 (%2)", "a pressure in both units")
                            .arg(text(print(read.gauge, UnitSystem::metric)), text(print(read.gauge, UnitSystem::us)));
  const QString port = PlainWords::sentenceCase(MarkWords::port(read.port));
  const QString where = read.isOnHead ? Said::tr("on the head") : Said::tr("off the head");
  return read.isRefill ? Said::tr("%1 air filled to %2, %3, %4", "a bladder, pressure, on the head or off, by what")
                             .arg(port, gauge, where, AirWords::source(read.source))
                       : Said::tr("%1 air read: %2, %3, %4", "a bladder, pressure, on the head or off, by what")
                             .arg(port, gauge, where, AirWords::source(read.source));
}

QString lineWords(const book::LineSeen& seen) {
  QStringList off;
  const auto add = [&off](fit::Mark mark, fit::Finding finding) {
    if (finding != fit::Finding::snug && finding != fit::Finding::unseen)
      off << MarkWords::found(mark, finding, fit::Side::both, fit::HoldHow::unsaid);
  };
  add(fit::Mark::brow, seen.brow);
  add(fit::Mark::straps, seen.straps);
  add(fit::Mark::hold, seen.hold);
  return off.isEmpty() ? Said::tr("Brow, straps and hold seen in the line") : Said::tr("Seen in the line: %1").arg(PlainWords::list(off));
}

QString signedWords(const book::WarningSigned& f) {
  const QString initials = text(f.initials), year = text(f.season);
  switch (f.as) {
    case season::Signer::athlete:
      return f.isOnPaper ? Said::tr("Yearly warning %1 signed on paper by the athlete, %2", "season, initials").arg(year, initials)
                         : Said::tr("Yearly warning %1 read and signed by the athlete, %2", "season, initials").arg(year, initials);
    case season::Signer::guardian:
      return f.isOnPaper
                 ? Said::tr("Yearly warning %1 signed on paper by a parent or guardian, %2", "season, initials").arg(year, initials)
                 : Said::tr("Yearly warning %1 read and signed by a parent or guardian, %2", "season, initials").arg(year, initials);
  }
  return {};
}

// One overload for each kind of fact; a new kind does not compile until it has its line.
struct LineOf {
  const season::Views& views;
  const book::Fact& fact;

  QString operator()(const book::TeamFounded& f) const { return Said::tr("Book begun for %1").arg(text(f.name)); }
  QString operator()(const book::DeviceAdmitted&) const { return Said::tr("A device joined the Book"); }
  QString operator()(const book::PersonChanged&) const { return Said::tr("The role of somebody was changed"); }
  QString operator()(const book::CodeSet&) const { return Said::tr("A code was set"); }
  QString operator()(const book::PersonAdded& f) const { return Said::tr("%1 can sign").arg(text(f.name)); }
  QString operator()(const book::AthleteAdded&) const { return Said::tr("Added to the roster"); }
  QString operator()(const book::AthleteChanged& f) const {
    if (f.isOnRoster) return *f.isOnRoster ? Said::tr("Back on the roster") : Said::tr("Off the roster");
    return f.jersey ? Said::tr("Jersey is now %1").arg(text(*f.jersey)) : Said::tr("Name or birth year changed");
  }
  QString operator()(const book::TapeRead&) const { return Said::tr("Head taped"); }
  QString operator()(const book::ReadingSetAside&) const { return Said::tr("A reading of the head set aside"); }
  QString operator()(const book::SheetAdopted& f) const {
    return f.replaces.empty() ? Said::tr("Model sheet adopted") : Said::tr("Model sheet changed");
  }
  QString operator()(const book::UnitReceived& f) const { return Said::tr("Taken in, size %1").arg(text(f.size)); }
  QString operator()(const book::LabelRead& f) const {
    if (f.label) return Said::tr("Label read: %1").arg(labelShort(*f.label));
    return f.isUnreadable ? Said::tr("Label cannot be read") : Said::tr("Label looked for and missing");
  }
  QString operator()(const book::PointsSeen& f) const { return pointsWords(f); }
  QString operator()(const book::UnitHeld& f) const { return heldWords(f); }
  QString operator()(const book::HoldReleased& f) const { return Said::tr("Hold released: %1").arg(text(f.reason)); }
  QString operator()(const book::UnitMoved& f) const { return movedWords(f); }
  QString operator()(const book::PartChanged& f) const {
    const QString part = PlainWords::sentenceCase(UnitWords::parts(f.part));
    const bool isKnown = gear::unitPartFromCode(f.part).has_value();
    if (!isKnown) return Said::tr("Part changed: %1").arg(text(f.what.empty() ? f.part : f.what));
    return f.what.empty() ? Said::tr("%1 replaced").arg(part) : Said::tr("%1 replaced: %2").arg(part, text(f.what));
  }
  QString operator()(const book::UnitPaired& f) const {
    return Said::tr("%1 with %2").arg(serialOf(views, fact.about), nameOf(views, f.athlete));
  }
  QString operator()(const book::UnitUnpaired& f) const {
    return Said::tr("%1 no longer with %2").arg(serialOf(views, fact.about), nameOf(views, f.athlete));
  }
  QString operator()(const book::CheckBegun& f) const {
    return Said::tr("%1 begun: %2, %3").arg(GuideWords::kind(f.kind), nameOf(views, f.athlete), serialOf(views, f.unit));
  }
  QString operator()(const book::CheckAnswered&) const { return {}; }
  QString operator()(const book::CheckEnded& f) const {
    return Said::tr("%1: %2").arg(GuideWords::kind(f.outcome.kind), GuideWords::verdict(f.outcome.verdict));
  }
  // What was said about how somebody feels stays out of every list (it shows on the board only).
  QString operator()(const book::Said& f) const {
    if (f.said.isUnwell) return {};
    if (f.said.isHairChanged) return Said::tr("Said: hair changed");
    if (f.said.isBroken) return Said::tr("Said: something broke");
    return f.said.where ? Said::tr("Said: %1").arg(MarkWords::said(*f.said.where, f.said.side, f.said.feels)) : QString();
  }
  QString operator()(const book::SaidFollowed&) const { return {}; }
  QString operator()(const book::SaidAcknowledged&) const { return {}; }
  QString operator()(const book::HairChanged&) const { return Said::tr("Hair changed"); }
  QString operator()(const book::PracticeSet&) const { return Said::tr("Practice times set"); }
  QString operator()(const book::WeatherNoted& f) const {
    const QString figures = AirWords::figures(f.conditions, UnitSystem::metric), place = AirWords::place(f.conditions);
    return Said::tr("Weather noted: %1")
        .arg(figures.isEmpty() ? place
             : place.isEmpty() ? figures
                               : figures + QStringLiteral(", ") + place);
  }
  QString operator()(const book::PlaceSet& f) const {
    return f.elevation ? Said::tr("Place for travel: %1").arg(text(f.place)) : Said::tr("Place for travel given up: %1").arg(text(f.place));
  }
  QString operator()(const book::UnitAirRead& f) const { return readWords(f); }
  QString operator()(const book::LineSeen& f) const { return lineWords(f); }
  QString operator()(const book::RecoverySet&) const { return Said::tr("A recovery sheet was made; the ones before it are void"); }
  QString operator()(const book::WarningSet& f) const {
    return f.asksAnew ? Said::tr("The text of the yearly warning was set; everybody signs anew")
                      : Said::tr("The text of the yearly warning was set");
  }
  QString operator()(const book::WarningSigned& f) const { return signedWords(f); }
  QString operator()(const book::RetentionSet& f) const {
    return f.years ? Said::tr("Names are shown for %n year(s) after the last entry", nullptr, *f.years)
                   : Said::tr("Names are always shown");
  }
  QString operator()(const book::EmergencySet& f) const { return Said::tr("In an emergency: call %1").arg(text(f.number)); }
  QString operator()(const book::LegalHoldMade& f) const {
    return f.isForAll ? Said::tr("Legal hold on everybody: %1").arg(text(f.reason)) : Said::tr("Legal hold: %1").arg(text(f.reason));
  }
  QString operator()(const book::LegalHoldEnded& f) const {
    return f.isForAll ? Said::tr("Legal hold on everybody ended: %1").arg(text(f.reason))
                      : Said::tr("Legal hold ended: %1").arg(text(f.reason));
  }
  QString operator()(const book::NoticeIssued& f) const {
    return Said::tr("Maker's notice of %1: %2. %3").arg(dayWords(f.day), text(f.text), UnitWords::scope(views, f.scope));
  }
  QString operator()(const book::PhoneJoined&) const { return Said::tr("A code for a phone of their own was given out"); }
  QString operator()(const book::PhoneLeft&) const { return Said::tr("A phone of their own was let go"); }
  QString operator()(const book::SeasonClosed& f) const { return Said::tr("Season %1 closed").arg(text(f.season)); }
  QString operator()(const book::UnitCollected& f) const {
    return f.athlete.empty() ? Said::tr("Handed in at the end of season %1").arg(text(f.season))
                             : Said::tr("Handed in by %1 at the end of season %2").arg(nameOf(views, f.athlete), text(f.season));
  }
  QString operator()(const book::PhotoTaken& f) const {
    return f.what.empty() ? Said::tr("Photo taken") : Said::tr("Photo taken: %1").arg(text(f.what));
  }
  QString operator()(const book::Corrected&) const { return Said::tr("An entry was taken back"); }
  QString operator()(const book::NoteAdded& f) const { return text(f.text); }
  QString operator()(const book::Unknown&) const { return Said::tr("An entry of a later Snugline"); }
};
}  // namespace

QString factWords(const season::Views& views, const book::Fact& fact) { return std::visit(LineOf{views, fact}, fact.body); }

QString whoWords(const season::Views& views, const std::string& person) { return PlainWords::person(views, person); }

QString timeWords(Instant at, Day today) {
  const int minute = minuteOfDay(at);
  return Said::tr("%1, %2", "day, time")
      .arg(PlainWords::day(dayOf(at), today), QTime(minute / 60, minute % 60).toString(QStringLiteral("HH:mm")));
}

}  // namespace snugline::models
