// SPDX-License-Identifier: Apache-2.0
#include "gauge_model.h"

#include <algorithm>
#include <utility>

#include "choices.h"
#include "desk.h"
#include "sentences_air.h"

namespace snugline::models {

using ports::GaugePhase;

namespace {
constexpr int kRestMs = 60'000;  // how long the gauge is kept after the last screen left (ours)
constexpr int kBatteryLow = 15;  // percent (ours)
}  // namespace

GaugeModel::GaugeModel(std::unique_ptr<ports::PressureGauge> port, Desk* desk, Choices* choices, QObject* parent)
    : QObject(parent), m_port(std::move(port)), m_desk(desk), m_choices(choices) {
  m_rest.setSingleShot(true);
  m_rest.setInterval(kRestMs);
  connect(&m_rest, &QTimer::timeout, this, [this] {
    m_isStarted = false;
    if (m_port) m_port->stop();
  });
  connect(choices, &Choices::changed, this, [this] {
    showValue();
    emit changed();
  });
  if (!m_port) return;
  m_port->listen({[this](const ports::GaugeState& state) { onState(state); }, [this](const ports::FoundGauge& gauge) { onFound(gauge); },
                  [this](const std::vector<ports::GaugePacket>& packets) { onPackets(packets); }});
}

GaugeModel::~GaugeModel() {
  if (!m_port) return;
  m_port->listen({});
  m_port->stop();
}

ports::RememberedGauge GaugeModel::rememberedGauge() const {
  return {m_choices->gaugeName().toStdString(), m_choices->gaugeSerial().toStdString()};
}
bool GaugeModel::isChosen() const { return !m_choices->gaugeName().isEmpty() || !m_state.gauge.name.empty(); }
QString GaugeModel::remembered() const {
  const ports::RememberedGauge kept = rememberedGauge();
  return kept.name.empty() && kept.serial.empty() ? QString() : PlainWords::text(ports::GaugeIdentity{kept.name, kept.serial}.label());
}

void GaugeModel::attach() {
  ++m_attached;
  m_rest.stop();
  // Not within the call: a screen that is being made must not be told of changes while its bindings are at work.
  QMetaObject::invokeMethod(
      this,
      [this] {
        if (m_attached > 0 && !m_isStarted && !m_isScanWanted && isChosen()) start();
      },
      Qt::QueuedConnection);
}

void GaugeModel::detach() {
  m_attached = std::max(0, m_attached - 1);
  if (m_attached == 0 && m_isStarted) m_rest.start();
}

void GaugeModel::start() {
  if (!m_port) return;
  m_isStarted = true;
  m_callFailure.clear();
  if (!m_port->start(rememberedGauge())) {
    m_isStarted = false;
    m_callFailure = tr("There is no Bluetooth in this program. Type the value.");
  }
  emit changed();
}

void GaugeModel::tryAgain() { start(); }

void GaugeModel::scan() {
  m_found.clear();
  listFound();
  m_callFailure.clear();
  m_isScanWanted = m_isStarted = m_port != nullptr;
  if (!m_port || !m_port->scan(rememberedGauge())) {
    m_isScanWanted = m_isStarted = false;
    m_callFailure = tr("There is no Bluetooth in this program. Type the value.");
  }
  emit changed();
}

void GaugeModel::stopScan() {
  m_isScanWanted = false;
  if (m_port) m_port->stopScan();
  emit changed();
}

void GaugeModel::choose(const QString& id) {
  if (!m_port) return;
  m_isScanWanted = false;
  forgetZero();
  m_found.clear();
  listFound();
  m_isStarted = true;
  if (!m_port->choose(id.toStdString())) m_callFailure = tr("That gauge is no longer there. Look again.");
  if (m_attached == 0) m_rest.start();
  emit changed();
}

void GaugeModel::forget() {
  if (m_port) m_port->stop();
  m_isStarted = m_isScanWanted = false;
  m_state = {};
  m_found.clear();
  forgetZero();
  m_choices->setGauge({}, {});
  listFound();
  emit changed();
}

void GaugeModel::onState(const ports::GaugeState& state) {
  m_state = state;
  if (state.phase != GaugePhase::scanning) m_isScanWanted = false;
  if (state.phase == GaugePhase::ready) {
    m_choices->setGauge(PlainWords::text(state.gauge.name), PlainWords::text(state.gauge.serial));
    // Another gauge, another zero: two gauges do not agree about one bladder.
    if (!m_zeroOf.empty() && m_zeroOf != state.gauge.label()) forgetZero();
  } else {
    forgetReading();
  }
  emit changed();
}

void GaugeModel::onFound(const ports::FoundGauge& gauge) {
  const auto known = std::find_if(m_found.begin(), m_found.end(), [&](const ports::FoundGauge& one) { return one.id == gauge.id; });
  if (known == m_found.end())
    m_found.push_back(gauge);
  else
    *known = gauge;
  listFound();
}

// Gauges first, the remembered one at the top, then the nearest; devices that do not say pressure come last.
void GaugeModel::listFound() {
  std::stable_sort(m_found.begin(), m_found.end(), [](const ports::FoundGauge& a, const ports::FoundGauge& b) {
    if (a.isRemembered != b.isRemembered) return a.isRemembered;
    if (a.saysPressure != b.saysPressure) return a.saysPressure;
    return a.rssi != 0 && (b.rssi == 0 || a.rssi > b.rssi);
  });
  m_foundList.clear();
  for (const ports::FoundGauge& one : m_found) {
    const QString detail = one.isRemembered   ? tr("Chosen before")
                           : one.saysPressure ? tr("Offers pressure")
                                              : tr("Does not say that it offers pressure");
    m_foundList << QVariantMap{{QStringLiteral("id"), PlainWords::text(one.id)},
                               {QStringLiteral("name"), one.name.empty() ? tr("Without a name") : PlainWords::text(one.name)},
                               {QStringLiteral("detail"), detail},
                               {QStringLiteral("isGauge"), one.saysPressure || one.isRemembered}};
  }
  emit foundChanged();
}

void GaugeModel::onPackets(const std::vector<ports::GaugePacket>& packets) {
  for (const ports::GaugePacket& packet : packets) onPacket(packet);
  showValue();
  emit changed();
}

void GaugeModel::onPacket(const ports::GaugePacket& packet) {
  if (packet.characteristic == air::kMeasurementDescriptor) {
    const auto measurement = air::decodeMeasurement(packet.bytes);
    m_uncertaintyHalfPercent = measurement ? measurement->uncertaintyHalfPercent : std::nullopt;
    m_steady = air::SteadyReading{};
    return;
  }
  const auto value = air::decodeGauge(packet.characteristic, packet.bytes);
  if (!value) {
    if (packet.characteristic != air::kPressureCharacteristic) return;
    forgetReading();
    m_refusal = GaugeWords::refusal(value.error());
    return;
  }
  switch (value->kind) {
    case air::GaugeValueKind::pressure:
      return onPressure(*value, packet.at);
    case air::GaugeValueKind::temperature:
      m_sensor = value->isKnown && !value->isQuestioned ? std::optional(value->temperature) : std::nullopt;
      return;
    case air::GaugeValueKind::battery:
      m_battery = value->isKnown ? std::optional(value->percent) : std::nullopt;
      return;
    case air::GaugeValueKind::maker:
    case air::GaugeValueKind::model:
    case air::GaugeValueKind::serial:
      return;
  }
}

void GaugeModel::onPressure(const air::GaugeValue& value, Instant at) {
  const QString refused = GaugeWords::refusal(value, units());
  if (!refused.isEmpty()) {
    forgetReading();
    m_refusal = refused;
    return;
  }
  m_refusal.clear();
  if (!m_latest && m_uncertaintyHalfPercent) {
    // Stated in halves of a percent of the value.
    m_steady = air::SteadyReading{Pressure::pascals(static_cast<std::int64_t>(value.deciPascals) * *m_uncertaintyHalfPercent / 2000)};
  }
  m_latest = value;
  m_steady.add(at, Pressure::pascals(static_cast<std::int64_t>(value.deciPascals) / 10));
}

void GaugeModel::forgetReading() {
  m_latest.reset();
  m_steady.startOver();
  m_value.clear();
  m_refusal.clear();
}

void GaugeModel::forgetZero() {
  m_zero.reset();
  m_zeroAt.reset();
  m_zeroOf.clear();
  m_zeroDoubt.clear();
}

UnitSystem GaugeModel::units() const { return m_choices->gaugeUnits(); }
QString GaugeModel::unitCode() const { return m_choices->isGaugeInPsi() ? QStringLiteral("psi") : QStringLiteral("kpa"); }
QString GaugeModel::unit() const { return m_choices->isGaugeInPsi() ? tr("psi") : tr("kPa"); }
void GaugeModel::setUnit(const QString& code) { m_choices->setGaugeInPsi(code == QLatin1String("psi")); }

void GaugeModel::showValue() {
  m_value.clear();
  if (!m_latest || !m_zero) return;
  const auto both = air::readingOf(*m_latest, *m_zero);
  if (both)
    m_value =
        PlainWords::text(print(both->gauge(), units())).section(QLatin1Char(' '), 0, 0).replace(QLatin1Char('-'), QStringLiteral("\u2212"));
}

QString GaugeModel::stage() const {
  if (!isChosen() || !m_port) return QStringLiteral("none");
  if (m_state.phase != GaugePhase::ready) return QStringLiteral("waiting");
  return m_zero ? QStringLiteral("live") : QStringLiteral("zero");
}

QString GaugeModel::trend() const {
  switch (m_steady.trend()) {
    case air::Trend::rising:
      return QStringLiteral("up");
    case air::Trend::falling:
      return QStringLiteral("down");
    case air::Trend::unknown:
    case air::Trend::level:
      break;
  }
  return {};
}

QString GaugeModel::trendWords() const {
  if (!m_latest) return m_refusal.isEmpty() ? tr("No reading yet") : tr("No value");
  switch (m_steady.trend()) {
    case air::Trend::rising:
      return tr("Rising");
    case air::Trend::falling:
      return tr("Falling");
    case air::Trend::unknown:
      return tr("Not steady yet");
    case air::Trend::level:
      break;
  }
  return {};
}

QString GaugeModel::steadyWords() const { return m_latest && m_steady.isSteady() ? tr("Steady") : QString(); }
bool GaugeModel::canTake() const { return m_state.phase == GaugePhase::ready && m_latest && m_steady.isSteady(); }

QString GaugeModel::gaugeName() const {
  return m_state.gauge.name.empty() && m_state.gauge.serial.empty() ? remembered() : PlainWords::text(m_state.gauge.label());
}

QString GaugeModel::facts() const {
  QStringList parts;
  if (m_state.phase != GaugePhase::ready) return {};
  if (m_battery) parts << (*m_battery < kBatteryLow ? tr("Battery low, %1 %").arg(*m_battery) : tr("Battery %1 %").arg(*m_battery));
  if (m_sensor) parts << tr("sensor %1", "a temperature").arg(PlainWords::text(print(*m_sensor, m_choices->units())));
  return PlainWords::sentenceCase(parts.join(QStringLiteral(", ")));
}

QString GaugeModel::state() const {
  if (!m_callFailure.isEmpty()) return m_callFailure;
  if (!m_port) return tr("There is no Bluetooth in this program. Type the value.");
  if (!isChosen() && m_state.phase == GaugePhase::idle) return tr("No gauge is chosen. Type the value, or choose one.");
  return GaugeWords::state(m_state);
}

bool GaugeModel::isTrouble() const { return !m_callFailure.isEmpty() || ports::isFailure(m_state.phase); }

bool GaugeModel::canTryAgain() const {
  return m_port && isChosen() && !m_isScanWanted &&
         (m_state.phase == GaugePhase::idle || (ports::isFailure(m_state.phase) && !m_state.willRetry));
}

QString GaugeModel::zeroHint() const {
  return tr(
      "First the zero: hold the needle in open air, out of every bladder. The gauge reads the whole weight of the air; what it reads now "
      "is "
      "taken away from every reading after.");
}

QString GaugeModel::zeroWords() const {
  if (!m_zero || !m_zeroAt) return {};
  const Pressure open{static_cast<std::int64_t>(m_zero->deciPascals) / 10};
  return tr("Zeroed %1: open air reads %2").arg(PlainWords::moment(*m_zeroAt, m_desk->today()), PlainWords::text(print(open, units())));
}

std::optional<Pressure> GaugeModel::expectedAmbient() const {
  const auto& team = m_desk->views().team;
  return team && team->weather ? season::ambientOf(team->weather->conditions) : std::nullopt;
}

void GaugeModel::zero() {
  if (!canTake()) return;
  const auto expected = expectedAmbient();
  const air::ZeroDoubt doubt = air::doubtZero(*m_latest, expected);
  m_zeroDoubt = GaugeWords::doubt(doubt, *m_latest, expected, units());
  if (doubt != air::ZeroDoubt::none) {
    emit changed();
    return;
  }
  takeZero();
}

// What is no open air anywhere is no zero, whoever says so; far from what the elevation says may be right.
bool GaugeModel::canZeroAnyway() const {
  return canTake() && air::doubtZero(*m_latest, expectedAmbient()) == air::ZeroDoubt::farFromAmbient;
}

void GaugeModel::zeroAnyway() {
  if (canZeroAnyway()) takeZero();
}

void GaugeModel::takeZero() {
  m_zeroDoubt.clear();
  m_zero = m_latest;
  m_zeroAt = m_desk->now();
  m_zeroOf = m_state.gauge.label();
  showValue();
  emit changed();
}

void GaugeModel::zeroAgain() {
  forgetZero();
  m_value.clear();
  emit changed();
}

std::optional<Pressure> GaugeModel::reading() const {
  if (!canTake() || !m_zero) return std::nullopt;
  const auto both = air::readingOf(*m_latest, *m_zero);
  return both ? std::optional(both->gauge()) : std::nullopt;
}

season::AirSource GaugeModel::source() const {
  season::AirSource source;
  if (!reading()) return source;
  source.gauge = m_state.gauge.label();
  source.rawDeciPascal = m_latest->deciPascals;
  source.zeroDeciPascal = m_zero->deciPascals;
  source.sensor = m_sensor;
  return source;
}

}  // namespace snugline::models
