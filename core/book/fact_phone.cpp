// SPDX-License-Identifier: Apache-2.0
// Athletes' own phones, as bodies of facts.
#include "core/book/chain.h"
#include "core/book/fact_json.h"

namespace snugline::book {

void writeBody(LineWriter& out, const PhoneJoined& b) { out.key("device").string(b.device).key("public_key").string(b.publicKey); }
void writeBody(LineWriter& out, const PhoneLeft& b) { out.key("device").string(b.device); }

void addPhoneReaders(std::unordered_map<std::string_view, BodyReader>& readers) {
  readers["phone-joined"] = [](ObjectReader& in) -> Body {
    PhoneJoined b;
    b.device = in.text("device");
    b.publicKey = in.text("public_key");
    PublicKey key{};
    if (!fromHex(b.publicKey, key)) in.fail(ErrorCode::wrongType, "public_key", "64 hex digits");
    return b;
  };
  readers["phone-left"] = [](ObjectReader& in) -> Body { return PhoneLeft{in.text("device")}; };
}

}  // namespace snugline::book
