// SPDX-License-Identifier: Apache-2.0
#include "core/book/roster_text.h"

#include <csv.h>
#include <iconv.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <memory>

namespace snugline::book {

namespace {

constexpr std::size_t kRowLimit = 16 * 1024;  // bytes of one row: more is a quote that was never closed (ours)
constexpr std::size_t kBadQuotesMost = 1000;  // after so many the file is no list (ours)

struct Magic {
  std::string_view start, name;
};
// First bytes as their own specifications give them.
constexpr std::array<Magic, 11> kMagics{
    {{"\x89PNG\r\n\x1a\n", "a PNG picture"},
     {"\xff\xd8\xff", "a JPEG picture"},
     {"GIF8", "a GIF picture"},
     {"PK\x03\x04", "a ZIP archive or a spreadsheet in its own format (save it as CSV)"},
     {"PK\x05\x06", "an empty ZIP archive"},
     {"%PDF-", "a PDF document"},
     {"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "an old spreadsheet or document in its own format (save it as CSV)"},
     {"\x1f\x8b", "a gzip archive"},
     {"\x28\xb5\x2f\xfd", "a Zstandard archive"},
     {"SQLite format 3", "a SQLite database"},
     {"{\\rtf", "a rich text document"}}};

Result<std::string> convert(std::string_view bytes, const char* from, const std::string& file) {
  const iconv_t handle = iconv_open("UTF-8", from);
  if (handle == reinterpret_cast<iconv_t>(-1))
    return fail(ErrorCode::internal, file, std::string("iconv ") + from);  // NOLINT: iconv's own error value
  const std::unique_ptr<void, int (*)(iconv_t)> close(handle, iconv_close);
  std::string out;
  std::string input(bytes);
  char* in = input.data();
  std::size_t left = input.size();
  std::array<char, 4096> chunk{};
  while (left > 0) {
    char* to = chunk.data();
    std::size_t room = chunk.size();
    const std::size_t answer = iconv(handle, &in, &left, &to, &room);
    const bool isFull = answer == static_cast<std::size_t>(-1) && errno == E2BIG;
    out.append(chunk.data(), chunk.size() - room);
    if (answer == static_cast<std::size_t>(-1) && !isFull) {
      return fail(ErrorCode::notText, file, std::string("byte ") + std::to_string(input.size() - left) + " is not " + from);
    }
  }
  return out;
}

struct Nuls {
  std::size_t even = 0, odd = 0;
};
Nuls countNuls(std::string_view bytes) {
  Nuls nuls;
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    if (bytes[i] != '\0') continue;
    ++(i % 2 == 0 ? nuls.even : nuls.odd);
  }
  return nuls;
}

// Latin letters in UTF-16 have a NUL in every other byte; a file with a few NULs strewn in is no text.
const char* guessUtf16(std::string_view bytes, Nuls nuls) {
  if (bytes.size() < 4 || bytes.size() % 2 != 0) return nullptr;
  const std::size_t half = bytes.size() / 2;
  if (nuls.even == 0 && nuls.odd * 10 >= half * 7) return "UTF-16LE";
  if (nuls.odd == 0 && nuls.even * 10 >= half * 7) return "UTF-16BE";
  return nullptr;
}

// Text of a list holds few control characters; a binary file of unknown kind holds many. A few in a short list are a damaged
// tag's, and are refused with their line.
constexpr std::ptrdiff_t kStrayControls = 16;  // ours
bool isMostlyControl(std::string_view utf8) {
  const auto count = std::count_if(utf8.begin(), utf8.end(), [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 && c != '\t' && c != '\r' && c != '\n' && c != '\x1d';  // 29 separates the elements of a GS1 tag
  });
  return count > kStrayControls && static_cast<std::size_t>(count) * 50 > utf8.size();
}

class RowParser {
 public:
  RowParser(std::string_view text, char delimiter, std::size_t most) : m_text(text), m_delimiter(delimiter), m_most(most) {}
  ~RowParser() { drop(); }
  RowParser(const RowParser&) = delete;
  RowParser& operator=(const RowParser&) = delete;

  Result<std::vector<CellRow>> run(const std::string& file) {
    while (m_at < m_text.size() && m_rows.size() < m_most) {
      if (!start()) return fail(ErrorCode::outOfMemory, file);
      const bool isGood = feed();
      if (csv_error(&m_parser) == CSV_ENOMEM || csv_error(&m_parser) == CSV_ETOOBIG) return fail(ErrorCode::outOfMemory, file);
      drop();
      if (isGood) break;
      if (++m_bad > kBadQuotesMost)
        return fail(ErrorCode::badRow, file + ":" + std::to_string(m_rowLine), "quotes that do not match, again and again");
      skipBadLine();
    }
    if (m_rows.size() > m_most) m_rows.resize(m_most);
    return std::move(m_rows);
  }

