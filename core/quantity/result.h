// SPDX-License-Identifier: Apache-2.0
// Purpose: the one way in which core says that something could not be done.
// An Error carries a code and the place; the sentence for people is made at the screen or the terminal.
// Thread: plain values, no shared state.
#pragma once

#include <cstdint>
#include <string>
#include <utility>

#include <tl/expected.hpp>

namespace snugline {

enum class ErrorCode : std::uint8_t {
  notAQuantity,     // detail: what was read; place: option, column or JSON path
  missingUnit,      // a bare number where a unit is required
  outOfRange,       // detail: "value, lowest, highest"
  notADate,         // detail: what was read
  notJson,          // place: file; detail: offset and cause
  missingKey,       // place: JSON path
  wrongType,        // place: JSON path; detail: what was expected
  unknownKey,       // place: JSON path
  unknownWord,      // place: JSON path or option; detail: the word and the words allowed
  duplicateKey,     // place: JSON path
  inconsistent,     // place: JSON path; detail: what contradicts what
  unknownPort,      // a port or part that the sheet lacks
  notATag,          // detail: why, as core/gear/tag_fault.h has it
  checkDigitWrong,  // detail: "read, expected"
  notText,          // a file that is not text at all (a picture, say)
  badRow,           // place: file:line; detail: why
  cannotRead,       // place: file; detail: system's reason
  cannotWrite,      // place: file; detail: system's reason
  diskFull,         // place: file
  readOnly,         // place: file or folder
  notABook,         // place: file; the file is not a Book
  damagedBook,      // place: file; detail: what is damaged
  newerBook,        // place: file; detail: its version and ours
  bookInUse,        // place: file; another process has it open
  fileExists,       // place: file
  notFound,         // place: what was looked for
  unknownDevice,    // place: device
  brokenChain,      // place: device:n
  badSignature,     // place: device:n
  tooLong,          // detail: "length, limit"
  notAllowed,       // detail: the rule that forbids it
  noKey,            // identity could not be read or made
  outOfMemory,
  internal  // a library failed in a way that has no better name; detail: its words
};

struct Error {
  ErrorCode code = ErrorCode::internal;
  std::string place;   // file, line, option, JSON path, or id
  std::string detail;  // plain data for the sentence, never a sentence for people

  friend bool operator==(const Error&, const Error&) = default;
};

template <typename T>
using Result = tl::expected<T, Error>;

[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code, std::string place = {}, std::string detail = {}) {
  return tl::unexpected<Error>(Error{code, std::move(place), std::move(detail)});
}

}  // namespace snugline
