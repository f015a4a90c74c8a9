// SPDX-License-Identifier: Apache-2.0
// Purpose: finding and opening what commands name: model sheets by id or file, Books, small text files, times.
// Errors: those of the readers, with the option or file as place. Thread: one.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/book/book.h"
#include "core/gear/model_sheet.h"
#include "core/gear/strict_json.h"
#include "platform/cli/requests.h"

namespace snugline::cli {

// A path (it has a '/' or ends in ".json") is read as it is; an id is looked up in the Book when one is named, then among the sheets
// installed beside the program.
[[nodiscard]] Result<gear::ModelSheet> findSheet(const std::string& idOrFile, const std::string& bookPath, Outside& outside);

[[nodiscard]] Result<std::unique_ptr<book::Book>> openBook(const std::string& path, book::Access access, Outside& outside);

// The whole file. Errors: cannotRead, tooLong.
[[nodiscard]] Result<std::string> readFile(const std::string& path, std::size_t limitBytes);

// The time of an option, now when it was left out.
[[nodiscard]] Result<Instant> timeOf(const std::string& text, const char* option, Outside& outside);

void writeStrings(json::Writer& out, const char* key, const std::vector<std::string>& values);

}  // namespace snugline::cli
