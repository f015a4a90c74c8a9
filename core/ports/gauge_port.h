// SPDX-License-Identifier: Apache-2.0
// Purpose: the interface to a pressure gauge that speaks without wires. It hands on raw bytes and a state; decoding is core/air's and the
// sentences are the screen's. Nothing is remembered here: the caller keeps a RememberedGauge and hands it in again.
// A gauge is known by the name it calls out and by its serial number, never by its address (some systems make addresses up anew).
// Errors: start, scan and choose fail only where there is nothing to call (notFound: no such gauge was found, or no Bluetooth in this
// program); everything that happens on air is a GaugeState.
// Thread: each call from one thread, which has an event loop; every callback comes on that thread, never after stop() has returned.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace snugline::ports {

// Raw bytes of one characteristic as they came. 0x290C is the measurement descriptor of the pressure.
struct GaugePacket {
  std::string gauge;  // which gauge, for the record: GaugeIdentity::label()
  std::uint16_t characteristic = 0;
  std::vector<std::uint8_t> bytes;
  Instant at;
  friend bool operator==(const GaugePacket&, const GaugePacket&) = default;
};

// What is kept about the gauge that was chosen. Bytes as they came, compared byte by byte.
struct RememberedGauge {
  std::string name;    // as it calls itself on air
  std::string serial;  // empty: it has no serial number, or it was not read yet
  friend bool operator==(const RememberedGauge&, const RememberedGauge&) = default;
};

// The gauge that is spoken with. The serial number is there from `subscribing` on, where the gauge has one.
struct GaugeIdentity {
  std::string name;
  std::string serial;
  [[nodiscard]] RememberedGauge toRemember() const { return {name, serial}; }
  // The name, and the serial number after a blank: one line of printable characters, at most 128 bytes; "?" where both are empty.
  [[nodiscard]] std::string label() const;
  friend bool operator==(const GaugeIdentity&, const GaugeIdentity&) = default;
};

// One that a scan heard.
struct FoundGauge {
  std::string id;             // for choose(), good until the next scan or start; not to be kept
  std::string name;           // may be empty
  int rssi = 0;               // dBm, nearer to 0 is nearer by; 0: not said
  bool isRemembered = false;  // its name is the remembered one
  bool saysPressure = false;  // it calls out the Environmental Sensing service; others are worth showing only further down
  friend bool operator==(const FoundGauge&, const FoundGauge&) = default;
};

// The order is the way of a good connection, then what may stop it.
enum class GaugePhase : std::uint8_t {
  idle,         // nothing is going on: not started, or stopped
  scanning,     // looking who is there, or for the remembered gauge
  connecting,   // to the chosen one
  discovering,  // asking what it offers, and reading its serial number
  subscribing,  // asking it to send
  ready,        // readings arrive
  // Bluetooth itself. Looked at again every few seconds, so that it goes on by itself.
  off,
  noAdapter,
  noPermission,
  locationOff,  // some systems find nothing while location is off
  // One attempt failed; another follows while willRetry.
  lost,       // it was connected and went away
  notFound,   // the remembered one does not answer
  busy,       // it is there and takes no connection: another device has it
  readError,  // it refused a reading
  timedOut,   // `step` took too long
  // No attempt follows until start or choose is called again.
  several,                   // more than one fits what is remembered, and none could be told from the others: ask which, then choose()
  wrongService,              // it has no Environmental Sensing service, or no pressure in it
  duplicateCharacteristics,  // it has several pressures and does not say which is which
  gaveUp                     // all attempts are used up; `cause` says what the last one failed of
};
[[nodiscard]] bool isFailure(GaugePhase phase);  // off and everything after it

struct GaugeState {
  GaugePhase phase = GaugePhase::idle;
  GaugePhase step = GaugePhase::idle;   // for a failure: how far it had come, scanning to ready
  GaugePhase cause = GaugePhase::idle;  // for gaveUp: lost, notFound, busy, readError or timedOut; else the phase itself
  int attempt = 0;                      // from 1; back to 1 after readings arrived
  int attemptsMost = 0;
  bool willRetry = false;
  bool isPolled = false;  // ready: it cannot send by itself and is asked again and again
  GaugeIdentity gauge;    // empty before one was chosen or found
  friend bool operator==(const GaugeState&, const GaugeState&) = default;
};

struct GaugeListener {
  std::function<void(const GaugeState&)> onState;
  std::function<void(const FoundGauge&)> onFound;  // again for the same id when its name, strength or service became known
  // Packets in the order in which they came, at most one call in 16 ms however fast the gauge sends, none left out (above 4096 in one
  // call the oldest are dropped).
  std::function<void(const std::vector<GaugePacket>&)> onPackets;
};

class PressureGauge {
 public:
  virtual ~PressureGauge() = default;
  virtual void listen(GaugeListener listener) = 0;  // before anything else; replaces the listener before it
  // Ends whatever was going on and looks who is there, until stopScan, choose, start, stop, or its time is over (then idle).
  [[nodiscard]] virtual Result<void> scan(const RememberedGauge& remembered = {}) = 0;
  virtual void stopScan() = 0;
  // Connects to one that was found and keeps to it: lost, it is sought again.
  [[nodiscard]] virtual Result<void> choose(const std::string& id) = 0;
  // Looks for the remembered gauge and connects; one with another serial number is left alone.
  [[nodiscard]] virtual Result<void> start(const RememberedGauge& remembered) = 0;
  virtual void stop() = 0;
};

}  // namespace snugline::ports
