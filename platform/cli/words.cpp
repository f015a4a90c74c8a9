// SPDX-License-Identifier: Apache-2.0
#include "platform/cli/words.h"

#include <array>
#include <cstdio>

namespace snugline::cli {
namespace {

std::string quoted(const std::string& text) { return text.empty() ? std::string("nothing") : '"' + text + '"'; }

std::string withDetail(const std::string& words, const std::string& detail) { return detail.empty() ? words : words + " (" + detail + ')'; }

// What is wrong and what was expected, without the place.
std::string complaint(const Error& e) {
  const std::string& d = e.detail;
  switch (e.code) {
    case ErrorCode::notAQuantity:
      return quoted(d) + " is not a quantity; expected a number and a unit, like 575mm, 20kPa, 22C or 180m";
    case ErrorCode::missingUnit:
      return quoted(d) + " has no unit; expected one, like 575mm, 22.5in, 20kPa, 12.5psi, 22C or 180m";
    case ErrorCode::outOfRange:
      return withDetail("out of range; expected a value between the lowest and the highest allowed", d);
    case ErrorCode::notADate:
      return quoted(d) + " is not a date or time; expected 2026-10-14 or 2026-10-14T15:30:00-05:00, with an offset";
    case ErrorCode::notJson:
      return withDetail("not readable as JSON; expected one JSON object in UTF-8", d);
    case ErrorCode::missingKey:
      return withDetail("missing; expected this key", d);
    case ErrorCode::wrongType:
      return "the wrong kind of value; expected " + (d.empty() ? std::string("another kind") : d);
    case ErrorCode::unknownKey:
      return withDetail("an unknown key; expected only the keys of the format", d);
    case ErrorCode::unknownWord:
      return withDetail("an unknown word; expected one of the words allowed", d);
    case ErrorCode::duplicateKey:
      return withDetail("written twice; expected each key once", d);
    case ErrorCode::inconsistent:
      return withDetail("contradicts itself; expected values that agree", d);
    case ErrorCode::unknownPort:
      return withDetail("a port or part that the model sheet lacks; expected one that it lists", d);
    case ErrorCode::notATag:
      return withDetail("not a tag; expected GS1 text, a GS1 web address, or 1 to 64 printable characters", tagFaultWords(d));
    case ErrorCode::checkDigitWrong:
      return withDetail("the check digit does not agree; expected the one worked out from the digits before it", d);
    case ErrorCode::notText:
      return withDetail("not a text file; expected lines of text, as a spreadsheet program saves them", d);
    case ErrorCode::badRow:
      return withDetail("cannot be understood; expected a table with a row of headings such as Jersey, Name or time, kpa", d);
    case ErrorCode::cannotRead:
      return withDetail("cannot be read; expected a file that can be", d);
    case ErrorCode::cannotWrite:
      return withDetail("cannot be written; expected a place that can be", d);
    case ErrorCode::diskFull:
      return withDetail("the disk is full, nothing was changed; expected room to write", d);
    case ErrorCode::readOnly:
      return withDetail("may only be read, nothing was changed; expected a place that can be written", d);
    case ErrorCode::notABook:
      return withDetail("not a Book; expected a file made by snug or the app", d);
    case ErrorCode::damagedBook:
      return withDetail("a damaged Book, left as it is; expected a whole one, restore it from a backup", d);
    case ErrorCode::newerBook:
      return withDetail("a Book of a newer format, left as it is; expected one of this version or older", d);
    case ErrorCode::bookInUse:
      return withDetail("open in another program; expected to be the only one, close the other first", d);
    case ErrorCode::fileExists:
      return withDetail("is there already and was left as it is; expected a new name", d);
    case ErrorCode::notFound:
      return withDetail("not found; expected something that is there", d);
    case ErrorCode::unknownDevice:
      return withDetail("a device that this Book does not know; expected one admitted to it", d);
    case ErrorCode::brokenChain:
      return withDetail("the chain of facts breaks here; expected every fact as it was written", d);
    case ErrorCode::badSignature:
      return withDetail("the signature does not hold; expected the device's own", d);
    case ErrorCode::tooLong:
      return withDetail("too long; expected no more than the limit", d);
    case ErrorCode::notAllowed:
      return withDetail("not allowed; expected what the rule named asks for", d);
    case ErrorCode::noKey:
      return withDetail("the device identity could not be read or made; expected a folder of your own for it", d);
    case ErrorCode::outOfMemory:
      return withDetail("not enough memory; expected more, or a smaller file", d);
    case ErrorCode::internal:
      return withDetail("a library failed in a way that has no better name", d);
  }
  return d;
}

std::string count(int n, const char* one, const char* many) { return std::to_string(n) + ' ' + (n == 1 ? one : many); }

std::string airReason(const season::DueReason& r) {
  const std::string where = "Air" + (r.port ? " in " + std::string(code(*r.port)) : std::string());
  const auto amount = [](Pressure p) { return print(p.pa < 0 ? Pressure{-p.pa} : p, UnitSystem::metric); };
  if (r.kind == season::DueKind::airLeaking)
    return where + " leaks about " + amount(r.change.value_or(Pressure{})) + " a week (" + count(r.count, "reading", "readings") + ")";
  if (r.cause == season::AirCause::refilled) return where + " filled since the marks were last seen";
  std::string line = where + (r.change && r.change->pa < 0 ? " down about " : " up about ") + amount(r.change.value_or(Pressure{}));
  switch (r.cause) {
    case season::AirCause::cold:
      line += " by cold";
      break;
    case season::AirCause::warm:
      line += " by warmth";
      break;
    case season::AirCause::afterCold:
      line += " by warmth, and it was fitted in the cold";
      break;
    case season::AirCause::altitude:
      line += " by altitude";
      break;
    case season::AirCause::both:
      line += " by temperature and altitude";
      break;
    case season::AirCause::none:
    case season::AirCause::refilled:
      break;
  }
  if (r.belowZero) {
    line += ", no air left to hold it if the bladder is rigid";
  } else {
    line += r.air ? ", to " + print(*r.air, UnitSystem::metric) + " if the bladder is rigid" : std::string(", not measured");
  }
  return r.count > 1 ? line + ", " + count(r.count, "port", "ports") + " in all" : line;
}

std::string markReason(const season::DueReason& r, const char* before) {
  return r.mark ? std::string(before) + words(*r.mark, r.finding, r.side) : std::string(before) + "the fit";
}

std::string saidReason(const season::DueReason& r) {
  std::string feels = "is loose";
  if (r.feels == fit::Feels::tight) feels = "is tight";
  if (r.feels == fit::Feels::broke) feels = "broke";
  const std::string side = r.side == fit::Side::both ? std::string() : std::string(code(r.side)) + ' ';
  return "The athlete said: " + side + (r.mark ? std::string(code(*r.mark)) : std::string("something")) + ' ' + feels;
}

}  // namespace

std::string oneLine(const std::string& text) {
  std::string line;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte >= 0x20 && byte != 0x7f) {
      line += c;
      continue;
    }
    std::array<char, 8> escaped{};
    std::snprintf(escaped.data(), escaped.size(), "\\x%02x", static_cast<unsigned>(byte));
    line += escaped.data();
  }
  return line;
}

