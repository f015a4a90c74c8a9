// SPDX-License-Identifier: Apache-2.0
// Purpose: everything the Book says about one athlete, as facts in their order: those about the athlete and every answer of their checks.
// Ways out of the app leave out what somebody said about how they feel: it stays out of exports. Errors: those of Book::history.
// Thread: the Book's for wholeRecord; the rest are plain functions.
#pragma once

#include <string>
#include <vector>

#include "core/book/book.h"

namespace snugline::book {

[[nodiscard]] Result<std::vector<Fact>> wholeRecord(Book& book, const std::string& athlete);
// Without words about feeling unwell and their acknowledgements.
[[nodiscard]] std::vector<Fact> forExport(std::vector<Fact> facts);
// Family and given name out of the facts about this athlete (season/privacy.h says when).
void keepNameBack(std::vector<Fact>& facts, const std::string& athlete);

}  // namespace snugline::book
