// SPDX-License-Identifier: Apache-2.0
// The pictures of helmets and their life: a spare on the sideline, one helmet's page, a maker's notice.
#include <algorithm>

#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/notice_model.h"
#include "qml/models/shell.h"
#include "qml/models/unit_page.h"
#include "qml/models/units_model.h"

namespace snugline::demo {

void Gallery::gearScreens() {
  go("swap", athleteWith([](const season::DueRow& row) { return row.action == season::RowAction::look; }));
  shoot(QStringLiteral("swap"));
  scrollTo("shelves");
  shoot(QStringLiteral("swap-shelves"));
  const auto& views = m_composition.desk().views();
  const QString wearer = athleteWith([](const season::DueRow& row) { return row.lane == season::Lane::nothingDue; });
  const season::AthleteRecord* athlete = views.athlete(wearer.toStdString());
  if (athlete != nullptr && !athlete->units.empty()) {
    m_composition.shell().units()->page()->open(QString::fromStdString(athlete->units.back()));
    showBook("unit");
    m_screen = QStringLiteral("book");
    shoot(QStringLiteral("unit"));
    scrollTo("moveCard");
    shoot(QStringLiteral("unit-moves"));
    press("changePart");
    shoot(QStringLiteral("unit-part"));
    closeSheets();
  }
  showBook("notices");
  shoot(QStringLiteral("notice"));
  models::NoticeModel& notices = *m_composition.shell().units()->notices();
  notices.setText(QStringLiteral("Faceguard clips of 2024 may crack"));
  if (!notices.sheets().isEmpty()) notices.chooseSheet(notices.sheets().front().toMap().value(QStringLiteral("name")).toString());
  settle();
  scrollTo("preview");
  shoot(QStringLiteral("notice-preview"));
}

}  // namespace snugline::demo
