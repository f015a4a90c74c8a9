// SPDX-License-Identifier: Apache-2.0
// What keeping a sheet changes, before it is kept: the values, the athletes whose row, size, air or label it concerns, helmets on the shelf,
// checks that go on by the old one. Kept by one touch; the undo bar of the page before puts the old one back.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: screen

    required property SheetEditor editor

    signal openAthlete(string athleteId)
    signal openUnit(string unitId)

    component Head: Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; size: "head"; Accessible.role: Accessible.Heading }

    title: qsTr("What it changes")
    subtitle: screen.editor.title
    hasBack: true
    Component.onCompleted: screen.editor.look()

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: screen.editor.refusal }
    Notice { objectName: "barred"; Layout.fillWidth: true; kind: "stop"; text: screen.editor.barred }
    Words { objectName: "effect"; Layout.fillWidth: true; text: screen.editor.effectWords; bold: true }
    Notice { objectName: "openChecks"; Layout.fillWidth: true; kind: "inform"; text: screen.editor.openChecks }
    Head { visible: screen.editor.replaces; text: qsTr("On the sheet") }
    Words { Layout.fillWidth: true; visible: screen.editor.replaces && screen.editor.differences.length === 0; text: qsTr("Nothing: both sheets say the same."); tone: "quiet" }
    Repeater {
        model: screen.editor.differences
        Words { required property int index; required property string modelData; objectName: "difference" + index; Layout.fillWidth: true; text: modelData }
    }
    Head { visible: screen.editor.athletes.length > 0; text: qsTr("Athletes") }
    Repeater {
        model: screen.editor.athletes
        ListRow {
            id: row
            required property int index
            required property var modelData
            objectName: "concerned" + index
            Layout.fillWidth: true
            number: modelData.number
            title: modelData.title
            detail: modelData.detail
            note: modelData.note
            tone: modelData.tone
            tagText: modelData.changesRow ? qsTr("Row changes") : ""
            tagTone: modelData.tone
            onClicked: screen.openAthlete(row.modelData.athlete)
        }
    }
    Head { visible: screen.editor.helmets.length > 0; text: qsTr("Helmets that nobody wears") }
    Repeater {
        model: screen.editor.helmets
        ListRow {
            id: helmet
            required property int index
            required property var modelData
            objectName: "helmet" + index
            Layout.fillWidth: true
            title: modelData.title
            detail: modelData.detail
            tone: modelData.tone
            onClicked: screen.openUnit(helmet.modelData.unit)
        }
    }

    foot: [
        BigButton {
            objectName: "keepSheet"
            Layout.fillWidth: true
            large: true
            kind: "primary"
            enabled: screen.editor.canKeep
            text: qsTr("Keep this sheet")
            detail: screen.editor.replaces && !Theme.stacks ? qsTr("It counts from now on, for every helmet of this model.") : ""
            onClicked: screen.editor.keep()
        }
    ]
}
