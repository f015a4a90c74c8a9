// SPDX-License-Identifier: Apache-2.0
// The first start: the first admin, their code, and the recovery sheet. Each can wait; nothing is locked until a code is set.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Say

PageFrame {
    id: page

    required property Shell shell
    readonly property DoorsModel doors: shell.doors
    readonly property LockModel lock: shell.lock
    readonly property RecoveryModel recovery: shell.recovery
    readonly property var first: doors.people.length > 0 ? doors.people[0] : null
    readonly property string stage: first === null ? "name" : recovery.step === "sheet" ? "made" : lock.hasCodes ? "sheet" : "code"
    readonly property bool isNamed: name.text.trim().length > 0 && treats.current.length > 0
    signal home(string screen)
    signal go(string screen, string what)

    function add(): void {
        if (isNamed)
            doors.addPerson(name.text, "admin", treats.current === "yes")
    }

    title: stage === "name" ? qsTr("Who keeps this Book?") : stage === "code" ? lock.isRepeating ? qsTr("The same code again") : qsTr("A code for %1").arg(first.initials) : stage === "sheet" ? qsTr("A sheet for the day a code is forgotten") : qsTr("Recovery sheet")
    subtitle: stage === "name" ? qsTr("Step 1 of 3") : stage === "code" ? qsTr("Step 2 of 3: %1 to %2 digits").arg(lock.leastDigits).arg(lock.mostDigits) : qsTr("Step 3 of 3")
    onStageChanged: if (stage === "code") Qt.callLater(() => lock.ask(first.id))
    showsBearer: false
    Component.onDestruction: {
        lock.forget()
        recovery.leave()
    }

    Words {
        Layout.fillWidth: true
        visible: page.stage === "name"
        text: qsTr("The first one is an admin: gives out codes, and is asked when one is forgotten. What is recorded carries initials.")
    }
    TextEntry {
        id: name
        objectName: "first-name"
        Layout.fillWidth: true
        visible: page.stage === "name"
        focus: true
        label: qsTr("Your name")
        message: page.doors.trouble
        maximumLength: 80
        onAccepted: page.add()
    }
    Words {
        Layout.fillWidth: true
        visible: page.stage === "name"
        bold: true
        text: qsTr("Are you an athletic trainer or designated health care professional?")
    }
    ChoiceRow {
        id: treats
        objectName: "first-treats"
        Layout.fillWidth: true
        visible: page.stage === "name"
        label: qsTr("Are you an athletic trainer or designated health care professional?")
        choices: [{ name: "yes", text: qsTr("Yes") }, { name: "no", text: qsTr("No") }]
        onChosen: name => current = name
    }
    Words {
        Layout.fillWidth: true
        visible: page.stage === "code"
        text: qsTr("With a code set, Snugline locks when nobody touches it, and athletes cannot leave Say. Nobody can read a code again: keep it where only you find it.")
    }
    CodePad {
        objectName: "first-pad"
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        Layout.alignment: Qt.AlignHCenter
        visible: page.stage === "code"
        lock: page.lock
        enterText: page.lock.isRepeating ? qsTr("Set this code") : qsTr("Go on")
    }
    Words {
        Layout.fillWidth: true
        visible: page.stage === "sheet"
        text: qsTr("A forgotten code cannot be read from anywhere. A recovery sheet is one page with a key. It lets one admin set a new code, once. Print it, lock it away from this tablet, and show nobody.")
    }
    SheetShown { Layout.fillWidth: true; visible: page.stage === "made"; recovery: page.recovery }

    foot: [
        Notice { Layout.fillWidth: true; kind: "attention"; text: page.stage === "sheet" ? page.recovery.trouble : "" },
        BigButton {
            objectName: "first-go"
            Layout.fillWidth: true
            visible: page.stage !== "code"
            enabled: page.stage === "name" ? page.isNamed : !page.recovery.isBusy
            kind: "primary"
            large: true
            text: page.stage === "name" ? qsTr("Go on") : page.stage === "sheet" ? qsTr("Make the sheet") : qsTr("I keep it on paper")
            onClicked: {
                if (page.stage === "name")
                    return page.add()
                if (page.stage === "sheet")
                    return page.recovery.make()
                page.recovery.finish()
                page.home("doors")
            }
        },
        BigButton {
            objectName: "first-later"
            Layout.fillWidth: true
            visible: page.stage !== "made"
            kind: "quiet"
            text: page.stage === "sheet" ? qsTr("Later, under People") : qsTr("Later: look around first")
            onClicked: page.home("doors")
        },
        BigButton {
            objectName: "first-join"
            Layout.fillWidth: true
            visible: page.stage === "name" && page.shell.phone.mayJoin
            kind: "quiet"
            text: qsTr("Your own phone? Join as an athlete")
            onClicked: page.go("phone-join", "")
        }
    ]
}
