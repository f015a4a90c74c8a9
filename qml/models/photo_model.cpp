// SPDX-License-Identifier: Apache-2.0
#include "qml/models/photo_model.h"

#include <algorithm>
#include <utility>

#include <QByteArray>
#include <QVariantMap>

#include "core/book/photos.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/sentences_gear.h"
#include "qml/models/sentences_photos.h"

namespace snugline::models {

PhotoModel::PhotoModel(PhotoEdges edges, Desk* desk, const Choices* choices, QObject* parent)
    : QObject(parent), m_edges(std::move(edges)), m_desk(desk), m_album(desk) {
  m_room.setMaxThreadCount(1);
  connect(choices, &Choices::changed, this, &PhotoModel::changed);
  if (!m_edges.camera) return;
  ports::PhotoListener listener;
  listener.onState = [this](ports::CameraState state) {
    if (m_state == state) return;
    m_state = state;
    emit changed();
  };
  listener.onPicture = [this](const ports::ColourPicture& picture) { show(picture); };
  m_edges.camera->listen(std::move(listener));
}

PhotoModel::~PhotoModel() {
  if (m_edges.camera) m_edges.camera->stop();
  m_room.clear();
  m_room.waitForDone();
}

const season::UnitRecord* PhotoModel::unit() const { return m_unit.empty() ? nullptr : m_desk->views().unit(m_unit); }

const season::HoldRecord* PhotoModel::hold() const {
  if (unit() == nullptr || m_hold.empty()) return nullptr;
  const auto& holds = unit()->holds;
  const auto found = std::find_if(holds.begin(), holds.end(), [&](const season::HoldRecord& each) { return each.fact == m_hold; });
  return found == holds.end() ? nullptr : &*found;
}

QString PhotoModel::unitId() const { return unit() == nullptr ? QString() : text(m_unit); }
QString PhotoModel::helmetWords() const {
  if (unit() == nullptr) return {};
  return tr("%1, %2", "a serial, its model and size").arg(text(unit()->serial), kindOf(m_desk->views(), *unit()));
}
QString PhotoModel::holdWords() const { return hold() == nullptr ? QString() : models::holdWords(*hold()); }

bool PhotoModel::asksPoint() const { return hold() == nullptr || !gear::pointFromCode(hold()->reason); }

QVariantList PhotoModel::points() const {
  QVariantList list;
  for (const gear::Point point : gear::kPoints) {
    list.append(QVariantMap{{QStringLiteral("name"), text(gear::code(point))},
                            {QStringLiteral("text"), pointName(point)},
                            {QStringLiteral("chosen"), m_point == point}});
  }
  return list;
}

QString PhotoModel::cameraWords() const {
  if (!m_isOn) return {};
  return m_isMissing ? tr("No camera can be used by this program. Choose a picture file.") : PhotoWords::camera(m_state);
}
bool PhotoModel::isCameraTrouble() const { return m_isOn && (m_isMissing || PhotoWords::isCameraTrouble(m_state)); }

void PhotoModel::setWords(const QString& words) {
  if (m_words == words) return;
  m_words = words;
  emit changed();
}

void PhotoModel::begin(const QString& unit, const QString& hold) {
  stop();
  ++m_turn;
  m_unit = utf8(unit);
  m_hold = utf8(hold);
  m_point.reset();
  m_words.clear();
  m_lastWords.clear();
  m_isMaking = false;
  throwAway();
}

void PhotoModel::beginAtLastHold(const QString& unit) {
  const season::UnitRecord* record = m_desk->views().unit(utf8(unit));
  begin(unit, record == nullptr || record->holds.empty() ? QString() : text(record->holds.back().fact));
}

void PhotoModel::throwAway() {
  m_jpeg.clear();
  m_picture = {};
  m_refusal.clear();
  emit changed();
  emit pictureChanged();
}

void PhotoModel::start() {
  if (!m_edges.camera || m_isOn) return;
  throwAway();
  m_isOn = true;
  m_isMissing = !m_edges.camera->start();
  emit changed();
}

void PhotoModel::stop() {
  if (!m_edges.camera || !m_isOn) return;
  m_isOn = false;
  m_edges.camera->stop();
  m_state = ports::CameraState::off;
  if (!isPicked()) m_picture = {};
  emit changed();
  emit pictureChanged();
}

void PhotoModel::show(const ports::ColourPicture& picture) {
  const auto bytes = static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height) * 3;
  if (!m_isOn || isPicked() || picture.width <= 0 || picture.height <= 0 || picture.rgb.size() != bytes) return;
  // The port's bytes go with the call.
  m_picture =
      QImage(picture.rgb.data(), picture.width, picture.height, static_cast<qsizetype>(picture.width) * 3, QImage::Format_RGB888).copy();
  emit pictureChanged();
}

void PhotoModel::take() {
  if (!isSeeing() || m_isMaking) return;
  auto seen = m_edges.camera->take();
  if (!seen) {
    m_refusal = PhotoWords::trouble(seen.error());
    emit changed();
    return;
  }
  stop();
  make([picture = std::move(*seen)](ports::PhotoMaker& maker) { return maker.fromPicture(picture); });
}

void PhotoModel::choose(const QString& file) {
  if (file.trimmed().isEmpty() || m_isMaking) return;
  stop();
  make([path = utf8(localPath(file.trimmed()))](ports::PhotoMaker& maker) { return maker.fromFile(path); });
}

void PhotoModel::make(std::function<Result<std::string>(ports::PhotoMaker&)> road) {
  if (!m_edges.maker) return;
  throwAway();
  m_isMaking = true;
  emit changed();
  m_room.start([this, road = std::move(road), turn = m_turn, maker = m_edges.maker.get()] {
    Result<std::string> jpeg = road(*maker);
    QImage picture = jpeg ? QImage::fromData(QByteArray::fromStdString(*jpeg), "jpeg") : QImage();
    QMetaObject::invokeMethod(
        this,
        [this, turn, jpeg = std::move(jpeg), picture] {
          if (turn != m_turn) return;
          m_isMaking = false;
          if (jpeg) {
            m_jpeg = *jpeg;
            m_picture = picture;
          } else {
            m_refusal = PhotoWords::trouble(jpeg.error());
          }
          emit changed();
          emit pictureChanged();
        },
        Qt::QueuedConnection);
  });
}

void PhotoModel::choosePoint(const QString& code) {
  const auto point = gear::pointFromCode(utf8(code));
  m_point = m_point == point ? std::nullopt : point;
  emit changed();
}

void PhotoModel::keep() {
  if (m_isBusy || !isPicked() || unit() == nullptr) return;
  m_isBusy = true;
  m_refusal.clear();
  emit changed();
  book::NewPhoto photo{m_unit, asksPoint() ? m_point : std::nullopt, hold() == nullptr ? std::string() : m_hold, utf8(m_words.trimmed())};
  const QString serial = text(unit()->serial);
  m_desk->work([photo, jpeg = m_jpeg](book::Book& book, Instant) { return book::keepPhoto(book, photo, jpeg); }, this,
               [this, serial](const Result<book::Appended>& outcome) {
                 m_isBusy = false;
                 if (!outcome) {
                   m_refusal = PhotoWords::trouble(outcome.error());
                   emit changed();
                   return;
                 }
                 m_words.clear();
                 m_point.reset();
                 throwAway();
                 m_lastWords = tr("The photo is kept with %1.").arg(serial);
                 emit changed();
                 emit kept();
               });
}

}  // namespace snugline::models
