// SPDX-License-Identifier: Apache-2.0
// The head from the front: brow, chin cup, straps, and left and right told apart. The athlete's left is at the right of the drawing.
import QtQuick
import Snugline.Tokens

DrawnView {
    id: front

    property real browGap: 25.4           // mm; shown, not dragged here
    property bool browShown: false
    property string browText: ""
    property string browText2: ""
}
