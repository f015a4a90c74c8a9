// SPDX-License-Identifier: Apache-2.0
// `snug demo`: a Book of invented people, the same for the same seed.
#include "platform/cli/files.h"
#include "platform/cli/words.h"

#ifdef SNUGLINE_HAS_DEMO
#include "demo/generator/demo_world.h"
#endif

namespace snugline::cli {

Result<Reply> demo(const DemoRequest& request, Outside& outside) {
#ifdef SNUGLINE_HAS_DEMO
  demo::Options options;
  options.athletes = request.athletes;
  options.seasons = request.seasons;
  options.seed = request.seed;
  const Result<std::uint64_t> facts = demo::makeDemo(request.out, options, outside.keys);
  if (!facts) return tl::unexpected<Error>(facts.error());
  json::Writer out;
  const std::string now = print(demo::nowOf(options));
  out.beginObject().key("facts").integer(static_cast<std::int64_t>(*facts)).key("now").string(now).endObject();
  return Reply{kDone, out.take(),
               "Wrote " + request.out + ": " + std::to_string(*facts) + " facts. The board as the demo sees it: snug due --book " +
                   request.out + " --at " + now + '\n'};
#else
  static_cast<void>(outside);
  return fail(ErrorCode::notFound, "demo", "this build has no demo world, " + request.out + " was not made");
#endif
}

}  // namespace snugline::cli
