// SPDX-License-Identifier: Apache-2.0
// One athlete's number, names and birth year: to add, or to change. Nothing is kept before Keep is on disk.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property RosterModel roster
    property string athleteId: ""
    readonly property bool isNew: page.athleteId.length === 0
    property bool isOnRoster: true
    property bool hasPhones: false

    signal openPhone(string athleteId)

    title: page.isNew ? qsTr("Add an athlete") : qsTr("Change an athlete")
    hasBack: true
    Component.onCompleted: {
        page.roster.forgetRefusal()
        const kept = page.roster.athlete(page.athleteId)
        if (kept.family === undefined)
            return
        jersey.text = kept.jersey
        family.text = kept.family
        given.text = kept.given
        birthYear.text = kept.birthYear
        page.isOnRoster = kept.isOnRoster
    }

    TextEntry { id: jersey; objectName: "jersey"; Layout.fillWidth: true; focus: true; label: qsTr("Jersey number, as written"); maximumLength: 3; inputMethodHints: Qt.ImhDigitsOnly }
    TextEntry { id: family; objectName: "family"; Layout.fillWidth: true; label: qsTr("Family name"); maximumLength: 80 }
    TextEntry { id: given; objectName: "given"; Layout.fillWidth: true; label: qsTr("Given name"); maximumLength: 80 }
    TextEntry { id: birthYear; objectName: "birthYear"; Layout.fillWidth: true; label: qsTr("Birth year, if known"); maximumLength: 4; inputMethodHints: Qt.ImhDigitsOnly }
    ChoiceRow {
        objectName: "onRoster"
        Layout.fillWidth: true
        visible: !page.isNew
        label: qsTr("On the roster")
        choices: [{ name: "on", text: qsTr("On the roster") }, { name: "off", text: qsTr("Off the roster") }]
        current: page.isOnRoster ? "on" : "off"
        onChosen: name => page.isOnRoster = name === "on"
    }
    BigButton {
        objectName: "own-phone"
        Layout.fillWidth: true
        visible: !page.isNew && page.hasPhones
        text: qsTr("Phone of their own")
        detail: qsTr("A code that joins it to this athlete only")
        onClicked: page.openPhone(page.athleteId)
    }
    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.roster.refusal }

    foot: [
        BigButton {
            objectName: "keep"
            Layout.fillWidth: true
            large: true
            kind: "primary"
            text: qsTr("Keep")
            enabled: family.text.trim().length > 0 && !page.roster.isBusy
            onClicked: {
                if (page.isNew)
                    page.roster.add(jersey.text, family.text, given.text, birthYear.text)
                else
                    page.roster.change(page.athleteId, jersey.text, family.text, given.text, birthYear.text, page.isOnRoster)
            }
        }
    ]
    Connections {
        target: page.roster
        function onWritten(): void { page.back() }
    }
}
