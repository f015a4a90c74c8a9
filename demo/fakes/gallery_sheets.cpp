// SPDX-License-Identifier: Apache-2.0
// The pictures of model sheets: the list, one sheet, one that is written section by section, what it would change, and what was changed.
#include "demo/fakes/gallery_walk.h"
#include "platform/app/composition.h"
#include "qml/models/sheets_model.h"
#include "qml/models/shell.h"
#include "qml/models/units_model.h"

namespace snugline::demo {

void Gallery::sheetScreens() {
  models::SheetsModel& sheets = *m_composition.shell().units()->sheets();
  const auto hashOf = [&](const char* name) {
    for (const QVariant& each : sheets.sheets())
      if (each.toMap().value(QStringLiteral("title")).toString() == QLatin1String(name))
        return each.toMap().value(QStringLiteral("hash")).toString();
    return QString();
  };
  showBook("sheets");
  m_screen = QStringLiteral("book");
  shoot(QStringLiteral("sheets"));
  sheets.page()->open(hashOf("Brant B2"));
  showBook("sheet");
  shoot(QStringLiteral("sheet"));
  scrollTo("chart");
  shoot(QStringLiteral("sheet-sizes"));
  models::SheetEditor& editor = *sheets.editor();
  editor.beginChange(hashOf("Alder A1"));
  showBook("sheetEdit");
  shoot(QStringLiteral("sheet-edit-sizes"));
  editor.type(QStringLiteral("/sizes/2/low_um"), QStringLiteral("551 mm"));
  editor.type(QStringLiteral("/sizes/2/high_um"), QStringLiteral("wide"));
  settle();
  scrollTo("group-size:2");
  shoot(QStringLiteral("sheet-edit-fault"));
  editor.type(QStringLiteral("/sizes/2/high_um"), QStringLiteral("577 mm"));
  for (const char* section : {"names", "air", "limits", "order", "questions"}) {
    editor.setSection(QLatin1String(section));
    settle();
    shoot(QStringLiteral("sheet-edit-") + QLatin1String(section));
  }
  editor.type(QStringLiteral("/certification_months"), QStringLiteral("18"));
  showBook("sheetChange");
  shoot(QStringLiteral("sheet-change"));
  editor.keep();
  until([&] { return !editor.isOpen() && !editor.isBusy(); }, "the sheet is kept");
  showBook("sheets");
  shoot(QStringLiteral("sheets-kept"));
  sheets.page()->open(hashOf("Alder A1"));
  showBook("sheet");
  scrollTo("history0");
  shoot(QStringLiteral("sheet-history"));
  sheets.undo();
  until([&] { return !sheets.isBusy(); }, "the sheet is put back");
  editor.beginNew();
  showBook("sheetEdit");
  shoot(QStringLiteral("sheet-new"));
  editor.drop();
  settle();
}

}  // namespace snugline::demo
