// SPDX-License-Identifier: Apache-2.0
#include "demo/fakes/painted_helmet.h"

#include <QImage>
#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <QRadialGradient>

namespace snugline::demo {

namespace {
constexpr int kWide = 1600, kHigh = 1200;

QPainterPath shellPath() {
  QPainterPath shell(QPointF(330, 780));
  shell.cubicTo(300, 420, 560, 210, 860, 220);
  shell.cubicTo(1180, 230, 1350, 470, 1330, 760);
  shell.cubicTo(1320, 880, 1260, 950, 1180, 960);
  shell.cubicTo(1120, 965, 1100, 900, 1040, 880);
  shell.cubicTo(920, 850, 860, 780, 800, 770);
  shell.cubicTo(650, 750, 480, 790, 330, 780);
  return shell;
}
}  // namespace

ports::ColourPicture paintedHelmet() {
  QImage image(kWide, kHigh, QImage::Format_RGB888);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  QLinearGradient wall(0, 0, 0, 760);
  wall.setColorAt(0, QColor(214, 208, 194));
  wall.setColorAt(1, QColor(188, 180, 164));
  painter.fillRect(0, 0, kWide, 760, wall);
  QLinearGradient bench(0, 760, 0, kHigh);
  bench.setColorAt(0, QColor(139, 108, 74));
  bench.setColorAt(1, QColor(96, 72, 48));
  painter.fillRect(0, 760, kWide, kHigh - 760, bench);
  painter.setPen(Qt::NoPen);
  painter.setBrush(QColor(0, 0, 0, 70));
  painter.drawEllipse(QRectF(300, 900, 1080, 120));
  const QPainterPath shell = shellPath();
  QRadialGradient light(QPointF(700, 400), 800);
  light.setColorAt(0, QColor(120, 148, 168));
  light.setColorAt(0.5, QColor(48, 78, 100));
  light.setColorAt(1, QColor(18, 34, 48));
  painter.setBrush(light);
  painter.setPen(QPen(QColor(12, 22, 32), 6));
  painter.drawPath(shell);
  painter.setBrush(QColor(16, 18, 20));
  painter.drawEllipse(QPointF(1010, 700), 62, 70);
  painter.setBrush(QColor(160, 160, 156));
  for (const QPointF screw : {QPointF(560, 700), QPointF(800, 300), QPointF(1180, 860)}) painter.drawEllipse(screw, 15, 15);
  // The crack, from the rim upwards, with a branch.
  painter.setBrush(Qt::NoBrush);
  const QPolygonF crack{{QPointF(690, 762), QPointF(704, 690), QPointF(684, 640), QPointF(716, 560), QPointF(700, 500), QPointF(728, 430)}};
  const QPolygonF branch{{QPointF(716, 560), QPointF(760, 530), QPointF(772, 500)}};
  for (const auto& [colour, width] : {std::pair(QColor(205, 215, 220), 9), std::pair(QColor(5, 8, 10), 5)}) {
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(crack);
    painter.drawPolyline(branch);
  }
  painter.end();
  ports::ColourPicture seen{kWide, kHigh, {}};
  for (int y = 0; y < kHigh; ++y) seen.rgb.insert(seen.rgb.end(), image.constScanLine(y), image.constScanLine(y) + kWide * 3);
  return seen;
}

}  // namespace snugline::demo
