// SPDX-License-Identifier: Apache-2.0
#include "room.h"

#include <unistd.h>
#include <csignal>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QImage>
#include <QKeyEvent>
#include <QQuickWindow>
#include <QTimer>

#include "core/air/gauge_packet.h"
#include "core/book/acts.h"
#include "core/gear/sheet_draft.h"
#include "core/season/board.h"
#include "platform/photos/photo_maker.h"
#include "platform/system/file_keys.h"
#include "qml/models/sentences_gear.h"
#include "room_frames.h"

namespace snugline::tests {

namespace {
constexpr int kPatienceMs = 20'000;

template <typename Wanted>
bool waitFor(Wanted&& wanted) {
  QElapsedTimer timer;
  timer.start();
  while (!wanted() && timer.elapsed() < kPatienceMs)
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 50);
  return wanted();
}
}  // namespace

Room::Room(QObject* parent)
    : QObject(parent), m_time(std::make_shared<eyes::MovingTime>(Instant{0, -300})), m_hand(std::make_unique<eyes::Hand>(m_time)) {}
Room::~Room() { close(); }

bool Room::begin() {
  close();
  m_folder = std::make_unique<QTemporaryDir>();
  m_time->set(instantAt(dayOf(2026, 10, 14), 480, -300));
  if (!open()) return false;
  for (const char* name : {"alder-a1", "brant-b2", "cedar-c3"}) {
    const auto sheet = gear::readSheetFile(models::utf8(sheetPath(QLatin1String(name))));
    if (!sheet) return false;
    if (!run([sheet = *sheet](const season::Views& views, Instant) { return book::adoptSheet(views, sheet); })) return false;
  }
  return true;
}

bool Room::resume() {
  close();
  m_folder = std::make_unique<QTemporaryDir>();
  m_time->set(instantAt(dayOf(2026, 10, 14), 485, -300));
  return open();
}

void Room::noteWeather(double celsius, double metres) {
  season::Conditions noted;
  noted.temperature = Temperature::celsius(celsius);
  noted.elevation = Elevation::metres(metres);
  run([noted](const season::Views& views, Instant) { return book::noteWeather(views, noted); });
}

void Room::sendGauge(const QByteArray& bytes) {
  m_gaugeMs += 100;
  m_port->send({{"Bench gauge 0142", air::kPressureCharacteristic, {bytes.begin(), bytes.end()}, Instant{m_gaugeMs, 0}}});
}

void Room::holdGauge(double pascals) {
  const auto raw = static_cast<std::uint32_t>(pascals * 10.0);
  for (int i = 0; i < 13; ++i) {
    QByteArray bytes;
    for (unsigned shift = 0; shift < 32; shift += 8) bytes.append(static_cast<char>((raw >> shift) & 0xFFU));
    sendGauge(bytes);
  }
}

void Room::die() { ::kill(::getpid(), SIGKILL); }

int Room::setting(const QString& name) const { return qEnvironmentVariableIntValue(qPrintable(name)); }

QString Room::inFolder(const QString& name) const {
  const QString kept = qEnvironmentVariable("SNUGLINE_ROOM");
  return kept.isEmpty() ? m_folder->filePath(name) : kept + QLatin1Char('/') + name;
}

bool Room::reopen() {
  close();
  return open();
}

void Room::close() {
  m_doors.reset();
  m_line.reset();
  m_weather.reset();
  m_dock.reset();
  m_units.reset();
  m_roster.reset();
  m_settings.reset();
  m_gauge.reset();
  m_port = nullptr;
  m_unitCard.reset();
  m_photos.reset();
  m_photoCamera = nullptr;
  m_scanner.reset();
  m_camera = nullptr;
  m_sheets = nullptr;
  m_nfc = nullptr;
  m_desk.reset();
  m_choices.reset();
}

