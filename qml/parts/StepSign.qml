// SPDX-License-Identifier: Apache-2.0
// The shape of a step's state: filled dot done, hollow dot open, ring with a dot now, open arc again, tilted square fault.
import QtQuick
import Snugline.Tokens

Item {
    id: sign

    property bool now: false
    implicitWidth: 24
    implicitHeight: 24

    Rectangle {
        anchors.centerIn: parent
        visible: sign.now
        width: 24
        height: 24
        radius: 12
        color: "transparent"
        border.width: Theme.stroke
        border.color: Theme.ink
    }
    Rectangle {
        anchors.centerIn: parent
        visible: sign.state !== "again"
        width: 12
        height: 12
        radius: sign.state === "fault" ? 1 : 6
        rotation: sign.state === "fault" ? 45 : 0
        color: sign.state === "done" ? Theme.turf : sign.state === "fault" ? Theme.brick : sign.now ? Theme.ink : "transparent"
        border.width: Theme.stroke
        border.color: sign.state === "done" ? Theme.turf : sign.state === "fault" ? Theme.brick : Theme.ink
    }
    IconStroke { anchors.centerIn: parent; visible: sign.state === "again"; side: 16; name: "again"; color: Theme.ochre }
}
