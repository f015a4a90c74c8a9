// SPDX-License-Identifier: Apache-2.0
// Purpose: the sections of a model sheet as fields for a screen: what each is called, what stands in it, what is wrong with it, by which
// steps it moves. Which values there are and what is wrong is core's (core/gear/sheet_draft.h). Thread: GUI thread.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include <QString>
#include <QStringList>
#include <QVariantList>

#include "core/gear/sheet_draft.h"

namespace snugline::models {

enum class SheetSection : std::uint8_t { names, sizes, air, pads, brow, straps, limits, order, questions, cautions };
inline constexpr std::size_t kSheetSectionCount = 10;
[[nodiscard]] QString code(SheetSection section);  // "names"
[[nodiscard]] std::optional<SheetSection> sheetSection(const QString& code);
[[nodiscard]] QString sectionName(SheetSection section);
[[nodiscard]] SheetSection sectionOf(const std::string& path);  // where a fault is put right

// What was typed and is no number yet: path -> as typed.
using Typed = std::map<std::string, QString>;

struct SheetFields {
  // {key, title, fields, actions: [{name, text}]}; a field: {path, kind, label, text, note, message, steps, typedLabel, choices, current,
  // longest}; kind "figure", "text", "page" or "choice".
  QVariantList groups;
  QVariantList actions;  // {name, text}
  QStringList troubles;  // of the section as a whole
  QString intro;
};
[[nodiscard]] SheetFields fieldsOf(const gear::SheetDraft& draft, SheetSection section, const std::vector<gear::SheetFault>& faults,
                                   const Typed& typed, UnitSystem units);
// An action of a group or section on the draft; names come from fieldsOf. False where there is no such thing any more.
bool actOn(gear::SheetDraft& draft, const QString& action);
// Where stepping an empty number begins.
[[nodiscard]] gear::Figure stepsFrom(const gear::SheetDraft& draft, const std::string& path);

}  // namespace snugline::models
