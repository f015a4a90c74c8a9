// SPDX-License-Identifier: Apache-2.0
#include "ground.h"

#include <functional>

#include <QQuickView>
#include <QTimer>

#include "field.h"
#include "platform/system/file_keys.h"

namespace snugline::tests {

using eyes::until;

Ground::~Ground() { end(); }

bool Ground::begin(const QString& sheet) {
  end();
  m_folder = std::make_unique<QTemporaryDir>();
  const std::string path = m_folder->path().toStdString();
  field::makeBook(path, sheet.toStdString());
  m_time = std::make_shared<eyes::MovingTime>(field::now());
  m_hand = std::make_unique<eyes::Hand>(m_time);
  app::Edges edges{[time = m_time] { return std::make_unique<eyes::MovingClock>(time); },
                   [path] { return std::make_unique<platform::FileKeys>(path + "/keys"); }};
  app::Places places;
  places.book = m_folder->filePath(QStringLiteral("team.snugbook"));
  places.ifMissing.name = "Nobody";
  m_app = std::make_unique<app::Composition>(std::move(edges), places);
  m_app->desk().open(places.book, places.ifMissing);
  const bool isOpen = until([this] { return m_app->shell().isOpen(); });
  // Somebody signs, as on a device in use.
  if (const auto& people = m_app->desk().views().people; !people.empty()) m_app->desk().setPerson(people.begin()->first);
  m_isStirred = false;
  connect(&m_app->desk(), &models::Desk::changed, this, [this] {
    if (m_isStirred) return;
    m_isStirred = true;
    QTimer::singleShot(0, &m_app->desk(), [this] { look(); });
  });
  emit begun();
  return isOpen;
}

// Once whatever a write set going has come to rest.
void Ground::look() {
  models::Shell& shell = m_app->shell();
  if (!eyes::settle(m_app->desk())) return qWarning("the Book never came to rest");
  m_isStirred = false;
  const eyes::Glass glass{&m_app->desk(), &m_app->choices(), shell.weather(), shell.line(), shell.doors(), nullptr, nullptr};
  for (const QString& each : eyes::untruths(glass, m_time)) qWarning("Not true: %s", qPrintable(each));
}

void Ground::end() {
  m_hand.reset();
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
