// SPDX-License-Identifier: Apache-2.0
// Purpose: parts that the phone's three files share, for phone*.cpp only. Thread: plain functions.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/book/line_reader.h"
#include "core/book/line_writer.h"
#include "core/book/phone.h"

namespace snugline::book {

// One JSON object of one line; read(ObjectReader&) takes its keys.
template <typename Read>
[[nodiscard]] Result<void> readObject(std::string_view line, const std::string& name, Read read) {
  LineParser parser;
  const auto value = parser.parse(line, name);
  if (!value) return tl::unexpected<Error>(value.error());
  FirstFault fault{name, std::nullopt};
  ObjectReader in(fault, **value);
  read(in);
  in.finish();
  if (fault.error) return tl::unexpected<Error>(*fault.error);
  return {};
}
[[nodiscard]] std::string hexOfBytes(std::string_view bytes);
[[nodiscard]] bool bytesOfHex(std::string_view hex, std::string& bytes);
void segmentsOf(LineWriter& out, const std::vector<PhoneSegment>& segments);
[[nodiscard]] std::vector<PhoneSegment> readSegments(ObjectReader& in);
// Lines of a text, each ended by a line feed; nothing when the last one is not.
[[nodiscard]] std::optional<std::vector<std::string_view>> linesOf(std::string_view text);

}  // namespace snugline::book
