// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <map>
#include <set>

#include "core/book/roster.h"
#include "core/book/roster_columns.h"
#include "core/fit/size.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;
using season::Views;

constexpr int kYoungest = 8, kOldest = 40;  // ours: outside, a birth year is asked about

bool sameName(const std::string& a, const std::string& b) { return a == b || folded(a) == folded(b); }

// "7" for "07" is what a spreadsheet makes of it: no change of number.
bool isNoughtEaten(const std::string& known, const std::string& read) {
  const auto first = known.find_first_not_of('0');
  const std::string bare = known.empty() ? known : first == std::string::npos ? std::string("0") : known.substr(first);
  return known != read && bare == read;
}
bool sameJersey(const std::string& known, const std::string& read) { return known == read || isNoughtEaten(known, read); }

class Planner {
 public:
  Planner(const Views& views, const RosterRead& read, Day today, const RowAnswers& answers)
      : m_views(views), m_read(read), m_today(today), m_answers(answers) {}

  RosterPlan run() {
    m_plan.refused = m_read.refused;
    match();
    for (std::size_t i = 0; i < m_read.rows.size(); ++i) {
      RosterRow row = m_read.rows[i];
      if (answer(row.line, RowDoubt::sameJersey) == RowAnswer::leftOut) {
        m_jerseys[row.jersey].push_back({row.line, {}});  // the question stays, with its answer
        row.jersey.clear();
      }
      plan(row, m_known[i]);
    }
    askSameJerseys();
    std::stable_sort(m_plan.questioned.begin(), m_plan.questioned.end(),
                     [](const RowNote& a, const RowNote& b) { return a.line < b.line; });
    return std::move(m_plan);
  }

 private:
  // Surest first, so that a row never takes a record that fits another row better.
  void match() {
    m_known.assign(m_read.rows.size(), nullptr);
    std::multimap<std::string, const AthleteRecord*> byFamily;
    for (const auto& [id, record] : m_views.athletes) byFamily.emplace(folded(record.family), &record);
    std::set<const AthleteRecord*> taken;
    const auto pass = [&](auto isSame) {
      for (std::size_t i = 0; i < m_read.rows.size(); ++i) {
        if (m_known[i] != nullptr) continue;
        const RosterRow& row = m_read.rows[i];
        const AthleteRecord* found = nullptr;
        const auto [begin, end] = byFamily.equal_range(folded(row.family));
        for (auto it = begin; it != end; ++it) {
          const AthleteRecord* record = it->second;
          if (taken.contains(record) || !isSame(*record, row)) continue;
          if (found == nullptr || record->id < found->id) found = record;
        }
        if (found == nullptr) continue;
        m_known[i] = found;
        taken.insert(found);
      }
    };
    pass([](const AthleteRecord& a, const RosterRow& r) { return sameJersey(a.jersey, r.jersey) && sameName(a.given, r.given); });
    pass([](const AthleteRecord& a, const RosterRow& r) { return !r.given.empty() && sameName(a.given, r.given); });
    pass([](const AthleteRecord& a, const RosterRow& r) { return !r.jersey.empty() && sameJersey(a.jersey, r.jersey); });
    pass([](const AthleteRecord& a, const RosterRow& r) { return r.jersey.empty() && r.given.empty() && a.isOnRoster; });
  }

  std::optional<RowAnswer> answer(std::size_t line, RowDoubt doubt) const {
    const auto found = m_answers.find({line, doubt});
    return found == m_answers.end() ? std::nullopt : std::optional(found->second);
  }
  void question(std::size_t line, RowDoubt doubt, std::string text) { m_plan.questioned.push_back({line, doubt, std::move(text)}); }

  std::optional<int> birthYear(const RosterRow& row) {
    if (!row.birthYear) return std::nullopt;
    const int age = civil(m_today).year - *row.birthYear;
    if (age >= kYoungest && age <= kOldest) return row.birthYear;
    question(row.line, RowDoubt::birthYearUnlikely, std::to_string(*row.birthYear));
    return answer(row.line, RowDoubt::birthYearUnlikely) == RowAnswer::asWritten ? row.birthYear : std::nullopt;
  }

