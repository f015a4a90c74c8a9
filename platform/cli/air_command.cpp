// SPDX-License-Identifier: Apache-2.0
// `snug air`: what became of the air in a bladder, between the bounds of a rigid and a soft one. `snug gauge`: what a gauge's bytes say.
#include <array>
#include <cstdio>

#include "core/air/bladder.h"
#include "core/air/gauge_packet.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

struct Question {
  air::AirState set;
  Temperature now;
  Pressure ambientNow;
};

std::string number(double value, int decimals) {
  std::array<char, 64> text{};
  std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
  return text.data();
}

std::string both(Pressure p) { return number(p.kpa(), 2) + " kPa (" + print(p, UnitSystem::us) + ')'; }
std::string both(Temperature t) { return print(t, UnitSystem::metric) + " (" + print(t, UnitSystem::us) + ')'; }

Result<Temperature> temperature(const std::string& text, const char* option) {
  const Result<Temperature> read = parseTemperature(text, option);
  return read ? air::believed(*read, option) : read;
}

// A barometer's pressure where it is given, else by elevation, else sea level.
Result<Pressure> ambient(const std::string& pressure, const char* pressureOption, const std::string& elevation,
                         const char* elevationOption) {
  if (!pressure.empty()) {
    const Result<Pressure> read = parsePressure(pressure, pressureOption, PressureKind::absolute);
    return read ? air::believedAmbient(*read, pressureOption) : read;
  }
  if (elevation.empty()) return air::kStandardAtmosphere;
  const Result<Elevation> read = parseElevation(elevation, elevationOption);
  if (!read) return tl::unexpected<Error>(read.error());
  return air::ambientAt(*read);
}

Result<Question> understood(const AirRequest& request) {
  const Result<Pressure> set = parsePressure(request.set, "--set");
  if (!set) return tl::unexpected<Error>(set.error());
  const Result<Temperature> at = temperature(request.at, "--at");
  if (!at) return tl::unexpected<Error>(at.error());
  const Result<Temperature> now = temperature(request.now, "--now");
  if (!now) return tl::unexpected<Error>(now.error());
  const Result<Pressure> then = ambient(request.setAmbient, "--set-ambient", request.setElevation, "--set-elevation");
  if (!then) return tl::unexpected<Error>(then.error());
  const Result<Pressure> around = ambient(request.nowAmbient, "--now-ambient", request.nowElevation, "--now-elevation");
  if (!around) return tl::unexpected<Error>(around.error());
  const Result<Pressure> gauge = air::believedGauge(*set, *then, "--set");
  if (!gauge) return tl::unexpected<Error>(gauge.error());
  return Question{{*set, *at, *then}, *now, *around};
}

// The arithmetic in plain numbers; kelvin as 273.15 and more.
std::string whyOf(const Question& q, const air::Foresight& f) {
  const double absolute = q.set.gauge.kpa() + q.set.ambient.kpa();
  const auto kelvin = [](Temperature t) { return static_cast<double>(t.mk) / 1000.0; };
  const double now = absolute * kelvin(q.now) / kelvin(q.set.temperature);
  std::string why = "Set to " + both(f.held) + " at " + both(q.set.temperature) + ", and " + number(q.set.ambient.kpa(), 2) +
                    " kPa around it make " + number(absolute, 2) + " kPa absolute. A rigid bladder: " + number(absolute, 2) + " x " +
                    number(kelvin(q.now), 2) + " / " + number(kelvin(q.set.temperature), 2) + " = " + number(now, 2) + " kPa, less " +
                    number(q.ambientNow.kpa(), 2) + " kPa around it now = " + both(f.gauge) + ". A soft one keeps " +
                    number(f.held.kpa(), 2) + " kPa and has " + number(f.volumeRatio, 3) + " of its volume. The truth lies between the two";
  if (f.isBelowZero()) why += "; where the rigid one is below zero, no air is left to hold it";
  return why;
}

std::string causes(const air::Foresight& f) {
  return "  " + both(f.byTemperature) + " of it by temperature, " + both(f.byElevation) + " by the air around\n";
}

