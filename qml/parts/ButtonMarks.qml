// SPDX-License-Identifier: Apache-2.0
// What a BigButton shows over its ground: the second frame of a "danger", and the bar along the foot of a "quiet" or of one that is held.
import QtQuick
import Snugline.Tokens

Item {
    id: marks

    property string kind: ""
    property bool down: false
    property color color: Theme.ink
    property color frameColor: Theme.brick

    Rectangle {
        visible: marks.kind === "danger"
        anchors.fill: parent
        anchors.margins: Theme.stroke * 2
        radius: Theme.radius - Theme.stroke * 2
        color: "transparent"
        border.width: Theme.hairlineWidth
        border.color: marks.frameColor
    }
    Rectangle {                           // what the finger sees at once
        visible: marks.down || marks.kind === "quiet"
        x: Theme.gap
        width: parent.width - 2 * Theme.gap
        height: marks.down ? Theme.stroke * 3 : Theme.stroke
        y: parent.height - Theme.grid - height / 2
        radius: height / 2
        color: marks.color
    }
}
