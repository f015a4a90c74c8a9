// SPDX-License-Identifier: Apache-2.0
// Purpose: what the Book does with athletes' own phones (PHONE_FORMAT.md): letting one join, taking its reports in, answering it.
// Errors: as phone.h; badRow never. Thread: the Book's, the acts are plain functions.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/book/acts.h"
#include "core/book/book.h"
#include "core/book/phone.h"

namespace snugline::book {

// A fresh code for the athlete, and the drafts that make it good: phones joined before are let go. secret: random, 16 bytes.
// Refused: off the roster (kOffRoster); a number of more than three digits.
struct Invitation {
  JoinCode code;
  std::string text;
  Drafts drafts;
};
[[nodiscard]] Result<Invitation> invite(const season::Views& views, const std::string& athlete, const std::array<std::uint8_t, 16>& secret,
                                        const std::string& ownDevice, std::int64_t order);
// Nothing more is taken from any phone of the athlete. Nothing to let go: drafts nothing.
[[nodiscard]] Result<Drafts> letGo(const season::Views& views, const std::string& athlete);

// Said about its own athlete, in words of its own, and nothing else.
[[nodiscard]] bool isItsOwnToSay(const Fact& fact, const std::string& athlete);
// Whether the Book would take them: joined, of its own athlete, nothing but what a phone may say.
[[nodiscard]] Result<void> admit(const season::Views& views, const PhoneReports& reports);

struct PhoneTaken {
  std::string athlete, device;
  int taken = 0;  // new ones
  Appended appended;
};
// All or nothing; what is held already is passed over.
[[nodiscard]] Result<PhoneTaken> takeReports(Book& book, std::string_view file);
// What a joined phone is told, as the answers file. Errors: unknownDevice.
[[nodiscard]] Result<std::string> answersFor(Book& book, const std::string& device, Instant now);
inline constexpr std::size_t kOutcomesTold = 20;

}  // namespace snugline::book
