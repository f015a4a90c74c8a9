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

    readonly property bool isWhole: name.text.trim().length > 0 && (role.current.length > 0 || isFirst)
    readonly property bool isFirst: doors.people.length === 0    // an admin, whatever is asked
    property string opened: ""            // whose role and mark are being changed
    function add(): void {
        if (isWhole)
            doors.addPerson(name.text, isFirst ? "admin" : role.current, false)
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
        ColumnLayout {
            id: person
            required property var modelData
            Layout.fillWidth: true
            spacing: 0
            BigButton {
                objectName: "person-" + person.modelData.initials
                Layout.fillWidth: true
                text: person.modelData.initials
                detail: person.modelData.hasCode ? qsTr("%1, %2").arg(person.modelData.name).arg(person.modelData.roleWords) : qsTr("%1, %2, no code yet").arg(person.modelData.name).arg(person.modelData.roleWords)
                kind: person.modelData.isHolder ? "primary" : "plain"
                onClicked: page.choose(person.modelData)
            }
            BigButton {
                objectName: "role-of-" + person.modelData.initials
                visible: page.what !== "say"
                Layout.fillWidth: true
                kind: "quiet"
                enabled: Bearer.isAdmin
                text: qsTr("Role and mark of %1").arg(person.modelData.initials)
                detail: Bearer.adminOnly
                onClicked: page.opened = page.opened === person.modelData.id ? "" : person.modelData.id
            }
            Loader {
                Layout.fillWidth: true
                active: page.opened === person.modelData.id
                visible: active
                sourceComponent: PersonRole { person: person.modelData; doors: page.doors }
            }
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
        visible: !page.isFirst
        enabled: Bearer.isAdmin
        choices: [{ name: "helper", text: qsTr("Helper"), detail: qsTr("rechecks, puts on hold") }, { name: "staff", text: qsTr("Staff"), detail: qsTr("fits and swaps too") }, { name: "admin", text: qsTr("Admin"), detail: qsTr("gives out codes") }]
        onChosen: name => current = name
    }
    BigButton {
        objectName: "add-person"
        Layout.fillWidth: true
        text: page.shell.lock.hasCodes ? qsTr("Add") : qsTr("Add and sign as this person")
        enabled: page.isWhole && (page.isFirst || Bearer.isAdmin)
        detail: page.isFirst ? "" : Bearer.adminOnly
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
