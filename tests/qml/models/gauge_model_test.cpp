// SPDX-License-Identifier: Apache-2.0
#include <memory>

#include <QCoreApplication>
#include <QTemporaryDir>

#include SNUGLINE_CATCH_HEADER

#include "core/air/gauge_packet.h"
#include "core/ports/memory_gauge.h"
#include "core/ports/memory_ports.h"
#include "qml/models/choices.h"
#include "qml/models/desk.h"
#include "qml/models/gauge_model.h"
#include "qml/models/sentences_air.h"

using namespace snugline;
using models::GaugeModel;
using ports::GaugePhase;

namespace {

class StandingClock final : public ports::Clock {
 public:
  [[nodiscard]] Instant now() override { return instantAt(Day{20740}, 840, -300); }
};

void application() {
  if (QCoreApplication::instance() != nullptr) return;
  static int argc = 1;
  static char name[] = "gauge";
  static char* argv[] = {name, nullptr};
  static QCoreApplication app(argc, argv);
}

std::vector<std::uint8_t> bytesOf(std::uint32_t value) {
  return {static_cast<std::uint8_t>(value & 0xFFU), static_cast<std::uint8_t>((value >> 8U) & 0xFFU),
          static_cast<std::uint8_t>((value >> 16U) & 0xFFU), static_cast<std::uint8_t>(value >> 24U)};
}

// 3 psi gauge at one atmosphere: 122,009.3 Pa, raw 1220093 (Bluetooth SIG's unit of 0.1 Pa; the arithmetic of 3 x 6894.757 + 101325).
constexpr std::uint32_t kOpenAir = 1'013'250, kThreePsi = 1'220'093;

struct Bench {
  models::Desk desk;
  models::Choices choices{QString()};
  ports::MemoryGauge* gauge = nullptr;
  std::unique_ptr<GaugeModel> model;
  std::int64_t ms = 0;

  Bench() : desk((application(), [] { return std::make_unique<StandingClock>(); }), [] { return std::make_unique<ports::MemoryKeys>(); }) {
    choices.setUnits(UnitSystem::metric);
    auto port = std::make_unique<ports::MemoryGauge>();
    gauge = port.get();
    gauge->offer({"a", "Bench gauge", -50, false, true}, "0142");
    gauge->offer({"b", "Kit gauge", -60, false, true}, "0077");
    gauge->offer({"c", "Field speaker", -40, false, false}, {});
    model = std::make_unique<GaugeModel>(std::move(port), &desk, &choices);
  }
  void sendBytes(std::vector<std::uint8_t> bytes, std::uint16_t characteristic = air::kPressureCharacteristic) {
    ms += 100;
    gauge->send({{"Bench gauge 0142", characteristic, std::move(bytes), Instant{ms, 0}}});
  }
  void hold(std::uint32_t raw) {
    for (int i = 0; i < 13; ++i) sendBytes(bytesOf(raw));
  }
  void connect() {
    model->attach();
    model->scan();
    model->choose(QStringLiteral("a"));
  }
};

}  // namespace

