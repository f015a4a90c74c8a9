// SPDX-License-Identifier: Apache-2.0
#include "demo/generator/scribe.h"

namespace snugline::demo {

void Scribe::write(Result<book::Drafts> drafts, Instant at, const std::string& who) {
  if (!isOk()) return;
  if (!drafts) {
    m_error = drafts.error();
    if (isOk()) m_error.detail = "act";
    return;
  }
  const std::size_t base = m_pending.size();
  for (book::Draft& draft : *drafts) {
    if (draft.about.starts_with('#')) draft.about = '#' + std::to_string(base + std::stoul(draft.about.substr(1)));
  }
  writeNamed(std::move(*drafts), at, who);
}

void Scribe::writeNamed(book::Drafts drafts, Instant at, const std::string& who) {
  if (!isOk()) return;
  for (book::Draft& draft : drafts) m_pending.push_back({std::move(draft), at, who});
}

std::vector<std::string> Scribe::flush() {
  if (m_pending.empty() || !isOk()) return {};
  m_facts += m_pending.size();
  auto ids = m_book.appendBulk(std::move(m_pending));
  m_pending.clear();
  if (ids) return std::move(*ids);
  m_error = ids.error();
  if (isOk()) m_error.detail = "append";
  return {};
}

}  // namespace snugline::demo
