// SPDX-License-Identifier: Apache-2.0
// What stands in a ListRow: number, title and reason at the left, the caller's item with tag and note at the right; stacked if wanted.
import QtQuick
import Snugline.Tokens

Item {
    id: face

    property string number: ""
    property string title: ""
    property string detail: ""
    property string note: ""
    property string tagText: ""
    property string tagTone: "plain"
    property string tagShape: ""
    property string tone: "plain"
    property bool stacked: false
    property alias trailing: slot.data
    readonly property real numberWidth: number.length > 0 ? Math.max(figure.implicitWidth, stacked ? 0 : Theme.titleSize * 1.9) : 0

    implicitHeight: stacked ? Math.max(figure.height, words.height) + (side.any ? Theme.grid + side.height : 0) : Math.max(words.height, side.height)

    Words {
        id: figure
        visible: face.number.length > 0
        width: face.stacked ? implicitWidth : face.numberWidth
        horizontalAlignment: face.stacked ? Text.AlignLeft : Text.AlignRight
        y: face.stacked ? 0 : (face.height - height) / 2
        size: "title"
        text: face.number
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Column {
        id: words
        x: face.numberWidth > 0 ? face.numberWidth + Theme.gap : 0
        width: face.stacked ? face.width - x : side.x - x - Theme.gap
        y: face.stacked ? 0 : (face.height - height) / 2
        spacing: 4
        Words {
            width: parent.width
            height: face.stacked && face.number.length > 0 ? Math.max(implicitHeight, figure.implicitHeight) : implicitHeight
            verticalAlignment: Text.AlignVCenter
            visible: text.length > 0; text: face.title; bold: true; size: "body"; Accessible.ignored: true
        }
        Words {
            width: face.stacked ? face.width : parent.width
            x: face.stacked ? -words.x : 0
            visible: text.length > 0; text: face.detail; size: "small"
            tone: face.tone === "plain" ? "quiet" : face.tone; Accessible.ignored: true
        }
    }
    Flow {
        id: side
        readonly property bool any: slot.visible || noteWords.active || tag.active
        visible: any
        x: face.stacked ? 0 : face.width - width
        y: face.stacked ? Math.max(figure.height, words.height) + (any ? Theme.grid : 0) : (face.height - height) / 2
        width: !any ? 0 : face.stacked ? face.width : Math.max(slot.visible ? slot.width : 0, noteWords.active ? noteWords.implicitWidth : 0, tag.active ? tag.implicitWidth : 0)
        height: any ? implicitHeight : 0
        spacing: face.stacked ? Theme.gap : 4
        Item {
            id: slot
            visible: children.length > 0
            width: childrenRect.width
            height: childrenRect.height
        }
        Loader {
            id: tag
            active: face.tagText.length > 0
            visible: active
            sourceComponent: Tag { text: face.tagText; tone: face.tagTone; shape: face.tagShape; Accessible.ignored: true }
        }
        Loader {
            id: noteWords
            active: face.note.length > 0
            visible: active
            sourceComponent: Words { text: face.note; size: "small"; tone: "quiet"; Accessible.ignored: true }
        }
    }
}
