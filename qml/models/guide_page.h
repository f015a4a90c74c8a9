// SPDX-License-Identifier: Apache-2.0
// Purpose: what the guide shows now: one question, its drawing, its answers, as plain values made from the check in the Book and the few
// touches that belong to the question itself. Pure: nothing is remembered here, so that a restart comes to the same page.
// Thread: GUI thread (words are translated).
#pragma once

#include <optional>
#include <string>

#include <QString>
#include <QStringList>
#include <QVariantList>
#include <QVariantMap>

#include "core/fit/guide.h"
#include "core/season/record.h"
#include "sentences.h"

namespace snugline::models {

enum class Stage {
  none,
  stop,
  hair,
  fitted,
  reading,
  pad,
  gaugePort,
  gauge,
  view,
  mark,
  side,
  how,
  broken,
  advice,
  points,
  point,
  pointFault,
  question,
  done
};
[[nodiscard]] QString stageCode(Stage stage);

// Touches that belong to the question on the screen and are not an answer yet.
struct Touches {
  std::optional<fit::Mark> mark;  // opened out of turn: by the ladder or out of a group
  std::optional<gear::Point> point;
  std::optional<fit::Side> side;        // touched on the drawing
  std::optional<fit::Finding> finding;  // answered, waiting for side or how
  std::optional<Length> gap;            // as dragged
  bool isBroken = false;                // "Something is broken" is open
  bool isPointFault = false;            // "Fault" of a point is open
  bool isRestWanted = false;            // a fault is known, the rest is seen all the same
  int way = 0;                          // which advice is shown
  bool arePointsOpen = false;           // the seven points, out of turn
  std::optional<gear::Port> port;       // the bladder whose air is being said
  std::optional<gear::Part> pad;        // the pad whose thickness is being chosen
  bool isListWanted = false;            // of what is fitted, instead of the next bladder
  bool isFittingOpen = false;           // what is fitted, out of turn
  bool isGaugeOpen = false;             // the gauge is read after the change that is advised
  bool isGaugeAlone = false;            // the gauge is read and nothing is changed
  QString typed;                        // on the number pad
  std::optional<Pressure> pressure;     // as typed, stepped, or taken from the gauge
  season::AirSource source;             // by which gauge, where it was taken from one
};

struct GuidePage {
  Stage stage = Stage::none;
  std::optional<fit::Mark> mark;
  std::optional<fit::LookView> view;
  std::optional<gear::Point> point;
  std::string question;
  std::optional<fit::Advice> advice;  // the way shown
  std::vector<fit::Advice> ways;      // all ways for this mark

  QString title, ask, hint, notice, reopens;
  QString pumps;         // how much pumps did so far in such helmets; only told, never applied
  QVariantList answers;  // at most three: {name, text, detail, kind}
  QVariantList choices;  // more of them, smaller: {name, text, detail}
  QString choicesLabel;
  // The number being entered, empty where none is: {label, known, value, unit, note, message, typed, canStep}.
  QVariantMap entry;
  bool canReadGauge = false;  // reading the gauge can be offered beside the answers
  QString broken;             // label of "Something is broken", empty where it has no place
  QString another;            // label of "Another way", empty where there is none
  QString drawing;            // "profile", "front", "look", "points" or none
  QString drawnView, focusPart, motion;
  QStringList touchParts;
  QVariantMap findings;
  bool isBrow = false, isGapKnown = false;
  double gapMm = 0;
  QString gapText, gapText2, gapAnswer, gapFound;
  QVariantList ladder;  // {name, text, state}
  int ladderAt = -1;
};

[[nodiscard]] GuidePage pageOf(const season::CheckRecord& check, const fit::Setup& setup, const Touches& touches, const Speech& speech);

// What a gap of the brow is shown as, and judged as by the sheet.
void showGap(GuidePage& page, const gear::ModelSheet& sheet, Length gap, UnitSystem units);

// Was the air of this bladder, as it was at the start, said in this check?
[[nodiscard]] bool isPortSaid(const season::CheckRecord& check, gear::Port port);

}  // namespace snugline::models
