// SPDX-License-Identifier: Apache-2.0
// One of the seven points as a large tile. A touch goes from not seen to sound, to fault, to not seen; shape, word and colour say which.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens
import Snugline.Parts

Button {
    id: tile

    property var point: ({})              // { code, name, ask, state, words }; state 0 not seen, 1 sound, 2 fault
    readonly property int seen: point.state === undefined ? 0 : point.state
    readonly property color tint: seen === 2 ? Theme.brick : seen === 1 ? Theme.turf : Theme.ink

    text: point.name || ""
    padding: Theme.phone || brief ? 10 : Theme.gap
    property bool brief: false            // no room for what to look for: only name and state show
    implicitHeight: Math.max(Theme.touch, contentItem.implicitHeight + 2 * padding)
    readonly property string saying: brief && seen === 2 ? qsTr("Fault") : point.words || ""    // what it is stands at the foot
    focusPolicy: Qt.StrongFocus
    hoverEnabled: false
    Accessible.name: text + ". " + (point.words || "")
    Accessible.description: point.ask || ""
    Keys.onReturnPressed: tile.clicked()
    Keys.onEnterPressed: tile.clicked()

    contentItem: Item {
        // As high with every state as with the longest: the tiles below stay where the thumb is.
        implicitHeight: naming.implicitHeight + lines.spacing + Math.max(stating.implicitHeight, asking.implicitHeight)
        Rectangle {
            id: sign
            y: 4
            width: tile.brief ? 16 : 20
            height: width
            radius: tile.seen === 2 ? 2 : 10
            rotation: tile.seen === 2 ? 45 : 0
            color: tile.seen === 0 ? "transparent" : tile.tint
            border.width: Theme.stroke
            border.color: tile.tint
        }
        Column {
            id: lines
            x: sign.width + (tile.brief ? 8 : 12)
            width: parent.width - x
            spacing: 2
            Words { id: naming; width: parent.width; text: tile.text; bold: true; Accessible.ignored: true }
            Words {
                id: stating
                width: parent.width
                text: tile.seen === 0 && !tile.brief ? tile.point.ask || "" : tile.saying
                size: "small"
                bold: tile.seen !== 0
                tone: tile.seen === 2 ? "stop" : tile.seen === 1 ? "snug" : "quiet"
                Accessible.ignored: true
            }
        }
        Words { id: asking; visible: false; width: lines.width; text: tile.brief ? qsTr("Not seen") : tile.point.ask || ""; size: "small" }
    }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.card
        border.width: tile.seen === 0 ? Theme.stroke : Theme.stroke * 1.5
        border.color: tile.tint
        Rectangle {
            visible: tile.seen === 2
            anchors.fill: parent
            anchors.margins: Theme.stroke * 2.5
            radius: Theme.radius - Theme.stroke * 2.5
            color: "transparent"
            border.width: Theme.hairlineWidth
            border.color: Theme.brick
        }
        Rectangle {
            visible: tile.down
            x: Theme.gap
            width: parent.width - 2 * Theme.gap
            height: Theme.stroke * 3
            y: parent.height - Theme.grid - height / 2
            radius: height / 2
            color: tile.tint
        }
        FocusFrame { shown: tile.activeFocus && tile.visualFocus }
    }
}
