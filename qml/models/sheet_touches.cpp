// SPDX-License-Identifier: Apache-2.0
// What the buttons of a section do to a draft, and where stepping begins.
#include <algorithm>

#include "core/fit/guide.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sheet_fields.h"

namespace snugline::models {

namespace {

using gear::Figure;
using gear::Port;
using gear::SheetDraft;

std::optional<gear::PadsDraft>* padsNamed(SheetDraft& draft, const QString& item) {
  return item == QLatin1String("jaw") ? &draft.jawPads : item == QLatin1String("crown") ? &draft.crownPads : nullptr;
}

bool& isUnsaid(SheetDraft& draft, const QString& item) {
  return item == QLatin1String("jaw") ? draft.unsaid.jawPads : draft.unsaid.crownPads;
}

}  // namespace

bool actOn(SheetDraft& draft, const QString& action) {
  const QString name = action.section(QLatin1Char(':'), 0, 0), what = action.section(QLatin1Char(':'), 1);
  const std::size_t at = what.toUInt();
  const auto port = gear::portFromCode(utf8(what));
  std::optional<gear::PadsDraft>* pads = padsNamed(draft, what);
  if (name == QLatin1String("no-air") && draft.air.empty()) {
    draft.unsaid.air = false;
  } else if (name == QLatin1String("no-pads") && pads != nullptr && !*pads) {
    isUnsaid(draft, what) = false;
  } else if (name == QLatin1String("add-size") && at <= draft.sizes.size()) {
    draft.sizes.insert(draft.sizes.begin() + static_cast<std::ptrdiff_t>(at), gear::BandDraft{});
  } else if (name == QLatin1String("remove-size") && at < draft.sizes.size()) {
    draft.sizes.erase(draft.sizes.begin() + static_cast<std::ptrdiff_t>(at));
  } else if (name == QLatin1String("add-air") && port) {
    gear::addPort(draft, *port);
    draft.unsaid.air = false;
  } else if (name == QLatin1String("remove-air") && port) {
    gear::removePort(draft, *port);
  } else if (name == QLatin1String("as-left")) {
    const auto left = std::find_if(draft.air.begin(), draft.air.end(), [](const auto& each) { return each.port == Port::jawLeft; });
    for (gear::PortDraft& each : draft.air)
      if (each.port == Port::jawRight && left != draft.air.end()) each = {Port::jawRight, left->start, left->low, left->high};
  } else if (name == QLatin1String("add-pads") && pads != nullptr) {
    pads->emplace().steps.emplace_back();
    isUnsaid(draft, what) = false;
  } else if (name == QLatin1String("remove-pads") && pads != nullptr) {
    pads->reset();
  } else if (name == QLatin1String("add-step") && pads != nullptr && *pads) {
    (*pads)->steps.emplace_back();
  } else if (name == QLatin1String("remove-step") && pads != nullptr && *pads && !(*pads)->steps.empty()) {
    (*pads)->steps.pop_back();
  } else if (name == QLatin1String("earlier") && at > 0 && at < draft.order.size()) {
    std::swap(draft.order[at], draft.order[at - 1]);
  } else if (name == QLatin1String("earlier-mark") && at > 0 && at < gear::kMarkCodes.size()) {
    const std::vector<std::string> usual(gear::kMarkCodes.begin(), gear::kMarkCodes.end());
    if (draft.markOrder.size() != usual.size()) draft.markOrder = usual;
    std::swap(draft.markOrder[at], draft.markOrder[at - 1]);
    if (draft.markOrder == usual) draft.markOrder.clear();
  } else if (name == QLatin1String("add-question")) {
    draft.questions.emplace_back();
  } else if (name == QLatin1String("remove-question") && at < draft.questions.size()) {
    draft.questions.erase(draft.questions.begin() + static_cast<std::ptrdiff_t>(at));
  } else {
    return false;
  }
  return true;
}

Figure stepsFrom(const SheetDraft& draft, const std::string& path) {
  SheetDraft copy = draft;
  const QStringList parts = text(path).split(QLatin1Char('/'), Qt::SkipEmptyParts);
  if (parts.size() == 3 && parts.front() == QLatin1String("sizes")) {
    const std::size_t at = parts[1].toUInt();
    if (at >= copy.sizes.size()) return std::nullopt;
    if (parts[2] == QLatin1String("high_um")) return copy.sizes[at].low;
    return at > 0 ? copy.sizes[at - 1].high : std::nullopt;
  }
  if (parts.size() == 3 && parts[1] == QLatin1String("steps_um") && parts[2].toUInt() > 0)
    if (const Figure* before = gear::figureAt(copy, utf8(QStringLiteral("/%1/steps_um/%2").arg(parts[0]).arg(parts[2].toUInt() - 1))))
      return *before;
  if (path == "/brow_low_um" || path == "/brow_high_um") return fit::kBrowTarget.um;
  return std::nullopt;
}

}  // namespace snugline::models
