// SPDX-License-Identifier: Apache-2.0
// A large button: one or two lines of words and, if wanted, one of our icons. Its kind shows in shape as well as colour:
// "primary" filled, "plain" framed, "danger" framed twice with a sign, "quiet" underlined without a frame.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Touchable {
    id: control

    property string kind: "plain"         // "primary", "plain", "danger", "quiet"
    property string detail: ""            // second line
    property string sign: ""              // name for IconStroke
    property string tone: kind === "danger" ? "stop" : "plain"
    property bool large: false            // a main answer: at least 18 mm high
    property string spokenName: detail.length > 0 ? text + ". " + detail : text
    property real inset: 0                // above and below: how much lower its frame is than what may be touched
    property real leftPadding: Theme.gap
    property real rightPadding: Theme.gap
    property real topPadding: Theme.grid
    property real bottomPadding: Theme.grid
    readonly property bool isFilled: kind === "primary" || checked
    readonly property color wordColor: !enabled ? Theme.slate : isFilled ? Theme.onFill : Theme.tone(tone)
    readonly property color fillColor: !enabled && isFilled ? Theme.wash : kind === "danger" && isFilled ? Theme.brick : isFilled ? Theme.turf : kind === "quiet" ? "transparent" : Theme.card
    readonly property alias contentItem: face
    // Width at which nothing wraps; does not depend on the width given.
    readonly property real naturalWidth: face.naturalWidth + leftPadding + rightPadding

    font.family: Theme.family
    font.bold: true
    font.pixelSize: large ? Theme.headSize : Theme.bodySize
    implicitWidth: Math.max(Theme.touch, naturalWidth)
    implicitHeight: Math.max(large ? Theme.answerHeight : Theme.touch, face.implicitHeight + topPadding + bottomPadding)
    Accessible.role: Accessible.Button
    Accessible.name: spokenName
    Accessible.onPressAction: clicked()

    Rectangle {
        y: control.inset
        width: control.width
        height: control.height - 2 * y
        radius: Theme.radius
        color: control.fillColor
        border.width: control.kind === "quiet" ? 0 : Theme.stroke
        border.color: control.enabled ? (control.isFilled ? control.fillColor : control.kind === "danger" ? Theme.brick : Theme.ink) : Theme.slate
    }
    Loader {                              // the rest is loaded where it is seen: a long list of buttons would pay for it at the start
        active: control.kind === "danger" || control.kind === "quiet" || control.down
        anchors.fill: parent
        anchors.topMargin: control.inset
        anchors.bottomMargin: control.inset
        sourceComponent: ButtonMarks { kind: control.kind; down: control.down; color: control.wordColor; frameColor: control.isFilled ? Theme.onFill : Theme.brick }
    }
    FocusFrame { shown: control.visualFocus }
    ButtonFace {
        id: face
        x: control.leftPadding
        y: control.topPadding
        width: control.width - x - control.rightPadding
        height: control.height - y - control.bottomPadding
        owner: control
        detail: control.detail
        sign: control.sign.length > 0 ? control.sign : control.kind === "danger" ? "stop" : control.checked ? "check" : ""
        color: control.wordColor
    }
}