bool Room::open() {
  m_choices = std::make_unique<models::Choices>(inFolder(QStringLiteral("choices.ini")));
  const std::string keys = models::utf8(inFolder(QStringLiteral("keys")));
  m_desk = std::make_unique<models::Desk>([time = m_time] { return std::make_unique<eyes::MovingClock>(time); },
                                          [keys] { return std::make_unique<platform::FileKeys>(keys); });
  m_weather = std::make_unique<models::WeatherModel>(m_desk.get(), m_choices.get());
  m_line = std::make_unique<models::LineModel>(m_desk.get(), m_choices.get(), m_weather.get());
  m_doors = std::make_unique<models::DoorsModel>(m_desk.get(), m_choices.get(), m_line.get());
  m_dock = std::make_unique<models::DockModel>(m_desk.get(), m_choices.get());
  m_units = std::make_unique<models::UnitsModel>(m_desk.get(), m_choices.get());
  m_roster = std::make_unique<models::RosterModel>(m_desk.get(), m_choices.get());
  m_settings = std::make_unique<models::SettingsModel>(m_desk.get(), m_choices.get());
  auto port = std::make_unique<ports::MemoryGauge>();
  m_port = port.get();
  m_port->offer({"one", "Bench gauge", -48, false, true}, "0142");
  m_port->offer({"two", "Kit gauge", -66, false, true}, "0077");
  m_gauge = std::make_unique<models::GaugeModel>(std::move(port), m_desk.get(), m_choices.get());
  m_units->air()->useGauge(m_gauge.get());
  auto camera = makeCamera();
  auto sheets = std::make_unique<ports::MemoryLabelSheets>();
  m_sheets = sheets.get();
  auto nfc = std::make_unique<ports::MemoryNfc>(m_isNfcThere);
  m_nfc = nfc.get();
  m_scanner = std::make_unique<models::ScanModel>(models::TagEdges{std::move(camera), std::move(sheets), std::move(nfc)}, m_desk.get(),
                                                  m_choices.get());
  m_scanner->setSheetFolder(inFolder({}));
  connect(m_scanner.get(), &models::ScanModel::read, m_dock.get(), &models::DockModel::scan);
  auto photoCamera = std::make_unique<ports::MemoryPhotoCamera>();
  m_photoCamera = photoCamera.get();
  m_photos = std::make_unique<models::PhotoModel>(models::PhotoEdges{std::move(photoCamera), std::make_unique<photos::PlainPhotoMaker>()},
                                                  m_desk.get(), m_choices.get());
  m_unitCard = std::make_unique<models::UnitCard>(m_desk.get(), m_outbox);
  bool isFailed = false;
  connect(m_desk.get(), &models::Desk::failed, this, [&](const Error& error) {
    isFailed = true;
    qCritical("%s", qPrintable(models::errorSentence(error)));
  });
  m_desk->open(inFolder(QStringLiteral("room.snug")), {"Harrow Creek High", "Herons", "2026", {}});
  waitFor([&] { return isFailed || m_desk->isOpen(); });
  disconnect(m_desk.get(), &models::Desk::failed, this, nullptr);
  emit opened();
  openEyes();
  return !isFailed && m_desk->isOpen();
}

bool Room::run(models::Desk::Job job) {
  bool isDone = false, isGood = false;
  m_desk->submit(std::move(job), this, [&](const Result<book::Appended>& outcome) {
    isDone = true;
    isGood = outcome.has_value();
    if (!outcome) qCritical("%s", qPrintable(models::errorSentence(outcome.error())));
  });
  waitFor([&] { return isDone; });
  return isGood;
}

void Room::type(QQuickItem* item, const QString& text) {
  QQuickWindow* window = item->window();
  for (const QChar character : text) {
    const bool isControl = character.unicode() < 32;
    const auto key = isControl ? static_cast<int>(character.unicode()) + 64 : static_cast<int>(character.toUpper().unicode());
    const Qt::KeyboardModifiers modifiers = isControl ? Qt::ControlModifier : Qt::NoModifier;
    QKeyEvent press(QEvent::KeyPress, key, modifiers, QString(character));
    QCoreApplication::sendEvent(window, &press);
    QKeyEvent release(QEvent::KeyRelease, key, modifiers, QString(character));
    QCoreApplication::sendEvent(window, &release);
  }
}

