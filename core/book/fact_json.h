// SPDX-License-Identifier: Apache-2.0
// Purpose: the parts of a fact's body that view rows hold too, written and read alike. Thread: plain functions.
#pragma once

#include "core/book/fact.h"
#include "core/book/line_reader.h"
#include "core/book/line_writer.h"

namespace snugline::book {

// Members of one answer, inside an object that the caller opened.
void writeAnswer(LineWriter& out, const fit::Answer& answer);
[[nodiscard]] fit::Answer readAnswer(ObjectReader& in);
// Members of a code's hash, inside an object that the caller opened.
void writeCode(LineWriter& out, const season::CodeHash& code);
[[nodiscard]] season::CodeHash readCode(ObjectReader& in);
// Only the words that are written count: a synonym would not come out again as it went in.
[[nodiscard]] std::optional<fit::Feels> feelsWord(std::string_view word);
[[nodiscard]] std::optional<gear::LabelKind> labelKindFromCode(std::string_view word);

}  // namespace snugline::book
