// SPDX-License-Identifier: Apache-2.0
#include "platform/cli/files.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

#include "core/season/sheet_chain.h"

namespace snugline::cli {
namespace {

bool isPath(const std::string& text) { return text.find('/') != std::string::npos || text.ends_with(".json"); }

// An id is used as part of a file name, so nothing but the letters of an id gets through.
bool isId(const std::string& text) {
  return !text.empty() && text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

const gear::ModelSheet* sheetIn(const season::Views& views, const std::string& id) {
  if (const gear::ModelSheet* const exactly = views.sheet(id)) return exactly;
  const season::SheetRecord* const found = season::sheetById(views, id);
  return found == nullptr ? nullptr : found->sheet.get();
}

}  // namespace

Result<gear::ModelSheet> findSheet(const std::string& idOrFile, const std::string& bookPath, Outside& outside) {
  if (isPath(idOrFile)) return gear::readSheetFile(idOrFile);
  if (!bookPath.empty()) {
    const auto opened = openBook(bookPath, book::Access::readOnly, outside);
    if (!opened) return tl::unexpected<Error>(opened.error());
    if (const gear::ModelSheet* const sheet = sheetIn((*opened)->views(), idOrFile)) return *sheet;
  }
  if (isId(idOrFile)) {
    const std::string installed = outside.programFolder + "/../share/snugline/sheets/" + idOrFile + ".json";
    std::error_code ignored;
    if (std::filesystem::exists(installed, ignored)) return gear::readSheetFile(installed);
  }
  return fail(ErrorCode::notFound, "--sheet", idOrFile + "; a model sheet's id or a file ending in .json");
}

Result<std::unique_ptr<book::Book>> openBook(const std::string& path, book::Access access, Outside& outside) {
  if (path.empty()) return fail(ErrorCode::notFound, "--book", "the name of a file");
  return book::Book::open(path, access, outside.keys, outside.clock);
}

Result<std::string> readFile(const std::string& path, std::size_t limitBytes) {
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored)) return fail(ErrorCode::cannotRead, path, "is a folder");
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "rb"), &std::fclose);
  if (!file) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
  std::string text(limitBytes + 1, '\0');
  text.resize(std::fread(text.data(), 1, text.size(), file.get()));
  if (std::ferror(file.get()) != 0) return fail(ErrorCode::cannotRead, path, "reading stopped");
  if (text.size() > limitBytes) return fail(ErrorCode::tooLong, path, "more than " + std::to_string(limitBytes) + " bytes");
  return text;
}

Result<Instant> timeOf(const std::string& text, const char* option, Outside& outside) {
  if (text.empty()) return outside.clock.now();
  return parseInstant(text, option);
}

void writeStrings(json::Writer& out, const char* key, const std::vector<std::string>& values) {
  out.key(key).beginArray();
  for (const std::string& value : values) out.string(value);
  out.endArray();
}

}  // namespace snugline::cli