 private:
  static void onCell(void* cell, std::size_t size, void* self) {
    static_cast<RowParser*>(self)->m_cells.emplace_back(static_cast<const char*>(cell), size);
  }
  static void onRow(int, void* self) { static_cast<RowParser*>(self)->endRow(); }

  bool start() {
    if (csv_init(&m_parser, CSV_STRICT | CSV_STRICT_FINI) != 0) return false;
    m_isOpen = true;
    csv_set_delim(&m_parser, static_cast<unsigned char>(m_delimiter));
    m_cells.clear();
    m_isInRow = false;
    return true;
  }
  void drop() {
    if (m_isOpen) csv_free(&m_parser);
    m_isOpen = false;
  }
  void endRow() {
    m_rows.push_back({m_rowLine, std::move(m_cells), false});
    m_cells.clear();
    m_isInRow = false;
  }
  // libcsv tells no places, so it is fed a byte at a time and lines are counted here.
  bool feed() {
    for (; m_at < m_text.size() && m_rows.size() < m_most; ++m_at) {
      const char c = m_text[m_at];
      const bool isEnd = c == '\n' || c == '\r';
      if (!m_isInRow && !isEnd) {
        m_isInRow = true;
        m_rowLine = m_line;
        m_rowStart = m_at;
      }
      if (m_isInRow && m_at - m_rowStart > kRowLimit) return false;
      if (csv_parse(&m_parser, &c, 1, onCell, onRow, this) != 1) return false;
      if (c == '\n' || (c == '\r' && (m_at + 1 == m_text.size() || m_text[m_at + 1] != '\n'))) ++m_line;
    }
    if (m_rows.size() >= m_most) return true;
    return csv_fini(&m_parser, onCell, onRow, this) == 0;
  }
  void skipBadLine() {
    const std::size_t end = std::min(m_text.find_first_of("\r\n", m_rowStart), m_text.size());
    m_rows.push_back({m_rowLine, {std::string(m_text.substr(m_rowStart, std::min<std::size_t>(end - m_rowStart, 120)))}, true});
    m_at = end;
    m_line = m_rowLine;  // the line's own end is read and counted next
  }

  std::string_view m_text;
  char m_delimiter;
  std::size_t m_most;
  csv_parser m_parser{};
  bool m_isOpen = false, m_isInRow = false;
  std::size_t m_at = 0, m_line = 1, m_rowLine = 1, m_rowStart = 0, m_bad = 0;
  std::vector<std::string> m_cells;
  std::vector<CellRow> m_rows;
};

}  // namespace

Result<PlainText> decodeText(std::string_view bytes, const std::string& file, std::size_t limit) {
  if (bytes.size() > limit) return fail(ErrorCode::tooLong, file, std::to_string(bytes.size()) + ", " + std::to_string(limit));
  for (const Magic& magic : kMagics) {
    if (bytes.starts_with(magic.start)) return fail(ErrorCode::notText, file, std::string(magic.name));
  }
  const auto as = [&](std::string_view rest, const char* from, const char* name) -> Result<PlainText> {
    auto utf8 = convert(rest, from, file);
    if (!utf8) return tl::unexpected(utf8.error());
    if (isMostlyControl(*utf8)) return fail(ErrorCode::notText, file, "control characters");
    return PlainText{std::move(*utf8), name};
  };
  if (bytes.starts_with("\xef\xbb\xbf")) return as(bytes.substr(3), "UTF-8", "UTF-8");
  if (bytes.starts_with("\xff\xfe")) return as(bytes.substr(2), "UTF-16LE", "UTF-16LE");
  if (bytes.starts_with("\xfe\xff")) return as(bytes.substr(2), "UTF-16BE", "UTF-16BE");
  if (const Nuls nuls = countNuls(bytes); nuls.even + nuls.odd > 0) {
    if (const char* name = guessUtf16(bytes, nuls)) return as(bytes, name, name);
    return fail(ErrorCode::notText, file, "NUL bytes, first at " + std::to_string(bytes.find('\0')));
  }
  if (auto utf8 = as(bytes, "UTF-8", "UTF-8"); utf8 || utf8.error().detail == "control characters") return utf8;
  return as(bytes, "WINDOWS-1252", "windows-1252");
}

Result<std::vector<CellRow>> parseCells(std::string_view utf8, char delimiter, const std::string& file, std::size_t most) {
  return RowParser(utf8, delimiter, most).run(file);
}

}  // namespace snugline::book
