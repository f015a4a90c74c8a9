// SPDX-License-Identifier: Apache-2.0
// `snug notice`: a maker's notice. Which there are and how far they have come, a new one (or only what it would hold), and helmets let go
// one by one, each with a reason.
#include <algorithm>

#include "core/book/acts_dock.h"
#include "core/season/notice.h"
#include "core/season/sheet_chain.h"
#include "platform/cli/files.h"
#include "platform/cli/season_words.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

using season::Views;

std::vector<std::string> namesOf(const Views& views, const std::vector<std::string>& units) {
  std::vector<std::string> names;
  for (const std::string& unit : units) names.push_back(helmetName(views, unit));
  std::sort(names.begin(), names.end());
  return names;
}

std::vector<std::string> stillHeld(const Views& views, const std::string& notice) {
  std::vector<std::string> units;
  for (const auto& [id, unit] : views.units) {
    const bool isHeld = std::any_of(unit.holds.begin(), unit.holds.end(), [&](const auto& hold) { return hold.notice == notice; });
    if (isHeld) units.push_back(id);
  }
  return units;
}

void writeYear(json::Writer& out, const char* key, std::optional<int> year) {
  out.key(key);
  if (year) {
    out.integer(*year);
  } else {
    out.null();
  }
}

void writeNotice(json::Writer& out, const Views& views, const season::NoticeRecord& notice) {
  const season::NoticeScope& scope = notice.scope;
  const season::NoticeProgress progress = season::progressOf(views, notice);
  out.beginObject().key("notice").string(notice.fact).key("text").string(notice.text).key("day").string(print(notice.day));
  out.key("sheet").string(scope.sheet.empty() ? std::string() : sheetName(views, scope.sheet));
  writeYear(out, "made_from", scope.yearFrom);
  writeYear(out, "made_to", scope.yearTo);
  out.key("lot").string(scope.lot).key("serial_from").string(scope.serialFrom).key("serial_to").string(scope.serialTo);
  out.key("takes_unknown").boolean(scope.takesUnknown).key("held").integer(progress.held).key("worn").integer(progress.worn);
  writeStrings(out, "helmets", namesOf(views, stillHeld(views, notice.fact)));
  writeStrings(out, "not_known", scope.takesUnknown ? std::vector<std::string>() : namesOf(views, season::coverOf(views, scope).unknown));
  out.endObject();
}

std::string textOf(const Views& views, const season::NoticeRecord& notice) {
  const season::NoticeProgress progress = season::progressOf(views, notice);
  std::string lines = notice.fact + "  " + print(notice.day) + "  " + oneLine(notice.text) + "\n      " + counted(progress.held, "helmet") +
                      " still on hold, " + std::to_string(progress.worn) + " of them worn\n";
  for (const std::string& helmet : namesOf(views, stillHeld(views, notice.fact))) lines += "      " + oneLine(helmet) + '\n';
  const auto unknown = season::coverOf(views, notice.scope).unknown;
  if (!notice.scope.takesUnknown && !unknown.empty())
    lines += "      " + counted(static_cast<long long>(unknown.size()), "helmet") + " to look at: year made or lot not known\n";
  return lines;
}

const season::NoticeRecord* find(const Views& views, const std::string& notice) {
  if (!views.team) return nullptr;
  const auto& all = views.team->notices;
  const auto it = std::find_if(all.begin(), all.end(), [&](const auto& each) { return each.fact == notice; });
  return it == all.end() ? nullptr : &*it;
}

// "2019..2021", "2019..", "..2021" or "2019".
Result<void> readYears(const std::string& text, season::NoticeScope& scope) {
  if (text.empty()) return {};
  const auto refuse = [] { return fail(ErrorCode::wrongType, "--made", "a year or years, like 2019, 2019..2021 or 2019.."); };
  const std::size_t split = text.find("..");
  const auto year = [](const std::string& digits) -> std::optional<int> {
    const bool isYear = digits.size() == 4 && std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; });
    return isYear ? std::optional(std::stoi(digits)) : std::nullopt;
  };
  const std::string from = text.substr(0, split), to = split == std::string::npos ? from : text.substr(split + 2);
  if (from.empty() && to.empty()) return refuse();
  scope.yearFrom = year(from);
  scope.yearTo = year(to);
  if ((!from.empty() && !scope.yearFrom) || (!to.empty() && !scope.yearTo)) return refuse();
  return {};
}

Result<season::NoticeScope> scopeOf(const Views& views, const NoticeRequest& request) {
  season::NoticeScope scope;
  if (!request.sheet.empty()) {
    const season::SheetRecord* const sheet = season::sheetById(views, request.sheet);
    if (sheet == nullptr) return fail(ErrorCode::notFound, "--sheet " + request.sheet);
    scope.sheet = sheet->hash;
  }
  if (auto read = readYears(request.made, scope); !read) return tl::unexpected<Error>(read.error());
  scope.lot = request.lot;
  if (!request.serials.empty()) {
    const std::size_t split = request.serials.find("..");
    scope.serialFrom = request.serials.substr(0, split);
    scope.serialTo = split == std::string::npos ? scope.serialFrom : request.serials.substr(split + 2);
    if (scope.serialFrom.empty() && scope.serialTo.empty())
      return fail(ErrorCode::wrongType, "--serials", "the first and the last serial, like KX-0410..KX-1200, or KX-0410..");
  }
  scope.takesUnknown = request.takesUnknown;
  return scope;
}

