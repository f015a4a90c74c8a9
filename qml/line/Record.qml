// SPDX-License-Identifier: Apache-2.0
// Everything the Book holds about one athlete, shown on request and handed out as a file; legal holds of this athlete.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    required property string what
    readonly property PrivacyModel privacy: shell.privacy

    title: qsTr("Whole record")
    subtitle: privacy.title
    hasBack: true
    Component.onCompleted: privacy.open(what)

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.privacy.trouble }
    Notice { Layout.fillWidth: true; kind: "inform"; text: page.privacy.nameWords }
    Notice { objectName: "record-place"; Layout.fillWidth: true; kind: "good"; text: page.privacy.place.length > 0 ? qsTr("Written: %1").arg(page.privacy.place) : "" }
    LegalHolds { Layout.fillWidth: true; privacy: page.privacy; athleteId: page.what; holds: page.privacy.athleteHolds }
    Words { Layout.fillWidth: true; size: "small"; tone: "quiet"; text: qsTr("What was said about how somebody feels is not shown and not handed out.") }
    Repeater {
        model: page.privacy.lines
        ColumnLayout {
            id: entry
            required property var modelData
            Layout.fillWidth: true
            spacing: 0
            Words { Layout.fillWidth: true; text: entry.modelData.text }
            Words { Layout.fillWidth: true; text: entry.modelData.who.length > 0 ? qsTr("%1, %2").arg(entry.modelData.when).arg(entry.modelData.who) : entry.modelData.when; size: "small"; tone: "quiet" }
        }
    }
    foot: AnswerBar {
        objectName: "record-out"
        Layout.fillWidth: true
        large: false
        answers: [{ name: "pdf", text: qsTr("PDF") }, { name: "csv", text: qsTr("CSV") }, { name: "json", text: qsTr("JSON") }]
        onAnswered: name => page.privacy.handOut(name)
    }
}
