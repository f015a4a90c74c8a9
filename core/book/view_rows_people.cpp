// SPDX-License-Identifier: Apache-2.0
#include "core/book/view_rows_people.h"

namespace snugline::book {

namespace {

void holdsOf(LineWriter& out, const std::vector<season::LegalHoldRecord>& holds) {
  if (holds.empty()) return;
  out.key("legal_holds").beginArray();
  for (const season::LegalHoldRecord& hold : holds) {
    out.beginObject().key("fact").string(hold.fact).key("reason").string(hold.reason);
    stamp(out, "stamp", hold.stamp);
    out.endObject();
  }
  out.endArray();
}

std::vector<season::LegalHoldRecord> readHolds(ObjectReader& in) {
  std::vector<season::LegalHoldRecord> holds;
  if (!in.has("legal_holds")) return holds;
  in.objects("legal_holds", [&](ObjectReader& each) {
    season::LegalHoldRecord hold;
    hold.fact = each.text("fact");
    hold.reason = each.text("reason");
    hold.stamp = stamp(each, "stamp");
    holds.push_back(std::move(hold));
  });
  return holds;
}

void warningOf(LineWriter& out, const season::WarningRecord& warning) {
  out.key("warning").beginObject().key("texts").beginArray();
  for (const season::WarningText& each : warning.texts) {
    out.beginObject().key("language").string(each.language).key("text").string(each.text).key("hash").string(each.hash).endObject();
  }
  out.endArray().key("accepted").beginArray();
  for (const std::string& hash : warning.accepted) out.string(hash);
  out.endArray();
  stamp(out, "stamp", warning.stamp);
  out.endObject();
}

season::WarningRecord readWarning(ObjectReader& in) {
  season::WarningRecord warning;
  in.objects("texts", [&](ObjectReader& each) {
    season::WarningText text;
    text.language = each.text("language");
    text.text = each.text("text");
    text.hash = each.text("hash");
    warning.texts.push_back(std::move(text));
  });
  warning.accepted = in.texts("accepted");
  warning.stamp = stamp(in, "stamp");
  return warning;
}

}  // namespace

void stamp(LineWriter& out, std::string_view key, const season::Stamp& s) {
  out.key(key).beginObject().key("fact").string(s.fact).key("order").integer(s.order).key("at_ms").integer(s.at.ms);
  out.key("offset_min").integer(s.at.offsetMinutes).text("who", s.who).endObject();
}
void stampIf(LineWriter& out, std::string_view key, const std::optional<season::Stamp>& s) {
  if (s) stamp(out, key, *s);
}
season::Stamp stamp(ObjectReader& in, std::string_view key) {
  season::Stamp s;
  in.object(key, [&](ObjectReader& inner) {
    s.fact = inner.text("fact");
    s.order = inner.integer("order");
    s.at.ms = inner.integer("at_ms");
    s.at.offsetMinutes = static_cast<std::int32_t>(inner.integer("offset_min", -840, 840));
    s.who = inner.textOr("who");
  });
  return s;
}
std::optional<season::Stamp> stampIf(ObjectReader& in, std::string_view key) {
  if (!in.has(key)) return std::nullopt;
  return stamp(in, key);
}

void privacyOf(LineWriter& out, const season::TeamRecord& r) {
  if (r.warning) warningOf(out, *r.warning);
  if (r.nameYears) out.key("name_years").integer(*r.nameYears);
  holdsOf(out, r.legalHolds);
  if (r.emergency != season::EmergencyRecord{}) {
    out.key("emergency").beginObject().key("number").string(r.emergency.number).text("plan", r.emergency.plan).endObject();
  }
  if (!r.recovery) return;
  out.key("recovery").beginObject();
  writeCode(out, r.recovery->key);
  stamp(out, "stamp", r.recovery->stamp);
  out.endObject();
}

void privacyOf(LineWriter& out, const season::AthleteRecord& r) {
  stampIf(out, "left", r.left);
  if (!r.signatures.empty()) {
    out.key("signatures").beginArray();
    for (const season::SignatureRecord& each : r.signatures) {
      out.beginObject().key("season").string(each.season).key("text").string(each.text).key("language").string(each.language);
      out.key("as").string(season::code(each.as)).key("initials").string(each.initials).flag("on_paper", each.isOnPaper);
      stamp(out, "stamp", each.stamp);
      out.endObject();
    }
    out.endArray();
  }
  holdsOf(out, r.legalHolds);
}

void readPrivacy(ObjectReader& in, season::TeamRecord& r) {
  in.objectIf("warning", [&](ObjectReader& inner) { r.warning = readWarning(inner); });
  if (const auto years = in.integerIf("name_years", 1, kRetentionYearsMost)) r.nameYears = static_cast<int>(*years);
  r.legalHolds = readHolds(in);
  in.objectIf("emergency", [&](ObjectReader& inner) { r.emergency = {inner.text("number"), inner.textOr("plan")}; });
  in.objectIf("recovery", [&](ObjectReader& inner) {
    season::RecoveryRecord recovery;
    recovery.key = readCode(inner);
    recovery.stamp = stamp(inner, "stamp");
    r.recovery = std::move(recovery);
  });
}

void readPrivacy(ObjectReader& in, season::AthleteRecord& r) {
  r.left = stampIf(in, "left");
  // Written by a program that did not keep it: the views are made anew.
  if (!r.isOnRoster && !r.left) in.fail(ErrorCode::missingKey, "left");
  if (in.has("signatures")) {
    in.objects("signatures", [&](ObjectReader& each) {
      season::SignatureRecord signature;
      signature.season = each.text("season");
      signature.text = each.text("text");
      signature.language = each.text("language");
      signature.as = each.word("as", season::signerFromCode);
      signature.initials = each.text("initials");
      signature.isOnPaper = each.flag("on_paper");
      signature.stamp = stamp(each, "stamp");
      r.signatures.push_back(std::move(signature));
    });
  }
  r.legalHolds = readHolds(in);
}

void phonesOf(LineWriter& out, const season::AthleteRecord& r) {
  if (r.phones.empty()) return;
  out.key("phones").beginArray();
  for (const season::PhoneRecord& each : r.phones) {
    out.beginObject().key("device").string(each.device).key("public_key").string(each.publicKey);
    stamp(out, "joined", each.joined);
    out.endObject();
  }
  out.endArray();
}

void readPhones(ObjectReader& in, season::AthleteRecord& r) {
  if (!in.has("phones")) return;
  in.objects("phones", [&](ObjectReader& each) {
    season::PhoneRecord phone;
    phone.device = each.text("device");
    phone.publicKey = each.text("public_key");
    phone.joined = stamp(each, "joined");
    r.phones.push_back(std::move(phone));
  });
}

}  // namespace snugline::book
