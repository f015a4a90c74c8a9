// SPDX-License-Identifier: Apache-2.0
// Purpose: a Book of invented people: Harrow Creek High, the Herons, with a season under way. The same options make the same facts, byte
// for byte, whoever runs it: the device's key comes from the seed too. Every act goes through core/book/acts.h and every verdict comes
// from the guide, so that the history is one that the program itself could have written.
// Errors: those of Book::create and Book::append; notFound when the demo's sheets are not built in. Thread: any one thread.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/ports/ports.h"
#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace snugline::demo {

struct Options {
  int athletes = 64;  // on the roster of each season; 1..5000
  int seasons = 1;    // the last one is under way; 1..20
  std::uint64_t seed = 1;
  Day today{20740};  // 2026-10-14
  int minute = 840;  // 14:00, an hour and a half before practice
  int offsetMinutes = -300;
  std::function<bool(double done)> progress;  // 0..1; false stops, then nothing is left behind
};
[[nodiscard]] Instant nowOf(const Options& options);

// A new file at path; the number of facts in it. keys keeps the device's identity, as for any Book.
[[nodiscard]] Result<std::uint64_t> makeDemo(const std::string& path, const Options& options, ports::Keys& keys);

// The three model sheets built in, as their files' bytes.
struct BuiltInSheet {
  std::string_view name, bytes;  // "alder-a1.json"
};
[[nodiscard]] const std::vector<BuiltInSheet>& builtInSheets();
[[nodiscard]] std::string_view builtInPhoto();  // a JPEG of a painted shell with a crack: no real helmet

}  // namespace snugline::demo
