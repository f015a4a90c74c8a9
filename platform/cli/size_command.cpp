// SPDX-License-Identifier: Apache-2.0
// `snug size`: from tape readings to a shell size, with its odds.
#include <array>
#include <cstdio>

#include "core/fit/size.h"
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {
namespace {

// "575mm,577mm" once or several times. A decimal comma would part a reading in two; the halves are refused for want of a unit.
Result<std::vector<Length>> readings(const std::vector<std::string>& options) {
  std::vector<Length> lengths;
  for (const std::string& option : options) {
    std::size_t from = 0;
    while (from <= option.size()) {
      const std::size_t to = std::min(option.find(',', from), option.size());
      const Result<Length> length = parseLength(option.substr(from, to - from), "--tape");
      if (!length) return tl::unexpected<Error>(length.error());
      lengths.push_back(*length);
      from = to + 1;
    }
  }
  return lengths;
}

std::string json(const fit::SizeAnswer& a) {
  json::Writer out;
  out.beginObject();
  out.key("size").string(a.isRetake ? "" : a.size.empty() ? "none" : a.size);
  out.key("circumference_mm").real(a.circumference.mm(), 3);
  out.key("uncertainty_mm").real(a.uncertainty.mm(), 3);
  out.key("odds").beginObject();
  if (!a.isRetake) {
    for (const fit::SizeOdds& o : a.odds) out.key(o.size).real(o.odds, 9);
    out.key("none").real(a.none, 9);
  }
  out.endObject();
  out.key("bands").beginObject();
  for (const fit::SizeOdds& o : a.odds) out.key(o.size).beginArray().real(o.low.mm(), 3).real(o.high.mm(), 3).endArray();
  out.endObject();
  out.key("between").boolean(a.isBetween);
  out.key("retake").boolean(a.isRetake);
  out.key("start_with").string(a.startWith);
  out.key("why").string(sentence(a));
  out.endObject();
  return out.take();
}

std::string text(const fit::SizeAnswer& a) {
  std::string lines = sentence(a) + ".\n";
  if (a.isRetake) return lines + kCaution + '\n';
  for (const fit::SizeOdds& o : a.odds) {
    std::array<char, 128> line{};
    std::snprintf(line.data(), line.size(), "  %-6s %s to %s  %5.1f %%\n", o.size.c_str(), print(o.low, UnitSystem::metric).c_str(),
                  print(o.high, UnitSystem::metric).c_str(), o.odds * 100.0);
    lines += line.data();
  }
  return lines + kCaution + '\n';
}

}  // namespace

Result<Reply> size(const SizeRequest& request, Outside& outside) {
  const Result<std::vector<Length>> lengths = readings(request.tape);
  if (!lengths) return tl::unexpected<Error>(lengths.error());
  const Result<gear::ModelSheet> sheet = findSheet(request.sheet, request.book, outside);
  if (!sheet) return tl::unexpected<Error>(sheet.error());
  Result<fit::SizeAnswer> answer = fit::sizeOf(*sheet, *lengths);
  if (!answer) {
    Error error = answer.error();
    if (error.place.empty()) error.place = "--tape";
    return tl::unexpected<Error>(error);
  }
  return Reply{kDone, json(*answer), text(*answer)};
}

}  // namespace snugline::cli
