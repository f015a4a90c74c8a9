// SPDX-License-Identifier: Apache-2.0
// A wide panel that is one target: a door. Title, what waits behind it, and whatever the caller draws at the right.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Touchable {
    id: panel

    property string title: ""
    property string detail: ""
    property string more: ""
    readonly property real padding: Theme.margin
    property string detailTone: "quiet"
    default property alias picture: slot.data

    function joined(words: var): string { return words.filter(word => word.length > 0).join(". ") }

    implicitHeight: Math.max(Theme.answerHeight * 1.4, words.implicitHeight + 2 * padding)
    implicitWidth: 320
    Accessible.role: Accessible.Button
    Accessible.name: joined([title, detail, more])
    Accessible.onPressAction: clicked()

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: Theme.card
        border.width: panel.down ? Theme.stroke * 2 : Theme.stroke
        border.color: Theme.ink
    }
    Column {
        id: words
        x: panel.padding
        y: (panel.height - height) / 2
        width: panel.width - 2 * panel.padding - (slot.visible ? slot.width + Theme.gap : 0)
        spacing: 4
        Words { width: parent.width; text: panel.title; size: "title"; Accessible.ignored: true }
        Words { width: parent.width; visible: text.length > 0; text: panel.detail; tone: panel.detailTone; bold: panel.detailTone !== "quiet"; Accessible.ignored: true }
        Words { width: parent.width; visible: text.length > 0; text: panel.more; size: "small"; tone: "quiet"; Accessible.ignored: true }
    }
    Item {
        id: slot
        visible: children.length > 0 && panel.width >= 320 * Math.max(1, Theme.textScale)
        x: panel.width - panel.padding - width
        y: panel.padding
        height: panel.height - 2 * panel.padding
        width: Math.min(height * 1.1, panel.width * 0.34)
    }
    FocusFrame { shown: panel.visualFocus }
}
