// SPDX-License-Identifier: Apache-2.0
// `snug guide`: a whole check from recorded answers, judged by the same rules as on the screen.
#include "core/fit/answers_file.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

void writeAdvice(json::Writer& out, const fit::Advice& advice) {
  out.beginObject().key("do").string(advice.doText());
  if (advice.port) out.key("port").string(code(*advice.port));
  if (advice.part) out.key("part").string(code(*advice.part));
  if (const std::string amount = advice.amountText(); !amount.empty()) out.key("amount").string(amount);
  out.key("reopens").beginArray();
  for (const fit::Mark m : fit::kMarks) {
    if (advice.reopens.has(m)) out.string(code(m));
  }
  out.endArray().key("mark").string(code(advice.mark)).key("why").string(sentence(advice)).endObject();
}

std::string json(const fit::Assessment& a) {
  std::vector<std::string> reasons, open, why, seen;
  for (const fit::Reason& r : a.reasons) {
    reasons.push_back(r.codeText());
    why.push_back(sentence(r));
  }
  for (const fit::Step& step : a.open) open.push_back(step.codeText());
  for (const fit::Finding f : a.strip) seen.emplace_back(code(f));
  json::Writer out;
  out.beginObject().key("verdict").string(code(a.verdict));
  writeStrings(out, "reasons", reasons);
  writeStrings(out, "open", open);
  out.key("next").string(a.next.codeText());
  out.key("advice").beginArray();
  for (const fit::Advice& advice : a.advice) writeAdvice(out, advice);
  out.endArray();
  writeStrings(out, "strip", seen);
  writeStrings(out, "why", why);
  out.key("due_from").string(print(a.dueFrom)).key("due_by").string(print(a.dueBy));
  out.key("for_cold").boolean(a.isForCold).endObject();
  return out.take();
}

std::string text(const fit::Assessment& a) {
  std::string lines = words(a.verdict) + "   " + strip(a.strip) + '\n';
  for (const fit::Reason& r : a.reasons) lines += "  " + oneLine(sentence(r)) + '\n';
  if (!a.advice.empty()) lines += "What can be done\n";
  for (const fit::Advice& advice : a.advice) lines += "  " + sentence(advice) + '\n';
  if (a.next.kind != fit::StepKind::done) lines += "Next: " + a.next.codeText() + '\n';
  if (a.isForCold) lines += "Fits for this cold: see it again before the next session that is warmer.\n";
  return lines + "Next look from " + print(a.dueFrom) + " to " + print(a.dueBy) + ".\n" + kCaution + '\n';
}

}  // namespace

Result<Reply> guide(const GuideRequest& request, Outside& outside) {
  const Result<gear::ModelSheet> sheet = findSheet(request.sheet, request.book, outside);
  if (!sheet) return tl::unexpected<Error>(sheet.error());
  const Result<fit::WrittenCheck> check = fit::readAnswersFile(request.answers, *sheet);
  if (!check) return tl::unexpected<Error>(check.error());
  const fit::Assessment assessment = fit::assess(check->setup, check->state);
  const bool isNo = request.expectsFits && assessment.verdict != fit::Verdict::fits;
  return Reply{isNo ? kAnswerNo : kDone, json(assessment), text(assessment)};
}

}  // namespace snugline::cli
