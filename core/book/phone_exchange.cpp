// SPDX-License-Identifier: Apache-2.0
#include "core/book/phone_exchange.h"

#include <algorithm>
#include <map>

#include "core/book/phone_json.h"
#include "core/season/board.h"

namespace snugline::book {

namespace {

using season::AthleteRecord;

tl::unexpected<Error> refused(const std::string& place, std::string_view rule) {
  return fail(ErrorCode::notAllowed, place, std::string(rule));
}

const AthleteRecord* ownerOf(const season::Views& views, const std::string& device) {
  for (const auto& [id, athlete] : views.athletes) {
    const auto is = [&](const auto& phone) { return phone.device == device; };
    if (std::any_of(athlete.phones.begin(), athlete.phones.end(), is)) return &athlete;
  }
  return nullptr;
}

std::vector<PhoneOutcome> outcomesTold(Book& book, const AthleteRecord& athlete) {
  std::vector<WordOutcome> all = outcomesOf(athlete);
  if (all.size() > kOutcomesTold) all.erase(all.begin(), all.end() - static_cast<std::ptrdiff_t>(kOutcomesTold));
  std::map<std::string, std::vector<Done>> done;  // by check
  std::vector<PhoneOutcome> told;
  for (WordOutcome& outcome : all) {
    auto known = done.find(outcome.check);
    if (known == done.end()) {
      const auto facts = outcome.check.empty() ? Result<std::vector<Fact>>(std::vector<Fact>()) : book.history(outcome.check);
      known = done.emplace(outcome.check, facts ? doneIn(*facts) : std::vector<Done>()).first;
    }
    told.push_back({std::move(outcome), known->second});
  }
  return told;
}

}  // namespace

bool isItsOwnToSay(const Fact& fact, const std::string& athlete) {
  if (fact.about != athlete || !fact.who.empty()) return false;
  if (const auto* followed = std::get_if<SaidFollowed>(&fact.body)) return !followed->isUnnamed;
  const auto* said = std::get_if<Said>(&fact.body);
  return said != nullptr && !said->isUnnamed && said->check.empty() && said->said.unit.empty();
}

Result<Drafts> letGo(const season::Views& views, const std::string& athlete) {
  const AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  Drafts drafts;
  for (const season::PhoneRecord& phone : record->phones) drafts.push_back({athlete, PhoneLeft{phone.device}});
  return drafts;
}

Result<Invitation> invite(const season::Views& views, const std::string& athlete, const std::array<std::uint8_t, 16>& secret,
                          const std::string& ownDevice, std::int64_t order) {
  const AthleteRecord* record = views.athlete(athlete);
  if (record == nullptr) return fail(ErrorCode::notFound, "athlete " + athlete);
  if (!record->isOnRoster) return refused(record->jersey, rule::kOffRoster);
  Invitation made;
  made.code = {secret, ownDevice, athlete, record->jersey, order};
  auto text = print(made.code);
  if (!text) return tl::unexpected<Error>(text.error());
  made.text = std::move(*text);
  const auto key = phoneKey(made.code);
  if (!key) return tl::unexpected<Error>(key.error());
  auto drafts = letGo(views, athlete);
  if (!drafts) return tl::unexpected<Error>(drafts.error());
  made.drafts = std::move(*drafts);
  made.drafts.push_back({athlete, PhoneJoined{deviceOf(key->publicKey), hexOf(key->publicKey)}});
  return made;
}

Result<void> admit(const season::Views& views, const PhoneReports& reports) {
  const AthleteRecord* athlete = views.athlete(reports.athlete);
  if (athlete == nullptr) return refused("athlete", rule::kPhoneNotJoined);
  const auto phone =
      std::find_if(athlete->phones.begin(), athlete->phones.end(), [&](const auto& p) { return p.device == reports.device; });
  const AthleteRecord* owner = ownerOf(views, reports.device);
  if (phone == athlete->phones.end()) return refused(reports.device, owner == nullptr ? rule::kPhoneNotJoined : rule::kPhoneOther);
  if (phone->publicKey != hexOf(reports.publicKey)) return refused(reports.device, rule::kPhoneNotJoined);
  for (const Fact& fact : reports.facts) {
    if (!isItsOwnToSay(fact, reports.athlete)) return refused(fact.id(), rule::kPhoneOther);
  }
  return {};
}

Result<PhoneTaken> takeReports(Book& book, std::string_view file) {
  const auto reports = readReports(file);
  if (!reports) return tl::unexpected<Error>(reports.error());
  if (auto ok = admit(book.views(), *reports); !ok) return tl::unexpected<Error>(ok.error());
  auto taken = book.receivePhone(*reports);
  if (!taken) return tl::unexpected<Error>(taken.error());
  PhoneTaken done{reports->athlete, reports->device, static_cast<int>(taken->ids.size()), std::move(*taken)};
  return done;
}

Result<std::string> answersFor(Book& book, const std::string& device, Instant now) {
  const season::Views& views = book.views();
  const AthleteRecord* athlete = ownerOf(views, device);
  if (athlete == nullptr) return fail(ErrorCode::unknownDevice, device);
  PhoneAnswers answers;
  answers.device = device;
  answers.athlete = athlete->id;
  answers.jersey = athlete->jersey;
  answers.at = now;
  const auto info = book.info();
  if (!info) return tl::unexpected<Error>(info.error());
  for (const DeviceState& state : info->devices) {
    if (state.device == device) answers.taken = state.facts;
  }
  answers.order = book.highestOrder();
  if (views.team) answers.practiceMinute = views.team->practiceMinute;
  // By days alone: the weather is the staff's to judge.
  const season::DueRow row = season::rowOf(views, *athlete, {now}, {});
  answers.dueFrom = row.dueFrom;
  answers.dueBy = row.dueBy;
  answers.isDue = row.lane != season::Lane::nothingDue;
  if (const season::UnitRecord* unit = athlete->units.empty() ? nullptr : views.unit(athlete->units.back())) {
    PhoneHelmet helmet;
    if (const gear::ModelSheet* sheet = views.sheetOf(*unit)) {
      helmet = {sheet->hasPort(gear::Port::crown), sheet->hasPort(gear::Port::sides), sheet->hasPort(gear::Port::jawLeft),
                sheet->strapPoints};
    }
    answers.helmet = helmet;
  }
  answers.outcomes = outcomesTold(book, *athlete);
  auto line = encodeAnswers(answers);
  if (!line) return line;
  const auto signature = book.signWords(std::string(kAnswersMark) + *line);
  if (!signature) return tl::unexpected<Error>(signature.error());
  LineWriter out;
  out.beginObject().key("public_key").string(hexOf(signature->publicKey));
  out.key("signature").string(hexOfBytes(bytesOf(signature->signature))).endObject();
  return *line + '\n' + out.take() + '\n';
}

}  // namespace snugline::book
