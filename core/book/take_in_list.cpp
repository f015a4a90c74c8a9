// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <charconv>
#include <set>

#include "core/book/roster.h"
#include "core/book/roster_columns.h"
#include "core/book/roster_text.h"
#include "core/book/written.h"
#include "core/season/sheet_chain.h"

namespace snugline::book {

namespace {

constexpr std::size_t kScansMost = 20000;  // ours
constexpr std::size_t kLabelCell = 3, kPointsCell = 4;

struct ListedArrival {
  Arrival arrival;
  std::optional<RowNote> refused;
};

std::string sheetHash(const season::Views& views, const std::string& id) {
  const season::SheetRecord* found = season::sheetById(views, id);
  return found == nullptr ? std::string() : found->hash;
}

// "ok", or faults as "faceguard=bare metal;liner=torn", in one cell or several.
std::optional<std::string> readPoints(const CellRow& row, Arrival& arrival) {
  for (std::size_t i = kPointsCell; i < row.cells.size(); ++i) {
    std::string_view rest = trimmed(row.cells[i]);
    if (folded(rest) == "ok") {
      for (gear::PointFinding& finding : arrival.points) {
        if (finding.state == gear::PointState::unseen) finding.state = gear::PointState::sound;
      }
      arrival.isGroup = true;
      continue;
    }
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find(';'), rest.size());
      const std::string_view item = trimmed(rest.substr(0, end));
      rest = trimmed(rest.substr(std::min(end + 1, rest.size())));
      if (item.empty()) continue;
      const std::size_t equals = item.find('=');
      const auto point = gear::pointFromCode(trimmed(item.substr(0, equals)));
      if (!point || equals == std::string_view::npos) return std::string(item);
      arrival.points[static_cast<std::size_t>(*point)] = {gear::PointState::fault, std::string(trimmed(item.substr(equals + 1)))};
    }
  }
  return std::nullopt;
}

bool readLabel(std::string_view cell, Arrival& arrival) {
  if (cell.empty()) return true;
  if (folded(cell) == "missing") {
    arrival.isLabelMissing = true;
    return true;
  }
  int year = 0;
  const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), year);
  if (error != std::errc{} || end != cell.data() + cell.size() || year < 1990 || year > 2199) return false;
  arrival.label = gear::Label{};
  arrival.label->year = year;
  return true;
}

ListedArrival readLine(const season::Views& views, const CellRow& row, Day today) {
  ListedArrival out;
  const auto refuse = [&](RowDoubt doubt, std::string text) {
    out.refused = RowNote{row.line, doubt, std::move(text)};
    return out;
  };
  if (row.isBadQuote) return refuse(RowDoubt::badQuote, {});
  auto tag = gear::parseTag(row.cells.front(), today);
  if (!tag) return refuse(RowDoubt::tagUnreadable, tag.error().detail);
  if (!tag->isCheckDigitOk) return refuse(RowDoubt::tagUnreadable, "check digit");
  out.arrival.tag = std::move(*tag);
  const auto cell = [&](std::size_t i) { return i < row.cells.size() ? std::string(trimmed(row.cells[i])) : std::string(); };
  if (const std::string id = cell(1); !id.empty()) {
    out.arrival.sheet = sheetHash(views, id);
    if (out.arrival.sheet.empty()) return refuse(RowDoubt::sheetUnknown, id);
  }
  out.arrival.size = cell(2);
  if (!readLabel(cell(kLabelCell), out.arrival)) return refuse(RowDoubt::labelUnreadable, cell(kLabelCell));
  if (const auto bad = readPoints(row, out.arrival)) return refuse(RowDoubt::pointUnknown, *bad);
  return out;
}

// "#2" of one take-in stands for another place once the drafts of a whole list are joined.
void shiftNames(Drafts& drafts, std::size_t by) {
  for (Draft& draft : drafts) {
    if (draft.about == "#0") draft.about = '#' + std::to_string(by);
  }
}

RowDoubt doubtOf(const Error& error) {
  if (error.code == ErrorCode::notFound) return RowDoubt::sheetUnknown;
  if (error.code == ErrorCode::notAllowed) return error.detail == rule::kReturnUnsaid ? RowDoubt::unitAway : RowDoubt::unitRetired;
  if (error.code == ErrorCode::unknownWord || error.code == ErrorCode::inconsistent) return RowDoubt::sizeUnknown;
  return RowDoubt::notPrintable;
}

}  // namespace

Result<TakeInPlan> planTakeIn(const season::Views& views, std::string_view bytes, const std::string& file, Day today) {
  const auto text = decodeText(bytes, file, kRosterLimitBytes);
  if (!text) return tl::unexpected(text.error());
  const auto rows = parseCells(text->utf8, ',', file, kScansMost + 1);
  if (!rows) return tl::unexpected(rows.error());
  if (rows->size() > kScansMost) return fail(ErrorCode::tooLong, file, "lines, " + std::to_string(kScansMost));
  if (rows->empty()) return fail(ErrorCode::badRow, file + ":1", "the file is empty");

  TakeInPlan plan;
  std::set<std::string> seen;
  for (std::size_t i = 0; i < rows->size(); ++i) {
    const CellRow& row = (*rows)[i];
    if (!row.isBadQuote && (row.cells.empty() || trimmed(row.cells.front()).empty())) continue;
    if (i == 0 && !row.isBadQuote && folded(row.cells.front()) == "tag") continue;
    ListedArrival listed = readLine(views, row, today);
    if (listed.refused) {
      plan.refused.push_back(std::move(*listed.refused));
      continue;
    }
    const Arrival& arrival = listed.arrival;
    if (!seen.insert(arrival.tag.key).second) {
      plan.refused.push_back({row.line, RowDoubt::repeated, arrival.tag.serial});
      continue;
    }
    const bool isKnown = views.unitByTag(arrival.tag.key) != nullptr;
    auto drafts = takeIn(views, arrival, today);
    if (!drafts) {
      const bool isRule = drafts.error().code == ErrorCode::notAllowed;
      plan.refused.push_back({row.line, doubtOf(drafts.error()), isRule ? arrival.tag.serial : drafts.error().detail});
      continue;
    }
    (isKnown ? plan.known : plan.added).push_back(arrival.tag.serial);
    if (!outcomeOf(views, arrival, today).isInService) plan.held.push_back(arrival.tag.serial);
    shiftNames(*drafts, plan.drafts.size());
    plan.drafts.insert(plan.drafts.end(), std::make_move_iterator(drafts->begin()), std::make_move_iterator(drafts->end()));
  }
  return plan;
}

}  // namespace snugline::book
