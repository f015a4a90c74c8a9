// SPDX-License-Identifier: Apache-2.0
// What the gauge is doing, one sentence for each phase with what to do about it; and why a packet or a zero is not taken.
#include <QRegularExpression>

#include "core/air/gauge_packet.h"
#include "sentences_air.h"

namespace snugline::models {

using ports::GaugePhase;

namespace {

QString what(GaugePhase cause) {
  switch (cause) {
    case GaugePhase::lost:
      return GaugeWords::tr("the connection was lost");
    case GaugePhase::notFound:
      return GaugeWords::tr("it was not found");
    case GaugePhase::busy:
      return GaugeWords::tr("another device holds it");
    case GaugePhase::readError:
      return GaugeWords::tr("it refused a reading");
    case GaugePhase::timedOut:
      return GaugeWords::tr("it did not answer in time");
    case GaugePhase::idle:
    case GaugePhase::scanning:
    case GaugePhase::connecting:
    case GaugePhase::discovering:
    case GaugePhase::subscribing:
    case GaugePhase::ready:
    case GaugePhase::off:
    case GaugePhase::noAdapter:
    case GaugePhase::noPermission:
    case GaugePhase::locationOff:
    case GaugePhase::several:
    case GaugePhase::wrongService:
    case GaugePhase::duplicateCharacteristics:
    case GaugePhase::gaveUp:
      break;
  }
  return GaugeWords::tr("it did not work");
}

// What it was about when it took too long.
QString step(GaugePhase at) {
  switch (at) {
    case GaugePhase::scanning:
      return GaugeWords::tr("Looking for the gauge took too long");
    case GaugePhase::connecting:
      return GaugeWords::tr("Connecting took too long");
    case GaugePhase::discovering:
      return GaugeWords::tr("The gauge did not say in time what it offers");
    case GaugePhase::subscribing:
    case GaugePhase::ready:
      return GaugeWords::tr("The gauge sent nothing in time");
    case GaugePhase::idle:
    case GaugePhase::off:
    case GaugePhase::noAdapter:
    case GaugePhase::noPermission:
    case GaugePhase::locationOff:
    case GaugePhase::lost:
    case GaugePhase::notFound:
    case GaugePhase::busy:
    case GaugePhase::readError:
    case GaugePhase::timedOut:
    case GaugePhase::several:
    case GaugePhase::wrongService:
    case GaugePhase::duplicateCharacteristics:
    case GaugePhase::gaveUp:
      break;
  }
  return GaugeWords::tr("The gauge did not answer in time");
}

QString again(const QString& sentence, const ports::GaugeState& state) {
  if (!state.willRetry) return GaugeWords::tr("%1.").arg(sentence);
  if (state.attemptsMost < 2) return GaugeWords::tr("%1. Trying again.").arg(sentence);
  return GaugeWords::tr("%1. Trying again, %2 of %3.").arg(sentence).arg(state.attempt).arg(state.attemptsMost);
}

}  // namespace

QString GaugeWords::state(const ports::GaugeState& state) {
  switch (state.phase) {
    case GaugePhase::idle:
      return {};
    case GaugePhase::scanning:
      return tr("Looking for gauges nearby. Switch the gauge on and hold it close.");
    case GaugePhase::connecting:
      return tr("Connecting to the gauge.");
    case GaugePhase::discovering:
      return tr("Asking the gauge what it offers.");
    case GaugePhase::subscribing:
      return tr("Asking the gauge to send its readings.");
    case GaugePhase::ready:
      return state.isPolled ? tr("Connected. This gauge is asked for each reading, so that the number comes a little later.") : QString();
    case GaugePhase::off:
      return tr("Bluetooth is off on this device. Switch it on and it goes on by itself.");
    case GaugePhase::noAdapter:
      return tr("This device has no Bluetooth. Type the value instead.");
    case GaugePhase::noPermission:
      return tr("Snugline may not use Bluetooth on this device. Allow it in the system's settings, or type the value.");
    case GaugePhase::locationOff:
      return tr("This system finds gauges only while location is on. Switch it on, or type the value.");
    case GaugePhase::lost:
      return again(tr("The gauge went away"), state);
    case GaugePhase::notFound:
      return again(tr("The gauge does not answer. Switch it on and hold it close"), state);
    case GaugePhase::busy:
      return again(tr("Another device holds the gauge. End the connection there"), state);
    case GaugePhase::readError:
      return again(tr("The gauge refused a reading"), state);
    case GaugePhase::timedOut:
      return again(step(state.step), state);
    case GaugePhase::several:
      return tr("Several gauges look like the remembered one. Choose it under Settings, Gauge.");
    case GaugePhase::wrongService:
      return tr("This device offers no pressure. It is another kind of device, or another kind of gauge.");
    case GaugePhase::duplicateCharacteristics:
      return tr("This gauge offers several pressures and does not say which is which. Its value is not taken; type it instead.");
    case GaugePhase::gaveUp:
      return tr("No connection: %1. Touch Try again, or type the value.").arg(what(state.cause));
  }
  return {};
}

QString GaugeWords::refusal(const Error& error) {
  if (error.code == ErrorCode::wrongType) {
    // The detail says how many bytes were due and how many came.
    static const QRegularExpression figures(QStringLiteral("\\d+"));
    QStringList counts;
    for (auto found = figures.globalMatch(PlainWords::text(error.detail)); found.hasNext();) counts << found.next().captured();
    if (counts.size() == 2) return tr("The gauge sent %1 bytes where a reading has %2. No value is taken.").arg(counts[1], counts[0]);
  }
  return tr("The gauge sent something that cannot be read. No value is taken.");
}

QString GaugeWords::refusal(const air::GaugeValue& value, UnitSystem units) {
  if (value.kind != air::GaugeValueKind::pressure) return {};
  if (!value.isKnown) return tr("The gauge says that it does not know the pressure now. No value is taken.");
  if (!value.isQuestioned) return {};
  const Pressure sent{static_cast<std::int64_t>(value.deciPascals) / 10};
  return tr("The gauge sent %1 absolute, which no helmet holds. No value is taken.").arg(PlainWords::text(print(sent, units)));
}

QString GaugeWords::doubt(air::ZeroDoubt doubt, const air::GaugeValue& value, std::optional<Pressure> expected, UnitSystem units) {
  const Pressure read{static_cast<std::int64_t>(value.deciPascals) / 10};
  switch (doubt) {
    case air::ZeroDoubt::none:
      return {};
    case air::ZeroDoubt::notPressure:
      return tr("There is no pressure to take as zero yet.");
    case air::ZeroDoubt::notBelieved:
      return tr("%1 is not open air anywhere. No zero is taken.").arg(PlainWords::text(print(read, units)));
    case air::ZeroDoubt::farFromAmbient:
      return tr("Open air should read about %1 here, and the gauge reads %2. Is the needle out of the bladder, and is the elevation right?")
          .arg(expected ? PlainWords::text(print(*expected, units)) : QString(), PlainWords::text(print(read, units)));
  }
  return {};
}

}  // namespace snugline::models
