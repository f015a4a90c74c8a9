// SPDX-License-Identifier: Apache-2.0
// The module that the app loads when labels are first printed, so that a start does not pay for zxing-cpp.
#include <QtGlobal>

#include "platform/tags/label_sheet.h"

extern "C" Q_DECL_EXPORT snugline::ports::LabelSheets* snuglineMakeLabelSheets() { return new snugline::tags::LabelSheetWriter; }
