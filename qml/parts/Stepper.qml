// SPDX-License-Identifier: Apache-2.0
// Minus and plus beside a value, for every drag and for small numbers. The caller owns the value and its words:
// value and text come in, moved(newValue) goes out. Arrow keys step while it has the focus; holding a button repeats.
import QtQuick
import Snugline.Tokens

FocusScope {
    id: stepper

    property real value: 0
    property real from: 0
    property real to: 100
    property real step: 1
    property bool known: true             // false: not read yet, shows a dash
    property string text: String(value)
    property string label: ""
    property string minusText: qsTr("Less")
    property string plusText: qsTr("More")

    signal moved(real value)

    function go(direction: int): void {
        const next = Math.max(from, Math.min(to, value + direction * step))
        if (next !== value || !known)
            moved(next)
    }

    implicitWidth: minus.width + plus.width + Math.max(120, figure.implicitWidth) + 2 * Theme.grid
    implicitHeight: Math.max(Theme.touch, middle.implicitHeight)
    activeFocusOnTab: true
    Accessible.role: Accessible.SpinBox
    Accessible.name: label + " " + (known ? text : qsTr("not read"))
    Accessible.focusable: true
    Accessible.onIncreaseAction: go(1)
    Accessible.onDecreaseAction: go(-1)
    Keys.onLeftPressed: go(-1)
    Keys.onDownPressed: go(-1)
    Keys.onRightPressed: go(1)
    Keys.onUpPressed: go(1)

    BigButton {
        id: minus
        objectName: "minus"
        width: Theme.touch
        height: parent.height
        sign: "minus"
        autoRepeat: true
        spokenName: stepper.minusText
        enabled: stepper.value > stepper.from
        onClicked: stepper.go(-1)
    }
    Column {
        id: middle
        anchors { left: minus.right; right: plus.left; margins: Theme.grid; verticalCenter: parent.verticalCenter }
        Words {
            id: figure
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            size: "head"
            text: stepper.known ? stepper.text : "\u2013"
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            visible: stepper.label.length > 0
            horizontalAlignment: Text.AlignHCenter
            size: "small"
            tone: "quiet"
            text: stepper.label
            Accessible.ignored: true
        }
    }
    BigButton {
        id: plus
        objectName: "plus"
        anchors.right: parent.right
        width: Theme.touch
        height: parent.height
        sign: "plus"
        autoRepeat: true
        spokenName: stepper.plusText
        enabled: stepper.value < stepper.to
        onClicked: stepper.go(1)
    }
    FocusFrame { shown: stepper.activeFocus }
}
