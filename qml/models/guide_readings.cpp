// SPDX-License-Identifier: Apache-2.0
// The touches of GuideModel that are about air and pads: the number being entered, and what it is taken for.
#include <algorithm>
#include <cmath>

#include "drawn_values.h"
#include "gauge_model.h"
#include "guide_model.h"

namespace snugline::models {

using season::CheckRecord;

namespace {

// One touch of plus or minus: about what a gauge's scale lets one tell apart (ours).
constexpr double kStepKpa = 0.5;
constexpr double kStepPsi = 0.1;
constexpr double kKpa = 1000.0;

QString afterPrefix(const QString& name, const char* prefix) {
  const QLatin1String start(prefix);
  return name.startsWith(start) ? name.mid(start.size()) : QString();
}

Result<Pressure> parsed(const QString& digits, UnitSystem units) {
  return parsePressure(digits.toStdString() + (units == UnitSystem::metric ? "kPa" : "psi"));
}

}  // namespace

void GuideModel::clearEntry() {
  m_touches.typed.clear();
  m_touches.pressure.reset();
  m_touches.source = {};
}

std::optional<gear::Port> GuideModel::entryPort() const {
  return gear::portFromCode(m_page.entry.value(QStringLiteral("port")).toString().toStdString());
}

void GuideModel::typeEntry(const QString& digits) {
  if (!entryPort() || m_isBusy) return;
  clearEntry();
  m_touches.typed = digits;
  if (const auto read = parsed(digits, m_choices->gaugeUnits())) m_touches.pressure = *read;
  refresh();
}

// From what stands, or from where the sheet starts; on the scale of the gauge, so that steps give round numbers.
void GuideModel::stepEntry(int steps) {
  const auto port = entryPort();
  const CheckRecord* record = check();
  const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheet(record->sheet);
  if (!port || sheet == nullptr || sheet->airAt(*port) == nullptr || m_isBusy) return;
  const Pressure known = record->state.fitted.air[static_cast<std::size_t>(*port)].value_or(sheet->airAt(*port)->start);
  const double step =
      m_choices->gaugeUnits() == UnitSystem::metric ? kStepKpa * kKpa : kStepPsi * kKpa * known.kpa() / std::max(known.psi(), 1e-9);
  const double from = static_cast<double>(m_touches.pressure.value_or(known).pa);
  m_touches.pressure = Pressure{std::llround((std::round(from / step) + steps) * step)};
  m_touches.typed.clear();
  m_touches.source = {};  // a value that was stepped is nobody's raw reading
  refresh();
}

void GuideModel::takeLive() {
  if (!entryPort() || m_isBusy || m_gauge == nullptr) return;
  const auto live = m_gauge->reading();
  if (!live) return;
  m_touches.pressure = *live;
  m_touches.source = m_gauge->source();
  m_touches.typed.clear();
  refresh();
}

void GuideModel::setEntry(int pascals) {
  if (!entryPort() || m_isBusy) return;
  clearEntry();
  m_touches.pressure = Pressure{pascals};
  refresh();
}

// What was typed is a number in the old unit: it is read anew, since the dial that is looked at has the other scale.
void GuideModel::switchUnit() {
  const QString typed = m_touches.typed;
  m_choices->setGaugeInPsi(!m_choices->isGaugeInPsi());
  if (!typed.isEmpty()) typeEntry(typed);
}

void GuideModel::openGauge() {
  if (!m_page.canReadGauge || m_isBusy) return;
  m_touches.isGaugeOpen = true;
  refresh();
}

void GuideModel::readGauge() {
  if (m_isBusy || m_isEnded || !hasAir()) return;
  m_touches = {};
  m_touches.isGaugeAlone = true;
  refresh();
}

// What was listed stands as read on the gauge where it was said so; without a gauge nothing is known of it.
void GuideModel::answerFitted(const QString& name) {
  const CheckRecord* record = check();
  const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheet(record->sheet);
  if (sheet == nullptr || name != QLatin1String("set")) return take({fit::Fitted{}});
  fit::Fitted rest;
  bool isAnySaid = false;
  for (const gear::AirPort& port : sheet->air) {
    if (isPortSaid(*record, port.port))
      isAnySaid = true;
    else
      rest.air[static_cast<std::size_t>(port.port)] = port.start;
  }
  if (isAnySaid) return take({rest, fit::Fitted{}});
  take({rest});
}

void GuideModel::answerReading(const QString& name) {
  const auto port = entryPort();
  if (!port || name == QLatin1String("list")) {
    m_touches.port.reset();
    m_touches.isListWanted = true;
    clearEntry();
    return refresh();
  }
  const CheckRecord* record = check();
  const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheet(record->sheet);
  const gear::AirPort* air = sheet == nullptr ? nullptr : sheet->airAt(*port);
  fit::Fitted one;
  if (name == QLatin1String("record"))
    one.air[static_cast<std::size_t>(*port)] = m_touches.pressure;
  else if (air != nullptr)
    one.air[static_cast<std::size_t>(*port)] = air->start;
  take({one});
}

void GuideModel::answerGauge(const QString& name) {
  const auto port = entryPort();
  if (!port || !m_touches.pressure || name == QLatin1String("back")) return stepBack();
  take({fit::AirRead{*port, *m_touches.pressure, name == QLatin1String("on-head")}});
}

// A bladder or a pad of the list, a thickness, or a bladder touched on the drawing.
void GuideModel::choosePlace(const QString& name) {
  clearEntry();
  if (m_page.stage == Stage::pad && m_touches.pad) {
    const CheckRecord* record = check();
    const gear::ModelSheet* sheet = record == nullptr ? nullptr : m_desk->views().sheet(record->sheet);
    const gear::PadSet* pads = sheet == nullptr ? nullptr : sheet->padsAt(*m_touches.pad);
    bool isNumber = false;
    const auto step = afterPrefix(name, "step-").toUInt(&isNumber);
    if (pads == nullptr || !isNumber || step >= pads->steps.size()) return;
    fit::Fitted one;
    one.pad[static_cast<std::size_t>(*m_touches.pad)] = pads->steps[step];
    return take({one});
  }
  if (const auto part = gear::partFromCode(afterPrefix(name, "pad-").toStdString())) {
    m_touches.pad = part;
  } else {
    QString port = afterPrefix(name, "air-");
    if (port.isEmpty()) port = afterPrefix(name, "port-");
    m_touches.port = gear::portFromCode(port.toStdString());
  }
  refresh();
}

}  // namespace snugline::models
