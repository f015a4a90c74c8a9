// SPDX-License-Identifier: Apache-2.0
// Taking facts back: what may be, and the one append that does it.
#include <algorithm>
#include <set>
#include <tuple>

#include "core/book/book_body.h"
#include "core/book/rights.h"
#include "core/book/undo.h"

namespace snugline::book {

namespace {

bool isAfter(const Fact& a, const Fact& b) { return std::tie(a.order, a.device, a.n) > std::tie(b.order, b.device, b.n); }

tl::unexpected<Error> rests(std::string_view kind) { return fail(ErrorCode::notAllowed, std::string(kind), std::string(rule::kRestsOnIt)); }

}  // namespace

// A sheet that helmets or open checks go by, and a notice that helmets are held for, are named under those and not under the fact's own
// entity, so that the views are asked.
Result<void> Book::Body::checkUnused(const Fact& fact, const std::set<std::string>& taken) {
  const season::Views& views = folded.views;
  if (std::holds_alternative<NoticeIssued>(fact.body)) {
    for (const auto& [id, unit] : views.units) {
      for (const season::HoldRecord& hold : unit.holds) {
        if (hold.notice == fact.id() && !taken.contains(hold.fact)) return rests("unit-held");
      }
    }
  }
  const auto* sheet = std::get_if<SheetAdopted>(&fact.body);
  if (sheet == nullptr) return {};
  const std::string hash = hashOf(sheet->sheet);
  const auto adoptions = factsOf(hash);
  if (!adoptions) return tl::unexpected<Error>(adoptions.error());
  const bool isThereStill = std::any_of(adoptions->begin(), adoptions->end(), [&](const Fact& other) {
    const auto* adopted = std::get_if<SheetAdopted>(&other.body);
    return adopted != nullptr && !taken.contains(other.id()) && !isCorrected(other.id()) && hashOf(adopted->sheet) == hash;
  });
  if (isThereStill) return {};
  for (const auto& [id, unit] : views.units) {
    if (unit.sheet == hash && !taken.contains(id)) return rests("unit-received");
  }
  for (const auto& [id, check] : views.openChecks) {
    if (check.sheet == hash && !taken.contains(id)) return rests("check-begun");
  }
  return {};
}

Result<void> Book::Body::checkLast(const Fact& fact, const std::set<std::string>& taken) {
  for (const std::string& subject : touches(fact)) {
    const auto all = factsOf(subject);
    if (!all) return tl::unexpected<Error>(all.error());
    for (const Fact& later : *all) {
      if (!isAfter(later, fact) || taken.contains(later.id()) || isCorrected(later.id())) continue;
      const auto isResting = restsOn(later, fact);
      if (!isResting) return tl::unexpected<Error>(isResting.error());
      if (*isResting) return rests(kindOf(later.body));
    }
  }
  return checkUnused(fact, taken);
}

Result<Appended> Book::correct(const std::vector<std::string>& ids) {
  return guarded(m_body->path, [&]() -> Result<Appended> {
    std::vector<Fact> facts;
    std::set<std::string> taken;
    for (const std::string& id : ids) {
      auto fact = m_body->factNamed(id);
      if (!fact) return tl::unexpected<Error>(fact.error());
      if (!*fact) return fail(ErrorCode::notFound, "fact " + id);
      if (std::holds_alternative<TeamFounded>((*fact)->body) || std::holds_alternative<DeviceAdmitted>((*fact)->body))
        return fail(ErrorCode::notAllowed, id, std::string(kindOf((*fact)->body)));
      if (auto ok = mayCorrect(views(), m_body->who, **fact); !ok) return tl::unexpected<Error>(ok.error());
      if (!m_body->isCorrected(id) && taken.insert(id).second) facts.push_back(std::move(**fact));
    }
    for (const Fact& fact : facts) {
      if (auto ok = m_body->checkLast(fact, taken); !ok) return tl::unexpected<Error>(ok.error());
    }
    if (facts.empty()) return Appended{};
    // Latest first: at no place in the log does a fact stand without what it rests on.
    std::sort(facts.begin(), facts.end(), isAfter);
    std::vector<Draft> drafts;
    drafts.reserve(facts.size());
    for (const Fact& fact : facts) drafts.push_back({fact.about, Corrected{fact.id(), touches(fact)}});
    auto appended = append(std::move(drafts));
    if (!appended) return appended;
    for (const Fact& fact : facts) {
      if (const auto* photo = std::get_if<PhotoTaken>(&fact.body)) m_body->dropPhoto(photo->photo);
    }
    return appended;
  });
}

}  // namespace snugline::book
