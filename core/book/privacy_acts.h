// SPDX-License-Identifier: Apache-2.0
// Purpose: the yearly warning, how long names are shown and legal holds, as drafts of facts, like acts.h. Who may do what: rights.h.
// Errors: notFound, outOfRange (place: what), unknownWord (language), notAllowed with a rule below. Thread: plain functions.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/book/acts.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kWarningChanged = "warning-changed";  // another text was set while this one was read
inline constexpr std::string_view kWarningSigned = "warning-signed";    // already, in this season
inline constexpr std::string_view kNoWitness = "no-witness";
}  // namespace rule

inline constexpr std::size_t kSignedInitialsMost = 4;
inline constexpr std::size_t kReasonMost = 200;  // characters of a legal hold's reason

// Texts of 1 to kWarningTextMost characters; line feeds are let be. The same texts again draft nothing.
[[nodiscard]] Result<Drafts> setWarning(const season::Views&, const std::vector<WarningSet::Text>& texts, bool asksAnew);

struct Signing {
  std::string text, language;  // exactly as it was shown
  season::Signer as = season::Signer::athlete;
  std::string initials;  // 1 to kSignedInitialsMost characters
  bool isOnPaper = false;
};
// No drawn signature: a picture of a hand is more of a minor than the job needs and proves no more than initials before a witness, who is
// the fact's `who`; where ink is required the school keeps the paper and says so. `shown` are the texts of the program itself: where the
// team has none yet, they become the team's in the same breath, so that what was signed stands in the Book.
[[nodiscard]] Result<Drafts> signWarning(const season::Views&, const std::string& athlete, const Signing&, const std::string& witness,
                                         const std::vector<WarningSet::Text>& shown, Day today);

[[nodiscard]] Result<Drafts> setRetention(const season::Views&, std::optional<int> years);  // 1 to kRetentionYearsMost
// athlete empty: on everybody.
[[nodiscard]] Result<Drafts> makeLegalHold(const season::Views&, const std::string& athlete, const std::string& reason);
[[nodiscard]] Result<Drafts> endLegalHold(const season::Views&, const std::string& athlete, const std::string& hold,
                                          const std::string& reason);

}  // namespace snugline::book