TEST_CASE("a gauge is found, chosen, zeroed in open air, and its steady value goes into a fact with both raw values") {
  Bench bench;
  CHECK(bench.model->stage() == "none");
  bench.connect();
  CHECK(bench.model->stage() == "zero");
  CHECK_FALSE(bench.model->canTake());
  bench.hold(kOpenAir);
  REQUIRE(bench.model->canTake());
  CHECK_FALSE(bench.model->reading().has_value());  // no value before the zero
  bench.model->zero();
  CHECK(bench.model->stage() == "live");
  for (std::uint32_t raw = kOpenAir; raw < kThreePsi; raw += 20'000) bench.sendBytes(bytesOf(raw));
  CHECK(bench.model->trend() == "up");
  CHECK_FALSE(bench.model->canTake());
  bench.hold(kThreePsi);
  REQUIRE(bench.model->canTake());
  CHECK(bench.model->value() == "20.7");
  bench.model->setUnit(QStringLiteral("psi"));
  CHECK(bench.model->value() == "3.00");
  REQUIRE(bench.model->reading().has_value());
  CHECK(bench.model->reading()->pa == 20'684);
  const season::AirSource source = bench.model->source();
  CHECK(source.gauge == "Bench gauge 0142");
  CHECK(source.rawDeciPascal == std::int64_t{kThreePsi});
  CHECK(source.zeroDeciPascal == std::int64_t{kOpenAir});
}

TEST_CASE("what is no reading is said in words and no value is taken") {
  Bench bench;
  bench.connect();
  bench.hold(kOpenAir);
  bench.model->zero();
  bench.hold(kThreePsi);
  REQUIRE(bench.model->canTake());
  struct Bad {
    std::vector<std::uint8_t> bytes;
    const char* words;
  };
  const std::vector<Bad> all{
      {{1, 2, 3}, "3 bytes where a reading has 4"}, {std::vector<std::uint8_t>(40, 7), "40 bytes where a reading has 4"},
      {{}, "0 bytes where a reading has 4"},        {bytesOf(0xFFFFFFFFU), "does not know the pressure"},
      {bytesOf(40'000'000U), "no helmet holds"},    {bytesOf(0), "no helmet holds"}};
  for (const Bad& bad : all) {
    CAPTURE(bad.words);
    bench.sendBytes(bad.bytes);
    CHECK(bench.model->refusal().contains(QLatin1String(bad.words)));
    CHECK(bench.model->value().isEmpty());
    CHECK_FALSE(bench.model->canTake());
    CHECK_FALSE(bench.model->reading().has_value());
    CHECK(bench.model->source().isEmpty());
    bench.sendBytes(bytesOf(kThreePsi));
    CHECK(bench.model->refusal().isEmpty());
    CHECK_FALSE(bench.model->canTake());  // the second starts over
    bench.hold(kThreePsi);
    CHECK(bench.model->canTake());
  }
}

TEST_CASE("an open air that is not one is asked about, and another gauge asks for its own zero") {
  Bench bench;
  bench.connect();
  bench.hold(3'000'000);
  bench.model->zero();  // 300 kPa is in a bladder, wherever we are
  CHECK(bench.model->stage() == "zero");
  CHECK(bench.model->zeroDoubt().contains(QLatin1String("not open air anywhere")));
  CHECK_FALSE(bench.model->canZeroAnyway());
  bench.model->zeroAnyway();
  CHECK(bench.model->stage() == "zero");
  bench.hold(kOpenAir);
  bench.model->zero();
  CHECK(bench.model->stage() == "live");
  bench.model->choose(QStringLiteral("b"));
  CHECK(bench.model->stage() == "zero");
  CHECK(bench.model->gaugeName() == "Kit gauge 0077");
  bench.hold(kOpenAir);
  bench.model->zero();
  bench.model->zeroAgain();
  CHECK(bench.model->stage() == "zero");
}

TEST_CASE("the gauge is remembered, forgotten, and found again by what it is called") {
  QTemporaryDir folder;
  application();
  const QString file = folder.filePath(QStringLiteral("choices.ini"));
  {
    models::Choices kept(file);
    kept.setGauge(QStringLiteral("Bench gauge"), QStringLiteral("0142"));
    kept.setGaugeInPsi(false);
  }
  models::Choices again(file);
  CHECK(again.gaugeName() == "Bench gauge");
  CHECK(again.gaugeSerial() == "0142");
  CHECK_FALSE(again.isGaugeInPsi());
  Bench bench;
  bench.choices.setGauge(QStringLiteral("Bench gauge"), QStringLiteral("0142"));
  bench.model->attach();
  QCoreApplication::processEvents();
  CHECK(bench.model->stage() == "zero");
  CHECK(bench.gauge->remembered() == ports::RememberedGauge{"Bench gauge", "0142"});
  bench.model->forget();
  CHECK(bench.model->stage() == "none");
  CHECK(bench.choices.gaugeName().isEmpty());
  CHECK(bench.gauge->state().phase == GaugePhase::idle);
}

TEST_CASE("gauges are listed before other devices, the nearest first") {
  Bench bench;
  bench.model->scan();
  REQUIRE(bench.model->found().size() == 3);
  CHECK(bench.model->found()[0].toMap().value("name").toString() == "Bench gauge");
  CHECK(bench.model->found()[2].toMap().value("name").toString() == "Field speaker");
  CHECK(bench.model->isScanning());
  bench.model->stopScan();
  CHECK_FALSE(bench.model->isScanning());
}

TEST_CASE("every phase of the gauge but ready and idle has its sentence, and trouble can be tried again or goes on by itself") {
  for (const GaugePhase phase : {GaugePhase::scanning, GaugePhase::connecting, GaugePhase::discovering, GaugePhase::subscribing,
                                 GaugePhase::off, GaugePhase::noAdapter, GaugePhase::noPermission, GaugePhase::locationOff,
                                 GaugePhase::lost, GaugePhase::notFound, GaugePhase::busy, GaugePhase::readError, GaugePhase::timedOut,
                                 GaugePhase::several, GaugePhase::wrongService, GaugePhase::duplicateCharacteristics, GaugePhase::gaveUp}) {
    Bench bench;
    bench.connect();
    ports::GaugeState state = bench.gauge->state();
    state.phase = state.cause = phase;
    bench.gauge->say(state);
    CAPTURE(static_cast<int>(phase));
    CHECK(bench.model->stage() == "waiting");
    CHECK(bench.model->state().endsWith(QLatin1Char('.')));
    CHECK(bench.model->isTrouble() == ports::isFailure(phase));
    CHECK_FALSE(bench.model->canTake());
    CHECK(bench.model->canTryAgain() == ports::isFailure(phase));
    state.willRetry = true;
    state.attempt = 2;
    state.attemptsMost = 5;
    bench.gauge->say(state);
    CHECK_FALSE(bench.model->canTryAgain());
  }
}

TEST_CASE("a drop in the middle keeps the zero, takes the value away and comes back by itself") {
  Bench bench;
  bench.connect();
  bench.hold(kOpenAir);
  bench.model->zero();
  bench.hold(kThreePsi);
  bench.gauge->say(GaugePhase::lost);
  CHECK(bench.model->value().isEmpty());
  CHECK_FALSE(bench.model->reading().has_value());
  bench.gauge->say(GaugePhase::ready);
  CHECK(bench.model->stage() == "live");
  CHECK_FALSE(bench.model->canTake());
  bench.hold(kThreePsi);
  CHECK(bench.model->value() == "20.7");
}

TEST_CASE("without Bluetooth in the program the screens say so and typing is all there is") {
  application();
  models::Desk desk([] { return std::make_unique<StandingClock>(); }, [] { return std::make_unique<ports::MemoryKeys>(); });
  models::Choices choices{QString()};
  GaugeModel none(nullptr, &desk, &choices);
  none.attach();
  none.scan();
  CHECK(none.stage() == "none");
  CHECK(none.state().contains(QLatin1String("Type the value")));
  GaugeModel failing(std::make_unique<ports::FailingGauge>(), &desk, &choices);
  failing.scan();
  CHECK(failing.state().contains(QLatin1String("Type the value")));
  CHECK_FALSE(failing.canTake());
}

TEST_CASE("what is typed is believed within its range only, and a bare number is in the unit shown") {
  using models::typedElevation;
  using models::typedGauge;
  using models::typedTemperature;
  CHECK(typedTemperature(QStringLiteral("4"), UnitSystem::metric)->mk == 277'150);
  CHECK(typedTemperature(QStringLiteral("\u22124"), UnitSystem::metric)->mk == 269'150);
  CHECK(typedTemperature(QStringLiteral("32"), UnitSystem::us)->mk == 273'150);
  CHECK(typedTemperature(QStringLiteral("4 C"), UnitSystem::us)->mk == 277'150);
  CHECK(typedElevation(QStringLiteral("1000"), UnitSystem::us)->mm == 304'800);
  CHECK(typedGauge(QStringLiteral("3"), UnitSystem::us)->pa == 20'684);
  for (const char* bad : {"-61", "61", "500"}) {
    const auto typed = typedTemperature(QLatin1String(bad), UnitSystem::metric);
    REQUIRE_FALSE(typed);
    CHECK(models::airErrorSentence(typed.error(), UnitSystem::metric).contains(QStringLiteral("between \u221260 °C and 60 °C")));
  }
  for (const char* bad : {"-431", "9001", "100000"}) {
    const auto typed = typedElevation(QLatin1String(bad), UnitSystem::metric);
    REQUIRE_FALSE(typed);
    CHECK(models::airErrorSentence(typed.error(), UnitSystem::metric).contains(QStringLiteral("from \u2212430 m to 9000 m")));
  }
  for (const char* bad : {"", "air", "4 x", "1e3"}) {
    CHECK_FALSE(models::airErrorSentence(typedTemperature(QLatin1String(bad), UnitSystem::metric).error(), UnitSystem::metric).isEmpty());
    CHECK_FALSE(models::airErrorSentence(typedElevation(QLatin1String(bad), UnitSystem::us).error(), UnitSystem::us).isEmpty());
    CHECK_FALSE(models::airErrorSentence(typedGauge(QLatin1String(bad), UnitSystem::metric).error(), UnitSystem::metric).isEmpty());
  }
  CHECK_FALSE(typedGauge(QStringLiteral("250"), UnitSystem::metric));
}
