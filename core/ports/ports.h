// SPDX-License-Identifier: Apache-2.0
// Purpose: the interfaces to the outside. Each has an in-memory and a failing version beside it (memory_ports.h), and the
// real ones live under platform/. No rules and no parsing behind a port. Thread: each port is used from one thread.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/ports/gauge_port.h"
#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace snugline::ports {

class Clock {
 public:
  virtual ~Clock() = default;
  [[nodiscard]] virtual Instant now() = 0;  // UTC milliseconds and the offset that the device shows
};

using Seed = std::array<std::uint8_t, 32>;  // of an Ed25519 key
struct Identity {
  Seed seed{};
  std::uint64_t notedN = 0;  // the highest own n known when the Book was last closed
  std::string place;         // mark of the file it belongs to (device and inode), to notice copies
};
// Device identities, kept outside the Book and found by the Book's incarnation mark (hex). Errors: noKey, cannotWrite.
class Keys {
 public:
  virtual ~Keys() = default;
  [[nodiscard]] virtual Result<std::optional<Identity>> find(const std::string& incarnation) = 0;
  [[nodiscard]] virtual Result<void> keep(const std::string& incarnation, const Identity& identity) = 0;
  [[nodiscard]] virtual Result<Seed> freshSeed() = 0;
  [[nodiscard]] virtual Result<std::string> freshMark() = 0;  // 32 hex digits
};

// How often a code was missed on this device, and how much of the wait is left. Kept outside the Book, so that neither a restart nor a
// clock that is set otherwise ends a wait. Errors: noKey (there and not readable), cannotWrite, diskFull.
struct MissedCodes {
  std::uint32_t misses = 0;
  std::int64_t waitLeftMs = 0;
  friend bool operator==(const MissedCodes&, const MissedCodes&) = default;
};
class Attempts {
 public:
  virtual ~Attempts() = default;
  [[nodiscard]] virtual Result<MissedCodes> load() = 0;  // nothing kept yet: none missed
  [[nodiscard]] virtual Result<void> keep(const MissedCodes& missed) = 0;
};

class TagReader {
 public:
  virtual ~TagReader() = default;
  [[nodiscard]] virtual Result<void> start(std::function<void(const std::string&)> onText) = 0;
  virtual void stop() = 0;
};

// Moves opaque bytes to and from another device; what they mean is the exchange's.
class PeerLink {
 public:
  virtual ~PeerLink() = default;
  [[nodiscard]] virtual Result<std::vector<std::uint8_t>> call(const std::string& road, const std::vector<std::uint8_t>& request) = 0;
};

}  // namespace snugline::ports
