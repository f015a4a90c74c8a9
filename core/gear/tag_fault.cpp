// SPDX-License-Identifier: Apache-2.0
#include "core/gear/tag_fault.h"

#include <array>
#include <charconv>

namespace snugline::gear {

namespace {
constexpr std::array<std::string_view, 24> kCodes{"nothing",
                                                  "blanks",
                                                  "too-many-bytes",
                                                  "too-many-characters",
                                                  "not-utf8",
                                                  "control-character",
                                                  "nothing-behind-prefix",
                                                  "unknown-identifier",
                                                  "wrong-length",
                                                  "needs-digits",
                                                  "strange-character",
                                                  "no-company-prefix",
                                                  "no-leading-zero",
                                                  "no-such-month",
                                                  "no-such-day",
                                                  "twice-different",
                                                  "bad-percent",
                                                  "no-value-in-path",
                                                  "two-keys-in-path",
                                                  "belongs-in-path",
                                                  "no-bracket",
                                                  "no-host",
                                                  "serial-alone",
                                                  "names-no-helmet"};
constexpr std::size_t kIdentifierMost = 20;
}  // namespace

std::string_view code(TagFault fault) { return kCodes[static_cast<std::size_t>(fault)]; }

tl::unexpected<Error> refuse(const TagRefusal& refusal) {
  // The identifier comes last: it may hold blanks of its own.
  std::string detail(code(refusal.fault));
  for (const std::size_t number : {refusal.count, refusal.least, refusal.most}) detail += ' ' + std::to_string(number);
  if (!refusal.identifier.empty()) detail += ' ' + refusal.identifier.substr(0, kIdentifierMost);
  return fail(ErrorCode::notATag, {}, std::move(detail));
}

std::optional<TagRefusal> refusalOf(std::string_view detail) {
  const std::size_t blank = detail.find(' ');
  const std::string_view name = detail.substr(0, blank);
  TagRefusal refusal;
  std::size_t at = 0;
  while (at < kCodes.size() && kCodes[at] != name) ++at;
  if (at == kCodes.size() || blank == std::string_view::npos) return std::nullopt;
  refusal.fault = static_cast<TagFault>(at);
  detail.remove_prefix(blank + 1);
  for (std::size_t* number : {&refusal.count, &refusal.least, &refusal.most}) {
    const auto [end, error] = std::from_chars(detail.data(), detail.data() + detail.size(), *number);
    if (error != std::errc()) return std::nullopt;
    detail.remove_prefix(static_cast<std::size_t>(end - detail.data()));
    if (detail.starts_with(' ')) detail.remove_prefix(1);
  }
  refusal.identifier = std::string(detail);
  return refusal;
}

}  // namespace snugline::gear
