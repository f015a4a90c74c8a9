// SPDX-License-Identifier: Apache-2.0
#include "core/gear/ndef.h"

#include <algorithm>
#include <array>
#include <new>
#include <optional>

#include "core/gear/tag.h"
#include "core/gear/utf8.h"

namespace snugline::gear {

namespace {

// NFC Forum, URI Record Type Definition 1.0, table 3, by the first byte.
constexpr std::array<std::string_view, 36> kBeginnings{"",
                                                       "http://www.",
                                                       "https://www.",
                                                       "http://",
                                                       "https://",
                                                       "tel:",
                                                       "mailto:",
                                                       "ftp://anonymous:anonymous@",
                                                       "ftp://ftp.",
                                                       "ftps://",
                                                       "sftp://",
                                                       "smb://",
                                                       "nfs://",
                                                       "ftp://",
                                                       "dav://",
                                                       "news:",
                                                       "telnet://",
                                                       "imap:",
                                                       "rtsp://",
                                                       "urn:",
                                                       "pop:",
                                                       "sip:",
                                                       "sips:",
                                                       "tftp:",
                                                       "btspp://",
                                                       "btl2cap://",
                                                       "btgoep://",
                                                       "tcpobex://",
                                                       "irdaobex://",
                                                       "file://",
                                                       "urn:epc:id:",
                                                       "urn:epc:tag:",
                                                       "urn:epc:pat:",
                                                       "urn:epc:raw:",
                                                       "urn:epc:",
                                                       "urn:nfc:"};

constexpr unsigned kUtf16Bit = 0x80, kLanguageBits = 0x3F;  // of a text record's first byte (RTD Text 1.0, 3.2.1)

unsigned octetAt(std::string_view bytes, std::size_t at) { return static_cast<unsigned char>(bytes[at]); }

void append(std::string& text, std::uint32_t point) {
  const auto add = [&](std::uint32_t byte) { text += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (point < 0x80) {
    add(point);
  } else if (point < 0x800) {
    add(0xC0U | point >> 6U);
    add(0x80U | (point & 0x3FU));
  } else if (point < 0x10000) {
    add(0xE0U | point >> 12U);
    add(0x80U | (point >> 6U & 0x3FU));
    add(0x80U | (point & 0x3FU));
  } else {
    add(0xF0U | point >> 18U);
    add(0x80U | (point >> 12U & 0x3FU));
    add(0x80U | (point >> 6U & 0x3FU));
    add(0x80U | (point & 0x3FU));
  }
}

// Big endian, unless a byte order mark says otherwise (RFC 2781, 4.3).
std::optional<std::string> fromUtf16(std::string_view bytes) {
  if (bytes.size() % 2 != 0) return std::nullopt;
  std::size_t high = 0;
  if (bytes.size() >= 2) {
    const bool isLittle = octetAt(bytes, 0) == 0xFF && octetAt(bytes, 1) == 0xFE;
    const bool isBig = octetAt(bytes, 0) == 0xFE && octetAt(bytes, 1) == 0xFF;
    if (isLittle) high = 1;
    if (isLittle || isBig) bytes.remove_prefix(2);
  }
  std::string text;
  for (std::size_t i = 0; i < bytes.size(); i += 2) {
    const std::uint32_t unit = octetAt(bytes, i + high) << 8U | octetAt(bytes, i + 1 - high);
    if (unit < 0xD800 || unit > 0xDFFF) {
      append(text, unit);
      continue;
    }
    if (unit > 0xDBFF || i + 3 >= bytes.size()) return std::nullopt;
    const std::uint32_t second = octetAt(bytes, i + 2 + high) << 8U | octetAt(bytes, i + 3 - high);
    if (second < 0xDC00 || second > 0xDFFF) return std::nullopt;
    append(text, 0x10000U + ((unit - 0xD800U) << 10U) + (second - 0xDC00U));
    i += 2;
  }
  return text;
}

tl::expected<std::string, NdefTrouble> text(std::string_view payload) {
  if (payload.empty()) return tl::unexpected<NdefTrouble>(NdefTrouble::cutShort);
  const unsigned status = octetAt(payload, 0);
  const std::size_t language = status & kLanguageBits;
  if (payload.size() < 1 + language) return tl::unexpected<NdefTrouble>(NdefTrouble::cutShort);
  payload.remove_prefix(1 + language);
  if ((status & kUtf16Bit) != 0) {
    auto read = fromUtf16(payload);
    if (!read) return tl::unexpected<NdefTrouble>(NdefTrouble::notText);
    return std::move(*read);
  }
  if (!isUtf8(payload)) return tl::unexpected<NdefTrouble>(NdefTrouble::notText);
  return std::string(payload);
}

tl::expected<std::string, NdefTrouble> address(std::string_view payload) {
  if (payload.empty()) return tl::unexpected<NdefTrouble>(NdefTrouble::cutShort);
  const unsigned beginning = octetAt(payload, 0);
  if (beginning >= kBeginnings.size()) return tl::unexpected<NdefTrouble>(NdefTrouble::otherKind);
  payload.remove_prefix(1);
  if (!isUtf8(payload)) return tl::unexpected<NdefTrouble>(NdefTrouble::notText);
  return std::string(kBeginnings[beginning]) + std::string(payload);
}

bool isAddress(const NdefRecord& record) {
  return record.format == NdefFormat::address || (record.format == NdefFormat::wellKnown && record.type == "U");
}

}  // namespace

tl::expected<std::string, NdefTrouble> textOf(const NdefRecord& record) {
  if (record.payload.size() > kNdefTextMost || record.type.size() > kNdefTextMost) return tl::unexpected<NdefTrouble>(NdefTrouble::tooLong);
  switch (record.format) {
    case NdefFormat::empty:
      return tl::unexpected<NdefTrouble>(NdefTrouble::nothing);
    case NdefFormat::wellKnown:
      if (record.type == "T") return text(record.payload);
      if (record.type == "U") return address(record.payload);
      return tl::unexpected<NdefTrouble>(record.type == "Sp" ? NdefTrouble::smartPoster : NdefTrouble::otherKind);
    case NdefFormat::address:  // the type is the address, whatever the payload is
      if (!isUtf8(record.type)) return tl::unexpected<NdefTrouble>(NdefTrouble::notText);
      return record.type;
    case NdefFormat::media:
    case NdefFormat::external:
    case NdefFormat::unknown:
    case NdefFormat::unchanged:
    case NdefFormat::reserved:
      return tl::unexpected<NdefTrouble>(NdefTrouble::otherKind);
  }
  return tl::unexpected<NdefTrouble>(NdefTrouble::otherKind);
}

tl::expected<std::string, NdefRefusal> readNdef(const std::vector<NdefRecord>& records, Day today) try {
  NdefRefusal refusal;
  std::optional<std::string> lastResort;
  const auto note = [&](NdefTrouble why, Error error) {
    if (refusal.why == NdefTrouble::nothing) refusal = {why, std::move(error)};
  };
  const std::size_t count = std::min(records.size(), kNdefRecordsMost);
  for (std::size_t i = 0; i < count; ++i) {
    auto said = textOf(records[i]);
    if (said && said->empty()) continue;
    if (!said) {
      note(said.error(), {});
      continue;
    }
    const auto tag = parseTag(*said, today);
    if (!tag) {
      note(NdefTrouble::notATag, tag.error());
    } else if (tag->form != TagForm::plain || !isAddress(records[i])) {
      return std::move(*said);
    } else if (!lastResort) {
      lastResort = std::move(*said);
    }
  }
  if (lastResort) return std::move(*lastResort);
  return tl::unexpected<NdefRefusal>(std::move(refusal));
} catch (const std::bad_alloc&) {
  return tl::unexpected<NdefRefusal>(NdefRefusal{NdefTrouble::notATag, Error{ErrorCode::outOfMemory, {}, {}}});
}

}  // namespace snugline::gear
