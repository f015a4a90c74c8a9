// SPDX-License-Identifier: Apache-2.0
// `snug swap`: the spares for one head, best first, with why; and with --give the swap itself. Only what is offered is given.
#include <algorithm>

#include "core/book/acts_dock.h"
#include "core/season/spares.h"
#include "platform/cli/files.h"
#include "platform/cli/season_words.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

using season::Views;

const season::UnitRecord* helmetNamed(const Views& views, const std::string& serial) {
  const auto all = helmetsNamed(views, serial);
  return all.empty() ? nullptr : all.front();
}

void writeSpare(json::Writer& out, const Views& views, const season::Spare& spare) {
  out.beginObject().key("helmet").string(helmetName(views, spare.unit)).key("helmet_id").string(spare.unit);
  out.key("sheet").string(sheetName(views, spare.sheet)).key("size").string(spare.size).key("odds");
  if (spare.odds) {
    out.real(*spare.odds, 9);
  } else {
    out.null();
  }
  out.key("try_on").boolean(spare.isTryOn).key("shelf").string(spare.shelf).key("last_good_day").string(print(spare.lastGood));
  out.key("unseen_points").integer(spare.unseenPoints).key("why").string(sentence(spare)).endObject();
}

std::vector<std::string> keptBack(const season::SpareAnswer& answer) {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < season::kNotOfferedCount; ++i)
    if (answer.notOffered[i] > 0) lines.push_back(words(static_cast<season::NotOffered>(i), answer.notOffered[i]));
  if (answer.worn > 0) lines.push_back(counted(answer.worn, "helmet") + " worn by others");
  return lines;
}

// What the swap did, or why the helmet asked for is not given.
struct Given {
  std::string helmet, refused;
  std::vector<std::string> held;
};

std::string json(const Views& views, const season::AthleteRecord& athlete, const season::SpareAnswer& answer, const Given& given) {
  json::Writer out;
  out.beginObject().key("athlete").string(athleteName(athlete)).key("jersey").string(athlete.jersey).key("athlete_id").string(athlete.id);
  out.key("tape").string(code(answer.tape)).key("sheet");
  out.string(answer.likelySheet.empty() ? std::string() : sheetName(views, answer.likelySheet));
  out.key("size").string(answer.likelySize.empty() ? std::string("none") : answer.likelySize).key("offers").beginArray();
  for (const season::Spare& spare : answer.offers) writeSpare(out, views, spare);
  out.endArray().key("not_offered").beginObject();
  for (std::size_t i = 0; i < season::kNotOfferedCount; ++i)
    out.key(code(static_cast<season::NotOffered>(i))).integer(answer.notOffered[i]);
  out.endObject().key("worn").integer(answer.worn);
  writeStrings(out, "shelves", answer.shelves);
  out.key("given");
  if (given.helmet.empty()) {
    out.null();
  } else {
    out.string(given.helmet);
  }
  writeStrings(out, "held", given.held);
  std::vector<std::string> why{sizeSentence(views, answer)};
  if (!given.refused.empty()) why.push_back(given.refused);
  for (std::string& line : keptBack(answer)) why.push_back("Not offered: " + line);
  writeStrings(out, "why", why);
  out.endObject();
  return out.take();
}

std::string text(const Views& views, const season::AthleteRecord& athlete, const season::SpareAnswer& answer, const Given& given) {
  std::string lines = athlete.jersey + ' ' + athleteName(athlete) + ". " + sizeSentence(views, answer) + ".\n";
  for (const season::Spare& spare : answer.offers)
    lines += "  " + helmetName(views, spare.unit) + "  " + spare.size + " of " + sheetName(views, spare.sheet) + "\n      " +
             sentence(spare) + '\n';
  if (answer.offers.empty()) lines += "No spare for this head.\n";
  for (const std::string& line : keptBack(answer)) lines += "Not offered: " + line + ".\n";
  if (!given.helmet.empty()) lines += "Given: " + given.helmet + "; it is fitted next.\n";
  for (const std::string& serial : given.held) lines += "On hold: " + serial + ".\n";
  if (!given.refused.empty()) lines += given.refused + ".\n";
  return lines + kCaution + '\n';
}

}  // namespace

Result<Reply> swap(const SwapRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const auto access = request.give.empty() ? book::Access::readOnly : book::Access::readWrite;
  const auto opened = openBook(request.book, access, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  book::Book& book = **opened;
  const season::AthleteRecord* athlete = book.views().athleteByJersey(request.jersey);
  if (athlete == nullptr) return fail(ErrorCode::notFound, "--jersey " + request.jersey);
  const auto answer = season::sparesFor(book.views(), athlete->id, request.here, dayOf(*now));
  if (!answer) return tl::unexpected<Error>(answer.error());
  Given given;
  int exitCode = answer->offers.empty() ? kAnswerNo : kDone;
  if (!request.give.empty()) {
    const season::UnitRecord* helmet = helmetNamed(book.views(), request.give);
    if (helmet == nullptr) return fail(ErrorCode::notFound, "--give " + request.give);
    const auto& offers = answer->offers;
    if (std::none_of(offers.begin(), offers.end(), [&](const season::Spare& spare) { return spare.unit == helmet->id; })) {
      given.refused = "Not given: " + helmetName(book.views(), helmet->id) + " is no spare for this head";
      exitCode = kAnswerNo;
    } else {
      auto drafts = book::swapHelmet(
          book.views(), {athlete->id, helmet->id, request.reason, request.what, request.isOldWithAthlete, request.isOldGood}, *now);
      if (!drafts) return tl::unexpected<Error>(drafts.error());
      for (const book::Draft& draft : *drafts)
        if (std::holds_alternative<book::UnitHeld>(draft.body)) given.held.push_back(helmetName(book.views(), draft.about));
      given.helmet = helmetName(book.views(), helmet->id);
      if (const auto done = book.append(std::move(*drafts)); !done) return tl::unexpected<Error>(done.error());
      if (const auto done = book.checkpoint(); !done) return tl::unexpected<Error>(done.error());
      athlete = book.views().athleteByJersey(request.jersey);
      exitCode = kDone;
    }
  }
  return Reply{exitCode, json(book.views(), *athlete, *answer, given), text(book.views(), *athlete, *answer, given)};
}

}  // namespace snugline::cli
