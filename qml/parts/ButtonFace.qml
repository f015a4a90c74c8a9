// SPDX-License-Identifier: Apache-2.0
// What stands on a BigButton: an icon beside one or two lines of words, centred, wrapping when the button is narrow.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Item {
    id: face

    required property Touchable owner     // whose text and font it shows
    property string detail: ""
    property string sign: ""
    property color color: Theme.ink
    readonly property real signSide: 28 * Math.min(Theme.textScale, 1.6)
    readonly property bool isSigned: sign.length > 0
    readonly property bool isWorded: owner.text.length > 0
    readonly property real signRoom: isSigned ? signSide + (isWorded ? Theme.grid : 0) : 0
    readonly property real wordsWidth: Math.max(owner.textAdvance, detail.length > 0 ? owner.advanceOf(detail, Qt.font({ family: Theme.family, pixelSize: Theme.smallSize })) : 0) + 2
    readonly property real linesHeight: line.implicitHeight + (second.active ? second.implicitHeight : 0)
    // Width at which nothing wraps; does not depend on the width given.
    readonly property real naturalWidth: wordsWidth + signRoom

    implicitWidth: naturalWidth
    implicitHeight: Math.max(linesHeight, isSigned ? signSide : 0)

    Item {
        id: box
        anchors.centerIn: parent
        width: face.signRoom + (face.isWorded ? line.width : 0)
        height: Math.max(face.isWorded ? lines.height : 0, face.isSigned ? face.signSide : 0)
        Loader {                          // most buttons have no sign
            active: face.isSigned
            anchors.verticalCenter: parent.verticalCenter
            sourceComponent: IconStroke { name: face.sign; color: face.color; side: face.signSide }
        }
        Item {
            id: lines
            anchors.verticalCenter: parent.verticalCenter
            x: face.signRoom
            visible: face.isWorded
            width: line.width
            height: face.linesHeight
            Text {
                id: line
                width: Math.min(face.width - face.signRoom, face.wordsWidth)
                text: face.owner.text
                font: face.owner.font
                color: face.color
                horizontalAlignment: face.isSigned ? Text.AlignLeft : Text.AlignHCenter
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                Accessible.ignored: true
            }
            Loader {
                id: second
                active: face.detail.length > 0
                y: line.height
                width: line.width
                sourceComponent: Words {
                    text: face.detail
                    size: "small"
                    color: face.color
                    horizontalAlignment: face.isSigned ? Text.AlignLeft : Text.AlignHCenter
                    Accessible.ignored: true
                }
            }
        }
    }
}
