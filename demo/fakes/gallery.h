// SPDX-License-Identifier: Apache-2.0
// Purpose: walks the real screens of the demo Book at one size and writes a picture of each. Thread: GUI thread.
#pragma once

#include <QSize>
#include <QString>

namespace snugline::app {
class Composition;
}
namespace snugline::ports {
class MemoryGauge;
}

namespace snugline::demo {

// Files "<size>-<number>-<screen>.png" in the folder; the composition has just loaded a fresh Book. False when a screen did not come or a
// file could not be written; stderr says which. gauge: the one that the composition speaks with, which the walk lets say things.
// only: "people", "gear", "sheets", "phone", "season" or "first" (of an empty Book), a part of the walk; empty: all of it.
// pocket: an athlete's own phone that has not joined yet; none leaves its pictures out.
[[nodiscard]] bool writeGallery(app::Composition& composition, ports::MemoryGauge& gauge, const QString& folder, QSize size,
                                const QString& only = {}, app::Composition* pocket = nullptr);

}  // namespace snugline::demo
