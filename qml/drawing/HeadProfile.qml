// SPDX-License-Identifier: Apache-2.0
// The head from its left side with the helmet over it. The front edge can be dragged: the brow gap is read off in mm.
import QtQuick
import Snugline.Tokens

DrawnView {
    id: profile

    // Brow gap, mm above the eyebrows. The caller keeps the value and the words of both units.
    property real browGap: 25.4
    property bool browKnown: true         // false: not read yet; drawn at the target without a figure
    property bool browShown: false        // dimension lines
    property bool browDraggable: false
    property real browLow: 19
    property real browHigh: 32
    property real browTarget: 25.4
    property real browFrom: 0
    property real browTo: 60
    property string browText: ""          // "25 mm"
    property string browText2: ""         // "1 in"

    signal browGapMoved(real mm)
    signal browGapReleased(real mm)
}
