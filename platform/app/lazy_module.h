// SPDX-License-Identifier: Apache-2.0
// Purpose: an edge out of a module that is loaded when it is first asked for. The module lies as it was installed, or as in a build: bin/
// beside lib/snugline/. Errors: notFound where it is not there or does not load. Thread: GUI thread.
#pragma once

#include <memory>

#include <QCoreApplication>
#include <QLibrary>

#include "core/quantity/result.h"

namespace snugline::app {

template <typename Port>
[[nodiscard]] Result<std::unique_ptr<Port>> makeFromModule(const char* module, const char* symbol) {
  QLibrary library(QCoreApplication::applicationDirPath() + QStringLiteral("/../" SNUGLINE_MODULES "/") + QLatin1String(module));
  using Make = Port* (*)();
  const auto made = reinterpret_cast<Make>(library.resolve(symbol));
  if (made == nullptr) return fail(ErrorCode::notFound, library.fileName().toStdString(), library.errorString().toStdString());
  return std::unique_ptr<Port>(made());
}

}  // namespace snugline::app
