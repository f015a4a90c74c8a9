// SPDX-License-Identifier: Apache-2.0
// The steps of a guide. layout "list": all steps by name; "rail": their shapes only, one target; "indicator": "3 of 9, Ears", one target.
// Rail and indicator open the list. steps: [{ name, text, state }], state "done", "now", "open", "again" (seen, but reopened), "fault".
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

Item {
    id: ladder

    property var steps: []
    property int current: -1
    property string layout: "indicator"
    property string title: qsTr("Steps")
    property bool touchable: true         // a step may be jumped to
    readonly property string place: current >= 0 && current < steps.length ? qsTr("%1 of %2").arg(current + 1).arg(steps.length) : ""
    readonly property string now: current >= 0 && current < steps.length ? steps[current].text : ""

    signal stepTouched(string name, int index)

    implicitWidth: layout === "rail" ? Theme.touch : layout === "list" ? 196 : 320
    implicitHeight: layout === "indicator" ? button.implicitHeight : layout === "rail" ? rail.implicitHeight : list.implicitHeight

    BigButton {
        id: button
        objectName: "indicator"
        visible: ladder.layout === "indicator"
        width: parent.width
        inset: Theme.grid
        topPadding: 10
        bottomPadding: 10
        sign: "list"
        text: ladder.now.length > 0 ? ladder.place + "   " + ladder.now : ladder.place
        spokenName: ladder.title + ", " + ladder.place + ", " + ladder.now
        onClicked: sheet.open()
    }
    BigButton {
        id: rail
        objectName: "rail"
        visible: ladder.layout === "rail"
        width: Theme.touch
        height: parent.height
        implicitHeight: Math.max(Theme.touch, 36 * ladder.steps.length)
        spokenName: ladder.title + ", " + ladder.place + ", " + ladder.now
        onClicked: sheet.open()
    }
    Column {                              // the rungs over the rail; the rail takes the touch
        id: rungs
        visible: rail.visible
        anchors { fill: rail; topMargin: Theme.grid; bottomMargin: Theme.grid }
        Repeater {
            model: rungs.visible ? ladder.steps : []
            Item {
                id: rung
                required property var modelData
                required property int index
                width: rungs.width
                height: rungs.height / Math.max(1, ladder.steps.length)
                StepSign { anchors.centerIn: parent; state: rung.modelData.state; now: rung.index === ladder.current }
            }
        }
    }
    ScrollArea {
        id: list
        visible: ladder.layout === "list"
        anchors.fill: parent
        spacing: 0
        Repeater {
            model: ladder.layout === "list" ? ladder.steps : []
            delegate: LadderStep {
                Layout.fillWidth: true
                now: index === ladder.current
                room: Math.max(56, ladder.height / Math.max(1, ladder.steps.length))   // all in sight while each can be touched; else they scroll
                enabled: ladder.touchable
                onClicked: ladder.stepTouched(modelData.name, index)
            }
        }
    }
    PullSheet {
        id: sheet
        objectName: "sheet"
        title: ladder.title
        Repeater {
            model: ladder.layout !== "list" ? ladder.steps : []
            delegate: LadderStep {
                Layout.fillWidth: true
                now: index === ladder.current
                enabled: ladder.touchable
                onClicked: {
                    ladder.stepTouched(modelData.name, index)
                    sheet.close()
                }
            }
        }
    }
}
