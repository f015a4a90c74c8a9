// SPDX-License-Identifier: Apache-2.0
#include "core/book/phone.h"

#include <algorithm>

#include <sodium.h>

#include "core/book/acts.h"
#include "core/book/fact_decode.h"
#include "core/book/phone_exchange.h"
#include "core/book/phone_json.h"
#include "core/book/written.h"

namespace snugline::book {

namespace {

tl::unexpected<Error> refused(std::string_view rule) { return fail(ErrorCode::notAllowed, "answers", std::string(rule)); }

// The Ed25519 signature of the second line over the first, by the Book that the join code names.
Result<void> proveAnswers(std::string_view line, std::string_view signedBy, const std::string& staffDevice) {
  std::string key, signature;
  const auto read = readObject(signedBy, "answers", [&](ObjectReader& in) {
    key = in.text("public_key");
    signature = in.text("signature");
  });
  if (!read) return tl::unexpected<Error>(read.error());
  PublicKey publicKey{};
  Signature bytes{};
  std::string raw;
  if (!fromHex(key, publicKey) || !bytesOfHex(signature, raw) || !fromBytes(raw, bytes)) return refused(rule::kPhoneFileAltered);
  if (deviceOf(publicKey) != staffDevice) return refused(rule::kAnswersNotOurs);
  const std::string words = std::string(kAnswersMark) + std::string(line);
  const bool isTrue =
      crypto_sign_verify_detached(bytes.data(), reinterpret_cast<const unsigned char*>(words.data()), words.size(), publicKey.data()) == 0;
  return isTrue ? Result<void>() : refused(rule::kPhoneFileAltered);
}

}  // namespace

Phone::Phone(JoinCode code, SigningKey key)
    : m_code(std::move(code)), m_key(key), m_device(deviceOf(m_key.publicKey)), m_order(m_code.order) {}

Result<Phone> Phone::join(std::string_view codeText) {
  const auto code = parseJoin(codeText);
  if (!code) return tl::unexpected<Error>(code.error());
  const auto key = phoneKey(*code);
  if (!key) return tl::unexpected<Error>(key.error());
  return Phone(*code, *key);
}

Result<void> Phone::add(std::string line, Fact fact) {
  const bool isNext = fact.device == m_device && fact.n == m_lines.size() + 1 && fact.order > (m_facts.empty() ? 0 : m_facts.back().order);
  if (!isNext || !isItsOwnToSay(fact, m_code.athlete)) return fail(ErrorCode::inconsistent, fact.id());
  m_chains.push_back(chainStep(m_chains.empty() ? chainStart(m_device) : m_chains.back(), line));
  m_lines.push_back(std::move(line));
  m_order = std::max(m_order, fact.order);
  m_facts.push_back(std::move(fact));
  return {};
}

Result<std::string> Phone::say(const season::SaidRecord& asked, Instant now) {
  season::SaidRecord said = asked;
  if (auto ok = checkWritten(said.words, 0, kWordsLimit, "words"); !ok) return tl::unexpected<Error>(ok.error());
  if (!said.where && !said.isHairChanged && !said.isBroken && !said.isUnwell && said.words.empty()) {
    return fail(ErrorCode::notAllowed, "words", std::string(rule::kNothingSaid));
  }
  if (!said.where || !fit::knowsSides(*said.where)) said.side = fit::Side::both;
  if (said.feels == fit::Feels::broke) said.isBroken = true;
  said.unit.clear();
  return write(Said{said, {}}, now);
}

Result<void> Phone::follow(const std::string& said, bool isMistake, Instant now) {
  const bool isKnown = std::any_of(m_facts.begin(), m_facts.end(), [&](const Fact& fact) {
    const auto* body = std::get_if<Said>(&fact.body);
    return body != nullptr && body->said.isUnwell && fact.id() == said;
  });
  if (!isKnown) return fail(ErrorCode::notFound, "said " + said);
  if (auto written = write(SaidFollowed{said, isMistake}, now); !written) return tl::unexpected<Error>(written.error());
  return {};
}

Result<std::string> Phone::write(Body body, Instant now) {
  Fact fact;
  fact.device = m_device;
  fact.n = m_lines.size() + 1;
  fact.order = m_order + 1;
  fact.at = now;
  fact.about = m_code.athlete;
  fact.body = std::move(body);
  auto line = encode(fact);
  if (!line) return tl::unexpected<Error>(line.error());
  auto readBack = decode(*line);
  if (!readBack) return tl::unexpected<Error>(readBack.error());
  if (auto ok = add(*line, std::move(*readBack)); !ok) return tl::unexpected<Error>(ok.error());
  return fact.id();
}

bool Phone::canTakeBack() const {
  const std::uint64_t sealed = m_segments.empty() ? 0 : m_segments.back().last;
  const auto* said = m_facts.empty() ? nullptr : std::get_if<Said>(&m_facts.back().body);
  return m_lines.size() > sealed && said != nullptr && !said->said.isUnwell;
}

void Phone::takeBack() {
  if (!canTakeBack()) return;
  m_lines.pop_back();
  m_chains.pop_back();
  m_facts.pop_back();
}

Result<std::string> Phone::reports() {
  std::uint64_t sealed = m_segments.empty() ? 0 : m_segments.back().last;
  while (sealed < m_lines.size()) {
    PhoneSegment segment;
    segment.first = sealed + 1;
    segment.last = std::min<std::uint64_t>(m_lines.size(), sealed + kSegmentFacts);
    segment.chain = m_chains[segment.last - 1];
    segment.signature = signSegment(m_key, m_device, segment.first, segment.last, segment.chain);
    sealed = segment.last;
    m_segments.push_back(segment);
  }
  LineWriter out;
  out.beginObject().key("snugline_reports").integer(1).key("device").string(m_device).key("athlete").string(m_code.athlete);
  out.key("public_key").string(hexOf(m_key.publicKey));
  segmentsOf(out, m_segments);
  out.endObject();
  std::string file = out.take() + '\n';
  for (const std::string& line : m_lines) file += line + '\n';
  if (file.size() > kPhoneFileBytes)
    return fail(ErrorCode::tooLong, "reports", std::to_string(file.size()) + ", " + std::to_string(kPhoneFileBytes));
  return file;
}

Result<void> Phone::takeAnswers(std::string_view file) {
  if (file.size() > kPhoneFileBytes)
    return fail(ErrorCode::tooLong, "answers", std::to_string(file.size()) + ", " + std::to_string(kPhoneFileBytes));
  const auto lines = linesOf(file);
  if (!lines || lines->size() != 2) return refused(rule::kPhoneFileAltered);
  auto answers = decodeAnswers(lines->front());
  if (!answers) return tl::unexpected<Error>(answers.error());
  if (auto ok = proveAnswers(lines->front(), lines->back(), m_code.staffDevice); !ok) return ok;
  if (answers->device != m_device || answers->athlete != m_code.athlete) return refused(rule::kAnswersNotOurs);
  if (m_answers && (answers->order < m_answers->order || answers->taken < m_answers->taken)) return refused(rule::kAnswersOld);
  m_order = std::max(m_order, answers->order);
  m_answers = std::move(*answers);
  m_answersFile = file;
  return {};
}

std::vector<season::SaidRecord> Phone::said() const {
  std::vector<season::SaidRecord> all;
  for (const Fact& fact : m_facts) {
    const auto* body = std::get_if<Said>(&fact.body);
    if (body == nullptr) continue;
    season::SaidRecord& said = all.emplace_back(body->said);
    said.fact = fact.id();
    said.at = fact.at;
    if (!m_answers) continue;
    said.isAnswered = std::any_of(m_answers->outcomes.begin(), m_answers->outcomes.end(),
                                  [&](const PhoneOutcome& o) { return o.outcome.said == fact.id(); });
  }
  return all;
}

int Phone::waiting() const {
  const std::uint64_t taken = m_answers ? m_answers->taken : 0;
  return m_lines.size() > taken ? static_cast<int>(m_lines.size() - taken) : 0;
}

Result<std::string> Phone::file() const {
  LineWriter out;
  out.beginObject().key("snugline_phone").integer(1).key("secret").string(hexOfBytes(bytesOf(m_code.secret)));
  out.key("staff").string(m_code.staffDevice).key("athlete").string(m_code.athlete).key("jersey").string(m_code.jersey);
  out.key("order").integer(m_code.order).key("lines").beginArray();
  for (const std::string& line : m_lines) out.string(line);
  out.endArray();
  segmentsOf(out, m_segments);
  out.text("answers", m_answersFile).endObject();
  if (!out.isText() || !out.isInRange()) return fail(ErrorCode::wrongType, "phone");
  return out.take();
}

Result<Phone> Phone::read(std::string_view file) {
  JoinCode code;
  std::string secret, answers;
  std::vector<std::string> lines;
  std::vector<PhoneSegment> segments;
  const auto read = readObject(file, "phone", [&](ObjectReader& in) {
    (void)in.integer("snugline_phone", 1, 1);
    std::string raw;
    if (!bytesOfHex(in.text("secret"), raw) || !fromBytes(raw, code.secret)) in.fail(ErrorCode::wrongType, "secret");
    code.staffDevice = in.text("staff");
    code.athlete = in.text("athlete");
    code.jersey = in.text("jersey");
    code.order = in.integer("order", 0);
    lines = in.texts("lines");
    segments = readSegments(in);
    answers = in.textOr("answers");
  });
  if (!read) return tl::unexpected<Error>(read.error());
  const auto key = phoneKey(code);
  if (!key) return tl::unexpected<Error>(key.error());
  Phone phone(code, *key);
  FactDecoder decoder;
  for (std::string& line : lines) {
    auto fact = decoder.decode(line, "phone");
    if (!fact) return tl::unexpected<Error>(fact.error());
    if (auto ok = phone.add(std::move(line), std::move(*fact)); !ok) return tl::unexpected<Error>(ok.error());
  }
  phone.m_segments = std::move(segments);
  if (!answers.empty()) {
    if (auto ok = phone.takeAnswers(answers); !ok) return tl::unexpected<Error>(ok.error());
  }
  return phone;
}

}  // namespace snugline::book
