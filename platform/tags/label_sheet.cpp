// SPDX-License-Identifier: Apache-2.0
#include "platform/tags/label_sheet.h"

#include <algorithm>
#include <exception>

#include <QFile>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include <ZXing/BarcodeFormat.h>
#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>

namespace snugline::tags {

namespace {

constexpr int kDotsPerInch = 1200;  // of the PDF's own grid; a module is many dots
constexpr double kMarginMm = 10, kFootMm = 8;
constexpr int kQuietModules = 2;  // one is asked (ISO/IEC 16022); two forgive the scissors
constexpr std::size_t kSerialMost = 64;

QPageSize paper() {
  return QPageSize(QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4);
}

}  // namespace

MatrixCode matrixOf(const std::string& text) {
  MatrixCode code;
  try {
    const ZXing::BitMatrix bits = ZXing::MultiFormatWriter(ZXing::BarcodeFormat::DataMatrix).setMargin(0).encode(text, 0, 0);
    code.width = bits.width();
    code.height = bits.height();
    for (int y = 0; y < code.height; ++y)
      for (int x = 0; x < code.width; ++x) code.dark.push_back(bits.get(x, y));
  } catch (const std::exception&) {
    return {};  // a text that no Data Matrix holds
  }
  return code;
}

void drawLabel(QPainter& painter, const QRectF& place, const std::string& serial) {
  const MatrixCode code = matrixOf(serial);
  if (code.width == 0) return;
  const double module =
      std::min(place.height() / (code.height + 2 * kQuietModules), place.width() * 0.45 / (code.width + 2 * kQuietModules));
  const double left = place.left() + kQuietModules * module;
  const double top = place.top() + (place.height() - code.height * module) / 2;
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::black);
  for (int y = 0; y < code.height; ++y) {
    // Runs of dark modules in one stroke, so that no hair of white shows between two.
    for (int x = 0; x < code.width;) {
      const auto isDark = [&](int at) { return at < code.width && code.dark[static_cast<std::size_t>(y * code.width + at)]; };
      const int from = x;
      while (isDark(x)) ++x;
      if (x > from) painter.drawRect(QRectF(left + from * module, top + y * module, (x - from) * module, module));
      if (x == from) ++x;
    }
  }
  const QRectF words(left + (code.width + kQuietModules) * module, place.top(),
                     place.right() - left - (code.width + kQuietModules) * module, place.height());
  QFont font(QStringLiteral("B612"));
  font.setBold(true);
  font.setPixelSize(std::max(1, static_cast<int>(place.height() * 0.2)));
  // The serial on one line, whatever its letters are wide.
  const QString letters = QString::fromStdString(serial);
  while (font.pixelSize() > 2 && QFontMetricsF(font, painter.device()).horizontalAdvance(letters) > words.width())
    font.setPixelSize(font.pixelSize() - 1);
  painter.setFont(font);
  painter.setPen(Qt::black);
  painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft, letters);
}

Result<int> LabelSheetWriter::write(const std::string& path, const std::vector<std::string>& serials, const std::string& title) {
  const QString name = QString::fromStdString(path);
  if (serials.empty()) return fail(ErrorCode::notFound, path, "no serials");
  for (const std::string& serial : serials) {
    if (serial.size() > kSerialMost || matrixOf(serial).width == 0) return fail(ErrorCode::tooLong, serial);
  }
  if (QFile::exists(name)) return fail(ErrorCode::fileExists, path);
  QSaveFile file(name);
  if (!file.open(QIODevice::WriteOnly)) return fail(ErrorCode::cannotWrite, path, file.errorString().toStdString());
  int pages = 0;
  {
    QPdfWriter pdf(&file);
    pdf.setResolution(kDotsPerInch);
    pdf.setPageSize(paper());
    pdf.setPageMargins(QMarginsF(kMarginMm, kMarginMm, kMarginMm, kMarginMm), QPageLayout::Millimeter);
    pdf.setTitle(QString::fromStdString(title));
    pdf.setCreator(QStringLiteral("Snugline"));
    QPainter painter(&pdf);
    const double perMm = kDotsPerInch / 25.4;
    const double wide = pdf.width(), high = pdf.height() - kFootMm * perMm;
    const double cellWide = wide / kLabelColumns, cellHigh = high / kLabelRows, inset = 2 * perMm;
    for (std::size_t i = 0; i < serials.size(); ++i) {
      const int at = static_cast<int>(i % (kLabelColumns * kLabelRows));
      if (at == 0) {
        if (i > 0) pdf.newPage();
        ++pages;
        painter.setPen(QPen(Qt::gray, 0.15 * perMm, Qt::DashLine));
        for (int column = 0; column <= kLabelColumns; ++column)
          painter.drawLine(QPointF(column * cellWide, 0), QPointF(column * cellWide, high));
        for (int row = 0; row <= kLabelRows; ++row) painter.drawLine(QPointF(0, row * cellHigh), QPointF(wide, row * cellHigh));
        QFont font(QStringLiteral("B612"));
        font.setPixelSize(static_cast<int>(3 * perMm));
        painter.setFont(font);
        painter.setPen(Qt::black);
        painter.drawText(QRectF(0, high, wide, kFootMm * perMm), Qt::AlignVCenter | Qt::AlignLeft, QString::fromStdString(title));
      }
      const QRectF cell((at % kLabelColumns) * cellWide, (at / kLabelColumns) * cellHigh, cellWide, cellHigh);
      drawLabel(painter, cell.adjusted(inset, inset, -inset, -inset), serials[i]);
    }
  }
  if (!file.commit()) return fail(ErrorCode::cannotWrite, path, file.errorString().toStdString());
  return pages;
}

}  // namespace snugline::tags
