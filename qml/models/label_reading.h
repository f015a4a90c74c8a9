// SPDX-License-Identifier: Apache-2.0
// Purpose: what was touched about a certification label, as a label; shared by the dock and the page of a helmet. Rules stand in
// core/gear/certification.h. Errors: a sentence. Thread: GUI thread.
#pragma once

#include <optional>
#include <variant>

#include <QString>
#include <QVariantList>

#include "core/gear/certification.h"
#include "core/quantity/time.h"

namespace snugline::models {

// Years to choose from, latest first: {year, isRecertified, isMark}, the latter two by the label that was chosen.
[[nodiscard]] QVariantList labelYears(const std::optional<gear::Label>& chosen, Day today);
[[nodiscard]] gear::Label labelOfYear(int year, bool isMakersMark);
// The label, or why not.
[[nodiscard]] std::variant<gear::Label, QString> labelOfDate(const QString& isoDay, const QString& source, Day today);

}  // namespace snugline::models
