// SPDX-License-Identifier: Apache-2.0
#include "scan_model.h"

#include <algorithm>
#include <utility>

#include <QDir>
#include <QStandardPaths>

#include "choices.h"
#include "core/gear/own_serial.h"
#include "sentences_gear.h"
#include "sentences_paper.h"

namespace snugline::models {

namespace {
// Ours: a tag swept past is blurred for a moment; only one that stays unreadable is worth a sentence.
constexpr std::int64_t kUnreadableAfterMs = 1200;
constexpr std::int64_t kUnreadablePauseMs = 600;
constexpr int kLabelsMost = 960;  // ours: forty pages
}  // namespace

ScanModel::ScanModel(TagEdges edges, Desk* desk, Choices* choices, QObject* parent)
    : QObject(parent),
      m_edges(std::move(edges)),
      m_desk(desk),
      m_choices(choices),
      m_nfc(new NfcModel(std::move(m_edges.nfc), desk, this)) {
  connect(m_nfc, &NfcModel::read, this, &ScanModel::read);
  m_sheetFolder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  connect(desk, &Desk::opened, this, &ScanModel::changed);
  if (!m_edges.camera) return;
  ports::CameraListener listener;
  listener.onText = [this](const std::string& text) {
    m_isUnreadable = false;
    m_unreadableMs = 0;
    if (!m_gate.isNew(text, m_desk->now())) return;
    emit changed();
    emit read(models::text(text));
  };
  listener.onUnreadable = [this] {
    const std::int64_t now = m_desk->now().ms;
    if (m_unreadableMs == 0 || now - m_unreadableMs > kUnreadablePauseMs) m_unreadableFromMs = now;
    m_unreadableMs = now;
    const bool isUnreadable = now - m_unreadableFromMs >= kUnreadableAfterMs;
    if (isUnreadable == m_isUnreadable) return;
    m_isUnreadable = isUnreadable;
    emit changed();
  };
  listener.onState = [this](ports::CameraState state) {
    if (m_state == state) return;
    m_state = state;
    if (state != ports::CameraState::seeing) m_picture = {};
    emit changed();
  };
  listener.onPicture = [this](const ports::SeenPicture& picture) { show(picture); };
  m_edges.camera->listen(std::move(listener));
}

ScanModel::~ScanModel() {
  if (m_edges.camera) m_edges.camera->stop();
}

void ScanModel::start() {
  if (!m_edges.camera || m_isOn) return;
  m_isOn = true;
  m_gate.forget();
  m_isUnreadable = false;
  m_unreadableMs = 0;
  m_isMissing = !m_edges.camera->start();
  emit changed();
}

void ScanModel::stop() {
  if (!m_edges.camera || !m_isOn) return;
  m_isOn = false;
  m_edges.camera->stop();
  m_state = ports::CameraState::off;
  m_picture = {};
  emit changed();
  emit pictureChanged();
}

void ScanModel::show(const ports::SeenPicture& picture) {
  const auto pixels = static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height);
  if (picture.width <= 0 || picture.height <= 0 || picture.grey.size() != pixels) return;
  const QImage seen(picture.grey.data(), picture.width, picture.height, picture.width, QImage::Format_Grayscale8);
  m_picture = seen.copy();  // the port's bytes go with the call
  emit pictureChanged();
}

bool ScanModel::isTrouble() const {
  if (m_isMissing || m_isUnreadable) return true;
  switch (m_state) {
    case ports::CameraState::off:
    case ports::CameraState::starting:
    case ports::CameraState::seeing:
      return false;
    case ports::CameraState::noCamera:
    case ports::CameraState::noPermission:
    case ports::CameraState::busy:
    case ports::CameraState::failed:
      return true;
  }
  return false;
}

QString ScanModel::words() const {
  if (!m_isOn) return {};
  if (m_isMissing) return tr("No camera can be used by this program. Type the tag, or use a hand scanner.");
  switch (m_state) {
    case ports::CameraState::off:
    case ports::CameraState::starting:
      return tr("The camera is starting.");
    case ports::CameraState::seeing:
      return m_isUnreadable
                 ? tr("There is a tag, and it cannot be read: dirty, damaged or not sharp. Wipe it, come nearer, or type its serial.")
                 : tr("Hold the tag in the frame.");
    case ports::CameraState::noCamera:
      return tr("This device has no camera. Type the tag, or use a hand scanner.");
    case ports::CameraState::noPermission:
      return tr("The camera may not be used. Allow it in the settings of this device, or type the tag.");
    case ports::CameraState::busy:
      return tr("Another program has the camera. Close it there, or type the tag.");
    case ports::CameraState::failed:
      return tr("The camera stopped. Turn it off and on again, or type the tag.");
  }
  return {};
}

// What was printed here, and what came into the Book with this device's letters: the settings may be lost, the Book is not.
std::uint32_t ScanModel::lastGiven() const {
  auto last = static_cast<std::uint32_t>(std::clamp(m_choices->labelsGiven(), 0, static_cast<int>(gear::kOwnSerialMost)));
  const auto ours = gear::readOwnSerial(gear::ownSerial(m_desk->device(), 1));
  if (!ours) return last;
  for (const auto& [id, unit] : m_desk->views().units) {
    const auto own = gear::readOwnSerial(unit.serial);
    if (own && own->isCheckOk && own->device == ours->device) last = std::max(last, own->number);
  }
  return last;
}

QString ScanModel::nextSerial() const { return m_desk->isOpen() ? text(gear::ownSerial(m_desk->device(), lastGiven() + 1)) : QString(); }

void ScanModel::writeSheet(int labels) {
  if (!m_edges.sheets || !m_desk->isOpen()) return;
  std::vector<std::string> serials;
  const std::uint32_t from = lastGiven() + 1;
  for (std::uint32_t n = from; n < from + static_cast<std::uint32_t>(std::clamp(labels, 1, kLabelsMost)); ++n) {
    std::string serial = gear::ownSerial(m_desk->device(), n);
    if (!serial.empty()) serials.push_back(std::move(serial));
  }
  m_isSheetTrouble = true;
  if (serials.empty()) {
    m_sheetWords = tr("Every number of this device is given. Print the sheet on another device.");
    emit changed();
    return;
  }
  const QString path = QDir(m_sheetFolder).filePath(tr("Snugline labels %1.pdf").arg(text(serials.front())));
  const QString team = m_desk->views().team ? text(m_desk->views().team->name) : QString();
  const auto pages = m_edges.sheets->write(utf8(path), serials,
                                           utf8(tr("%1. Serial tags %2 to %3").arg(team, text(serials.front()), text(serials.back()))));
  if (pages) {
    m_choices->setLabelsGiven(static_cast<int>(gear::readOwnSerial(serials.back())->number));
    m_isSheetTrouble = false;
    const QString where = QDir::toNativeSeparators(path);
    m_sheetWords = tr("%n label(s) to print: %1", nullptr, static_cast<int>(serials.size()))
                       .arg(m_edges.outbox ? PaperWords::opened(*m_edges.outbox, utf8(where)) : where);
  } else {
    m_sheetWords = errorSentence(pages.error());
  }
  emit changed();
}

}  // namespace snugline::models
