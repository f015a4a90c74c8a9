// SPDX-License-Identifier: Apache-2.0
// The pictures of the Dock: a known helmet, one that is new here, a fault and its hold, a tag that is wrong.
#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/dock_model.h"
#include "qml/models/scan_model.h"
#include "qml/models/shell.h"

namespace snugline::demo {

namespace {
constexpr int kFaceguard = 4;  // place of the point among the seven
}

void Gallery::dockScreens() {
  models::DockModel& dock = *m_composition.shell().dock();
  const auto settled = [&] { until([&dock] { return !dock.isBusy(); }, "the Dock"); };
  go("dock");
  shoot(QStringLiteral("dock"));
  models::NfcModel& nfc = *m_composition.shell().scan()->nfc();
  nfc.start();
  shoot(QStringLiteral("dock-nfc"));
  nfc.stop();
  dock.scan(QStringLiteral("]d2010950110153000"));
  shoot(QStringLiteral("dock-wrong-tag"));
  const auto& views = m_composition.desk().views();
  QString worn, spare;
  for (const auto& [id, unit] : views.units) {
    if (!unit.holds.empty() || !unit.isInService) continue;
    QString& taken = unit.athletes.empty() ? spare : worn;
    const QString serial = QString::fromStdString(unit.serial);
    if (taken.isEmpty() || serial < taken) taken = serial;
  }
  dock.scan(spare);
  shoot(QStringLiteral("dock-known"));
  dock.allSound();
  shoot(QStringLiteral("dock-sound"));
  dock.putInService();
  settled();
  shoot(QStringLiteral("dock-one-in"));
  dock.scan(worn);
  dock.touchPoint(kFaceguard);
  dock.touchPoint(kFaceguard);
  shoot(QStringLiteral("dock-fault"));
  dock.sayFault(kFaceguard, QStringLiteral("bare metal"));
  settle();
  press("hold");
  shoot(QStringLiteral("dock-hold"));
  closeSheets();
  dock.putAside();
  dock.scan(QStringLiteral("HC-9001"));
  shoot(QStringLiteral("dock-new"));
  dock.putAside();
}

}  // namespace snugline::demo
