// SPDX-License-Identifier: Apache-2.0
// The pictures of weather, line check, air and gauge.
#include <algorithm>

#include <QQuickItem>
#include <QQuickView>

#include "core/air/gauge_packet.h"
#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/shell.h"

namespace snugline::demo {

namespace {

constexpr std::int64_t kSampleMs = 100;
constexpr int kSteadySamples = 14;           // a second and a bit
constexpr std::uint32_t kOpenAir = 991'870;  // 0.1 Pa at about 180 m
constexpr std::uint32_t kInBladder = 1'192'400;

QQuickItem* findIn(QQuickItem* item, const QString& name) {
  if (!item->isVisible()) return nullptr;
  if (item->objectName() == name) return item;
  for (QQuickItem* child : item->childItems())
    if (QQuickItem* found = findIn(child, name)) return found;
  return nullptr;
}

std::vector<std::uint8_t> bytesOf(std::uint32_t value) {
  return {static_cast<std::uint8_t>(value), static_cast<std::uint8_t>(value >> 8U), static_cast<std::uint8_t>(value >> 16U),
          static_cast<std::uint8_t>(value >> 24U)};
}

}  // namespace

void Gallery::press(const char* name) {
  QQuickItem* item = findIn(m_composition.view().contentItem(), QLatin1String(name));
  if (item == nullptr || !QMetaObject::invokeMethod(item, "clicked")) {
    std::fprintf(stderr, "Gallery: there is no \"%s\" to touch.\n", name);
    m_isGood = false;
  }
  settle();
}

// Until the item stands in the upper part of whatever scrolls it.
void Gallery::scrollTo(const char* name) {
  QQuickItem* item = findIn(m_composition.view().contentItem(), QLatin1String(name));
  for (QQuickItem* area = item; area != nullptr; area = area->parentItem()) {
    const QVariant most = area->property("contentHeight");
    if (!most.isValid() || !area->property("interactive").toBool()) continue;
    const double y = area->property("contentY").toDouble() + item->mapToItem(area, {0, 0}).y() - area->height() / 3;
    area->setProperty("contentY", std::clamp(y, 0.0, std::max(0.0, most.toDouble() - area->height())));
    break;
  }
  settle();
}

void Gallery::closeSheets() {
  while (QQuickItem* close = findIn(m_composition.view().contentItem(), QStringLiteral("close"))) {
    QMetaObject::invokeMethod(close, "clicked");
    settle();
  }
}

void Gallery::showBook(const char* page) {
  go("book");
  auto* screen = m_composition.view().rootObject()->property("screenItem").value<QQuickItem*>();
  QMetaObject::invokeMethod(screen, "push", Q_ARG(QString, QLatin1String(page)), Q_ARG(QVariant, QVariantMap()));
  settle();
}

// Samples that are apart by a tenth of a second, as if time had passed.
void Gallery::sendPressure(std::uint32_t from, std::uint32_t to) {
  for (int i = 0; i < kSteadySamples; ++i) {
    const std::uint32_t value = from + static_cast<std::uint32_t>(static_cast<std::int64_t>(to - from) * i / (kSteadySamples - 1));
    m_sampleMs += kSampleMs;
    m_gauge.send({{"", air::kPressureCharacteristic, bytesOf(value), {m_sampleMs, 0}}});
  }
  settle();
}

void Gallery::airScreens() {
  models::WeatherModel& weather = *m_composition.shell().weather();
  go("line");
  press("weather");
  shoot(QStringLiteral("weather-sheet"));
  press("add-place");
  scrollTo("keep-place");
  shoot(QStringLiteral("weather-places"));
  go("line");
  weather.choosePlace(QStringLiteral("Home field"));
  weather.chooseWhereabouts(QStringLiteral("outside"));
  weather.typeTemperature(QStringLiteral("-4 C"));
  weather.flush();
  until([&] { return !weather.draft(); }, "the weather");
  settle();
  shoot(QStringLiteral("line-cold"));
  go("line-check");
  shoot(QStringLiteral("line-check"));
  const QVariantList tiles = m_composition.shell().lineCheck()->tiles();
  if (tiles.size() > 2) {
    press(("tile-" + tiles[1].toMap().value(QStringLiteral("jersey")).toByteArray()).constData());
    m_composition.shell().lineCheck()->note(QStringLiteral("straps-under"));
    shoot(QStringLiteral("line-check-off"));
    press("close");
    shoot(QStringLiteral("line-check-touched"));
  }
  const QString cold = athleteWith([](const season::DueRow& row) {
    return std::any_of(row.reasons.begin(), row.reasons.end(),
                       [](const season::DueReason& r) { return r.kind == season::DueKind::airChanged; });
  });
  go("athlete", cold);
  shoot(QStringLiteral("athlete-cold"));
  const QVariantList reasons = m_composition.shell().athlete()->reasons();
  for (const QVariant& reason : reasons) {
    const QByteArray port = reason.toMap().value(QStringLiteral("port")).toByteArray();
    if (port.isEmpty()) continue;
    press(("why-" + port).constData());
    shoot(QStringLiteral("why"));
    break;
  }
  if (tiles.size() > 2) {
    go("line-check");
    m_composition.shell().lineCheck()->record();
    until([this] { return !m_composition.shell().lineCheck()->isBusy(); }, "the line check");
    shoot(QStringLiteral("line-check-done"));
  }
}

void Gallery::gaugeScreens() {
  using ports::GaugePhase;
  m_gauge.offer({"one", "Bench gauge", -48, false, true}, "0142");
  m_gauge.offer({"two", "Kit gauge", -66, false, true}, "0077");
  m_gauge.offer({"three", "Field speaker", -80, false, false}, {});
  showBook("gauge");
  m_screen = QStringLiteral("book");
  shoot(QStringLiteral("gauge-none"));
  press("scan");
  shoot(QStringLiteral("gauge-found"));
  m_composition.shell().gauge()->choose(QStringLiteral("one"));
  m_gauge.send(
      {{"", air::kBatteryCharacteristic, {84}, {m_sampleMs, 0}}, {"", air::kTemperatureCharacteristic, {0x6C, 0x07}, {m_sampleMs, 0}}});
  sendPressure(kOpenAir, kOpenAir);
  shoot(QStringLiteral("gauge-zero"));
  m_composition.shell().gauge()->zero();
  sendPressure(kOpenAir, kInBladder);
  shoot(QStringLiteral("gauge-rising"));
  m_gauge.send({{"", air::kPressureCharacteristic, {1, 2, 3}, {m_sampleMs, 0}}});
  shoot(QStringLiteral("gauge-three-bytes"));
  const auto isLeak = [](const season::DueReason& r) { return r.kind == season::DueKind::airLeaking; };
  const QString athlete =
      athleteWith([&](const season::DueRow& row) { return std::any_of(row.reasons.begin(), row.reasons.end(), isLeak); });
  const season::AthleteRecord* wearer = m_composition.desk().views().athlete(athlete.toStdString());
  const season::UnitRecord* leaking =
      wearer == nullptr || wearer->units.empty() ? nullptr : m_composition.desk().views().unit(wearer->units.back());
  if (leaking == nullptr) return;
  go("athlete", athlete);
  for (const QVariant& reason : m_composition.shell().athlete()->reasons()) {
    if (reason.toMap().value(QStringLiteral("about")) != QLatin1String("leak")) continue;
    press(("why-leak-" + reason.toMap().value(QStringLiteral("port")).toByteArray()).constData());
    shoot(QStringLiteral("why-leak"));
    press("close");
  }
  m_composition.shell().units()->air()->open(QString::fromStdString(leaking->id));
  m_composition.shell().units()->page()->open(QString::fromStdString(leaking->id));
  showBook("air");
  sendPressure(kInBladder, kInBladder);
  shoot(QStringLiteral("air"));
  scrollTo("record-typed");
  shoot(QStringLiteral("air-reading"));
  press("numbers");
  shoot(QStringLiteral("air-numbers"));
  ports::GaugeState lost = m_gauge.state();
  lost.phase = lost.cause = GaugePhase::lost;
  lost.attempt = 2;
  lost.attemptsMost = 5;
  lost.willRetry = true;
  m_gauge.say(lost);
  showBook("gauge");
  shoot(QStringLiteral("gauge-lost"));
}

}  // namespace snugline::demo
