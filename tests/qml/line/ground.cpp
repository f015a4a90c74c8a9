// SPDX-License-Identifier: Apache-2.0
#include "ground.h"

#include <functional>

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QQuickView>

#include "field.h"
#include "platform/system/file_keys.h"

namespace snugline::tests {

namespace {
constexpr int kPatienceMs = 15'000;

class StandingClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override { return field::now(); }
};
}  // namespace

Ground::~Ground() { end(); }

bool Ground::until(const std::function<bool()>& isSo) {
  QDeadlineTimer patience(kPatienceMs);
  while (!isSo()) {
    if (patience.hasExpired()) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 10);
  }
  return true;
}

bool Ground::begin(const QString& sheet) {
  end();
  m_folder = std::make_unique<QTemporaryDir>();
  const std::string path = m_folder->path().toStdString();
  field::makeBook(path, sheet.toStdString());
  app::Edges edges{[] { return std::make_unique<StandingClock>(); },
                   [path] { return std::make_unique<platform::FileKeys>(path + "/keys"); }};
  app::Places places;
  places.book = m_folder->filePath(QStringLiteral("team.snugbook"));
  places.ifMissing.name = "Nobody";
  m_app = std::make_unique<app::Composition>(std::move(edges), places);
  m_app->desk().open(places.book, places.ifMissing);
  const bool isOpen = until([this] { return m_app->shell().isOpen(); });
  emit begun();
  return isOpen;
}

void Ground::end() {
  m_app.reset();
  m_folder.reset();
}

QString Ground::athlete(const QString& jersey) const {
  const season::AthleteRecord* found = m_app->desk().views().athleteByJersey(jersey.toStdString());
  return found == nullptr ? QString() : QString::fromStdString(found->id);
}

bool Ground::settled() {
  return until([this] { return !m_app->shell().guide()->isBusy(); });
}

bool Ground::addSpare(const QString& serial, const QString& fault) {
  bool isDone = false;
  m_app->desk().submit(
      [serial = serial.toStdString(), fault = fault.toStdString()](const season::Views& views, Instant now) -> Result<book::Drafts> {
        auto tag = gear::parseTag(serial, dayOf(now));
        if (!tag) return tl::unexpected<Error>(tag.error());
        book::Arrival arrival;
        arrival.tag = *tag;
        arrival.sheet = views.sheets.begin()->first;
        arrival.size = "L";
        arrival.label = gear::Label{gear::LabelKind::recertification, 2026, std::nullopt, {}};
        for (auto& point : arrival.points) point.state = gear::PointState::sound;
        if (!fault.empty()) arrival.points[static_cast<std::size_t>(gear::Point::faceguard)] = {gear::PointState::fault, fault};
        return book::takeIn(views, arrival, dayOf(now));
      },
      this, [&isDone](const Result<book::Appended>&) { isDone = true; });
  return until([&isDone] { return isDone; });
}

QString Ground::wornBy(const QString& jersey) const {
  const season::Views& views = m_app->desk().views();
  const season::AthleteRecord* athlete = views.athleteByJersey(jersey.toStdString());
  if (athlete == nullptr || athlete->units.size() != 1) return {};
  return QString::fromStdString(views.unit(athlete->units.front())->serial);
}

int Ground::holdsOf(const QString& serial) const {
  const season::UnitRecord* unit = m_app->desk().views().unitByTag(serial.toStdString());
  return unit == nullptr ? -1 : static_cast<int>(unit->holds.size());
}

void Ground::answer(const QString& name) {
  m_app->shell().guide()->answer(name);
  settled();
}

}  // namespace snugline::tests
