// SPDX-License-Identifier: Apache-2.0
// `snug plan`: what lapses, what goes out when, and what to order for the next season. Writes nothing.
#include <algorithm>
#include <charconv>

#include "core/season/sheet_chain.h"
#include "platform/cli/files.h"
#include "platform/cli/season_words.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

using season::Views;

// "42d" or "6w"; a bare number is refused as everywhere.
Result<int> daysOf(const std::string& text, const char* option) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const std::string unit(end, text.data() + text.size());
  if (error != std::errc{} || (unit != "d" && unit != "w") || value < 0 || value > 1000)
    return fail(ErrorCode::wrongType, option, "a number of days or weeks, like 42d or 6w");
  return unit == "w" ? value * 7 : value;
}

// "0.95" or "95%".
Result<double> shareOf(const std::string& text, const char* option) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const std::string rest(end, text.data() + text.size());
  const bool isPercent = rest == "%";
  if (error != std::errc{} || (!rest.empty() && !isPercent)) return fail(ErrorCode::wrongType, option, "a share, like 0.95 or 95%");
  return isPercent ? value / 100 : value;
}

Result<std::string> sheetHash(const Views& views, const std::string& id) {
  const season::SheetRecord* const found = season::sheetById(views, id);
  if (found == nullptr) return fail(ErrorCode::notFound, "--sheet: " + id);
  return found->hash;
}

Result<season::PlanWishes> wishesOf(const Views& views, const PlanRequest& request) {
  season::PlanWishes wishes;
  wishes.season = request.season;
  wishes.newcomers = request.newcomers;
  wishes.newcomerAge = request.newcomerAge;
  wishes.lastAge = request.lastAge;
  if (!request.turnaround.empty()) {
    const Result<int> days = daysOf(request.turnaround, "--turnaround");
    if (!days) return tl::unexpected<Error>(days.error());
    wishes.turnaround = *days;
  }
  for (const auto& [text, option, wish] :
       {std::tuple(&request.cover, "--cover", &wishes.cover), std::tuple(&request.returning, "--returning", &wishes.returning)}) {
    if (text->empty()) continue;
    const Result<double> share = shareOf(*text, option);
    if (!share) return tl::unexpected<Error>(share.error());
    *wish = *share;
  }
  if (!request.sheet.empty()) {
    const Result<std::string> hash = sheetHash(views, request.sheet);
    if (!hash) return tl::unexpected<Error>(hash.error());
    wishes.newSheet = *hash;
  }
  return wishes;
}

std::vector<std::string> assumptions(const Views& views, const season::PlanWishes& wishes, const season::PlanAnswer& a) {
  std::vector<std::string> lines;
  lines.push_back((a.areDatesAssumed ? "Season " + std::to_string(a.season) + " taken as " : "Season " + std::to_string(a.season) + ": ") +
                  print(a.start) + " to " + print(a.end) + "; the next on the same days a year later");
  lines.push_back("A helmet is away " + counted(wishes.turnaround, "day") + "; its new label is judged by the year in which it comes back");
  lines.push_back("Each head returns with a chance of " + fixedText(wishes.returning, 2) + ", none past " + std::to_string(wishes.lastAge) +
                  "; " + std::to_string(a.leaving) + " past that age");
  lines.push_back(fixedText(a.expectedNewcomers, 1) + " newcomers expected" + (wishes.newcomers ? "" : ", as many as leave") +
                  ", heads as of " + std::to_string(wishes.newcomerAge) + "-year-olds, model " +
                  (a.newSheet.empty() ? "unknown" : sheetName(views, a.newSheet)));
  lines.push_back("Heads grow " + fixedText(season::kGrowthPerYear.mm(), 0) + " mm a year through age " +
                  std::to_string(season::kGrowthThroughAge) + ", with a spread of " + fixedText(season::kGrowthSpread.mm(), 0) +
                  " mm a year; a missing birth year counts as growing (" + std::to_string(a.unknownBirthYears) + ")");
  if (a.untaped > 0) lines.push_back(counted(a.untaped, "head") + " never taped: taken as any of the age");
  if (a.staleTapes > 0) lines.push_back(counted(a.staleTapes, "tape") + " stale");
  if (a.offChart >= 0.05) lines.push_back(fixedText(a.offChart, 1) + " heads expected off the charts; no order covers them");
  return lines;
}

