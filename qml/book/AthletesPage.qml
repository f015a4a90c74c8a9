// SPDX-License-Identifier: Apache-2.0
// The roster: searched by jersey or name; a touch opens the athlete, and the pencil's place is a plain word.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

ListPage {
    id: page

    required property RosterModel roster
    property string unsignedWords: ""     // who has yet to sign the yearly warning; empty when all have

    signal openAthlete(string athleteId)
    signal editAthlete(string athleteId)
    signal takeRosterIn()
    Component.onDestruction: page.roster.onlyUnsigned = false

    title: qsTr("Athletes")
    subtitle: page.roster.count === page.roster.total ? qsTr("%1 in the Book").arg(page.roster.total) : qsTr("%1 of %2").arg(page.roster.count).arg(page.roster.total)
    emptyText: page.roster.total === 0 ? qsTr("Nobody is in the Book yet. Take a roster in, or add one athlete.") : qsTr("Nobody matches.")
    rows: page.roster
    foot: [
        Notice { Layout.fillWidth: true; kind: "stop"; text: page.roster.intake.refusal },
        UndoBar { objectName: "rosterUndo"; Layout.fillWidth: true; text: page.roster.intake.lastWords; onUndone: page.roster.intake.undo() },
        AnswerBar {
            objectName: "answers"
            Layout.fillWidth: true
            large: false
            answers: [{ name: "add", text: qsTr("Add an athlete"), sign: "plus" }, { name: "roster", text: qsTr("Take a roster in") }]
            onAnswered: name => { if (name === "add") page.editAthlete(""); else page.takeRosterIn() }
        }
    ]
    head: Column {
        spacing: Theme.grid
        TextEntry {
            objectName: "search"
            width: parent.width
            label: qsTr("Jersey or name")
            hint: qsTr("Search")
            text: page.roster.search
            inputMethodHints: Qt.ImhNoPredictiveText
            onEdited: text => page.roster.search = text
        }
        BigButton {
            objectName: "only-unsigned"
            width: parent.width
            visible: page.unsignedWords.length > 0 || page.roster.onlyUnsigned
            checked: page.roster.onlyUnsigned
            kind: "plain"
            text: page.roster.onlyUnsigned ? qsTr("Show everybody") : page.unsignedWords
            detail: page.roster.onlyUnsigned ? page.unsignedWords : qsTr("Show only these")
            onClicked: page.roster.onlyUnsigned = !page.roster.onlyUnsigned
        }
    }
    delegate: GridLayout {
        id: entry
        required property string athleteId
        required property string jersey
        required property string name
        required property string helmet
        required property string tape
        required property bool isTapeStale
        required property bool isOnRoster
        required property bool isUnsigned
        width: page.rowWidth
        columns: Theme.stacks ? 1 : 2
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        ListRow {
            objectName: "athlete"
            Layout.fillWidth: true
            Layout.fillHeight: true
            number: entry.jersey
            title: entry.name
            detail: entry.isOnRoster ? qsTr("%1. %2").arg(entry.helmet).arg(entry.tape) : qsTr("Off the roster")
            tone: entry.isTapeStale && entry.isOnRoster ? "see" : "plain"
            note: entry.isUnsigned && page.roster.onlyUnsigned ? qsTr("Warning not signed") : ""
            onClicked: page.openAthlete(entry.athleteId)
        }
        BigButton {
            objectName: "edit"
            Layout.fillHeight: true
            Layout.fillWidth: entry.columns === 1
            text: qsTr("Change")
            spokenName: qsTr("Change %1").arg(entry.name)
            onClicked: page.editAthlete(entry.athleteId)
        }
    }
}
