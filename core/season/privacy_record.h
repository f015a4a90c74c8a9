// SPDX-License-Identifier: Apache-2.0
// Purpose: what the Book says of the yearly warning, of how long names are shown, and of the key on the recovery sheet; parts of the
// records of record.h. Thread: plain values.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/season/code_hash.h"
#include "core/season/stamp.h"

namespace snugline::season {

struct WarningText {
  std::string language;  // "en", "es"
  std::string text;
  std::string hash;  // BLAKE2b-256 of the text's bytes, hex
  friend bool operator==(const WarningText&, const WarningText&) = default;
};
struct WarningRecord {
  std::vector<WarningText> texts;     // as last set
  std::vector<std::string> accepted;  // hashes that a signature may name, sorted: every text since somebody asked for all anew
  Stamp stamp;
  friend bool operator==(const WarningRecord&, const WarningRecord&) = default;
};

enum class Signer : std::uint8_t { athlete, guardian };
[[nodiscard]] std::string_view code(Signer signer);  // "athlete", "guardian"
[[nodiscard]] std::optional<Signer> signerFromCode(std::string_view word);

struct SignatureRecord {
  std::string season;          // of the team when it was signed: "2026"
  std::string text, language;  // hash and language of what was read
  Signer as = Signer::athlete;
  std::string initials;
  bool isOnPaper = false;  // the school keeps a signed sheet
  Stamp stamp;             // who: the witness
  friend bool operator==(const SignatureRecord&, const SignatureRecord&) = default;
};

struct LegalHoldRecord {
  std::string fact, reason;
  Stamp stamp;
  friend bool operator==(const LegalHoldRecord&, const LegalHoldRecord&) = default;
};

struct RecoveryRecord {
  CodeHash key;
  Stamp stamp;
  friend bool operator==(const RecoveryRecord&, const RecoveryRecord&) = default;
};

}  // namespace snugline::season