void writeValue(json::Writer& out, const air::GaugeValue& v) {
  const auto real = [&](const char* key, double value, int decimals) {
    out.key(key);
    if (v.isKnown) {
      out.real(value, decimals);
    } else {
      out.null();
    }
  };
  switch (v.kind) {
    case air::GaugeValueKind::pressure:
      real("pascal", static_cast<double>(v.deciPascals) / 10.0, 1);
      return;
    case air::GaugeValueKind::temperature:
      real("celsius", v.temperature.celsius(), 2);
      return;
    case air::GaugeValueKind::battery:
      real("percent", v.percent, 0);
      return;
    case air::GaugeValueKind::maker:
    case air::GaugeValueKind::model:
    case air::GaugeValueKind::serial:
      out.key("text").string(v.text);
      return;
  }
}

std::string valueText(const air::GaugeValue& v) {
  const std::string kind(code(v.kind));
  if (!v.isKnown) return kind + ": the gauge does not know";
  switch (v.kind) {
    case air::GaugeValueKind::pressure: {
      const Pressure whole = Pressure::pascals((static_cast<std::int64_t>(v.deciPascals) + 5) / 10);
      const std::string text =
          kind + ": " + number(static_cast<double>(v.deciPascals) / 10000.0, 4) + " kPa absolute (" + print(whole, UnitSystem::us) + ')';
      return v.isQuestioned ? text + "; read it again, a bladder has 30 to 600 kPa absolute" : text;
    }
    case air::GaugeValueKind::temperature: {
      const std::string text = kind + ": " + number(v.temperature.celsius(), 2) + " \u00B0C (" + print(v.temperature, UnitSystem::us) + ')';
      return v.isQuestioned ? text + "; read it again, weather has -60 to 60 \u00B0C" : text;
    }
    case air::GaugeValueKind::battery:
      return kind + ": " + std::to_string(v.percent) + " %";
    case air::GaugeValueKind::maker:
    case air::GaugeValueKind::model:
    case air::GaugeValueKind::serial:
      return kind + ": " + oneLine(v.text);
  }
  return kind;
}

}  // namespace

Result<Reply> air(const AirRequest& request, Outside&) {
  const Result<Question> question = understood(request);
  if (!question) return tl::unexpected<Error>(question.error());
  const air::Foresight f = air::foresee(question->set, question->now, question->ambientNow);
  const std::string why = whyOf(*question, f);
  json::Writer out;
  out.beginObject().key("now_kpa").real(f.gauge.kpa(), 3).key("now_psi").real(f.gauge.psi(), 4);
  out.key("change_kpa").real(f.change.kpa(), 3);
  out.key("ambient_set_kpa").real(question->set.ambient.kpa(), 3).key("ambient_now_kpa").real(question->ambientNow.kpa(), 3);
  out.key("volume_ratio").real(f.volumeRatio, 6).key("why").string(why);
  out.key("soft_kpa").real(f.held.kpa(), 3);
  out.key("by_temperature_kpa").real(f.byTemperature.kpa(), 3).key("by_elevation_kpa").real(f.byElevation.kpa(), 3);
  out.key("below_zero").boolean(f.isBelowZero()).endObject();

  Reply reply;
  reply.json = out.take();
  reply.text = "Now between " + both(std::min(f.gauge, f.held)) + " and " + both(std::max(f.gauge, f.held)) + ".\n";
  if (f.isBelowZero()) reply.text += "As a rigid bladder there is no air left to hold it.\n";
  reply.text += causes(f) + why + ".\nBring the helmet to room temperature before changing its air. " + kCaution + '\n';
  return reply;
}

Result<Reply> gauge(const GaugeRequest& request, Outside&) {
  const Result<std::uint16_t> characteristic = air::characteristicFromText(request.characteristic, "--characteristic");
  if (!characteristic) return tl::unexpected<Error>(characteristic.error());
  const Result<std::vector<std::uint8_t>> bytes = air::bytesFromHex(request.hex, "HEX");
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  const Result<air::GaugeValue> value = air::decodeGauge(*characteristic, *bytes);
  if (!value) {
    Error error = value.error();
    error.place = (error.code == ErrorCode::unknownWord ? "--characteristic " : "HEX ") + error.place;
    return tl::unexpected<Error>(error);
  }
  json::Writer out;
  out.beginObject().key("kind").string(code(value->kind));
  writeValue(out, *value);
  out.key("known").boolean(value->isKnown).key("questioned").boolean(value->isQuestioned).key("why").string(valueText(*value)).endObject();
  return Reply{kDone, out.take(), valueText(*value) + '\n'};
}

}  // namespace snugline::cli