std::string sentence(const Error& error) { return oneLine(error.place.empty() ? complaint(error) : error.place + ": " + complaint(error)); }

std::string sentence(const season::DueReason& r) {
  using season::DueKind;
  const std::string day = r.day ? print(*r.day) : std::string("a day not known");
  const std::string more = r.text.empty() ? std::string() : ": " + r.text;
  const std::string late = r.isLate ? ", late" : "";
  switch (r.kind) {
    case DueKind::seeAthleteNow:
      return "See athlete now";
    case DueKind::withTrainer:
      return "With the athletic trainer";
    case DueKind::pointsAfterHit:
      return "The helmet's seven points are to be checked before it is worn";
    case DueKind::noUnit:
      return r.text.empty() ? "No helmet yet" : "No helmet, the last one" + more;
    case DueKind::held:
      return "Helmet held" + more;
    case DueKind::unitFault:
      return "Fault of the helmet, " + (r.point ? words(*r.point) : std::string("a point")) + more;
    case DueKind::labelLapsed:
      return "Certification lapsed, last good day " + day;
    case DueKind::labelMissing:
      return "No certification label on the helmet";
    case DueKind::labelUnreadable:
      return "The certification label cannot be read";
    case DueKind::labelUnknown:
      return "Certification label not read yet";
    case DueKind::verdictDoNotWear:
      return "Last check says do not wear" + more;
    case DueKind::brokeSaid:
      return "The athlete said that something broke" + more;
    case DueKind::twoAthletes:
      return "Two athletes have this helmet" + (r.text.empty() ? "" : ", the other has jersey " + r.text);
    case DueKind::twoUnits:
      return "The athlete has two helmets" + more;
    case DueKind::labelDisputed:
      return "Two readings of the label differ";
    case DueKind::unitAway:
      return "Helmet is away" + more;
    case DueKind::noSheet:
      return "Model or size of the helmet is not known";
    case DueKind::notInService:
      return "Helmet is not in service";
    case DueKind::keptUnit:
      return "Still has the old helmet" + more;
    case DueKind::neverFitted:
      return "Never fitted in this helmet";
    case DueKind::checkOpen:
      return "Check not finished" + (r.mark ? ", next is " + std::string(code(*r.mark)) : std::string());
    case DueKind::adjustOpen:
      return markReason(r, "To adjust: ");
    case DueKind::wordOpen:
      return saidReason(r);
    case DueKind::hairChanged:
      return "Hair changed since the last fit";
    case DueKind::partChanged:
      return "A part was changed since the last fit";
    case DueKind::airChanged:
    case DueKind::airLeaking:
      return airReason(r);
    case DueKind::lineOff:
      return markReason(r, "Seen off in line: ");
    case DueKind::dryHair:
      return "Fitted on dry hair, wet it and see again";
    case DueKind::breakIn:
      if (r.isLate) return "Break-in look late, " + count(r.count, "day", "days") + " after the fit";
      return "Break-in look, day " + std::to_string(r.count) + " of " + std::to_string(fit::kBreakInByDays);
    case DueKind::weeklyLook:
      return "Weekly look, " + count(r.count, "day", "days") + " since the last" + late;
    case DueKind::pointUnseen:
      return "Not seen yet: " + (r.point ? words(*r.point) : std::string("a point"));
    case DueKind::labelLapsing:
      return "Certification lapses before the season ends, last good day " + day;
    case DueKind::tapeStale:
      return "Tape reading is " + count(r.count, "month", "months") + " old";
    case DueKind::neverTaped:
      return "Head never taped";
    case DueKind::stillOut:
      return "Season " + r.text + " is closed and this helmet was not handed in";
  }
  return {};
}

