// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "core/book/people.h"
#include "core/book/written.h"

namespace snugline::book {

Result<Drafts> addPerson(const season::Views& views, const PersonAdded& asked) {
  if (auto ok = checkWritten(asked.name, 1, kNameLimit, "name"); !ok) return tl::unexpected(ok.error());
  if (auto ok = checkWritten(asked.initials, 1, kInitialsMost, "initials"); !ok) return tl::unexpected(ok.error());
  PersonAdded added = asked;
  if (added.role != kTrainer && added.role != kStaff) return fail(ErrorCode::unknownWord, "role", added.role + "; trainer, staff");
  if (views.people.empty()) added.role = kTrainer;
  return Drafts{{"", added}};
}

Result<Drafts> setCode(const season::Views& views, const std::string& person, const season::CodeHash& code) {
  if (!views.people.contains(person)) return fail(ErrorCode::notFound, "person " + person);
  return Drafts{{person, CodeSet{code}}};
}

bool isTrainer(const season::Views& views, const std::string& person) {
  const auto found = views.people.find(person);
  return found != views.people.end() && found->second.role == kTrainer;
}

bool hasCodes(const season::Views& views) {
  return std::any_of(views.people.begin(), views.people.end(), [](const auto& entry) { return entry.second.code.has_value(); });
}

}  // namespace snugline::book
