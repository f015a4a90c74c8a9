// SPDX-License-Identifier: Apache-2.0
// `snug demo`: a Book of invented people, the same for the same seed.
#include "platform/cli/files.h"
#include "platform/cli/words.h"

namespace snugline::cli {

Result<Reply> demo(const DemoRequest& request, Outside&) {
  return fail(ErrorCode::notFound, "demo", "this build has no demo world; out " + request.out);
}

}  // namespace snugline::cli
