// SPDX-License-Identifier: Apache-2.0
// `snug sheet`: every fault of a model sheet's file at once, and what is different between two sheets.
#include "core/gear/sheet_difference.h"
#include "core/gear/sheet_figure.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

using gear::SheetDifference;

std::string unitName(gear::FigureUnit unit) {
  switch (unit) {
    case gear::FigureUnit::um:
      return "um";
    case gear::FigureUnit::pa:
      return "pa";
    case gear::FigureUnit::months:
      return "months";
    case gear::FigureUnit::points:
      return "points";
  }
  return {};
}

Result<Reply> checkFile(const std::string& file) {
  const Result<std::string> bytes = json::readText(file, gear::kSheetLimitBytes);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  const Result<gear::ReadDraft> read = gear::readDraft(*bytes, file);
  if (!read) return tl::unexpected<Error>(read.error());
  json::Writer out;
  out.beginObject().key("ok").boolean(read->faults.empty()).key("id").string(read->draft.id).key("faults").beginArray();
  std::string lines;
  for (const gear::SheetFault& fault : read->faults) {
    const std::string why = sentence(Error{fault.code, file + '#' + fault.path, fault.detail});
    out.beginObject().key("path").string(fault.path).key("why").string(why).endObject();
    lines += oneLine(why) + '\n';
  }
  out.endArray().endObject();
  if (read->faults.empty()) lines = "No fault found: " + oneLine(read->draft.name) + " (" + read->draft.id + ").\n";
  return Reply{read->faults.empty() ? kDone : kAnswerNo, out.take(), lines};
}

void write(json::Writer& out, std::string_view key, const SheetDifference& d, const gear::Figure& number, const std::string& text) {
  out.key(key);
  if (gear::unitOf(d.field)) {
    if (number)
      out.integer(*number);
    else
      out.null();
  } else if (text.empty()) {
    out.null();
  } else {
    out.string(text);
  }
}

std::string shown(const SheetDifference& d, const gear::Figure& number, const std::string& text) {
  if (const auto unit = gear::unitOf(d.field)) {
    if (!number) return "none";
    const bool isCounted = *unit == gear::FigureUnit::months || *unit == gear::FigureUnit::points;
    return gear::printFigure(*number, *unit, UnitSystem::metric) + (isCounted ? ' ' + unitName(*unit) : std::string());
  }
  return text.empty() ? "none" : oneLine(text);
}

Result<Reply> compare(const SheetRequest& request, Outside& outside) {
  const Result<gear::ModelSheet> before = findSheet(request.first, request.book, outside);
  if (!before) return tl::unexpected<Error>(before.error());
  const Result<gear::ModelSheet> after = findSheet(request.second, request.book, outside);
  if (!after) return tl::unexpected<Error>(after.error());
  const auto differences = gear::differencesOf(*before, *after);
  json::Writer out;
  out.beginObject().key("same").boolean(differences.empty()).key("differences").beginArray();
  std::string lines;
  for (const SheetDifference& d : differences) {
    const auto unit = gear::unitOf(d.field);
    out.beginObject().key("field").string(code(d.field)).key("item").string(d.item);
    write(out, "before", d, d.from, d.before);
    write(out, "after", d, d.to, d.after);
    if (unit) out.key("unit").string(unitName(*unit));
    out.endObject();
    lines += std::string(code(d.field)) + (d.item.empty() ? "" : ' ' + oneLine(d.item)) + ": " + shown(d, d.from, d.before) + " -> " +
             shown(d, d.to, d.after) + '\n';
  }
  out.endArray().endObject();
  if (differences.empty()) lines = "Both sheets say the same.\n";
  return Reply{differences.empty() ? kDone : kAnswerNo, out.take(), lines};
}

}  // namespace

Result<Reply> sheet(const SheetRequest& request, Outside& outside) {
  switch (request.deed) {
    case SheetDeed::check:
      return checkFile(request.first);
    case SheetDeed::compare:
      return compare(request, outside);
  }
  return fail(ErrorCode::internal);
}

}  // namespace snugline::cli
