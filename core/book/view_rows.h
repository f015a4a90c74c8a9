// SPDX-License-Identifier: Apache-2.0
// Purpose: records as rows of the view tables and back: canonical JSON, so that equal records are equal bytes. A row that cannot be read
// gives nothing; the Book then makes its views anew. Thread: plain functions; RowReader is confined to one thread.
#pragma once

#include <string>
#include <string_view>

#include "core/book/fold.h"
#include "core/book/line_reader.h"

namespace snugline::book {

[[nodiscard]] std::string rowOf(const season::TeamRecord& record);
[[nodiscard]] std::string rowOf(const season::PersonRecord& record);
[[nodiscard]] std::string rowOf(const season::SheetRecord& record);
[[nodiscard]] std::string rowOf(const season::AthleteRecord& record, const AthleteNotes& notes);
[[nodiscard]] std::string rowOf(const season::UnitRecord& record, const UnitNotes& notes);
[[nodiscard]] std::string rowOf(const season::CheckRecord& record, const CheckNotes& notes);

// Reads one row into the views. Sheets come before checks, whose states depend on them.
class RowReader {
 public:
  [[nodiscard]] bool read(Entity entity, std::string_view key, std::string_view value, Folded& into);

 private:
  LineParser m_parser;
};

}  // namespace snugline::book
