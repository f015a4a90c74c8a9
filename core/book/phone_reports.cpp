// SPDX-License-Identifier: Apache-2.0
// The reports file: read and proved as a whole before anybody looks at what it says.
#include <sodium.h>

#include "core/book/fact_decode.h"
#include "core/book/phone_json.h"

namespace snugline::book {

namespace {

tl::unexpected<Error> altered(const std::string& place) { return fail(ErrorCode::notAllowed, place, std::string(rule::kPhoneFileAltered)); }

}  // namespace

std::string hexOfBytes(std::string_view bytes) {
  std::string hex(2 * bytes.size() + 1, '\0');
  sodium_bin2hex(hex.data(), hex.size(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
  hex.pop_back();
  return hex;
}

bool bytesOfHex(std::string_view hex, std::string& bytes) {
  bytes.assign(hex.size() / 2, '\0');
  std::size_t used = 0;
  return hex.size() % 2 == 0 &&
         sodium_hex2bin(reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(), hex.data(), hex.size(), nullptr, &used, nullptr) ==
             0 &&
         used == bytes.size();
}

void segmentsOf(LineWriter& out, const std::vector<PhoneSegment>& segments) {
  out.key("segments").beginArray();
  for (const PhoneSegment& each : segments) {
    out.beginObject().key("first").integer(static_cast<std::int64_t>(each.first)).key("last").integer(static_cast<std::int64_t>(each.last));
    out.key("chain").string(hexOfBytes(bytesOf(each.chain))).key("signature").string(hexOfBytes(bytesOf(each.signature))).endObject();
  }
  out.endArray();
}

std::vector<PhoneSegment> readSegments(ObjectReader& in) {
  std::vector<PhoneSegment> segments;
  in.objects("segments", [&](ObjectReader& each) {
    PhoneSegment segment;
    segment.first = static_cast<std::uint64_t>(each.integer("first", 1));
    segment.last = static_cast<std::uint64_t>(each.integer("last", 1));
    std::string chain, signature;
    const bool isHex = bytesOfHex(each.text("chain"), chain) && bytesOfHex(each.text("signature"), signature);
    if (!isHex || !fromBytes(chain, segment.chain) || !fromBytes(signature, segment.signature))
      each.fail(ErrorCode::wrongType, "signature");
    segments.push_back(segment);
  });
  return segments;
}

std::optional<std::vector<std::string_view>> linesOf(std::string_view text) {
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const std::size_t end = text.find('\n');
    if (end == std::string_view::npos) return std::nullopt;
    lines.push_back(text.substr(0, end));
    text.remove_prefix(end + 1);
  }
  return lines;
}

Result<PhoneReports> readReports(std::string_view file) {
  if (file.size() > kPhoneFileBytes)
    return fail(ErrorCode::tooLong, "reports", std::to_string(file.size()) + ", " + std::to_string(kPhoneFileBytes));
  const auto lines = linesOf(file);
  if (!lines || lines->empty()) return altered("reports");
  PhoneReports reports;
  std::string key;
  const auto head = readObject(lines->front(), "reports", [&](ObjectReader& in) {
    (void)in.integer("snugline_reports", 1, 1);
    reports.device = in.text("device");
    reports.athlete = in.text("athlete");
    key = in.text("public_key");
    reports.segments = readSegments(in);
  });
  if (!head) return tl::unexpected<Error>(head.error());
  if (!fromHex(key, reports.publicKey) || deviceOf(reports.publicKey) != reports.device) return altered("public_key");

  FactDecoder decoder;
  Chain chain = chainStart(reports.device);
  std::size_t segment = 0;
  std::uint64_t signedTo = 0;
  std::int64_t order = 0;
  for (std::size_t i = 1; i < lines->size(); ++i) {
    const std::string line((*lines)[i]);
    auto fact = decoder.decode(line, "reports:" + std::to_string(i + 1));
    if (!fact) return tl::unexpected<Error>(fact.error());
    if (fact->device != reports.device || fact->n != i || fact->order <= order) return altered(fact->id());
    order = fact->order;
    chain = chainStep(chain, line);
    if (segment < reports.segments.size() && reports.segments[segment].last == i) {
      const PhoneSegment& each = reports.segments[segment++];
      const bool isWhole = each.first == signedTo + 1 && each.last - each.first < kSegmentFacts && each.chain == chain &&
                           isSignedBy(reports.publicKey, each.signature, reports.device, each.first, each.last, each.chain);
      if (!isWhole) return altered(fact->id());
      signedTo = each.last;
    }
    reports.lines.push_back(line);
    reports.facts.push_back(std::move(*fact));
  }
  if (segment != reports.segments.size() || signedTo != reports.lines.size()) return altered("segments");
  return reports;
}

}  // namespace snugline::book
