// SPDX-License-Identifier: Apache-2.0
// Purpose: from the records of an NFC tag (NDEF) to the text that parseTag takes. Read are text records in UTF-8 and UTF-16 and address
// records of the NFC Forum (RTD Text 1.0, RTD URI 1.0: 36 beginnings of an address as one byte), and records whose type is the address.
// Of several records: the first that parseTag reads as a helmet's tag. An address that is no Digital Link is a serial only where nothing
// else on the tag is one: makers put their website on tags.
// A smart poster and every other kind of record is passed over; where nothing is read, the first record that is not empty says why.
// Bytes are as the reader gives them, untrusted: lengths are checked here.
// Errors: NdefRefusal. Thread: pure functions.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/time.h"

namespace snugline::gear {

// The type name format of a record (NDEF 1.0, 3.2.6), as its three bits.
enum class NdefFormat : std::uint8_t { empty, wellKnown, media, address, external, unknown, unchanged, reserved };

struct NdefRecord {
  NdefFormat format = NdefFormat::empty;
  std::string type, payload;  // bytes
};

enum class NdefTrouble : std::uint8_t {
  nothing,      // no record, or only empty ones
  smartPoster,  // a record that holds records; not read
  otherKind,    // a kind of record that is not read, or a beginning of an address that the standard does not name
  notText,      // its bytes are not in the encoding that it says
  cutShort,     // it ends before what its first byte promises
  tooLong,      // above kNdefTextMost
  notATag       // text, and parseTag refuses it
};

struct NdefRefusal {
  NdefTrouble why = NdefTrouble::nothing;
  Error error{};  // of parseTag, with notATag
};

inline constexpr std::size_t kNdefTextMost = 2048;   // ours, as the longest text of parseTag
inline constexpr std::size_t kNdefRecordsMost = 32;  // ours: what follows is not looked at

[[nodiscard]] tl::expected<std::string, NdefRefusal> readNdef(const std::vector<NdefRecord>& records, Day today);

// What one record says, whether it is a tag or not.
[[nodiscard]] tl::expected<std::string, NdefTrouble> textOf(const NdefRecord& record);

}  // namespace snugline::gear
