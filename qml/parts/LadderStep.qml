// SPDX-License-Identifier: Apache-2.0
// One step in the list of a StepLadder: its shape, its name, and in words what state it is in.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Touchable {
    id: step

    required property var modelData       // { name, text, state }
    required property int index
    property bool now: false
    property real room: 0                 // the height offered so that all steps are seen at once; 0: as high as is best to touch
    readonly property real leftPadding: 10
    readonly property real best: Theme.phone ? 56 : 60
    readonly property string stateText: now ? qsTr("now") : modelData.state === "done" ? qsTr("done") : modelData.state === "again" ? qsTr("see again") : modelData.state === "fault" ? qsTr("fault") : qsTr("open")

    objectName: "step-" + modelData.name
    implicitHeight: room > 0 ? Math.max(Math.min(room, best), words.implicitHeight + 4) : Math.max(best, words.implicitHeight + 2 * Theme.grid)
    Accessible.role: Accessible.Button
    Accessible.name: modelData.text + ", " + stateText
    Accessible.onPressAction: clicked()

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius
        color: step.now ? Theme.card : "transparent"
        border.width: step.now || step.down ? Theme.stroke : 0
        border.color: Theme.ink
    }
    StepSign { id: sign; x: step.leftPadding; anchors.verticalCenter: parent.verticalCenter; state: step.modelData.state; now: step.now }
    Column {
        id: words
        anchors { left: sign.right; leftMargin: Theme.grid; right: parent.right; rightMargin: Theme.grid; verticalCenter: parent.verticalCenter }
        Words { width: parent.width; text: step.modelData.text; bold: step.now; size: "body"; Accessible.ignored: true }
        Words { width: parent.width; visible: step.now || step.modelData.state === "again" || step.modelData.state === "fault"; text: step.stateText; size: "small"; tone: "quiet"; Accessible.ignored: true }
    }
    FocusFrame { shown: step.visualFocus }
}