std::string sentence(const book::RowNote& note) {
  using book::RowDoubt;
  const std::string cell = note.text.empty() ? std::string() : " (" + oneLine(note.text) + ')';
  switch (note.doubt) {
    case RowDoubt::headTooLarge:
      return "the head is larger than any measured at that age; tape it again" + cell;
    case RowDoubt::headTooSmall:
      return "the head is smaller than any measured at that age; tape it again" + cell;
    case RowDoubt::sameJersey:
      return "another athlete has this jersey number" + cell;
    case RowDoubt::birthYearUnlikely:
      return "the birth year is unlikely for a player" + cell;
    case RowDoubt::noName:
      return "no name; expected a family name" + cell;
    case RowDoubt::jerseyUnreadable:
      return "the jersey is not a number of up to three digits" + cell;
    case RowDoubt::headUnreadable:
      return "the head is not a length with a unit" + cell;
    case RowDoubt::birthYearUnreadable:
      return "the birth year is not a year" + cell;
    case RowDoubt::tooFewCells:
      return "too few cells for the headings" + cell;
    case RowDoubt::tooManyCells:
      return "too many cells for the headings" + cell;
    case RowDoubt::badQuote:
      return "a quote is opened and not closed" + cell;
    case RowDoubt::notPrintable:
      return "characters that cannot be printed" + cell;
    case RowDoubt::repeated:
      return "the same row stands further up" + cell;
    case RowDoubt::tagUnreadable:
      return "the tag cannot be read" + cell;
    case RowDoubt::sheetUnknown:
      return "a new helmet needs a model sheet that this Book has adopted" + cell;
    case RowDoubt::sizeUnknown:
      return "the model sheet has no such size" + cell;
    case RowDoubt::labelUnreadable:
      return "the label is not a year from 1990 to 2199 or the word missing" + cell;
    case RowDoubt::pointUnknown:
      return "not one of the seven points" + cell;
    case RowDoubt::unitAway:
      return "this helmet is away for repair or recertification; say in the app what was done to it" + cell;
    case RowDoubt::unitRetired:
      return "this helmet is retired" + cell;
  }
  return {};
}

std::string words(season::Lane lane) {
  switch (lane) {
    case season::Lane::doNotWear:
      return "Do not wear";
    case season::Lane::beforePractice:
      return "See before practice";
    case season::Lane::noHelmet:
      return "No helmet yet";
    case season::Lane::weekly:
      return "Weekly look";
    case season::Lane::nothingDue:
      return "Nothing due";
  }
  return {};
}

}  // namespace snugline::cli
