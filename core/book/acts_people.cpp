// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/people.h"
#include "core/book/rights.h"
#include "core/book/written.h"

namespace snugline::book {

Result<Drafts> addPerson(const season::Views& views, const PersonAdded& asked) {
  if (auto ok = checkWritten(asked.name, 1, kNameLimit, "name"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(asked.initials, 1, kInitialsMost, "initials"); !ok) return tl::unexpected(ok.error());
  PersonAdded added = asked;
  if (!roleWord(added.role)) return fail(ErrorCode::unknownWord, "role", added.role + "; helper, staff, admin");
  if (views.people.empty()) added.role = kAdmin;
  return Drafts{{"", added}};
}

Result<Drafts> changePerson(const season::Views& views, const std::string& person, const PersonChanged& asked) {
  const auto found = views.people.find(person);
  if (found == views.people.end()) return fail(ErrorCode::notFound, "person " + person);
  PersonChanged change;
  if (asked.role && *asked.role != found->second.role) change.role = asked.role;
  if (asked.isPractitioner && *asked.isPractitioner != found->second.isPractitioner) change.isPractitioner = asked.isPractitioner;
  if (!change.role && !change.isPractitioner) return Drafts{};
  if (change.role && !roleWord(*change.role)) return fail(ErrorCode::unknownWord, "role", *change.role + "; helper, staff, admin");
  const auto isOtherAdmin = [&](const auto& entry) { return entry.first != person && entry.second.role == kAdmin; };
  const bool isLast = found->second.role == kAdmin && std::none_of(views.people.begin(), views.people.end(), isOtherAdmin);
  if (change.role && isLast) return fail(ErrorCode::notAllowed, person, std::string(rule::kLastAdmin));
  return Drafts{{person, change}};
}

Result<Drafts> setEmergency(const season::Views& views, const EmergencySet& asked) {
  if (!views.team) return fail(ErrorCode::notFound, "team");
  if (auto ok = checkWritten(asked.number, 1, kNumberMost, "number"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(asked.plan, 0, kPlanMost, "plan"); !ok) return tl::unexpected(ok.error());
  if (views.team->emergency == season::EmergencyRecord{asked.number, asked.plan}) return Drafts{};
  return Drafts{{views.team->id, asked}};
}

Result<Drafts> setCode(const season::Views& views, const std::string& person, const season::CodeHash& code) {
  if (!views.people.contains(person)) return fail(ErrorCode::notFound, "person " + person);
  return Drafts{{person, CodeSet{code}}};
}

bool hasCodes(const season::Views& views) {
  return std::any_of(views.people.begin(), views.people.end(), [](const auto& entry) { return entry.second.code.has_value(); });
}

}  // namespace snugline::book
