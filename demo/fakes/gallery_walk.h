// SPDX-License-Identifier: Apache-2.0
// Purpose: the walk of the gallery, for gallery.cpp and gallery_air.cpp only. Lives for one size. Thread: GUI thread.
#pragma once

#include <cstdio>
#include <functional>

#include <QDir>
#include <QSize>
#include <QString>

#include "core/ports/memory_gauge.h"
#include "core/season/board.h"
#include "platform/app/composition.h"
#include "qml/models/shell.h"

namespace snugline::demo {

class Gallery {
 public:
  Gallery(app::Composition& composition, ports::MemoryGauge& gauge, app::Composition* pocket, const QDir& folder, QSize size)
      : m_composition(composition), m_gauge(gauge), m_pocket(pocket), m_folder(folder), m_size(size) {}
  bool walk(const QString& only);

 private:
  bool until(const std::function<bool()>& isSo, const char* what);
  void settle();
  void go(const char* screen, const QString& what = {});
  void shoot(const QString& name);
  [[nodiscard]] bool isShown(const QString& screen);
  void lineScreens();
  void fitScreens();
  void lookScreens();
  void otherScreens();
  void sayScreens();
  void firstScreens();
  void peopleScreens();
  void makeSheet();
  bool setCode();
  void airScreens();
  void gaugeScreens();
  void gearScreens();
  void dockScreens();
  void photoScreens();
  void sheetScreens();
  void phoneScreens();
  void seasonScreens();
  void shootPhone(const QString& name);
  void press(const char* name);
  void showBook(const char* page);
  void scrollTo(const char* name);
  void closeSheets();
  void sendPressure(std::uint32_t from, std::uint32_t to);  // 0.1 Pa
  void answer(const char* name);
  bool begin(season::RowAction action, const char* kind);
  [[nodiscard]] QString athleteWith(const std::function<bool(const season::DueRow&)>& isWanted) const;
  [[nodiscard]] models::GuideModel& guide() { return *m_composition.shell().guide(); }

  app::Composition& m_composition;
  ports::MemoryGauge& m_gauge;
  app::Composition* m_pocket;  // an athlete's own phone; may be none
  QDir m_folder;
  QSize m_size;
  QString m_screen;  // what should be shown
  int m_count = 0;
  std::int64_t m_sampleMs = 0;  // of the gauge
  bool m_isGood = true;
};

}  // namespace snugline::demo
