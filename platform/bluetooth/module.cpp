// SPDX-License-Identifier: Apache-2.0
// The module that the app loads at the first use of a gauge, so that a start does not pay for Qt Bluetooth and D-Bus.
#include "platform/bluetooth/bluetooth_gauge.h"
#include "platform/system/system_clock.h"

extern "C" Q_DECL_EXPORT snugline::ports::PressureGauge* snuglineMakeGauge() {
  return new snugline::bluetooth::BluetoothGauge([] { return std::make_unique<snugline::platform::SystemClock>(); });
}
