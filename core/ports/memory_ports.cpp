// SPDX-License-Identifier: Apache-2.0
#include "core/ports/memory_ports.h"

#include <utility>

namespace snugline::ports {

namespace {

constexpr std::int64_t kMsPerDay = 86'400'000;
constexpr std::size_t kMarkDigits = 32;  // as ports.h says of freshMark()

}  // namespace

void MemoryClock::stepDays(int days) { m_now.ms += days * kMsPerDay; }

// splitmix64 (Steele, Lea, Flood 2014): small, and the same on every machine.
std::uint64_t MemoryKeys::next() {
  m_chance += 0x9E3779B97F4A7C15ULL;
  std::uint64_t z = m_chance;
  z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31U);
}

Result<std::optional<Identity>> MemoryKeys::find(const std::string& incarnation) {
  const auto found = m_kept.find(incarnation);
  if (found == m_kept.end()) return std::optional<Identity>();
  return std::optional<Identity>(found->second);
}

Result<void> MemoryKeys::keep(const std::string& incarnation, const Identity& identity) {
  m_kept[incarnation] = identity;
  return {};
}

Result<Seed> MemoryKeys::freshSeed() {
  Seed seed{};
  for (std::uint8_t& byte : seed) byte = static_cast<std::uint8_t>(next() >> 56U);
  return seed;
}

Result<std::string> MemoryKeys::freshMark() {
  std::string mark(kMarkDigits, '0');
  for (char& digit : mark) digit = "0123456789abcdef"[next() >> 60U];
  return mark;
}

Result<std::optional<Identity>> FailingKeys::find(const std::string&) { return tl::unexpected<Error>(m_error); }
Result<void> FailingKeys::keep(const std::string&, const Identity&) { return tl::unexpected<Error>(m_error); }
Result<Seed> FailingKeys::freshSeed() { return tl::unexpected<Error>(m_error); }
Result<std::string> FailingKeys::freshMark() { return tl::unexpected<Error>(m_error); }

Result<void> ScriptedTagReader::start(std::function<void(const std::string&)> onText) {
  m_onText = std::move(onText);
  return {};
}

bool ScriptedTagReader::sendNext() {
  if (!m_onText || m_next == m_script.size()) return false;
  const auto onText = m_onText;
  onText(m_script[m_next++]);
  return true;
}

Result<void> FailingTagReader::start(std::function<void(const std::string&)>) { return tl::unexpected<Error>(m_error); }

Result<MemoryPeerLink::Bytes> MemoryPeerLink::call(const std::string& road, const Bytes& request) {
  ++m_calls;
  const auto found = m_roads.find(road);
  if (found == m_roads.end() || !found->second) return fail(ErrorCode::notFound, road);
  return found->second(request);
}

Result<std::vector<std::uint8_t>> FailingPeerLink::call(const std::string& road, const std::vector<std::uint8_t>& request) {
  if (m_behind == nullptr || m_answered == 0) return tl::unexpected<Error>(m_error);
  --m_answered;
  return m_behind->call(road, request);
}

}  // namespace snugline::ports
