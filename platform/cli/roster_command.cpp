// SPDX-License-Identifier: Apache-2.0
// `snug roster` and `snug take-in`: lists from elsewhere into the Book. The whole list is planned first and goes in as one durable
// transaction, so that a disk that fills up leaves the Book as it was.
#include "core/book/roster.h"

#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

constexpr std::size_t kScansLimitBytes = 8 * 1024 * 1024;  // ours; a hundred thousand scans are under 4 MiB

void writeNotes(json::Writer& out, const char* key, const std::vector<book::RowNote>& notes) {
  out.key(key).beginArray();
  for (const book::RowNote& note : notes) {
    out.beginObject().key("line").integer(static_cast<std::int64_t>(note.line)).key("why").string(sentence(note));
    out.key("code").string(code(note.doubt)).endObject();
  }
  out.endArray();
}

std::string notesText(const std::string& file, const char* heading, const std::vector<book::RowNote>& notes) {
  std::string text;
  for (const book::RowNote& note : notes)
    text += std::string(heading) + ' ' + file + ':' + std::to_string(note.line) + ": " + sentence(note) + '\n';
  return text;
}

Result<void> appendAll(book::Book& book, book::Drafts drafts) {
  if (drafts.empty()) return {};
  const Result<book::Appended> appended = book.append(std::move(drafts));
  if (!appended) return tl::unexpected<Error>(appended.error());
  return book.checkpoint();
}

}  // namespace

Result<Reply> roster(const RosterRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const Result<std::string> bytes = readFile(request.file, book::kRosterLimitBytes);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  const Result<book::RosterRead> read = book::readRoster(*bytes, request.file);
  if (!read) return tl::unexpected<Error>(read.error());
  const auto opened = openBook(request.book, book::Access::readWrite, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  book::RosterPlan plan = book::planRoster((*opened)->views(), *read, dayOf(*now));
  if (const Result<void> appended = appendAll(**opened, std::move(plan.drafts)); !appended) return tl::unexpected<Error>(appended.error());

  json::Writer out;
  out.beginObject().key("added").integer(static_cast<std::int64_t>(plan.added));
  out.key("changed").integer(static_cast<std::int64_t>(plan.changed)).key("unchanged").integer(static_cast<std::int64_t>(plan.unchanged));
  writeNotes(out, "questioned", plan.questioned);
  writeNotes(out, "refused", plan.refused);
  out.key("encoding").string(read->encoding).endObject();

  Reply reply;
  reply.json = out.take();
  reply.text = std::to_string(plan.added) + " added, " + std::to_string(plan.changed) + " changed, " + std::to_string(plan.unchanged) +
               " as before\n";
  reply.text += notesText(request.file, "Look again,", plan.questioned) + notesText(request.file, "Refused,", plan.refused);
  return reply;
}

Result<Reply> takeIn(const TakeInRequest& request, Outside& outside) {
  const Result<Instant> now = timeOf(request.at, "--at", outside);
  if (!now) return tl::unexpected<Error>(now.error());
  const Result<std::string> bytes = readFile(request.tags, kScansLimitBytes);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  const auto opened = openBook(request.book, book::Access::readWrite, outside);
  if (!opened) return tl::unexpected<Error>(opened.error());
  Result<book::TakeInPlan> plan = book::planTakeIn((*opened)->views(), *bytes, request.tags, dayOf(*now));
  if (!plan) return tl::unexpected<Error>(plan.error());
  if (const Result<void> appended = appendAll(**opened, std::move(plan->drafts)); !appended) return tl::unexpected<Error>(appended.error());

  json::Writer out;
  out.beginObject();
  writeStrings(out, "known", plan->known);
  writeStrings(out, "new", plan->added);
  writeStrings(out, "held", plan->held);
  writeNotes(out, "refused", plan->refused);
  out.endObject();

  Reply reply;
  reply.json = out.take();
  reply.text = std::to_string(plan->added.size()) + " new, " + std::to_string(plan->known.size()) + " known, " +
               std::to_string(plan->held.size()) + " held\n";
  for (const std::string& serial : plan->held) reply.text += "Held: " + oneLine(serial) + '\n';
  reply.text += notesText(request.tags, "Refused,", plan->refused);
  return reply;
}

}  // namespace snugline::cli
