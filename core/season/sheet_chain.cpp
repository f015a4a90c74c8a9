// SPDX-License-Identifier: Apache-2.0
#include "core/season/sheet_chain.h"

#include <algorithm>
#include <tuple>

namespace snugline::season {

bool isStanding(const Views& views, const std::string& hash) { return views.standingSheet(hash) == hash; }

bool isOneModel(const Views& views, const std::string& a, const std::string& b) {
  return a == b || views.standingSheet(a) == views.standingSheet(b);
}

std::vector<const SheetRecord*> standingSheets(const Views& views) {
  std::vector<const SheetRecord*> sheets;
  for (const auto& [hash, record] : views.sheets)
    if (record.sheet != nullptr && isStanding(views, hash)) sheets.push_back(&record);
  std::sort(sheets.begin(), sheets.end(), [](const SheetRecord* a, const SheetRecord* b) {
    return std::tie(a->sheet->name, a->hash) < std::tie(b->sheet->name, b->hash);
  });
  return sheets;
}

std::vector<const SheetRecord*> sheetsBefore(const Views& views, const std::string& standing) {
  std::vector<const SheetRecord*> sheets;
  for (const auto& [hash, record] : views.sheets)
    if (record.sheet != nullptr && record.replaced && hash != standing && views.standingSheet(hash) == standing) sheets.push_back(&record);
  std::sort(sheets.begin(), sheets.end(),
            [](const SheetRecord* a, const SheetRecord* b) { return isAfter(a->replaced->stamp, b->replaced->stamp); });
  return sheets;
}

const SheetRecord* sheetById(const Views& views, const std::string& id) {
  const SheetRecord* found = nullptr;
  for (const auto& [hash, record] : views.sheets) {
    if (record.sheet == nullptr || record.sheet->id != id) continue;
    if (found == nullptr || isAfter(record.adopted, found->adopted)) found = &record;
  }
  if (found == nullptr) return nullptr;
  const auto standing = views.sheets.find(views.standingSheet(found->hash));
  return standing == views.sheets.end() ? found : &standing->second;
}

}  // namespace snugline::season
