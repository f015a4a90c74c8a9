// SPDX-License-Identifier: Apache-2.0
// Every code is forgotten: the key of the recovery sheet, then a new code for one admin, then the next sheet.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property RecoveryModel recovery
    readonly property string step: recovery.step
    readonly property bool takesCode: step === "code" || step === "again"

    title: step === "sheet" ? qsTr("The next recovery sheet") : step === "who" ? qsTr("Which admin?") : step === "code" ? qsTr("New code for %1").arg(recovery.person) : step === "again" ? qsTr("The same code again") : qsTr("Every code forgotten")
    subtitle: step === "key" ? qsTr("The %1 digits of the sheet made last").arg(recovery.keyDigits) : ""
    hasBack: step !== "sheet"
    backText: qsTr("Back to the code")
    onBack: recovery.leave()

    Notice {
        Layout.fillWidth: true
        kind: "attention"
        text: page.step === "sheet" ? "" : page.recovery.waiting.length > 0 ? page.recovery.waiting : page.recovery.trouble
    }
    Words {
        Layout.fillWidth: true
        visible: page.step === "none"
        text: qsTr("No recovery sheet was ever made for this Book. Its facts are not lost: they can be read with the program snug, and a backup can be restored. A code cannot be found out.")
    }
    Card {
        Layout.fillWidth: true
        Layout.maximumWidth: 460
        Layout.alignment: Qt.AlignHCenter
        visible: page.step === "key"
        Words { objectName: "recovery-typed"; width: parent.width; size: "head"; text: pad.text.length > 0 ? pad.text.replace(/(.{5})(?=.)/g, "$1 ") : "\u2013" }
    }
    Keypad {
        id: pad
        objectName: "recovery-keys"
        Layout.fillWidth: true
        Layout.maximumWidth: 460
        Layout.alignment: Qt.AlignHCenter
        visible: page.step === "key" || page.takesCode
        focus: true
        enabled: !page.recovery.isBusy && page.recovery.waiting.length === 0
        showsReadout: page.takesCode
        isSecret: page.takesCode
        maximumLength: page.takesCode ? 12 : page.recovery.keyDigits
        enterText: page.step === "again" ? qsTr("Set this code") : qsTr("Go on")
        onEntered: text => {
            if (!page.takesCode)
                return page.recovery.enterKey(text)
            clear()
            page.recovery.enterCode(text)
        }
    }
    Repeater {
        model: page.step === "who" ? page.recovery.admins : []
        BigButton {
            required property var modelData
            objectName: "recover-" + modelData.initials
            Layout.fillWidth: true
            large: true
            text: modelData.initials
            onClicked: page.recovery.choose(modelData.id)
        }
    }
    SheetShown { Layout.fillWidth: true; visible: page.step === "sheet"; recovery: page.recovery }

    onStepChanged: pad.clear()
    foot: BigButton {
        objectName: "recovery-kept"
        Layout.fillWidth: true
        visible: page.step === "sheet"
        kind: "primary"
        large: true
        text: qsTr("I keep it on paper")
        onClicked: page.recovery.finish()
    }
}
