// SPDX-License-Identifier: Apache-2.0
// Purpose: a Paper set as PDF bytes: US letter, text wrapped anywhere if it must, pages numbered. Needs an application object of Qt Gui.
// Thread: GUI thread.
#pragma once

#include <string>

#include "core/ports/outbox.h"

namespace snugline::platform {

[[nodiscard]] std::string setPaper(const ports::Paper& paper, int* pages = nullptr);

}  // namespace snugline::platform