void Room::scan(QQuickItem* item, const QString& text) {
  type(item, text);
  QKeyEvent press(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"));
  QCoreApplication::sendEvent(item->window(), &press);
  QKeyEvent release(QEvent::KeyRelease, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"));
  QCoreApplication::sendEvent(item->window(), &release);
}

QString Room::write(const QString& name, const QByteArray& bytes) {
  const QString path = inFolder(name);
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("cannot write %s", qPrintable(path));
  return path;
}

QString Room::writeText(const QString& name, const QString& words) { return write(name, words.toUtf8()); }

QString Room::writePicture(const QString& name) {
  const QString path = inFolder(name);
  QImage picture(64, 64, QImage::Format_RGB32);
  picture.fill(Qt::darkGreen);
  if (!picture.save(path, "PNG")) qFatal("cannot write %s", qPrintable(path));
  return path;
}

QString Room::spoiltSheet(const QString& name) {
  QFile sheet(sheetPath(QStringLiteral("alder-a1")));
  if (!sheet.open(QIODevice::ReadOnly)) qFatal("no sheet");
  QByteArray bytes = sheet.readAll();
  const qsizetype at = bytes.indexOf("\"low_um\": ") + 10;
  return write(name, bytes.left(at) + "-" + bytes.mid(at));
}

QString Room::changedSheet(const QString& name, int months) {
  auto sheet = gear::readSheetFile(models::utf8(sheetPath(QStringLiteral("alder-a1"))));
  if (!sheet) qFatal("no sheet");
  gear::SheetDraft draft = gear::draftOf(*sheet);
  draft.certificationMonths = months;
  return write(name, QByteArray::fromStdString(gear::bytesOf(draft)));
}

QString Room::sheetPath(const QString& name) const { return QStringLiteral(SNUGLINE_SOURCE_DIR "/demo/data/sheets/%1.json").arg(name); }

void Room::addAthlete(const QString& jersey, const QString& family, const QString& given) {
  const book::AthleteAdded added{models::utf8(jersey), models::utf8(family), models::utf8(given), {}};
  run([added](const season::Views& views, Instant) { return book::addAthlete(views, added); });
}

void Room::addUnit(const QString& serial, const QString& size, int labelYear, const QString& fault) {
  book::Arrival arrival;
  const auto tag = gear::parseTag(models::utf8(serial), m_desk->today());
  if (!tag) qFatal("not a tag: %s", qPrintable(serial));
  arrival.tag = *tag;
  arrival.sheet = models::utf8(sheetHash(QStringLiteral("Alder A1")));
  arrival.size = models::utf8(size);
  gear::Label label;
  label.year = labelYear;
  arrival.label = label;
  arrival.points.fill({gear::PointState::sound, {}});
  arrival.isGroup = fault.isEmpty();
  if (!fault.isEmpty()) arrival.points[static_cast<std::size_t>(gear::Point::faceguard)] = {gear::PointState::fault, models::utf8(fault)};
  run([arrival](const season::Views& views, Instant now) { return book::takeIn(views, arrival, dayOf(now)); });
}

void Room::pair(const QString& serial, const QString& jersey) {
  const season::AthleteRecord* athlete = m_desk->views().athleteByJersey(models::utf8(jersey));
  if (athlete == nullptr || unit(serial) == nullptr) qFatal("cannot pair %s", qPrintable(serial));
  run([athleteId = athlete->id, unitId = unit(serial)->id](const season::Views& views, Instant now) {
    return book::pair(views, athleteId, unitId, dayOf(now));
  });
}

const season::UnitRecord* Room::unit(const QString& serial) const {
  for (const auto& [id, record] : m_desk->views().units) {
    if (record.serial == models::utf8(serial)) return &record;
  }
  return nullptr;
}

QString Room::unitState(const QString& serial) const {
  const season::UnitRecord* record = unit(serial);
  if (record == nullptr) return {};
  if (!record->holds.empty()) {
    return QStringLiteral("held: %1 %2").arg(models::text(record->holds.front().reason), models::text(record->holds.front().what));
  }
  return record->isInService ? QStringLiteral("in-service") : QStringLiteral("received");
}

QString Room::labelOf(const QString& serial) const {
  const season::UnitRecord* record = unit(serial);
  if (record == nullptr) return {};
  if (record->isLabelMissing) return QStringLiteral("missing");
  if (record->isLabelUnreadable) return QStringLiteral("unreadable");
  return record->labels.empty() ? QString() : models::labelShort(record->labels.back().label);
}

QString Room::unitId(const QString& serial) const { return unit(serial) == nullptr ? QString() : models::text(unit(serial)->id); }
int Room::unitCount() const { return static_cast<int>(m_desk->views().units.size()); }
int Room::athleteCount() const { return static_cast<int>(m_desk->views().athletes.size()); }

QString Room::sheetHash(const QString& name) const {
  for (const auto& [hash, record] : m_desk->views().sheets) {
    if (record.sheet && record.sheet->name == models::utf8(name)) return models::text(hash);
  }
  return {};
}

QVariantMap Room::rows() const {
  QVariantMap rows;
  for (const auto& [id, athlete] : m_desk->views().athletes) {
    const season::DueRow row = season::rowOf(m_desk->views(), athlete, {m_desk->now()}, {});
    QString words = models::text(season::code(row.lane));
    for (const season::DueReason& reason : row.reasons) words += QLatin1Char(' ') + models::text(season::code(reason.kind));
    rows.insert(models::text(athlete.jersey), words);
  }
  return rows;
}

void Room::beginFit(const QString& jersey) {
  const season::AthleteRecord* athlete = m_desk->views().athleteByJersey(models::utf8(jersey));
  if (athlete == nullptr) qFatal("nobody with %s", qPrintable(jersey));
  run([id = athlete->id](const season::Views& views, Instant now) {
    return book::beginCheck(views, id, fit::CheckKind::first, dayOf(now));
  });
}

int Room::openCheckMonths(const QString& jersey) const {
  const season::AthleteRecord* athlete = m_desk->views().athleteByJersey(models::utf8(jersey));
  const season::CheckRecord* check = athlete == nullptr ? nullptr : m_desk->views().openCheck(athlete->openCheck);
  const auto setup =
      check == nullptr ? Result<fit::Setup>(fail(ErrorCode::notFound)) : season::setupOf(m_desk->views(), *check, m_desk->today());
  return setup ? setup->sheet->certificationMonths : 0;
}

int Room::standingMonths(const QString& serial) const {
  const season::UnitRecord* record = unit(serial);
  const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheetOf(*record);
  return sheet == nullptr ? 0 : sheet->certificationMonths;
}

QString Room::galleryFolder() const { return qEnvironmentVariable("SNUGLINE_GALLERY", inFolder({})); }

}  // namespace snugline::tests
