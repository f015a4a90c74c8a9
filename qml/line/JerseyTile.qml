// SPDX-License-Identifier: Apache-2.0
// One athlete of a standing line: the number large, the name, and in words what was touched as off. Untouched means nothing was noted.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Touchable {
    id: tile

    property string jersey: ""
    property string name: ""
    property string noted: ""             // "straps loose"; empty: nothing off
    property string state: ""             // "", "off", "away", "snug" once that is written
    readonly property string tone: state === "off" ? "see" : state === "snug" ? "snug" : "plain"

    implicitWidth: 150
    implicitHeight: Math.max(Theme.answerHeight, column.implicitHeight + 2 * Theme.grid)
    Accessible.role: Accessible.Button
    Accessible.name: [jersey, name, noted].filter(w => w.length > 0).join(". ")
    Accessible.onPressAction: clicked()

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: tile.state === "away" ? "transparent" : Theme.card
        border.width: tile.down ? Theme.stroke * 2 : tile.state === "off" ? Theme.stroke * 2 : Theme.stroke
        border.color: tile.state === "off" ? Theme.ochre : tile.state === "snug" ? Theme.turf : tile.state === "away" ? Theme.slate : Theme.ink
    }
    Column {
        id: column
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.grid
        Words {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: tile.jersey.length > 0 ? tile.jersey : "\u2013"
            size: "title"
            font.pixelSize: Theme.titleSize * 1.4
            font.strikeout: tile.state === "away"
            tone: tile.state === "away" ? "quiet" : tile.tone
            Accessible.ignored: true
        }
        Words { width: parent.width; horizontalAlignment: Text.AlignHCenter; text: tile.name; size: "small"; tone: tile.state === "away" ? "quiet" : "plain"; elide: Text.ElideRight; maximumLineCount: 2; Accessible.ignored: true }
        Words { width: parent.width; visible: text.length > 0; horizontalAlignment: Text.AlignHCenter; text: tile.noted; size: "small"; bold: true; tone: tile.state === "away" ? "quiet" : tile.tone; Accessible.ignored: true }
    }
    FocusFrame { shown: tile.visualFocus }
}
