// SPDX-License-Identifier: Apache-2.0
// Whom the stop screens say to call, and what to do, in the team's own words.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    required property SettingsModel settings
    readonly property bool isChanged: number.text.trim() !== settings.emergencyNumber || plan.text.trim() !== settings.emergencyPlan

    function fill(): void {
        number.text = settings.emergencyNumber
        plan.text = settings.emergencyPlan
    }
    Component.onCompleted: fill()

    ColumnLayout {
        width: parent.width
        spacing: Theme.grid
        Words { Layout.fillWidth: true; text: qsTr("In an emergency"); size: "head" }
        Words { Layout.fillWidth: true; size: "small"; tone: "quiet"; text: qsTr("Athletes read this on the stop screen. For the whole team.") }
        Notice { Layout.fillWidth: true; kind: "attention"; text: card.settings.trouble }
        TextEntry { id: number; objectName: "emergency-number"; Layout.fillWidth: true; label: qsTr("Number to call"); maximumLength: 40 }
        TextEntry { id: plan; objectName: "emergency-plan"; Layout.fillWidth: true; label: qsTr("Emergency action plan, in a sentence; may stay empty"); maximumLength: 200 }
        BigButton {
            objectName: "emergency-save"
            Layout.fillWidth: true
            detail: Bearer.staffOnly
            enabled: Bearer.isStaff && card.isChanged && number.text.trim().length > 0
            text: qsTr("Save")
            onClicked: card.settings.setEmergency(number.text, plan.text)
        }
    }
}
