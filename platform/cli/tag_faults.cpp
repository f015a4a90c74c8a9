// SPDX-License-Identifier: Apache-2.0
// Why a text is no tag, in the words of the terminal.
#include "core/gear/tag_fault.h"
#include "platform/cli/words.h"

namespace snugline::cli {

std::string tagFaultWords(const std::string& detail) {
  using gear::TagFault;
  const auto refusal = gear::refusalOf(detail);
  if (!refusal) return detail;
  const std::string named = "identifier " + refusal->identifier, count = std::to_string(refusal->count),
                    most = std::to_string(refusal->most);
  switch (refusal->fault) {
    case TagFault::nothing:
      return "nothing";
    case TagFault::blanks:
      return "nothing but blanks";
    case TagFault::tooManyBytes:
      return count + " bytes; at most " + most;
    case TagFault::tooManyCharacters:
      return count + " characters; a plain serial has at most " + most;
    case TagFault::notUtf8:
      return "not text in UTF-8";
    case TagFault::controlCharacter:
      return "a control character";
    case TagFault::nothingBehindPrefix:
      return "nothing stands behind the prefix";
    case TagFault::unknownIdentifier:
      return named + " is not among 01, 10, 11, 21, 8003, 8004, 90 to 99";
    case TagFault::wrongLength:
      return named + " has " + count + " characters and needs " +
             (refusal->least == refusal->most ? most : std::to_string(refusal->least) + " to " + most);
    case TagFault::needsDigits:
      return named + " needs " + count + " digits";
    case TagFault::strangeCharacter:
      return named + " has a character that GS1 does not allow";
    case TagFault::noCompanyPrefix:
      return named + " does not begin with a company prefix";
    case TagFault::noLeadingZero:
      return named + " does not begin with 0";
    case TagFault::noSuchMonth:
      return named + " has no such month";
    case TagFault::noSuchDay:
      return named + " has no such day";
    case TagFault::twiceDifferent:
      return named + " stands twice with different values";
    case TagFault::badPercent:
      return named + " has a % that is not followed by two hexadecimal digits";
    case TagFault::noValueInPath:
      return named + " has no value in the path";
    case TagFault::twoKeysInPath:
      return "two keys stand in one path";
    case TagFault::belongsInPath:
      return named + " belongs in the path, not behind the question mark";
    case TagFault::noBracket:
      return "no identifier in brackets where one is needed";
    case TagFault::noHost:
      return "the address names no host";
    case TagFault::serialAlone:
      return "21 stands without 01";
    case TagFault::namesNoHelmet:
      return "nothing in it names a helmet: 01, 8003 and 8004 are missing";
  }
  return detail;
}

}  // namespace snugline::cli
