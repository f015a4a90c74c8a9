// SPDX-License-Identifier: Apache-2.0
// Purpose: what `snug`, a fresh process, says of a copy of the Book, held against what the screens show. Thread: GUI thread.
#pragma once

#include "fresh_eyes.h"

namespace snugline::eyes {

[[nodiscard]] QStringList toldByProcess(const Glass& shown, const QString& book, const QString& keys, Instant now);

}  // namespace snugline::eyes
