// SPDX-License-Identifier: Apache-2.0
// Purpose: the outside in memory, for tests and for the demo: each port once as a stand-in that works and once as one that
// fails. Nothing here reads a clock, a file, a device or chance. Errors: those of ports.h; a failing port answers with the
// error that it was made with. Ownership: callers own the ports; callbacks live until stop(). Thread: as ports.h.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/ports/memory_gauge.h"
#include "core/ports/ports.h"

namespace snugline::ports {

// Stands still until it is stepped by hand.
class MemoryClock final : public Clock {
 public:
  explicit MemoryClock(Instant start) : m_now(start) {}
  [[nodiscard]] Instant now() override { return m_now; }
  void set(Instant now) { m_now = now; }
  void stepMs(std::int64_t ms) { m_now.ms += ms; }
  void stepDays(int days);

 private:
  Instant m_now;
};

// A clock that was never set, as on a device whose battery was flat: it shows the epoch whenever asked.
class FailingClock final : public Clock {
 public:
  [[nodiscard]] Instant now() override { return {}; }
};

// Seeds and marks follow from the number it is made with, so that a test gives the same Book each time; never for real use.
class MemoryKeys final : public Keys {
 public:
  explicit MemoryKeys(std::uint64_t chance = 1) : m_chance(chance) {}
  [[nodiscard]] Result<std::optional<Identity>> find(const std::string& incarnation) override;
  [[nodiscard]] Result<void> keep(const std::string& incarnation, const Identity& identity) override;
  [[nodiscard]] Result<Seed> freshSeed() override;
  [[nodiscard]] Result<std::string> freshMark() override;
  [[nodiscard]] std::size_t size() const { return m_kept.size(); }
  void forget() { m_kept.clear(); }  // a new device, or one that was wiped

 private:
  [[nodiscard]] std::uint64_t next();
  std::uint64_t m_chance;
  std::map<std::string, Identity> m_kept;
};

class FailingKeys final : public Keys {
 public:
  explicit FailingKeys(Error error = {ErrorCode::noKey, "keys", {}}) : m_error(std::move(error)) {}
  [[nodiscard]] Result<std::optional<Identity>> find(const std::string& incarnation) override;
  [[nodiscard]] Result<void> keep(const std::string& incarnation, const Identity& identity) override;
  [[nodiscard]] Result<Seed> freshSeed() override;
  [[nodiscard]] Result<std::string> freshMark() override;

 private:
  Error m_error;
};

class MemoryAttempts final : public Attempts {
 public:
  [[nodiscard]] Result<MissedCodes> load() override { return m_missed; }
  [[nodiscard]] Result<void> keep(const MissedCodes& missed) override {
    m_missed = missed;
    return {};
  }

 private:
  MissedCodes m_missed;
};

class FailingAttempts final : public Attempts {
 public:
  explicit FailingAttempts(Error error = {ErrorCode::cannotWrite, "attempts", {}}) : m_error(std::move(error)) {}
  [[nodiscard]] Result<MissedCodes> load() override { return tl::unexpected<Error>(m_error); }
  [[nodiscard]] Result<void> keep(const MissedCodes&) override { return tl::unexpected<Error>(m_error); }

 private:
  Error m_error;
};

class ScriptedTagReader final : public TagReader {
 public:
  explicit ScriptedTagReader(std::vector<std::string> script) : m_script(std::move(script)) {}
  [[nodiscard]] Result<void> start(std::function<void(const std::string&)> onText) override;
  void stop() override { m_onText = nullptr; }
  bool sendNext();

 private:
  std::vector<std::string> m_script;
  std::size_t m_next = 0;
  std::function<void(const std::string&)> m_onText;
};

class FailingTagReader final : public TagReader {
 public:
  explicit FailingTagReader(Error error = {ErrorCode::notFound, "tag reader", {}}) : m_error(std::move(error)) {}
  [[nodiscard]] Result<void> start(std::function<void(const std::string&)> onText) override;
  void stop() override {}

 private:
  Error m_error;
};

// Each road leads to a function that answers, as the device at its other end would. A road that nobody set: notFound.
class MemoryPeerLink final : public PeerLink {
 public:
  using Bytes = std::vector<std::uint8_t>;
  using Answer = std::function<Result<Bytes>(const Bytes&)>;
  void lay(const std::string& road, Answer answer) { m_roads[road] = std::move(answer); }
  [[nodiscard]] Result<Bytes> call(const std::string& road, const Bytes& request) override;
  [[nodiscard]] std::size_t calls() const { return m_calls; }

 private:
  std::map<std::string, Answer> m_roads;
  std::size_t m_calls = 0;
};

// Breaks off: the first `answered` calls go through to the road behind it, every later one fails.
class FailingPeerLink final : public PeerLink {
 public:
  explicit FailingPeerLink(Error error = {ErrorCode::cannotRead, "peer", {}}) : m_error(std::move(error)) {}
  FailingPeerLink(PeerLink& behind, std::size_t answered, Error error)
      : m_behind(&behind), m_answered(answered), m_error(std::move(error)) {}
  [[nodiscard]] Result<std::vector<std::uint8_t>> call(const std::string& road, const std::vector<std::uint8_t>& request) override;

 private:
  PeerLink* m_behind = nullptr;
  std::size_t m_answered = 0;
  Error m_error;
};

}  // namespace snugline::ports
