// SPDX-License-Identifier: Apache-2.0
// Purpose: a sheet of labels with serials of our own as a PDF: each a Data Matrix (written by zxing-cpp) and the serial in letters, cut
// lines between them. Paper as the device's region has it: Letter or A4. Errors: as ports::LabelSheets. Thread: GUI thread (fonts).
#pragma once

#include <vector>

#include <QRectF>

#include "core/ports/tag_port.h"

class QPainter;

namespace snugline::tags {

// Modules of a Data Matrix without its quiet zone, row by row; empty where the text does not go in.
struct MatrixCode {
  int width = 0, height = 0;  // in modules: square, or a flat oblong
  std::vector<bool> dark;
};
[[nodiscard]] MatrixCode matrixOf(const std::string& text);
// One label into its place, in the painter's units.
void drawLabel(QPainter& painter, const QRectF& place, const std::string& serial);

inline constexpr int kLabelColumns = 3, kLabelRows = 8;  // ours: 24 a page

class LabelSheetWriter final : public ports::LabelSheets {
 public:
  [[nodiscard]] Result<int> write(const std::string& path, const std::vector<std::string>& serials, const std::string& title) override;
};

}  // namespace snugline::tags
