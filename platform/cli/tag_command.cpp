// SPDX-License-Identifier: Apache-2.0
// `snug tag`: what a scanned or typed tag says.
#include "core/gear/tag.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {

Result<Reply> tag(const TagRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const Result<gear::Tag> tag = gear::parseTag(request.text, dayOf(*now));
  if (!tag) {
    Error error = tag.error();
    if (error.place.empty()) error.place = "TEXT";
    return tl::unexpected<Error>(error);
  }
  json::Writer out;
  out.beginObject().key("form").string(code(tag->form));
  out.key("ai").beginObject();
  for (const auto& [identifier, value] : tag->ai) out.key(identifier).string(value);
  out.endObject();
  out.key("serial").string(tag->serial);
  out.key("made");
  if (tag->made.empty()) {
    out.null();
  } else {
    out.string(tag->made);
  }
  out.key("check_digit_ok").boolean(tag->isCheckDigitOk).key("key").string(tag->key).endObject();

  Reply reply;
  reply.exitCode = tag->isCheckDigitOk ? kDone : kAnswerNo;
  reply.json = out.take();
  reply.text = "Serial " + oneLine(tag->serial) + '\n';
  for (const auto& [identifier, value] : tag->ai) reply.text += "  (" + identifier + ") " + oneLine(value) + '\n';
  if (!tag->made.empty()) reply.text += "Made " + tag->made + '\n';
  if (!tag->isCheckDigitOk) reply.text += "The check digit does not agree; scan it again or read the label.\n";
  return reply;
}

}  // namespace snugline::cli
