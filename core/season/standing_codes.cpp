// SPDX-License-Identifier: Apache-2.0
#include "core/season/standing.h"

namespace snugline::season {

std::string_view code(Bar bar) {
  switch (bar) {
    case Bar::retired:
      return "retired";
    case Bar::lost:
      return "lost";
    case Bar::sentOut:
      return "sent-out";
    case Bar::repair:
      return "repair";
    case Bar::held:
      return "held";
    case Bar::fault:
      return "unit-fault";
    case Bar::brokeSaid:
      return "broke-said";
    case Bar::labelMissing:
      return "label-missing";
    case Bar::labelUnreadable:
      return "label-unreadable";
    case Bar::labelDisputed:
      return "label-disputed";
    case Bar::labelUnknown:
      return "label-unknown";
    case Bar::labelLapsed:
      return "label-lapsed";
    case Bar::noSheet:
      return "no-sheet";
    case Bar::pointsAfterReport:
      return "points-after-report";
    case Bar::pointUnchecked:
      return "point-unchecked";
    case Bar::notInService:
      return "not-in-service";
    case Bar::twoAthletes:
      return "two-athletes";
    case Bar::verdict:
      return "verdict-do-not-wear";
  }
  return {};
}

bool isLabelBar(Bar bar) {
  return bar == Bar::labelMissing || bar == Bar::labelUnreadable || bar == Bar::labelDisputed || bar == Bar::labelUnknown ||
         bar == Bar::labelLapsed;
}

std::string_view code(UnitState state) {
  switch (state) {
    case UnitState::inService:
      return "in-service";
    case UnitState::notInService:
      return "not-in-service";
    case UnitState::doNotWear:
      return "do-not-wear";
    case UnitState::onHold:
      return "on-hold";
    case UnitState::repair:
      return "repair";
    case UnitState::sentOut:
      return "sent-out";
    case UnitState::lost:
      return "lost";
    case UnitState::retired:
      return "retired";
  }
  return {};
}

std::string_view code(Where where) {
  switch (where) {
    case Where::withUs:
      return "with-us";
    case Where::withAthlete:
      return "with-athlete";
    case Where::repair:
      return "repair";
    case Where::sentOut:
      return "sent-out";
    case Where::lost:
      return "lost";
    case Where::retired:
      return "retired";
  }
  return {};
}

std::string_view code(UnitAct act) {
  switch (act) {
    case UnitAct::whereNow:
      return "where-now";
    case UnitAct::swapHelmet:
      return "swap-helmet";
    case UnitAct::hold:
      return "hold";
    case UnitAct::release:
      return "release";
    case UnitAct::checkPoints:
      return "check-points";
    case UnitAct::readLabel:
      return "read-label";
    case UnitAct::inService:
      return "in-service";
    case UnitAct::giveTo:
      return "give-to";
    case UnitAct::toShelf:
      return "to-shelf";
    case UnitAct::repair:
      return "repair";
    case UnitAct::sendOut:
      return "send-out";
    case UnitAct::back:
      return "back";
    case UnitAct::lost:
      return "lost";
    case UnitAct::retire:
      return "retire";
  }
  return {};
}

}  // namespace snugline::season
