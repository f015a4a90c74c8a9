// SPDX-License-Identifier: Apache-2.0
// Helmets on the shelf that this athlete may have, the likeliest size first.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    property string what: ""
    readonly property AthleteModel athlete: shell.athlete
    readonly property var near: athlete.shelf.filter(u => !u.isRemote)
    readonly property var remote: athlete.shelf.filter(u => u.isRemote)
    property bool showsRemote: false
    signal go(string screen, string what)
    signal replace(string screen, string what)

    title: qsTr("Choose helmet")
    subtitle: athlete.jersey + "  " + athlete.name
    hasBack: true
    Component.onCompleted: if (athlete.athleteId !== what) athlete.open(what)

    Connections {
        target: page.athlete
        function onChosen(): void { page.replace("athlete", page.what) }
    }
    Notice { Layout.fillWidth: true; kind: "attention"; text: page.athlete.trouble }
    Notice {
        Layout.fillWidth: true
        kind: "inform"
        text: page.athlete.tapes.length === 0 ? qsTr("The head is not taped yet: sizes are a guess.") : ""
        actionText: qsTr("Tape first")
        onActed: page.go("tape", page.what)
    }
    Words { Layout.fillWidth: true; visible: page.athlete.shelf.length === 0; text: qsTr("No helmet on the shelf is in service, in date and free. Take one in at the Dock.") }
    Repeater {
        model: page.showsRemote ? page.athlete.shelf : page.near
        ListRow {
            required property var modelData
            objectName: "unit-" + modelData.serial
            Layout.fillWidth: true
            title: modelData.model
            detail: modelData.serial + ", " + modelData.label
            tagText: modelData.odds
            tagTone: modelData.isLikely ? "snug" : "quiet"
            tagShape: modelData.isLikely ? "dot" : "hollow"
            enabled: !page.athlete.isBusy
            onClicked: page.athlete.choose(modelData.unit)
        }
    }
    BigButton {
        objectName: "remote"
        Layout.fillWidth: true
        visible: page.remote.length > 0 && !page.showsRemote
        kind: "quiet"
        text: qsTr("%n more of sizes under 1 % likely", "", page.remote.length)
        onClicked: page.showsRemote = true
    }
}
