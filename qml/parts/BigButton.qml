// SPDX-License-Identifier: Apache-2.0
// A large button: one or two lines of words and, if wanted, one of our icons. Its kind shows in shape as well as colour:
// "primary" filled, "plain" framed, "danger" framed twice with a sign, "quiet" underlined without a frame.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens

Button {
    id: control

    property string kind: "plain"         // "primary", "plain", "danger", "quiet"
    property string detail: ""            // second line
    property string sign: ""              // name for IconStroke
    property string tone: kind === "danger" ? "stop" : "plain"
    property bool large: false            // a main answer: at least 18 mm high
    property string spokenName: detail.length > 0 ? text + ". " + detail : text
    readonly property bool isFilled: kind === "primary" || checked
    readonly property color wordColor: !enabled ? Theme.slate : isFilled ? Theme.onFill : Theme.tone(tone)
    readonly property color fillColor: !enabled && isFilled ? Theme.wash : kind === "danger" && isFilled ? Theme.brick : isFilled ? Theme.turf : kind === "quiet" ? "transparent" : Theme.card
    // Width at which nothing wraps; does not depend on the width given.
    readonly property real naturalWidth: ((contentItem as ButtonFace)?.naturalWidth ?? 0) + leftPadding + rightPadding

    font.family: Theme.family
    font.bold: true
    font.pixelSize: large ? Theme.headSize : Theme.bodySize
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    topPadding: Theme.grid
    bottomPadding: Theme.grid
    implicitWidth: Math.max(Theme.touch, naturalWidth)
    implicitHeight: Math.max(large ? Theme.answerHeight : Theme.touch, contentItem.implicitHeight + topPadding + bottomPadding)
    focusPolicy: Qt.StrongFocus
    hoverEnabled: false
    Accessible.role: Accessible.Button
    Accessible.name: spokenName
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: ButtonFace {
        text: control.text
        detail: control.detail
        sign: control.sign.length > 0 ? control.sign : control.kind === "danger" ? "stop" : control.checked ? "check" : ""
        font: control.font
        color: control.wordColor
    }

    background: Rectangle {
        radius: Theme.radius
        color: control.fillColor
        border.width: control.kind === "quiet" ? 0 : Theme.stroke
        border.color: control.enabled ? (control.isFilled ? control.fillColor : control.kind === "danger" ? Theme.brick : Theme.ink) : Theme.slate
        Rectangle {
            visible: control.kind === "danger"
            anchors.fill: parent
            anchors.margins: Theme.stroke * 2
            radius: Theme.radius - Theme.stroke * 2
            color: "transparent"
            border.width: Theme.hairlineWidth
            border.color: control.isFilled ? Theme.onFill : Theme.brick
        }
        Rectangle {                       // what the finger sees at once: a bar along the foot
            visible: control.down || control.kind === "quiet"
            x: Theme.gap
            width: parent.width - 2 * Theme.gap
            height: control.down ? Theme.stroke * 3 : Theme.stroke
            y: parent.height - Theme.grid - height / 2
            radius: height / 2
            color: control.wordColor
        }
        FocusFrame { shown: control.activeFocus && control.visualFocus }
    }
}
