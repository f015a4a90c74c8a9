// SPDX-License-Identifier: Apache-2.0
// One of the seven points seen again: sound, or at fault with what is wrong.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens
import Snugline.Models

Column {
    id: seen

    required property UnitPage unit
    property var point: ({})              // of unit.points

    spacing: Theme.grid
    Words { width: parent.width; text: seen.point.ask ?? ""; size: "small"; tone: "quiet" }
    AnswerBar {
        objectName: "seenAgain"
        width: parent.width
        large: false
        answers: [
            { name: "seenSound", text: qsTr("Seen again: sound"), sign: "check", enabled: !seen.unit.isBusy },
            { name: "seenFault", text: qsTr("Fault"), kind: "danger", enabled: !seen.unit.isBusy }
        ]
        onAnswered: name => {
            if (name === "seenSound")
                seen.unit.seePoint(seen.point.code, true, "")
            else
                faults.open()
        }
    }
    PullSheet {
        id: faults
        objectName: "pointFaults"
        title: qsTr("%1: what is wrong?").arg(seen.point.name ?? "")
        onBegan: own.clear()
        ChipGrid {
            objectName: "pointFault"
            Layout.fillWidth: true
            mostColumns: 2
            choices: (seen.point.faults ?? []).map(f => ({ name: f, text: f }))
            onChosen: name => faults.say(name)
        }
        TextEntry { id: own; objectName: "ownPointFault"; Layout.fillWidth: true; label: qsTr("In your own words"); onAccepted: text => faults.say(text) }
        BigButton {
            objectName: "notePointFault"
            Layout.fillWidth: true
            kind: "danger"
            text: qsTr("Note this fault")
            enabled: own.text.trim().length > 0
            onClicked: faults.say(own.text)
        }
        function say(what: string): void {
            faults.close()
            seen.unit.seePoint(seen.point.code, false, what)
        }
    }
}
