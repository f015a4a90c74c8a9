// SPDX-License-Identifier: Apache-2.0
// Who holds this glass: what is recorded from now on is signed by these initials.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    readonly property DoorsModel doors: shell.doors
    signal go(string screen, string what)

    title: qsTr("Who signs?")
    subtitle: qsTr("What is recorded here carries these initials.")
    hasBack: true

    Repeater {
        model: page.doors.people
        BigButton {
            required property var modelData
            objectName: "person-" + modelData.initials
            Layout.fillWidth: true
            text: modelData.initials
            detail: modelData.name
            kind: modelData.isHolder ? "primary" : "plain"
            onClicked: {
                page.doors.choosePerson(modelData.id)
                page.back()
            }
        }
    }
    TextEntry {
        id: name
        objectName: "new-person"
        Layout.fillWidth: true
        label: qsTr("Somebody new: name")
        message: page.doors.trouble
        maximumLength: 80
        onAccepted: page.doors.addPerson(text)
    }
    BigButton {
        Layout.fillWidth: true
        text: qsTr("Add and sign as this person")
        enabled: name.text.trim().length > 0
        onClicked: page.doors.addPerson(name.text)
    }
    Connections {
        target: page.doors
        function onPersonAdded(): void { page.back() }
    }
}
