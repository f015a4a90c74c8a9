// SPDX-License-Identifier: Apache-2.0
#include "core/book/acts_sheets.h"

#include "core/season/sheet_chain.h"
#include "core/season/sheet_change.h"

namespace snugline::book {

namespace {

using season::Views;

// The sheet of that id which counts, `but` left out.
bool isIdTaken(const Views& views, const std::string& id, const std::string& but) {
  for (const season::SheetRecord* record : season::standingSheets(views))
    if (record->hash != but && record->sheet->id == id) return true;
  return false;
}

Result<void> checkBytes(const gear::ModelSheet& sheet) {
  if (!sheet.bytes.empty() && sheet.bytes.size() <= gear::kSheetLimitBytes) return {};
  return fail(ErrorCode::tooLong, "sheet " + sheet.id, std::to_string(sheet.bytes.size()) + ", " + std::to_string(gear::kSheetLimitBytes));
}

}  // namespace

Result<Drafts> adoptSheet(const Views& views, const gear::ModelSheet& sheet) {
  if (views.sheet(sheet.hash) != nullptr) return Drafts{};
  if (auto ok = checkBytes(sheet); !ok) return tl::unexpected(ok.error());
  if (isIdTaken(views, sheet.id, {})) return fail(ErrorCode::notAllowed, sheet.id, std::string(rule::kSheetIdTaken));
  return Drafts{{"", SheetAdopted{sheet.bytes}}};
}

Result<Drafts> replaceSheet(const Views& views, const std::string& replaced, const gear::ModelSheet& sheet) {
  const gear::ModelSheet* old = views.sheet(replaced);
  if (old == nullptr) return fail(ErrorCode::notFound, "sheet " + replaced);
  if (!season::isStanding(views, replaced)) return fail(ErrorCode::notAllowed, old->name, std::string(rule::kSheetReplaced));
  if (gear::differencesOf(*old, sheet).empty()) return Drafts{};
  if (auto ok = checkBytes(sheet); !ok) return tl::unexpected(ok.error());
  // A Book may hold two sheets of one id since before this was asked; changing either of them is the way out.
  const bool isOther = sheet.id != old->id || season::isStanding(views, sheet.hash);
  if (isOther && isIdTaken(views, sheet.id, replaced)) return fail(ErrorCode::notAllowed, sheet.id, std::string(rule::kSheetIdTaken));
  if (const auto gone = season::sizesGone(views, replaced, sheet); !gone.empty()) {
    std::string sizes;
    for (const season::SizeGone& each : gone) sizes += (sizes.empty() ? "" : ", ") + each.size;
    return fail(ErrorCode::notAllowed, sizes, std::string(rule::kSizeInUse));
  }
  return Drafts{{"", SheetAdopted{sheet.bytes, replaced}}};
}

}  // namespace snugline::book
