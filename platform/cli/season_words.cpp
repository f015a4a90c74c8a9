// SPDX-License-Identifier: Apache-2.0
#include "platform/cli/season_words.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace snugline::cli {

std::string fixedText(double value, int decimals) {
  std::array<char, 64> out{};
  std::snprintf(out.data(), out.size(), "%.*f", decimals, value);
  return out.data();
}

std::string counted(long long n, const std::string& one) { return std::to_string(n) + ' ' + one + (n == 1 ? "" : "s"); }

std::string sheetName(const season::Views& views, const std::string& hash) {
  const gear::ModelSheet* sheet = views.sheet(hash);
  return sheet == nullptr ? hash : sheet->id;
}

std::string helmetName(const season::Views& views, const std::string& unit) {
  const season::UnitRecord* record = views.unit(unit);
  if (record == nullptr) return unit;
  if (!record->serial.empty()) return record->serial;
  return record->tagKey.empty() ? unit : record->tagKey;
}

std::vector<const season::UnitRecord*> helmetsNamed(const season::Views& views, const std::string& serialOrTag) {
  std::vector<const season::UnitRecord*> found;
  for (const auto& [id, unit] : views.units)
    if (unit.tagKey == serialOrTag) found.push_back(&unit);
  if (found.empty()) {
    for (const auto& [id, unit] : views.units)
      if (unit.serial == serialOrTag) found.push_back(&unit);
  }
  std::sort(found.begin(), found.end(), [](const auto* a, const auto* b) { return a->id < b->id; });
  return found;
}

std::string words(season::NotOffered why, int count) {
  const std::string helmets = counted(count, "helmet");
  switch (why) {
    case season::NotOffered::held:
      return helmets + " on hold";
    case season::NotOffered::away:
      return helmets + " in repair, sent out or still with an athlete";
    case season::NotOffered::notInService:
      return helmets + " not in service";
    case season::NotOffered::faultOpen:
      return helmets + " with a fault open";
    case season::NotOffered::brokeSaid:
      return helmets + " said to be broken";
    case season::NotOffered::label:
      return helmets + " whose label is lapsed, missing or in question";
    case season::NotOffered::noSheet:
      return helmets + " whose model sheet is not in the Book";
    case season::NotOffered::pointsOpen:
      return helmets + " with seven points to check after a report";
    case season::NotOffered::otherSize:
      return helmets + " not of a size for this head";
    case season::NotOffered::didNotFit:
      return helmets + " that did not fit this head";
  }
  return {};
}

std::string sentence(const season::Spare& spare) {
  std::string line = spare.odds ? "odds " + fixedText(*spare.odds, 2) : std::string("the size worn before");
  if (spare.isTryOn) line += ", to be tried on first";
  line += spare.shelf.empty() ? "; shelf not noted" : "; shelf " + spare.shelf;
  line += "; certified through " + print(spare.lastGood);
  if (spare.unseenPoints > 0) line += "; " + counted(spare.unseenPoints, "point") + " not seen";
  return line;
}

std::string sizeSentence(const season::Views& views, const season::SpareAnswer& answer) {
  const std::string kind = answer.likelySize.empty() ? std::string() : answer.likelySize + " of " + sheetName(views, answer.likelySheet);
  if (!isSizeKnown(answer.tape)) {
    const std::string why = answer.tape == season::TapeState::open ? "The readings of the head disagree: " : "Head not taped: ";
    return why + (kind.empty() ? "no size can be said" : "the size of the helmet before stands in, " + kind);
  }
  if (kind.empty()) return "Off the charts of every model here";
  return (answer.tape == season::TapeState::stale ? "By an old tape reading " : "By the tape ") + kind;
}

std::string athleteName(const season::AthleteRecord& athlete) {
  return athlete.given.empty() ? athlete.family : athlete.given + ' ' + athlete.family;
}

