// SPDX-License-Identifier: Apache-2.0
// Purpose: words for model sheets: what stands at a path, what is wrong with it, what is different between two sheets, and whom a change
// concerns. Numbers in the units chosen. Thread: GUI thread.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "core/gear/sheet_difference.h"
#include "core/season/sheet_change.h"
#include "qml/models/sentences.h"

namespace snugline::models {

struct SheetWords {
  Q_DECLARE_TR_FUNCTIONS(SheetWords)
 public:
  static QString figure(std::int64_t value, gear::FigureUnit unit, UnitSystem units);  // "549.91 mm", "24 months"
  static QString kept(std::int64_t value, gear::FigureUnit unit, UnitSystem units);    // "Kept as 550 mm"; empty where the figure says it
  static QString port(const std::string& code);                                        // "crown"
  static QString padSet(const std::string& item);                                      // "jaw pads"
  // Where a path leads: "Size M, low end", "Air at the crown, start".
  static QString place(const gear::SheetDraft& draft, const std::string& path);
  static QString fault(const gear::SheetFault& fault, UnitSystem units);  // "From 300 mm to 800 mm"
  static QString difference(const gear::SheetDifference& difference, UnitSystem units);
  static QString air(const gear::ModelSheet& sheet);                 // "air at crown and sides"; "no air"
  static QString sizes(const gear::ModelSheet& sheet);               // "XS, S, M, L"
  static QString steps(const gear::PadSet& pads, UnitSystem units);  // "22 mm, 25 mm, 28 mm; 25 mm as delivered"
  static QString order(const std::vector<gear::Port>& ports);

  // One athlete of a change: what the board says now and would say then, odds, air, label.
  static QStringList effects(const season::AthleteEffect& effect, const season::SheetChange& change, const Speech& speech);
  static QStringList effects(const season::UnitEffect& effect, Day today);
  static QString row(const season::DueRow& row, const Speech& speech);  // "Do not wear: label lapsed"
};

}  // namespace snugline::models
