// SPDX-License-Identifier: Apache-2.0
// Purpose: the bytes of small JPEGs made by hand (ITU-T T.81, annex B), and of what must not stand in one.
#pragma once

#include <string>
#include <string_view>

namespace snugline::test {

inline std::string jpegSegment(unsigned char sort, std::string_view body) {
  const std::size_t length = body.size() + 2;
  std::string bytes{static_cast<char>(0xFF), static_cast<char>(sort), static_cast<char>(length >> 8), static_cast<char>(length & 0xFF)};
  bytes.append(body);
  return bytes;
}
inline std::string jfifHead() { return jpegSegment(0xE0, std::string_view("JFIF\0\1\1\0\0\1\0\1\0\0", 14)); }

// A grey picture: one component, tables of nothing but ones, some coded bytes with stuffing and a restart mark. extras stand after the
// head.
inline std::string plainJpeg(int width = 640, int height = 480, std::string_view extras = {}, std::string_view words = "abc") {
  std::string bytes("\xFF\xD8", 2);
  bytes += jfifHead();
  bytes += extras;
  bytes += jpegSegment(0xDB, std::string(1, '\0') + std::string(64, '\1'));
  const std::string frame{8,
                          static_cast<char>(height >> 8),
                          static_cast<char>(height & 0xFF),
                          static_cast<char>(width >> 8),
                          static_cast<char>(width & 0xFF),
                          1,
                          1,
                          0x11,
                          0};
  bytes += jpegSegment(0xC0, frame);
  bytes += jpegSegment(0xC4, std::string(1, '\0') + std::string(1, '\1') + std::string(15, '\0') + std::string(1, '\0'));
  bytes += jpegSegment(0xDA, std::string_view("\1\1\0\0\x3F\0", 6));
  bytes += words;
  bytes += std::string("\xFF\0\x12\xFF\xD0\x34", 6);
  bytes += std::string("\xFF\xD9", 2);
  return bytes;
}
// As a camera writes it: Exif with a GPS directory (CIPA DC-008-2019, 4.6.6), little endian, latitude 41 deg north.
inline std::string exifWithPlace() {
  using std::string_view_literals::operator""sv;
  std::string tiff("II\x2A\0\x08\0\0\0"sv);
  tiff += "\1\0\x25\x88\4\0\1\0\0\0\x1A\0\0\0\0\0\0\0"sv;                     // IFD0: GPSInfo at 26
  tiff += "\2\0\1\0\2\0\2\0\0\0N\0\0\0\2\0\5\0\3\0\0\0\x38\0\0\0\0\0\0\0"sv;  // GPS: ref, latitude at 56
  tiff += "\x29\0\0\0\1\0\0\0\x1E\0\0\0\1\0\0\0\0\0\0\0\1\0\0\0"sv;
  return jpegSegment(0xE1, std::string("Exif\0\0", 6) + tiff);
}

}  // namespace snugline::test
