// SPDX-License-Identifier: Apache-2.0
// Who holds this glass: what is recorded from now on is signed by these initials.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    property string what: ""              // "say": somebody wanted to open Say and nobody has a code
    readonly property DoorsModel doors: shell.doors
    signal go(string screen, string what)

    function choose(person: var): void {
        if (person.hasCode && !person.isHolder)
            go("code", person.id)
        else if (shell.lock.hasCodes || what === "say")
            go("code", person.id)
        else {
            doors.choosePerson(person.id)
            back()
        }
    }

    function add(): void {
        if (role.current.length > 0 || !role.visible)
            doors.addPerson(name.text, role.visible ? role.current : "trainer")
    }

    title: qsTr("Who signs?")
    subtitle: qsTr("What is recorded here carries these initials.")
    hasBack: true

    Notice {
        Layout.fillWidth: true
        kind: "inform"
        text: page.what === "say" && !page.shell.lock.hasCodes ? qsTr("Say hands this glass to athletes. Set a code first: it is the only way back.") : ""
    }
    Repeater {
        model: page.doors.people
        BigButton {
            required property var modelData
            objectName: "person-" + modelData.initials
            Layout.fillWidth: true
            text: modelData.initials
            detail: modelData.hasCode ? qsTr("%1, %2").arg(modelData.name).arg(modelData.role) : qsTr("%1, %2, no code yet").arg(modelData.name).arg(modelData.role)
            kind: modelData.isHolder ? "primary" : "plain"
            onClicked: page.choose(modelData)
        }
    }
    BigButton {
        objectName: "set-code"
        Layout.fillWidth: true
        readonly property var holder: page.doors.people.find(person => person.isHolder)
        visible: holder !== undefined && !holder.hasCode && page.what !== "say"
        kind: "quiet"
        text: qsTr("Set a code for %1").arg(holder?.initials ?? "")
        onClicked: page.go("code", holder.id)
    }
    BigButton {
        objectName: "recovery-sheet"
        Layout.fillWidth: true
        visible: page.shell.lock.hasCodes && page.what !== "say"
        text: qsTr("Recovery sheet")
        detail: page.shell.recovery.made.length > 0 ? page.shell.recovery.made : qsTr("None was made yet: a forgotten code cannot be read from anywhere")
        tone: page.shell.recovery.made.length > 0 ? "plain" : "see"
        onClicked: page.go("recovery", "")
    }
    TextEntry {
        id: name
        objectName: "new-person"
        Layout.fillWidth: true
        label: qsTr("Somebody new: name")
        message: page.doors.trouble
        maximumLength: 80
        onAccepted: page.add()
    }
    ChoiceRow {
        id: role
        objectName: "new-role"
        Layout.fillWidth: true
        label: qsTr("As")
        visible: page.doors.people.length > 0   // the first one is a trainer
        choices: [{ name: "staff", text: qsTr("Staff") }, { name: "trainer", text: qsTr("Trainer"), detail: qsTr("gives out codes") }]
        onChosen: name => current = name
    }
    BigButton {
        objectName: "add-person"
        Layout.fillWidth: true
        text: page.shell.lock.hasCodes ? qsTr("Add") : qsTr("Add and sign as this person")
        enabled: name.text.trim().length > 0 && (role.current.length > 0 || !role.visible)
        onClicked: page.add()
    }
    Connections {
        target: page.doors
        function onPersonAdded(): void {
            if (page.shell.lock.hasCodes)
                name.clear()
            else if (page.what !== "say")
                page.back()
        }
    }
}