  // A head that nobody has at this age is asked about and not written down.
  std::optional<Length> head(const RosterRow& row, std::optional<int> birthYearKnown) {
    if (!row.head) return std::nullopt;
    std::optional<int> age;
    if (birthYearKnown) age = civil(m_today).year - *birthYearKnown;
    fit::HeadDoubt doubt = fit::doubt(*row.head, age);
    if (*row.head > fit::kTapeHighest) doubt = fit::HeadDoubt::tooLarge;
    if (*row.head < fit::kTapeLowest) doubt = fit::HeadDoubt::tooSmall;
    if (doubt == fit::HeadDoubt::none) return row.head;
    const RowDoubt asked = doubt == fit::HeadDoubt::tooLarge ? RowDoubt::headTooLarge : RowDoubt::headTooSmall;
    question(row.line, asked, exact(*row.head));
    if (answer(row.line, asked) == RowAnswer::asWritten && canStand(m_plan.questioned.back())) return row.head;
    return std::nullopt;
  }

  void refuse(const RosterRow& row, RowDoubt doubt, const std::string& text) { m_plan.refused.push_back({row.line, doubt, text}); }

  void plan(const RosterRow& row, const AthleteRecord* known) {
    const auto year = birthYear(row);
    const auto headRead = head(row, year ? year : known != nullptr ? known->birthYear : std::nullopt);
    if (known == nullptr) {
      auto drafts = addAthlete(m_views, {row.jersey, row.family, row.given, year});
      if (!drafts) return refuse(row, RowDoubt::noName, drafts.error().place);
      const std::string about = '#' + std::to_string(m_plan.drafts.size());
      m_plan.drafts.insert(m_plan.drafts.end(), drafts->begin(), drafts->end());
      if (headRead) m_plan.drafts.push_back({about, TapeRead{{*headRead}}});
      ++m_plan.added;
      m_jerseys[row.jersey].push_back({row.line, about});
      return;
    }
    AthleteChanged change;
    if (!row.jersey.empty() && !sameJersey(known->jersey, row.jersey)) change.jersey = row.jersey;
    if (row.family != known->family) change.family = row.family;
    if (!row.given.empty() && row.given != known->given) change.given = row.given;
    if (year) change.birthYear = year;
    change.isOnRoster = true;
    auto drafts = changeAthlete(m_views, known->id, change);
    if (!drafts) return refuse(row, RowDoubt::noName, drafts.error().place);
    const bool isNewHead = headRead && std::none_of(known->tapes.begin(), known->tapes.end(), [&](const season::TapeRecord& tape) {
                             return std::find(tape.readings.begin(), tape.readings.end(), *headRead) != tape.readings.end();
                           });
    if (isNewHead) drafts->push_back({known->id, TapeRead{{*headRead}}});
    ++(drafts->empty() ? m_plan.unchanged : m_plan.changed);
    m_plan.drafts.insert(m_plan.drafts.end(), drafts->begin(), drafts->end());
    m_jerseys[change.jersey.value_or(known->jersey)].push_back({row.line, known->id});
  }

  // Two people with one number may be meant (offence and defence), or a slip: they go in and are asked about.
  void askSameJerseys() {
    std::set<std::string> planned;
    for (const auto& [jersey, holders] : m_jerseys) {
      for (const auto& holder : holders) planned.insert(holder.athlete);
    }
    std::map<std::string, std::size_t> others;
    for (const auto& [id, record] : m_views.athletes) {
      if (record.isOnRoster && !planned.contains(id)) ++others[record.jersey];
    }
    for (const auto& [jersey, holders] : m_jerseys) {
      const auto other = others.find(jersey);
      if (jersey.empty() || holders.size() + (other == others.end() ? 0 : other->second) < 2) continue;
      for (const auto& holder : holders) question(holder.line, RowDoubt::sameJersey, jersey);
    }
  }

  struct Holder {
    std::size_t line = 0;
    std::string athlete;
  };
  const Views& m_views;
  const RosterRead& m_read;
  Day m_today;
  const RowAnswers& m_answers;
  RosterPlan m_plan;
  std::vector<const AthleteRecord*> m_known;
  std::map<std::string, std::vector<Holder>> m_jerseys;
};

}  // namespace

RosterPlan planRoster(const Views& views, const RosterRead& read, Day today, const RowAnswers& answers) {
  return Planner(views, read, today, answers).run();
}

bool canStand(const RowNote& question) {
  if (question.doubt != RowDoubt::headTooLarge && question.doubt != RowDoubt::headTooSmall) return true;
  const auto head = parseLength(question.text);
  return head && *head >= fit::kTapeLowest && *head <= fit::kTapeHighest;
}

}  // namespace snugline::book
