// SPDX-License-Identifier: Apache-2.0
// The drawing for one grouped view of a look: "front" (brow, chin, straps), "side" (ears, nape, jaw), "hold" (crown, sides, hold).
import QtQuick

DrawnView {
    id: look

    property string view: "front"
}
