// SPDX-License-Identifier: Apache-2.0
// The log read in pieces, in the order of all facts.
#include "core/book/book_body.h"

namespace snugline::book {

Result<bool> Book::read(Cursor& cursor, std::size_t most, const Reading& visit) {
  return guarded(m_body->path, [&]() -> Result<bool> {
    Body& body = *m_body;
    std::vector<std::uint64_t> from;
    for (const DeviceEntry& device : body.devices) from.push_back(cursor.read[device.device]);
    std::size_t count = 0;
    bool isMore = false;
    const auto done = body.walk(from, [&](const Place& place, std::string_view line, std::string_view) -> Result<void> {
      if (count == most) {
        isMore = true;
        return fail(ErrorCode::notAllowed, body.path);  // ends the walk; nobody sees it
      }
      ++count;
      cursor.read[body.devices[place.device].device] = place.n;
      auto fact = body.decoder.decode(line, body.devices[place.device].device);
      if (!fact) return {};  // verify names it
      const bool counts = body.corrections.empty() || !body.isCorrected(fact->id());
      visit(std::move(*fact), counts);
      return {};
    });
    if (!done && !isMore) return tl::unexpected<Error>(done.error());
    return isMore;
  });
}

}  // namespace snugline::book
