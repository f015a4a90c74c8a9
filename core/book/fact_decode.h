// SPDX-License-Identifier: Apache-2.0
// Purpose: the codec's reading half with memory of its own, for whoever decodes many lines. Errors: as decode() in fact.h.
// Thread: one decoder, one thread.
#pragma once

#include "core/book/fact.h"
#include "core/book/line_reader.h"

namespace snugline::book {

class FactDecoder {
 public:
  [[nodiscard]] Result<Fact> decode(std::string_view line, const std::string& name);

 private:
  LineParser m_parser;
};

}  // namespace snugline::book
