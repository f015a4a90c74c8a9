// SPDX-License-Identifier: Apache-2.0
#include "core/book/line_writer.h"

#include "core/gear/utf8.h"

namespace snugline::book {

void LineWriter::quote(std::string_view v) {
  constexpr char kHex[] = "0123456789abcdef";
  m_text += '"';
  bool isAscii = true;
  std::size_t from = 0;
  for (std::size_t i = 0; i < v.size(); ++i) {
    const auto c = static_cast<unsigned char>(v[i]);
    if (c >= 0x80) isAscii = false;
    if (c >= 0x20 && c != '"' && c != '\\') continue;
    m_text.append(v.substr(from, i - from));
    from = i + 1;
    m_text += '\\';
    if (c == '"' || c == '\\') {
      m_text += static_cast<char>(c);
    } else if (c == '\n') {
      m_text += 'n';
    } else if (c == '\r') {
      m_text += 'r';
    } else if (c == '\t') {
      m_text += 't';
    } else {
      m_text += "u00";
      m_text += kHex[c >> 4];
      m_text += kHex[c & 15];
    }
  }
  m_text.append(v.substr(from));
  m_text += '"';
  if (!isAscii && !gear::isUtf8(v)) m_isText = false;
}

}  // namespace snugline::book
