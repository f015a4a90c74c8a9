// SPDX-License-Identifier: Apache-2.0
#include "platform/sharing/square_code.h"

#include <exception>

#include <ZXing/BarcodeFormat.h>
#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>

namespace snugline::sharing {

namespace {
constexpr int kCorrection = 2;  // of the library's 0 to 8: level M, 15 % of the code may be unreadable (ISO/IEC 18004)
}

std::vector<std::string> squareCode(const std::string& text) {
  std::vector<std::string> rows;
  try {
    const ZXing::BitMatrix code =
        ZXing::MultiFormatWriter(ZXing::BarcodeFormat::QRCode).setMargin(0).setEccLevel(kCorrection).encode(text, 0, 0);
    for (int y = 0; y < code.height(); ++y) {
      std::string& row = rows.emplace_back();
      for (int x = 0; x < code.width(); ++x) row += code.get(x, y) ? '1' : '0';
    }
  } catch (const std::exception&) {
    return {};
  }
  return rows;
}

}  // namespace snugline::sharing