std::string words(season::CostTerm term, int count) {
  switch (term) {
    case season::CostTerm::size:
      return "size odds";
    case season::CostTerm::tryOn:
      return "odds low enough to try on first";
    case season::CostTerm::otherHelmet:
      return "not the last helmet";
    case season::CostTerm::wornByOther:
      return "the last helmet of somebody else";
    case season::CostTerm::kindFailed:
      return "this model and size did not fit at the last check";
    case season::CostTerm::unseenPoints:
      return counted(count, "point") + " not seen";
    case season::CostTerm::age:
      return counted(count, "year") + " since its first label";
  }
  return {};
}

std::string words(const std::optional<season::Bar>& bar) {
  using season::Bar;
  if (!bar) return "nothing";
  switch (*bar) {
    case Bar::retired:
      return "retired";
    case Bar::lost:
      return "lost";
    case Bar::sentOut:
      return "sent out";
    case Bar::repair:
      return "in repair";
    case Bar::held:
      return "on hold";
    case Bar::fault:
      return "a fault is open";
    case Bar::brokeSaid:
      return "reported broken";
    case Bar::labelMissing:
      return "label missing";
    case Bar::labelUnreadable:
      return "label cannot be read";
    case Bar::labelDisputed:
      return "two readings of its label differ";
    case Bar::labelUnknown:
      return "label not read yet";
    case Bar::labelLapsed:
      return "certification lapses too early, or may";
    case Bar::noSheet:
      return "its model or size is not known";
    case Bar::pointsAfterReport:
      return "seven points to check after a report";
    case Bar::pointUnchecked:
    case Bar::notInService:
      return "not in service";
    case Bar::twoAthletes:
      return "two athletes are down for it";
    case Bar::verdict:
      return "last check: do not wear";
  }
  return {};
}

std::string words(season::LapseWhen when) {
  switch (when) {
    case season::LapseWhen::before:
      return "lapsed, or may have";
    case season::LapseWhen::thisSeason:
      return "in this season";
    case season::LapseWhen::betweenSeasons:
      return "between the seasons";
    case season::LapseWhen::nextSeason:
      return "in the next season";
  }
  return {};
}

std::string sentence(const season::MatchPair& pair) {
  std::string text = pair.odds ? "Odds " + fixedText(*pair.odds, 2) : std::string("No tape");
  if (pair.tape == season::TapeState::stale) text += " by a stale tape";
  if (pair.isTryOn) text += "; try on";
  if (pair.isLastHelmet) text += "; the last helmet";
  if (pair.isPinned) text += "; pinned";
  text += "; cost " + fixedText(pair.cost, 2);
  const char* join = ": ";
  for (const season::PairTerm& term : pair.terms) {
    text += join + fixedText(term.cost, 2) + ' ' + words(term.term, term.count);
    join = ", ";
  }
  return text;
}

std::string sentence(const season::UnmatchedHead& head) {
  const std::string stale = head.tape == season::TapeState::stale ? " (by a stale tape)" : "";
  switch (head.why) {
    case season::NoHelmet::neverTaped:
      return head.tape == season::TapeState::open ? "The readings of the head disagree: no size is known" : "Never taped: no size is known";
    case season::NoHelmet::offChart:
      return "No size of the models at hand is likely enough" + stale;
    case season::NoHelmet::noneAtHand:
      return "No helmet that can be given is of size " + head.size + " or near it" + stale;
    case season::NoHelmet::allTaken:
      return "Fewer helmets than heads of size " + head.size + stale;
    case season::NoHelmet::setAside:
      return "Only helmets that were excluded or did not fit at the last check" + stale;
  }
  return {};
}

std::string sentence(const season::Order& order, double cover) {
  std::string text = fixedText(order.returning, 1) + " returning and " + fixedText(order.newcomers, 1) + " new heads expected; " +
                     std::to_string(order.enough) + " are enough with a chance of " + fixedText(order.covered, 3) + " (asked " +
                     fixedText(cover, 3) + "); " + std::to_string(order.good) + " good through the next season, once renewed";
  if (order.notCounted > 0)
    text += "; " + std::to_string(order.notCounted) + " more not counted (held, in repair, out of service or unread)";
  return text;
}

}  // namespace snugline::cli
