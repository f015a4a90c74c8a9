// SPDX-License-Identifier: Apache-2.0
// The two answers at the foot of the seven points, always in the same places: hold, and in service. Filled is only what was checked: seven
// sound, or the one that names all seven for a helmet that was just scanned. Their height does not follow their words.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Item {
    id: answers

    required property DockModel model
    readonly property bool isWhole: answers.model.isAllSoundOpen
    readonly property real gap: Theme.phone ? Theme.grid : Theme.gap
    readonly property real narrow: Theme.stacks ? width : (width - gap) * 0.34
    readonly property real broad: Theme.stacks ? width : width - gap - narrow
    readonly property real high: Math.max(holding.implicitHeight, longest.implicitHeight, serving.implicitHeight)

    signal held()

    implicitHeight: Theme.stacks ? 2 * high + gap : high

    BigButton {
        id: holding
        objectName: "hold"
        width: answers.narrow
        height: answers.high
        large: true
        leftPadding: Theme.grid
        rightPadding: Theme.grid
        kind: "danger"
        text: qsTr("Hold")
        enabled: answers.model.isHoldOpen
        onClicked: answers.held()
    }
    BigButton {
        id: serving
        objectName: answers.isWhole ? "allSoundInService" : "inService"
        x: answers.width - width
        y: Theme.stacks ? answers.high + answers.gap : 0
        width: answers.broad
        height: answers.high
        large: true
        leftPadding: Theme.grid
        rightPadding: Theme.grid
        sign: "check"
        kind: answers.isWhole || answers.model.isInServiceOpen && answers.model.uncheckedCount === 0 ? "primary" : "plain"
        enabled: answers.isWhole || answers.model.isInServiceOpen
        text: answers.isWhole ? longest.text : qsTr("In service")
        detail: answers.isWhole ? longest.detail : answers.model.uncheckedCount > 0 ? qsTr("%n point(s) not checked", "", answers.model.uncheckedCount) : ""
        onClicked: {
            if (answers.isWhole)
                answers.model.putAllSoundInService()
            else
                answers.model.putInService()
        }
    }
    BigButton {                           // the room that the longest of them takes
        id: longest
        visible: false
        width: answers.broad
        large: true
        leftPadding: Theme.grid
        rightPadding: Theme.grid
        sign: "check"
        text: qsTr("All seven sound, in service")
        detail: qsTr("Saves all seven as checked")
    }
}
