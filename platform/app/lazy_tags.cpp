// SPDX-License-Identifier: Apache-2.0
#include "lazy_tags.h"

#include <QCoreApplication>
#include <QLibrary>

namespace snugline::app {

namespace {

// The module lies as it was installed, or as in a build: bin/ beside lib/snugline/.
template <typename Port>
Result<std::unique_ptr<Port>> make(const char* module, const char* symbol) {
  QLibrary library(QCoreApplication::applicationDirPath() + QStringLiteral("/../" SNUGLINE_MODULES "/") + QLatin1String(module));
  using Make = Port* (*)();
  const auto made = reinterpret_cast<Make>(library.resolve(symbol));
  if (made == nullptr) return fail(ErrorCode::notFound, library.fileName().toStdString(), library.errorString().toStdString());
  return std::unique_ptr<Port>(made());
}

}  // namespace

void LazyCamera::listen(ports::CameraListener listener) {
  m_listener = std::move(listener);
  if (m_camera) m_camera->listen(m_listener);
}

Result<void> LazyCamera::start() {
  if (!m_camera) {
    auto made = make<ports::TagCamera>("snugline_camera", "snuglineMakeCamera");
    if (!made) return tl::unexpected<Error>(made.error());
    m_camera = std::move(*made);
    m_camera->listen(m_listener);
  }
  return m_camera->start();
}

void LazyCamera::stop() {
  if (m_camera) m_camera->stop();
}

Result<int> LazyLabelSheets::write(const std::string& path, const std::vector<std::string>& serials, const std::string& title) {
  if (!m_sheets) {
    auto made = make<ports::LabelSheets>("snugline_tags", "snuglineMakeLabelSheets");
    if (!made) return tl::unexpected<Error>(made.error());
    m_sheets = std::move(*made);
  }
  return m_sheets->write(path, serials, title);
}

}  // namespace snugline::app
