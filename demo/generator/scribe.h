// SPDX-License-Identifier: Apache-2.0
// Purpose: writes drafts down in large pieces, each at its own time. Drafts of one act name each other as "#0"; here they get their place
// in the piece. Thread: one thread.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "core/book/acts.h"
#include "core/book/book.h"

namespace snugline::demo {

class Scribe {
 public:
  explicit Scribe(book::Book& book) : m_book(book) {}
  [[nodiscard]] const season::Views& views() const { return m_book.views(); }
  // What the next draft is called within the piece: "#17".
  [[nodiscard]] std::string nextName() const { return '#' + std::to_string(m_pending.size()); }

  // Keeps the first error and then does nothing more; ok() tells. at moves on by `step` seconds with each draft.
  void write(Result<book::Drafts> drafts, Instant at, const std::string& who);
  // Drafts that already carry names of the piece.
  void writeNamed(book::Drafts drafts, Instant at, const std::string& who);
  // Ids of the piece, in order.
  std::vector<std::string> flush();
  [[nodiscard]] bool isOk() const { return m_error.code == ErrorCode::internal && m_error.detail.empty(); }
  [[nodiscard]] const Error& error() const { return m_error; }
  [[nodiscard]] std::uint64_t facts() const { return m_facts; }

 private:
  book::Book& m_book;
  std::vector<book::BulkDraft> m_pending;
  std::uint64_t m_facts = 0;
  Error m_error;
};

}  // namespace snugline::demo
