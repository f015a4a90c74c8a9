// SPDX-License-Identifier: Apache-2.0
// The unit by itself with the seven points as places that can be touched, by their codes.
import QtQuick
import Snugline.Tokens

DrawnView {
    id: unit

    touchParts: PartWords.points
    field: Qt.size(600, 520)
}
