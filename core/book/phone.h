// SPDX-License-Identifier: Apache-2.0
// Purpose: an athlete's own phone: the join code, the phone itself with what was said on it, and the two files that pass between it and the
// Book (PHONE_FORMAT.md). Everything here is without the Book; what the Book does with it is phone_exchange.h.
// Errors: notFound, outOfRange, tooLong, badSignature, brokenChain, unknownDevice, notAllowed with a rule below, and those of the codec.
// Thread: plain values.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/book/chain.h"
#include "core/book/outcomes.h"
#include "core/season/record.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kNotAJoinCode = "not-a-join-code";
inline constexpr std::string_view kPhoneFileAltered = "phone-file-altered";
inline constexpr std::string_view kPhoneNotJoined = "phone-not-joined";
inline constexpr std::string_view kPhoneOther = "phone-other";           // somebody else's, or a fact that is not the phone's to say
inline constexpr std::string_view kPhoneTwice = "phone-twice";           // the code was used on two phones
inline constexpr std::string_view kAnswersNotOurs = "answers-not-ours";  // of another phone, or of a Book that did not join it
inline constexpr std::string_view kAnswersOld = "answers-old";
}  // namespace rule

inline constexpr std::size_t kPhoneFileBytes = 1024 * 1024;

struct JoinCode {
  std::array<std::uint8_t, 16> secret{};
  std::string staffDevice;  // 13 letters
  std::string athlete;      // "device:n"
  std::string jersey;       // as written
  std::int64_t order = 0;   // highest that the Book had
  friend bool operator==(const JoinCode&, const JoinCode&) = default;
};
[[nodiscard]] Result<std::string> print(const JoinCode& code);  // "SNUGLINE-JOIN:…"
[[nodiscard]] Result<JoinCode> parseJoin(std::string_view text);
[[nodiscard]] Result<SigningKey> phoneKey(const JoinCode& code);

struct PhoneSegment {
  std::uint64_t first = 0, last = 0;
  Chain chain{};
  Signature signature{};
  friend bool operator==(const PhoneSegment&, const PhoneSegment&) = default;
};
// A reports file that goes together in itself; whether the Book knows its phone is another question.
struct PhoneReports {
  std::string device, athlete;
  PublicKey publicKey{};
  std::vector<std::string> lines;  // n from 1
  std::vector<Fact> facts;         // as the lines say
  std::vector<PhoneSegment> segments;
};
[[nodiscard]] Result<PhoneReports> readReports(std::string_view file);

struct PhoneOutcome {
  WordOutcome outcome;
  std::vector<Done> done;
  friend bool operator==(const PhoneOutcome&, const PhoneOutcome&) = default;
};
struct PhoneHelmet {
  bool hasCrownAir = false, hasSideAir = false, hasJawAir = false;
  int strapPoints = 4;
  friend bool operator==(const PhoneHelmet&, const PhoneHelmet&) = default;
};
// What the Book tells a phone.
struct PhoneAnswers {
  std::string device, athlete, jersey;
  std::uint64_t taken = 0;
  std::int64_t order = 0;
  Instant at;
  int practiceMinute = 930;
  Day dueFrom, dueBy;  // of the next look
  bool isDue = false;  // something is due now
  std::optional<PhoneHelmet> helmet;
  std::vector<PhoneOutcome> outcomes;
  friend bool operator==(const PhoneAnswers&, const PhoneAnswers&) = default;
};
[[nodiscard]] Result<std::string> encodeAnswers(const PhoneAnswers& answers);  // the first line, without its end
[[nodiscard]] Result<PhoneAnswers> decodeAnswers(std::string_view line);
inline constexpr std::string_view kAnswersMark = "snugline answers 1\n";  // before the line where it is signed

class Phone {
 public:
  [[nodiscard]] static Result<Phone> join(std::string_view codeText);
  [[nodiscard]] static Result<Phone> read(std::string_view file);  // as file() wrote it
  [[nodiscard]] Result<std::string> file() const;

  // Words without a place, a hair change, something broken or feeling unwell are asked for as in Say. The id of the fact.
  [[nodiscard]] Result<std::string> say(const season::SaidRecord& said, Instant now);
  // What follows a hit or feeling bad that was said here: an adult was told, or it was touched by mistake.
  [[nodiscard]] Result<void> follow(const std::string& said, bool isMistake, Instant now);
  [[nodiscard]] bool canTakeBack() const;  // the last one, while no file holds it; a hit or feeling bad stays
  void takeBack();
  // The reports file; what is not signed yet is signed first, so keep file() before it is handed over.
  [[nodiscard]] Result<std::string> reports();
  [[nodiscard]] Result<void> takeAnswers(std::string_view file);

  [[nodiscard]] const JoinCode& code() const { return m_code; }
  [[nodiscard]] const std::string& device() const { return m_device; }
  [[nodiscard]] std::string jersey() const { return m_answers ? m_answers->jersey : m_code.jersey; }
  [[nodiscard]] std::vector<season::SaidRecord> said() const;  // oldest first; answered as the Book last told
  [[nodiscard]] const std::optional<PhoneAnswers>& answers() const { return m_answers; }
  [[nodiscard]] int waiting() const;  // reports that the Book is not known to hold

 private:
  Phone(JoinCode code, SigningKey key);
  [[nodiscard]] Result<void> add(std::string line, Fact fact);
  [[nodiscard]] Result<std::string> write(Body body, Instant now);

  JoinCode m_code;
  SigningKey m_key;
  std::string m_device;
  std::vector<std::string> m_lines;
  std::vector<Chain> m_chains;  // after each line
  std::vector<PhoneSegment> m_segments;
  std::vector<Fact> m_facts;  // as the lines say
  std::int64_t m_order = 0;
  std::optional<PhoneAnswers> m_answers;
  std::string m_answersFile;
};

}  // namespace snugline::book
