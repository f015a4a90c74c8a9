// SPDX-License-Identifier: Apache-2.0
// The head from the front: brow, chin cup, straps, and left and right told apart. The athlete's left is at the right of the drawing.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

DrawnView {
    id: front

    property real browGap: 25.4           // mm; shown, not dragged here
    property bool browShown: false
    property string browText: ""
    property string browText2: ""
    property string leftText: qsTr("Left")      // the athlete's own left
    property string rightText: qsTr("Right")
    property bool namesSides: true

    readonly property real unitsPerMm: 1.75
    readonly property real browY: 282
    readonly property real lift: (25.4 - Math.max(0, Math.min(60, browGap))) * unitsPerMm
    readonly property real twist: motion === "twist" && phase > 0 ? 12 * Math.sin(phase * 4 * Math.PI) : 0
    readonly property real rock: motion === "rock" && phase > 0 ? 8 * Math.sin(phase * 4 * Math.PI) : 0

    readonly property real cropTop: motion.length > 0 ? 0 : Math.min(44, 44 + lift)
    crop: Qt.rect(76, cropTop, 448, 634 - cropTop)

    places: ({
        "brow": [300, 238 + lift], "chin": [300, 520], "straps": [398, 470], "straps-left": [398, 470], "straps-right": [202, 470],
        "jaw": [400, 408], "jaw-left": [400, 408], "jaw-right": [200, 408], "ears": [474, 360], "ears-left": [474, 360], "ears-right": [126, 360],
        "crown": [300, 92], "sides": [460, 220], "sides-left": [460, 220], "sides-right": [140, 220], "hold": [300, 170], "shell": [300, 170],
        "faceguard": [300, 392], "hardware": [180, 300], "chin-strap": [300, 520],
        "port-jaw-left": [446, 440], "port-jaw-right": [154, 440], "port-crown": [300, 92]
    })

    Item {
        width: front.field.width
        height: front.field.height
        x: front.twist
        y: front.rock
        FrontHead { view: front }
        FrontHelmet { view: front; visible: front.helmetOn; y: front.lift }
    }
    ProfileMotion { view: front; visible: front.motion === "twist" }
    PartShape {
        visible: front.browShown
        view: front
        line: Theme.lake
        d: "M 240 " + (238 + front.lift) + " L 360 " + (238 + front.lift) + " M 300 " + (238 + front.lift) + " L 300 " + front.browY
    }
    Repeater {
        model: front.namesSides ? [[136, front.rightText], [464, front.leftText]] : []
        Words {
            required property var modelData
            x: modelData[0] - width / 2
            y: 566 - height / 2
            text: modelData[1]
            size: "small"
            tone: "quiet"
            scale: 1 / front.drawScale
            wrapMode: Text.NoWrap
        }
    }
    Rectangle {                           // the figures, on their own ground so that they can be read on the shell
        visible: front.browShown && figures.text.length > 0
        x: 300 - width / 2
        y: 228 + front.lift - height
        width: figures.implicitWidth + 2 * Theme.grid
        height: figures.implicitHeight + Theme.grid
        radius: height / 2
        color: Theme.card
        border.width: Theme.stroke
        border.color: Theme.lake
        scale: 1 / front.drawScale
        transformOrigin: Item.Bottom
        Words {
            id: figures
            anchors.centerIn: parent
            text: front.browText + (front.browText2.length > 0 ? "  " + front.browText2 : "")
            bold: true
            tone: "info"
            wrapMode: Text.NoWrap
        }
    }
}
