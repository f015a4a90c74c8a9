// SPDX-License-Identifier: Apache-2.0
#include "core/book/rights.h"

#include <algorithm>
#include <type_traits>

namespace snugline::book {

namespace {

template <typename Kind, typename... Kinds>
constexpr bool isAnyOf = (std::is_same_v<Kind, Kinds> || ...);

struct RightOf {
  const season::Views& views;
  const Draft& draft;
  const std::vector<Draft>& all;

  template <typename Kind, typename Test>
  [[nodiscard]] bool hasBeside(Test test) const {
    return std::any_of(all.begin(), all.end(), [&](const Draft& other) {
      const auto* body = std::get_if<Kind>(&other.body);
      return body != nullptr && test(other, *body);
    });
  }
  static Right ofCheck(fit::CheckKind kind) { return kind == fit::CheckKind::look ? Right::anybody : Right::staff; }

  Right operator()(const CheckBegun& b) const { return ofCheck(b.kind); }
  Right operator()(const CheckEnded& b) const { return ofCheck(b.outcome.kind); }
  Right operator()(const CheckAnswered&) const {
    const season::CheckRecord* check = views.openCheck(draft.about);
    return check == nullptr ? Right::anybody : ofCheck(check->kind);
  }
  // A check that ends with another helmet needed takes this one away in the same breath.
  Right operator()(const UnitUnpaired& b) const {
    const auto isEnd = [&](const Draft&, const CheckEnded& ended) { return ended.athlete == b.athlete && ended.unit == draft.about; };
    return hasBeside<CheckEnded>(isEnd) ? Right::anybody : Right::staff;
  }
  // Saying where a held helmet is now writes the same hold anew.
  Right operator()(const HoldReleased&) const {
    const auto isHeldOn = [&](const Draft& other, const UnitHeld&) { return other.about == draft.about; };
    return hasBeside<UnitHeld>(isHeldOn) ? Right::anybody : Right::staff;
  }
  Right operator()(const SaidAcknowledged& b) const {
    const std::vector<season::SaidRecord>* said = nullptr;
    if (b.isUnnamed && views.team) said = &views.team->unnamed;
    if (const season::AthleteRecord* athlete = views.athlete(draft.about)) said = &athlete->said;
    if (said == nullptr || !b.isClosed) return Right::staff;
    const auto isPractitioners = [&](const season::SaidRecord& each) { return each.fact == b.said && each.isUnwell && !each.isMistake; };
    return std::any_of(said->begin(), said->end(), isPractitioners) ? Right::practitioner : Right::staff;
  }
  // The first person has nobody to ask.
  Right operator()(const PersonAdded&) const { return views.people.empty() ? Right::anybody : Right::admin; }
  template <typename Kind>
  Right operator()(const Kind&) const {
    if (isAnyOf<Kind, PersonChanged, CodeSet, RecoverySet, WarningSet, RetentionSet, LegalHoldMade, LegalHoldEnded>) return Right::admin;
    if (isAnyOf<Kind, PointsSeen, UnitHeld, Said, SaidFollowed, HairChanged, WeatherNoted, UnitAirRead, LineSeen, PhotoTaken, NoteAdded,
                WarningSigned, Corrected, DeviceAdmitted>)
      return Right::anybody;
    return Right::staff;
  }
};

tl::unexpected<Error> refused(const std::string& place, Right right) {
  const std::string_view rule = right == Right::staff   ? rule::kNeedsStaff
                                : right == Right::admin ? rule::kNeedsAdmin
                                                        : rule::kNeedsPractitioner;
  return fail(ErrorCode::notAllowed, place, std::string(rule));
}

// One's own code; and anybody's while no admin could open the device to set it.
bool isOwnCode(const season::Views& views, const std::string& person, const Draft& draft) {
  if (!std::holds_alternative<CodeSet>(draft.body)) return false;
  const bool hasAdmin = std::any_of(views.people.begin(), views.people.end(),
                                    [](const auto& entry) { return entry.second.code && entry.second.role == kAdmin; });
  return draft.about == person || !hasAdmin;
}

}  // namespace

bool may(const season::Views& views, const std::string& person, Right right) {
  const auto found = views.people.find(person);
  if (found == views.people.end()) return right != Right::practitioner;
  switch (right) {
    case Right::anybody:
      return true;
    case Right::staff:
      return found->second.role != kHelper;
    case Right::admin:
      return found->second.role == kAdmin;
    case Right::practitioner:
      return found->second.isPractitioner;
  }
  return false;
}

Right rightFor(const season::Views& views, const Draft& draft, const std::vector<Draft>& all) {
  return std::visit(RightOf{views, draft, all}, draft.body);
}

Result<void> mayAppend(const season::Views& views, const std::string& person, const std::vector<Draft>& drafts) {
  for (const Draft& draft : drafts) {
    const Right right = rightFor(views, draft, drafts);
    if (!may(views, person, right) && !isOwnCode(views, person, draft)) return refused(draft.about, right);
  }
  return {};
}

Result<void> mayCorrect(const season::Views& views, const std::string& person, const Fact& fact) {
  const auto* said = std::get_if<Said>(&fact.body);
  if (said != nullptr && said->said.isUnwell) return fail(ErrorCode::notAllowed, fact.id(), std::string(rule::kStaysSaid));
  const Draft draft{fact.about, fact.body};
  Right right = rightFor(views, draft, {draft});
  if (right == Right::anybody && fact.who != person) right = Right::staff;
  if (fact.who == person || may(views, person, right)) return {};
  return refused(fact.id(), right);
}

}  // namespace snugline::book
