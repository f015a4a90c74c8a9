// SPDX-License-Identifier: Apache-2.0
#include "bench.h"

#include <algorithm>

#include <QDeadlineTimer>

namespace snugline::bluetooth {

namespace {
constexpr int kPatienceMs = 30'000;
}

Bench::Bench(const std::vector<std::string>& scene, const GaugePace& pace)
    : m_app(QCoreApplication::instance() == nullptr ? std::make_unique<QCoreApplication>(m_argc, m_argv) : nullptr),
      gauge(
          [] {
            return std::make_unique<ports::MemoryClock>(Instant{1'000, 0});
          },
          pace) {
  m_service.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  m_service.start(QStringLiteral(FAKE_BLUEZ), {});
  m_service.waitForReadyRead(kPatienceMs);
  m_service.readAll();
  for (const std::string& line : scene) play(line);
  ports::GaugeListener listener;
  listener.onState = [this](const ports::GaugeState& state) { states.push_back(state); };
  listener.onFound = [this](const ports::FoundGauge& one) { found.push_back(one); };
  listener.onPackets = [this](const std::vector<ports::GaugePacket>& some) {
    ++calls;
    packets.insert(packets.end(), some.begin(), some.end());
    if (onCall) onCall();
  };
  gauge.listen(std::move(listener));
}

Bench::~Bench() {
  gauge.listen({});
  gauge.stop();
  m_service.closeWriteChannel();
  m_service.waitForFinished(kPatienceMs);
}

void Bench::play(const std::string& line) {
  m_service.write((line + "\n").c_str());
  QByteArray answer;
  while (!answer.contains("done") && m_service.waitForReadyRead(kPatienceMs)) answer += m_service.readAll();
}

bool Bench::until(const std::function<bool()>& isSo) {
  QDeadlineTimer patience(kPatienceMs);
  while (!isSo()) {
    if (patience.hasExpired()) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 20);
  }
  return true;
}

bool Bench::untilPhase(ports::GaugePhase phase) {
  return until([&] { return !states.empty() && states.back().phase == phase; });
}

std::size_t Bench::countOf(ports::GaugePhase phase) const {
  return static_cast<std::size_t>(std::count_if(states.begin(), states.end(), [&](const auto& one) { return one.phase == phase; }));
}

bool Bench::has(std::uint16_t characteristic, const std::vector<std::uint8_t>& bytes) const {
  return std::any_of(packets.begin(), packets.end(),
                     [&](const auto& one) { return one.characteristic == characteristic && one.bytes == bytes; });
}

std::string Bench::idOf(const std::string& name) const {
  const auto one = std::find_if(found.rbegin(), found.rend(), [&](const auto& each) { return each.name == name; });
  return one == found.rend() ? std::string() : one->id;
}

}  // namespace snugline::bluetooth
