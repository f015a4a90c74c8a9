// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/fold.h"

namespace snugline::book {

namespace {

struct Collector {
  const Fact& fact;
  std::vector<Touch>& out;

  void add(Entity entity, const std::string& id) const {
    if (!id.empty()) out.push_back({entity, id});
  }
  void operator()(const TeamFounded&) const { add(Entity::team, std::string(kTeamSubject)); }
  void operator()(const PracticeSet&) const { add(Entity::team, std::string(kTeamSubject)); }
  void operator()(const DeviceAdmitted&) const {}
  void operator()(const PersonAdded&) const { add(Entity::person, fact.about); }
  void operator()(const AthleteAdded&) const { add(Entity::athlete, fact.about); }
  void operator()(const AthleteChanged&) const { add(Entity::athlete, fact.about); }
  void operator()(const TapeRead&) const { add(Entity::athlete, fact.about); }
  void operator()(const SheetAdopted& b) const { add(Entity::sheet, hashOf(b.sheet)); }
  void operator()(const UnitReceived&) const { add(Entity::unit, fact.about); }
  void operator()(const LabelRead&) const { add(Entity::unit, fact.about); }
  void operator()(const PointsSeen& b) const {
    add(Entity::unit, fact.about);
    add(Entity::check, b.check);
  }
  void operator()(const UnitHeld&) const { add(Entity::unit, fact.about); }
  void operator()(const HoldReleased&) const { add(Entity::unit, fact.about); }
  void operator()(const UnitMoved&) const { add(Entity::unit, fact.about); }
  void operator()(const PartChanged& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const UnitPaired& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const UnitUnpaired& b) const {
    add(Entity::unit, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const CheckBegun& b) const {
    add(Entity::check, fact.about);
    add(Entity::athlete, b.athlete);
  }
  void operator()(const CheckAnswered&) const { add(Entity::check, fact.about); }
  void operator()(const CheckEnded& b) const {
    add(Entity::check, fact.about);
    add(Entity::athlete, b.athlete);
    add(Entity::unit, b.unit);  // its record stays; its history shows the check
  }
  void operator()(const Said& b) const {
    add(Entity::athlete, fact.about);
    add(Entity::check, b.check);
  }
  void operator()(const SaidAcknowledged&) const { add(Entity::athlete, fact.about); }
  void operator()(const HairChanged&) const { add(Entity::athlete, fact.about); }
  void operator()(const Corrected& b) const {
    for (const std::string& subject : b.touches) add(Entity::other, subject);
  }
  void operator()(const NoteAdded&) const { add(Entity::other, fact.about); }
  void operator()(const Unknown&) const { add(Entity::other, fact.about); }
};

}  // namespace

std::vector<Touch> touchesOf(const Fact& fact) {
  std::vector<Touch> all;
  std::visit(Collector{fact, all}, fact.body);
  // A fact from elsewhere may name one id twice; it must not count twice.
  for (std::size_t i = 1; i < all.size();) {
    const bool isRepeated =
        std::any_of(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(i), [&](const Touch& t) { return t.id == all[i].id; });
    if (isRepeated) {
      all.erase(all.begin() + static_cast<std::ptrdiff_t>(i));
    } else {
      ++i;
    }
  }
  return all;
}

std::vector<std::string> touches(const Fact& fact) {
  std::vector<std::string> ids;
  for (Touch& touch : touchesOf(fact)) ids.push_back(std::move(touch.id));
  return ids;
}

}  // namespace snugline::book
