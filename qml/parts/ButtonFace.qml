// SPDX-License-Identifier: Apache-2.0
// What stands on a BigButton: an icon beside one or two lines of words, centred, wrapping when the button is narrow.
import QtQuick
import Snugline.Tokens

Item {
    id: face

    property string text: ""
    property string detail: ""
    property string sign: ""
    property font font
    property color color: Theme.ink
    readonly property real signRoom: icon.visible ? icon.width + (text.length > 0 ? Theme.grid : 0) : 0
    readonly property real wordsWidth: Math.max(line.advanceWidth, second.advanceWidth) + 2
    // Width at which nothing wraps; does not depend on the width given.
    readonly property real naturalWidth: wordsWidth + signRoom

    implicitWidth: naturalWidth
    implicitHeight: Math.max(lines.implicitHeight, icon.visible ? icon.height : 0)

    TextMetrics { id: line; font: face.font; text: face.text }
    TextMetrics { id: second; font.family: Theme.family; font.pixelSize: Theme.smallSize; text: face.detail }
    Row {
        anchors.centerIn: parent
        spacing: Theme.grid
        IconStroke {
            id: icon
            name: face.sign
            visible: name.length > 0
            color: face.color
            anchors.verticalCenter: parent.verticalCenter
        }
        Column {
            id: lines
            anchors.verticalCenter: parent.verticalCenter
            visible: face.text.length > 0
            width: Math.min(face.width - face.signRoom, face.wordsWidth)
            Text {
                width: parent.width
                text: face.text
                font: face.font
                color: face.color
                horizontalAlignment: icon.visible ? Text.AlignLeft : Text.AlignHCenter
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                visible: face.detail.length > 0
                text: face.detail
                size: "small"
                color: face.color
                horizontalAlignment: icon.visible ? Text.AlignLeft : Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }
}