std::string json(const Views& views, const season::PlanWishes& wishes, const season::PlanAnswer& a) {
  json::Writer out;
  out.beginObject().key("season").integer(a.season).key("next_season").integer(a.nextSeason).key("today").string(print(a.today));
  out.key("season_start").string(print(a.start)).key("season_end").string(print(a.end));
  out.key("next_start").string(print(a.nextStart)).key("next_end").string(print(a.nextEnd));
  const auto kind = [&](const auto& entry) { out.key("sheet").string(sheetName(views, entry.sheet)).key("size").string(entry.size); };
  out.key("batches").beginArray();
  for (const season::Batch& batch : a.batches) {
    out.beginObject().key("send").string(print(batch.send)).key("back").string(print(batch.back)).key("helmets").beginArray();
    for (const std::string& unit : batch.units) out.string(helmetName(views, unit));
    out.endArray().key("sizes").beginArray();
    for (const season::SizeCount& count : batch.sizes) {
      out.beginObject();
      kind(count);
      out.key("count").integer(count.count).endObject();
    }
    out.endArray().endObject();
  }
  out.endArray().key("orders").beginArray();
  for (const season::Order& order : a.orders) {
    out.beginObject();
    kind(order);
    out.key("order").integer(order.order).key("enough").integer(order.enough).key("good").integer(order.good);
    out.key("not_counted").integer(order.notCounted).key("returning").real(order.returning, 6).key("newcomers").real(order.newcomers, 6);
    out.key("covered").real(order.covered, 9).key("why").string(sentence(order, wishes.cover)).endObject();
  }
  out.endArray().key("lapsing").beginArray();
  for (const season::Lapsing& unit : a.lapsing) {
    out.beginObject().key("helmet").string(helmetName(views, unit.unit)).key("helmet_id").string(unit.unit);
    kind(unit);
    out.key("last_good_day").string(print(unit.lastGood.first)).key("last_good_day_latest").string(print(unit.lastGood.last));
    out.key("when").string(code(unit.when)).key("renewable").boolean(unit.isRenewable).key("state").string(code(unit.bar)).endObject();
  }
  out.endArray().key("missing").beginArray();
  for (const season::SizeMissing& missing : a.missing) {
    out.beginObject();
    kind(missing);
    out.key("from").string(print(missing.first)).key("to").string(print(missing.last)).key("most").integer(missing.most).endObject();
  }
  out.endArray().key("cover").real(wishes.cover, 6).key("turnaround_days").integer(wishes.turnaround);
  out.key("expected_returning").real(a.expectedReturning, 6).key("expected_newcomers").real(a.expectedNewcomers, 6);
  out.key("off_chart").real(a.offChart, 6);
  writeStrings(out, "why", assumptions(views, wishes, a));
  out.endObject();
  return out.take();
}

std::string text(const Views& views, const season::PlanWishes& wishes, const season::PlanAnswer& a) {
  const auto kind = [&](const auto& entry) { return entry.size + " of " + sheetName(views, entry.sheet); };
  std::string lines = "Lapsing through " + print(a.nextEnd) + ": " + counted(static_cast<long long>(a.lapsing.size()), "helmet") + '\n';
  for (std::size_t i = 0; i < a.lapsing.size();) {
    std::size_t to = i;
    while (to < a.lapsing.size() && a.lapsing[to].lastGood.first == a.lapsing[i].lastGood.first && a.lapsing[to].when == a.lapsing[i].when)
      ++to;
    lines += "  " + print(a.lapsing[i].lastGood.first) + "  " + counted(static_cast<long long>(to - i), "helmet") + ", " +
             words(a.lapsing[i].when) + '\n';
    i = to;
  }
  lines += a.batches.empty() ? "Nothing to send out.\n" : "Send out:\n";
  for (const season::Batch& batch : a.batches) {
    lines += "  " + print(batch.send) + ", back " + print(batch.back) + ": " +
             counted(static_cast<long long>(batch.units.size()), "helmet") + '\n';
    for (const season::SizeCount& count : batch.sizes) lines += "      " + std::to_string(count.count) + ' ' + kind(count) + '\n';
  }
  for (const season::SizeMissing& missing : a.missing)
    lines += "Short, whatever is sent: " + std::to_string(missing.most) + ' ' + kind(missing) + ", " + print(missing.first) + " to " +
             print(missing.last) + '\n';
  lines += "Order for " + std::to_string(a.nextSeason) + " (what it costs is left to you):\n";
  for (const season::Order& order : a.orders)
    if (order.enough > 0 || order.good > 0 || order.notCounted > 0)
      lines += "  " + std::to_string(order.order) + ' ' + kind(order) + "\n      " + sentence(order, wishes.cover) + '\n';
  for (const std::string& line : assumptions(views, wishes, a)) lines += line + ".\n";
  return lines + kCaution + '\n';
}

}  // namespace

Result<Reply> plan(const PlanRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const auto opened = openBook(request.book, book::Access::readOnly, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  const Views& views = (*opened)->views();
  const Result<season::PlanWishes> wishes = wishesOf(views, request);
  if (!wishes) return tl::unexpected<Error>(wishes.error());
  const Result<season::PlanAnswer> answer = season::planSeason(views, *wishes, dayOf(*now));
  if (!answer) {
    Error error = answer.error();
    error.place = "--" + error.place;
    return tl::unexpected<Error>(error);
  }
  return Reply{kDone, json(views, *wishes, *answer), text(views, *wishes, *answer)};
}

}  // namespace snugline::cli
