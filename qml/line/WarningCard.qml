// SPDX-License-Identifier: Apache-2.0
// One athlete's yearly warning: signed or not, and the ways to sign it.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    required property WarningModel warning
    required property string athleteId
    property int asked: 0                 // counts up when something was written, so that the state is asked for again
    readonly property var state_: asked >= 0 ? warning.stateOf(athleteId) : {}
    readonly property bool isOpen: state_.isOpen ?? false

    tone: isOpen ? "see" : "plain"
    Connections {
        target: card.warning
        function onChanged(): void { card.asked += 1 }
        function onKept(): void { paper.close() }
    }
    ColumnLayout {
        width: parent.width
        spacing: Theme.grid
        Words { objectName: "warning-state"; Layout.fillWidth: true; text: card.state_.text ?? ""; bold: card.isOpen; tone: card.isOpen ? "see" : "quiet" }
        Words { Layout.fillWidth: true; visible: text.length > 0; text: card.state_.detail ?? ""; size: "small"; tone: "quiet" }
        Notice { Layout.fillWidth: true; kind: "attention"; text: paper.visible ? "" : card.warning.trouble }
        BigButton {
            objectName: "sign-athlete"
            Layout.fillWidth: true
            visible: card.state_.athleteOpen ?? false
            text: qsTr("Read and sign")
            detail: qsTr("Hand the tablet to the athlete")
            onClicked: card.warning.open(card.athleteId, false)
        }
        BigButton {
            objectName: "sign-guardian"
            Layout.fillWidth: true
            visible: card.state_.guardianOpen ?? false
            text: qsTr("Parent or guardian reads and signs")
            detail: qsTr("Hand the tablet over")
            onClicked: card.warning.open(card.athleteId, true)
        }
        BigButton {
            objectName: "sign-paper"
            Layout.fillWidth: true
            visible: card.isOpen
            kind: "quiet"
            text: qsTr("Signed on paper")
            onClicked: {
                card.warning.forgetTrouble()
                paper.open()
            }
        }
    }
    PullSheet {
        id: paper
        title: qsTr("Signed on paper")
        Words { Layout.fillWidth: true; text: qsTr("The school keeps the signed sheet. Note here whose initials it carries."); tone: "quiet" }
        ChoiceRow {
            id: who
            objectName: "paper-who"
            Layout.fillWidth: true
            choices: [{ name: "athlete", text: qsTr("Athlete"), open: card.state_.athleteOpen ?? false }, { name: "guardian", text: qsTr("Parent or guardian"), open: card.state_.guardianOpen ?? false }].filter(each => each.open)
            onChosen: name => current = name
        }
        TextEntry {
            id: initials
            objectName: "paper-initials"
            Layout.fillWidth: true
            label: qsTr("Initials on the paper")
            message: card.warning.trouble
            maximumLength: 4
        }
        BigButton {
            objectName: "paper-keep"
            Layout.fillWidth: true
            kind: "primary"
            text: qsTr("Keep")
            enabled: who.current.length > 0 && initials.text.trim().length > 0 && !card.warning.isBusy
            onClicked: card.warning.signedOnPaper(card.athleteId, who.current === "guardian", initials.text)
        }
    }
}
