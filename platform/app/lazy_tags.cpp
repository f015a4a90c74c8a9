// SPDX-License-Identifier: Apache-2.0
#include "lazy_tags.h"

#include "lazy_module.h"

namespace snugline::app {

void LazyCamera::listen(ports::CameraListener listener) {
  m_listener = std::move(listener);
  if (m_camera) m_camera->listen(m_listener);
}

Result<void> LazyCamera::start() {
  if (!m_camera) {
    auto made = makeFromModule<ports::TagCamera>("snugline_camera", "snuglineMakeCamera");
    if (!made) return tl::unexpected<Error>(made.error());
    m_camera = std::move(*made);
    m_camera->listen(m_listener);
  }
  return m_camera->start();
}

void LazyCamera::stop() {
  if (m_camera) m_camera->stop();
}

Result<void> LazyNfc::load() {
  if (m_reader) return {};
  auto made = makeFromModule<ports::NfcReader>("snugline_nfc", "snuglineMakeNfc");
  if (!made) return tl::unexpected<Error>(made.error());
  m_reader = std::move(*made);
  m_reader->listen(m_listener);
  return {};
}

bool LazyNfc::isThere() { return load() && m_reader->isThere(); }

void LazyNfc::listen(ports::NfcListener listener) {
  m_listener = std::move(listener);
  if (m_reader) m_reader->listen(m_listener);
}

Result<void> LazyNfc::start() {
  if (auto done = load(); !done) return done;
  return m_reader->start();
}

void LazyNfc::stop() {
  if (m_reader) m_reader->stop();
}

Result<int> LazyLabelSheets::write(const std::string& path, const std::vector<std::string>& serials, const std::string& title) {
  if (!m_sheets) {
    auto made = makeFromModule<ports::LabelSheets>("snugline_tags", "snuglineMakeLabelSheets");
    if (!made) return tl::unexpected<Error>(made.error());
    m_sheets = std::move(*made);
  }
  return m_sheets->write(path, serials, title);
}

}  // namespace snugline::app
