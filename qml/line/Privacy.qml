// SPDX-License-Identifier: Apache-2.0
// How long names are shown, and legal holds on everybody. Part of the Book, for every device of the team.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    readonly property PrivacyModel privacy: shell.privacy

    title: qsTr("Privacy")
    subtitle: qsTr("For the whole team")
    hasBack: true
    Component.onCompleted: privacy.forgetTrouble()

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.privacy.trouble }
    Words { Layout.fillWidth: true; text: qsTr("Names of athletes who left are shown"); size: "head" }
    ChoiceRow {
        objectName: "name-years"
        Layout.fillWidth: true
        enabled: page.privacy.mayChange
        label: qsTr("Names of athletes who left are shown")
        choices: [0, 2, 3, 5, 7, 10].map(y => ({ name: String(y), text: y === 0 ? qsTr("Always") : qsTr("%1 years").arg(y) }))
        current: String(page.privacy.years)
        onChosen: name => page.privacy.setYears(parseInt(name))
    }
    Words { Layout.fillWidth: true; visible: text.length > 0; tone: "quiet"; text: Bearer.adminOnly }
    Words { Layout.fillWidth: true; text: page.privacy.yearsWords; bold: true }
    Words { Layout.fillWidth: true; text: qsTr("Counted from the last entry about an athlete who is off the roster. After that views and papers leave the name out and say since when. The log still holds it: nothing in the Book is ever deleted, and whoever reads the file itself finds it. How long your school must keep records is for the school to say.") }
    LegalHolds { Layout.fillWidth: true; privacy: page.privacy; holds: page.privacy.teamHolds }
}
