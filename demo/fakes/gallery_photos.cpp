// SPDX-License-Identifier: Apache-2.0
// The pictures of a photo being taken of a held helmet, shown, found altered, and removed.
#include <algorithm>
#include <fstream>

#include <QQuickItem>
#include <QQuickView>

#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/photo_model.h"
#include "qml/models/unit_page.h"
#include "qml/models/units_model.h"

namespace snugline::demo {

namespace {
// Pictures are read beside the screen: whether one of that name shows one, or says why it does not.
bool isRead(const QQuickItem* item, const QString& name) {
  if (item->objectName() == name && item->isVisible()) {
    return item->property("isShown").toBool() || !item->property("words").toString().isEmpty();
  }
  const QList<QQuickItem*> children = item->childItems();
  return std::any_of(children.begin(), children.end(), [&](const QQuickItem* child) { return isRead(child, name); });
}
}  // namespace

void Gallery::photoScreens() {
  models::PhotoModel& photos = *m_composition.shell().photos();
  models::UnitPage& page = *m_composition.shell().units()->page();
  const auto& views = m_composition.desk().views();
  std::string held;
  for (const auto& [id, unit] : views.units) {
    const bool isCracked = !unit.holds.empty() && unit.holds.back().reason == "shell";
    if (!unit.holds.empty() && (held.empty() || isCracked)) held = id;
  }
  if (held.empty()) return;
  page.open(QString::fromStdString(held));
  showBook("unit");
  m_screen = QStringLiteral("book");
  scrollTo("photoOfHold");
  shoot(QStringLiteral("photo-hold"));
  press("photoOfHold");
  shoot(QStringLiteral("photo-asked"));
  photos.start();
  shoot(QStringLiteral("photo-camera"));
  photos.take();
  if (!until([&] { return photos.isPicked(); }, "a picture")) return;
  shoot(QStringLiteral("photo-picked"));
  photos.setWords(QStringLiteral("from the rim upwards, 60 mm"));
  photos.keep();
  if (!until([&] { return !photos.isBusy() && !page.photos().isEmpty(); }, "a photo kept")) return;
  scrollTo("addPhoto");
  const auto read = [this](const char* view) {
    return until([this, view] { return isRead(m_composition.view().contentItem(), QLatin1String(view)); }, view);
  };
  if (!read("thumbView")) return;
  shoot(QStringLiteral("photo-kept"));
  press("thumb");
  if (!read("largeView")) return;
  shoot(QStringLiteral("photo-shown"));
  press("removePhoto");
  shoot(QStringLiteral("photo-remove"));
  closeSheets();
  const std::string file =
      m_composition.desk().photos().pathOf(page.photos().front().toMap().value(QStringLiteral("photo")).toString().toStdString());
  std::ofstream(file, std::ios::app | std::ios::binary) << "x";
  showBook("unit");
  scrollTo("historyThumb");
  shoot(QStringLiteral("photo-history-altered"));
  press("historyThumb");
  shoot(QStringLiteral("photo-altered"));
  // As the Dock does after a hold.
  go("dock");
  auto* dock = m_composition.view().rootObject()->property("screenItem").value<QQuickItem*>();
  QMetaObject::invokeMethod(dock, "addPhoto", Q_ARG(QString, QString::fromStdString(held)));
  m_screen = QStringLiteral("photo");
  shoot(QStringLiteral("photo-from-the-dock"));
}

}  // namespace snugline::demo
