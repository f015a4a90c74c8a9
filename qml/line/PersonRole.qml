// SPDX-License-Identifier: Apache-2.0
// The role of one person and the mark beside it, changed by an admin.
import QtQuick
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Column {
    id: page

    required property var person
    required property DoorsModel doors

    spacing: Theme.grid
    ChoiceRow {
        objectName: "role"
        width: page.width
        label: qsTr("Role of %1").arg(page.person.initials)
        choices: [{ name: "helper", text: qsTr("Helper") }, { name: "staff", text: qsTr("Staff") }, { name: "admin", text: qsTr("Admin") }]
        current: page.person.role
        onChosen: name => page.doors.changePerson(page.person.id, name, page.person.isPractitioner)
    }
    Words { width: page.width; text: qsTr("Athletic trainer or designated health care professional: may close See athlete now"); size: "small" }
    ChoiceRow {
        objectName: "treats"
        width: page.width
        label: qsTr("Athletic trainer or designated health care professional")
        choices: [{ name: "yes", text: qsTr("Yes") }, { name: "no", text: qsTr("No") }]
        current: page.person.isPractitioner ? "yes" : "no"
        onChosen: name => page.doors.changePerson(page.person.id, page.person.role, name === "yes")
    }
}
