// SPDX-License-Identifier: Apache-2.0
#include "platform/printing/typesetter.h"

#include <algorithm>

#include <QBuffer>
#include <QFontDatabase>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QTextLayout>

namespace snugline::platform {

namespace {

// The page is set in tenths of a point, so that no figure is rounded to a whole one.
constexpr int kDotsPerPoint = 10;
constexpr double kDots = kDotsPerPoint;
constexpr double kMargin = 54 * kDots, kGap = 8 * kDots;
constexpr double kTitle = 22 * kDots, kHead = 14 * kDots, kBody = 10.5 * kDots, kSmall = 8.5 * kDots, kKey = 22 * kDots;
constexpr double kMarginShare = 0.26;  // of a row, for when and by whom
constexpr double kPictureShare = 0.7, kPictureHigh = 230 * kDots;
constexpr double kLineHeight = 22 * kDots;  // of a line to write on

QString family() {
  static const QString kFamily = [] {
    int loaded = -1;
    for (const char* cut : {"Regular", "Bold"}) {
      const int id = QFontDatabase::addApplicationFont(QStringLiteral(":/qt/qml/Snugline/Tokens/B612-%1.otf").arg(QLatin1String(cut)));
      if (id >= 0) loaded = id;
    }
    return loaded < 0 ? QString() : QFontDatabase::applicationFontFamilies(loaded).value(0);
  }();
  return kFamily;
}

class Setter {
 public:
  Setter(const ports::Paper& paper, QIODevice* device) : m_paper(paper), m_writer(device) {
    m_writer.setPageSize(QPageSize(QPageSize::Letter));
    m_writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    m_writer.setResolution(72 * kDotsPerPoint);
    m_writer.setCreator(QStringLiteral("Snugline"));
    m_writer.setTitle(QString::fromStdString(paper.title));
    m_painter.begin(&m_writer);
    const QRectF page = m_writer.pageLayout().fullRectPixels(m_writer.resolution());
    m_width = page.width() - 2 * kMargin;
    m_bottom = page.height() - kMargin - 2 * kSmall;
    m_y = kMargin;
  }

  int run() {
    put(m_paper.title, kTitle, true, 0, m_width);
    put(m_paper.subtitle, kSmall, false, 0, m_width);
    m_y += kGap;
    for (const ports::PaperPart& part : m_paper.parts) set(part);
    foot();
    m_painter.end();
    return m_page;
  }

 private:
  void set(const ports::PaperPart& part) {
    using Kind = ports::PaperPart::Kind;
    switch (part.kind) {
      case Kind::heading:
        need(3 * kHead);
        m_y += kGap;
        put(part.text, kHead, true, 0, m_width);
        break;
      case Kind::text:
        put(part.text, kBody, false, 0, m_width);
        m_y += kGap / 2;
        break;
      case Kind::key:
        need(3 * kKey);
        m_y += kGap;
        put(part.text, kKey, true, 0, m_width);
        m_y += kGap;
        break;
      case Kind::row: {
        need(2 * kBody);
        const double top = m_y;
        const int page = m_page;
        put(part.margin, kSmall, false, 0, m_width * kMarginShare - kGap);
        const double under = m_y;
        // The margin never fills a page by itself; where it broke one, the text goes on below it.
        if (page == m_page) m_y = top;
        put(part.text, kBody, false, m_width * kMarginShare, m_width * (1 - kMarginShare));
        if (page == m_page) m_y = std::max(m_y, under);
        m_y += kGap / 2;
        break;
      }
      case Kind::picture:
        putPicture(part.picture);
        put(part.text, kSmall, false, 0, m_width);
        m_y += kGap;
        break;
      case Kind::line:
        need(kLineHeight + 2 * kSmall);
        m_y += kLineHeight;
        m_painter.drawLine(QPointF(kMargin, m_y), QPointF(kMargin + m_width * 0.7, m_y));
        m_y += 2 * kDots;
        put(part.text, kSmall, false, 0, m_width);
        break;
    }
  }

  // As large as its place allows; one that cannot be read leaves its words only.
  void putPicture(const std::string& jpeg) {
    const QImage image = QImage::fromData(QByteArray::fromStdString(jpeg), "jpeg");
    if (image.isNull()) return;
    const QSizeF size = QSizeF(image.size()).scaled(m_width * kPictureShare, kPictureHigh, Qt::KeepAspectRatio);
    need(size.height() + 2 * kSmall);
    m_painter.drawImage(QRectF(QPointF(kMargin, m_y), size), image);
    m_y += size.height() + 2 * kDots;
  }
  void need(double height) {
    if (m_y + height > m_bottom) turnPage();
  }
  void turnPage() {
    foot();
    m_writer.newPage();
    ++m_page;
    m_y = kMargin;
  }
  void foot() {
    const QString words = QString::fromStdString(m_paper.foot);
    m_painter.setFont(font(kSmall, false));
    const QRectF place(kMargin, m_bottom + kGap, m_width, 2 * kSmall);
    m_painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, words);
    m_painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, QString::number(m_page));
  }
  static QFont font(double dots, bool isBold) {
    QFont font(family());
    font.setBold(isBold);
    font.setPixelSize(static_cast<int>(dots));
    return font;
  }
  // Line after line, a page turned where the next one does not fit.
  void put(const std::string& utf8, double points, bool isBold, double left, double width) {
    for (const QString& paragraph : QString::fromStdString(utf8).split(QLatin1Char('\n'))) {
      if (paragraph.isEmpty()) {
        if (!utf8.empty()) m_y += points;
        continue;
      }
      QTextOption option;
      option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
      QTextLayout layout(paragraph, font(points, isBold), &m_writer);
      layout.setTextOption(option);
      layout.beginLayout();
      while (true) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) break;
        line.setLineWidth(width);
        line.setPosition({});
        need(line.height());
        line.draw(&m_painter, {kMargin + left, m_y});
        m_y += line.height();
      }
      layout.endLayout();
    }
  }

  const ports::Paper& m_paper;
  QPdfWriter m_writer;
  QPainter m_painter;
  double m_width = 0, m_bottom = 0, m_y = 0;
  int m_page = 1;
};

}  // namespace

std::string setPaper(const ports::Paper& paper, int* pages) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  const int count = Setter(paper, &buffer).run();
  if (pages != nullptr) *pages = count;
  return bytes.toStdString();
}

}  // namespace snugline::platform
