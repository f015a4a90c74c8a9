// SPDX-License-Identifier: Apache-2.0
#include "lazy_gauge.h"

#include <QCoreApplication>
#include <QLibrary>

namespace snugline::app {

void LazyGauge::listen(ports::GaugeListener listener) {
  m_listener = std::move(listener);
  if (m_gauge) m_gauge->listen(m_listener);
}

// The module lies as it was installed, or as in a build: bin/ beside lib/snugline/.
Result<void> LazyGauge::load() {
  if (m_gauge) return {};
  QLibrary module(QCoreApplication::applicationDirPath() + QStringLiteral("/../" SNUGLINE_MODULES "/snugline_gauge"));
  using Make = ports::PressureGauge* (*)();
  const auto make = reinterpret_cast<Make>(module.resolve("snuglineMakeGauge"));
  if (make == nullptr) return fail(ErrorCode::notFound, module.fileName().toStdString(), module.errorString().toStdString());
  m_gauge.reset(make());
  m_gauge->listen(m_listener);
  return {};
}

Result<void> LazyGauge::scan(const ports::RememberedGauge& remembered) {
  if (auto loaded = load(); !loaded) return loaded;
  return m_gauge->scan(remembered);
}

void LazyGauge::stopScan() {
  if (m_gauge) m_gauge->stopScan();
}

Result<void> LazyGauge::choose(const std::string& id) {
  if (auto loaded = load(); !loaded) return loaded;
  return m_gauge->choose(id);
}

Result<void> LazyGauge::start(const ports::RememberedGauge& remembered) {
  if (auto loaded = load(); !loaded) return loaded;
  return m_gauge->start(remembered);
}

void LazyGauge::stop() {
  if (m_gauge) m_gauge->stop();
}

}  // namespace snugline::app
