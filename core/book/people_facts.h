// SPDX-License-Identifier: Apache-2.0
// Purpose: bodies of facts about the recovery key, the yearly warning, how long names are shown, whom to call, and roles (BOOK_FORMAT.md).
// Part of fact.h. Thread: plain values.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/season/privacy_record.h"

namespace snugline::book {

inline constexpr std::size_t kWarningTextMost = 6000;  // characters; two languages of four bytes each still fit into one fact
inline constexpr int kRetentionYearsMost = 50;
[[nodiscard]] bool isLanguage(std::string_view code);  // one that the app speaks
inline constexpr std::string_view kHelper = "helper", kStaff = "staff", kAdmin = "admin";
[[nodiscard]] std::optional<std::string> roleWord(std::string_view word);  // one of these three

struct RecoverySet {
  season::CodeHash key;
};  // about the team; the one last in order counts
struct WarningSet {
  struct Text {
    std::string language, text;
  };
  std::vector<Text> texts;
  bool asksAnew = false;
};  // about the team
struct WarningSigned {
  std::string season, text, language;
  season::Signer as = season::Signer::athlete;
  std::string initials;
  bool isOnPaper = false;
};  // about the athlete
struct RetentionSet {
  std::optional<int> years;  // nothing: names are always shown
};                           // about the team
struct EmergencySet {
  std::string number, plan;
};  // about the team; the one last in order counts
struct LegalHoldMade {
  bool isForAll = false;  // then about the team
  std::string reason;
};
struct LegalHoldEnded {
  bool isForAll = false;
  std::string hold, reason;
};

}  // namespace snugline::book