Result<void> append(book::Book& book, book::Drafts drafts) {
  if (const auto done = book.append(std::move(drafts)); !done) return tl::unexpected<Error>(done.error());
  return book.checkpoint();
}

Result<Reply> list(const Views& views, const std::string& only) {
  json::Writer out;
  std::string lines;
  out.beginObject().key("notices").beginArray();
  for (const season::NoticeRecord& notice : views.team ? views.team->notices : std::vector<season::NoticeRecord>()) {
    if (!only.empty() && notice.fact != only) continue;
    writeNotice(out, views, notice);
    lines += textOf(views, notice);
  }
  out.endArray().endObject();
  if (lines.empty()) lines = "No maker's notice is in the Book.\n";
  return Reply{kDone, out.take(), lines};
}

Result<Reply> issue(book::Book& book, const NoticeRequest& request, Instant now) {
  const auto day = request.day.empty() ? Result<Day>(dayOf(now)) : parseDay(request.day, "--day");
  if (!day) return tl::unexpected<Error>(day.error());
  auto scope = scopeOf(book.views(), request);
  if (!scope) return tl::unexpected<Error>(scope.error());
  auto drafts = book::issueNotice(book.views(), {request.text, *day, *scope}, dayOf(now));
  if (!drafts) return tl::unexpected<Error>(drafts.error());
  const season::NoticeCover cover = season::coverOf(book.views(), *scope);
  std::string fact;
  if (!request.isLook) {
    if (auto done = append(book, std::move(*drafts)); !done) return tl::unexpected<Error>(done.error());
    fact = book.views().team->notices.back().fact;
  }
  const auto held = namesOf(book.views(), cover.units);
  json::Writer out;
  out.beginObject().key("notice");
  if (fact.empty()) {
    out.null();
  } else {
    out.string(fact);
  }
  writeStrings(out, "held", held);
  writeStrings(out, "worn", namesOf(book.views(), cover.worn));
  writeStrings(out, "not_known", namesOf(book.views(), cover.unknown));
  out.endObject();
  Reply reply;
  reply.json = out.take();
  reply.text = (request.isLook ? "Would hold " : "Notice " + fact + ". On hold: ") +
               counted(static_cast<long long>(held.size()), "helmet") + ", " + std::to_string(cover.worn.size()) + " of them worn\n";
  for (const std::string& helmet : held) reply.text += "  " + oneLine(helmet) + '\n';
  if (!scope->takesUnknown && !cover.unknown.empty())
    reply.text += counted(static_cast<long long>(cover.unknown.size()), "helmet") + " to look at: year made or lot not known\n";
  reply.text += std::string(kCaution) + '\n';
  return reply;
}

Result<Reply> release(book::Book& book, const NoticeRequest& request, Instant now) {
  const Views& views = book.views();
  book::Drafts drafts;
  std::vector<std::string> released;
  for (const std::string& name : request.helmets) {
    const auto named = helmetsNamed(views, name);
    if (named.empty()) return fail(ErrorCode::notFound, "--helmet " + name);
    const auto isHeld = [&](const season::UnitRecord* unit) {
      return std::any_of(unit->holds.begin(), unit->holds.end(), [&](const auto& hold) { return hold.notice == request.notice; });
    };
    const auto found = std::find_if(named.begin(), named.end(), isHeld);
    if (found == named.end()) return fail(ErrorCode::notFound, "--helmet " + name, "it is not on hold for this notice");
    if (std::count_if(named.begin(), named.end(), isHeld) > 1)
      return fail(ErrorCode::inconsistent, "--helmet " + name, "several helmets have this serial; name the tag");
    if (std::find(released.begin(), released.end(), (*found)->id) != released.end()) continue;  // said twice
    for (const season::HoldRecord& hold : (*found)->holds) {
      if (hold.notice != request.notice) continue;
      auto each = book::releaseHold(views, (*found)->id, hold.fact, request.reason, dayOf(now));
      if (!each) return tl::unexpected<Error>(each.error());
      drafts.insert(drafts.end(), each->begin(), each->end());
    }
    released.push_back((*found)->id);
  }
  if (auto done = append(book, std::move(drafts)); !done) return tl::unexpected<Error>(done.error());
  const auto still = namesOf(views, stillHeld(views, request.notice));
  json::Writer out;
  out.beginObject().key("notice").string(request.notice);
  writeStrings(out, "released", namesOf(views, released));
  writeStrings(out, "helmets", still);
  out.endObject();
  return Reply{
      kDone, out.take(),
      counted(static_cast<long long>(released.size()), "helmet") + " released, " + std::to_string(still.size()) + " still on hold\n"};
}

}  // namespace

Result<Reply> notice(const NoticeRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const bool isWriting = request.deed == NoticeDeed::release || (request.deed == NoticeDeed::issue && !request.isLook);
  const auto opened = openBook(request.book, isWriting ? book::Access::readWrite : book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  book::Book& book = **opened;
  if (!request.notice.empty() && find(book.views(), request.notice) == nullptr)
    return fail(ErrorCode::notFound, "--notice " + request.notice);
  switch (request.deed) {
    case NoticeDeed::list:
    case NoticeDeed::progress:
      return list(book.views(), request.notice);
    case NoticeDeed::issue:
      return issue(book, request, *now);
    case NoticeDeed::release:
      return release(book, request, *now);
  }
  return Reply{};
}

}  // namespace snugline::cli
