// SPDX-License-Identifier: Apache-2.0
// A row of a list: number, title, reason, and at the right whatever the caller puts in (a fit strip) over a small note.
// Below 480 px or above 130 % text it stacks: number and title, reason, then what stood at the right.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens

ItemDelegate {
    id: row

    property string number: ""            // jersey number, kept as text
    property string title: ""
    property string detail: ""
    property string note: ""              // small, beside what stands at the right
    property string tagText: ""
    property string tagTone: "plain"
    property string tagShape: ""
    property string tone: "plain"         // of the detail
    default property alias trailing: slot.data
    readonly property bool stacked: Theme.rowsStack(width)
    readonly property real numberWidth: number.length > 0 ? Math.max(figure.implicitWidth, stacked ? 0 : Theme.titleSize * 1.9) : 0

    padding: Theme.gap
    implicitHeight: Math.max(Theme.touch, contentItem.implicitHeight + 2 * padding)
    hoverEnabled: false
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: [number, title, detail, tagText, note].filter(s => s.length > 0).join(". ")
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: Item {
        implicitHeight: row.stacked ? side.y + side.height : Math.max(words.height, side.height)
        Words {
            id: figure
            visible: row.number.length > 0
            width: row.stacked ? implicitWidth : row.numberWidth
            horizontalAlignment: row.stacked ? Text.AlignLeft : Text.AlignRight
            anchors.verticalCenter: row.stacked ? undefined : parent.verticalCenter
            y: 0
            size: "title"
            text: row.number
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Column {
            id: words
            x: row.numberWidth > 0 ? row.numberWidth + Theme.gap : 0
            width: row.stacked ? parent.width - x : side.x - x - Theme.gap
            anchors.verticalCenter: row.stacked ? undefined : parent.verticalCenter
            spacing: 4
            Words {
                width: parent.width
                height: row.stacked && row.number.length > 0 ? Math.max(implicitHeight, figure.implicitHeight) : implicitHeight
                verticalAlignment: Text.AlignVCenter
                visible: text.length > 0; text: row.title; bold: true; size: "body"; Accessible.ignored: true
            }
            Words {
                width: row.stacked ? row.availableWidth : parent.width
                x: row.stacked ? -words.x : 0
                visible: text.length > 0; text: row.detail; size: "small"
                tone: row.tone === "plain" ? "quiet" : row.tone; Accessible.ignored: true
            }
        }
        Flow {
            id: side
            readonly property bool any: slot.visible || noteWords.visible || tag.visible
            visible: any
            x: row.stacked ? 0 : parent.width - width
            y: row.stacked ? Math.max(figure.height, words.height) + (any ? Theme.grid : 0) : (parent.height - height) / 2
            width: !any ? 0 : row.stacked ? parent.width : Math.max(slot.visible ? slot.width : 0, noteWords.implicitWidth, tag.visible ? tag.implicitWidth : 0)
            height: any ? implicitHeight : 0
            spacing: row.stacked ? Theme.gap : 4
            Item {
                id: slot
                visible: children.length > 0
                width: childrenRect.width
                height: childrenRect.height
            }
            Tag { id: tag; visible: row.tagText.length > 0; text: row.tagText; tone: row.tagTone; shape: row.tagShape; Accessible.ignored: true }
            Words { id: noteWords; visible: text.length > 0; text: row.note; size: "small"; tone: "quiet"; Accessible.ignored: true }
        }
    }
    background: Rectangle {
        color: Theme.card
        radius: Theme.radius
        border.width: row.down ? Theme.stroke * 2 : Theme.hairlineWidth
        border.color: row.down ? Theme.ink : Theme.hairline
        FocusFrame { shown: row.visualFocus }
    }
}
