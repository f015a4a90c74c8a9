// SPDX-License-Identifier: Apache-2.0
// A short word with a shape before it: the shape says it where colour cannot.
import QtQuick
import Snugline.Tokens

Item {
    id: tag

    property string text: ""
    property string tone: "plain"
    property string shape: ""             // "dot", "hollow", "over", "under", "square" or none

    implicitWidth: row.implicitWidth + 2 * Theme.grid
    implicitHeight: row.implicitHeight + Theme.grid
    Accessible.role: Accessible.StaticText
    Accessible.name: text

    Rectangle {
        anchors.fill: parent
        radius: height / 2
        color: "transparent"
        border.width: Theme.stroke
        border.color: Theme.tone(tag.tone)
    }
    Row {
        id: row
        anchors.centerIn: parent
        width: Math.min(implicitWidth, tag.width - 2 * Theme.grid)
        spacing: Theme.grid
        Rectangle {
            visible: tag.shape.length > 0
            anchors.verticalCenter: parent.verticalCenter
            anchors.verticalCenterOffset: tag.shape === "over" ? -4 : tag.shape === "under" ? 4 : 0
            width: tag.shape === "over" || tag.shape === "under" ? 7 : 12
            height: tag.shape === "over" || tag.shape === "under" ? 16 : 12
            radius: tag.shape === "dot" || tag.shape === "hollow" ? 6 : 2
            rotation: tag.shape === "square" ? 45 : 0
            color: tag.shape === "hollow" ? "transparent" : Theme.tone(tag.tone)
            border.width: Theme.stroke
            border.color: Theme.tone(tag.tone)
        }
        Words { text: tag.text; size: "small"; tone: tag.tone; bold: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
    }
}
