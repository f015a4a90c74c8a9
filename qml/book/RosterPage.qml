// SPDX-License-Identifier: Apache-2.0
// A roster file: chosen, read, shown line by line, and only then taken in.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

ListPage {
    id: page

    required property RosterImport intake
    readonly property var marks: ({ refused: { text: qsTr("Refused"), tone: "stop", shape: "square" }, questioned: { text: qsTr("Questioned"), tone: "see", shape: "over" },
                                    changed: { text: qsTr("Changed"), tone: "info", shape: "hollow" }, added: { text: qsTr("Added"), tone: "snug", shape: "dot" } })

    readonly property var dialog: chooser.item

    function choose(): void {
        if (chooser.status === Loader.Null)
            chooser.setSource("FileChooser.qml", { title: qsTr("Choose a roster file"), nameFilters: [qsTr("Rosters (*.csv *.tsv *.txt)"), qsTr("All files (*)")] })
        if (page.dialog)
            page.dialog.open()
    }

    title: qsTr("Take a roster in")
    subtitle: page.intake.isRead ? qsTr("%1: %2").arg(page.intake.file).arg(page.intake.formWords) : qsTr("A CSV file, as any spreadsheet writes it")
    rows: page.intake.rows.length         // a count keeps the list where it is while rows are answered
    onBack: page.intake.putAside()
    head: Column {
        spacing: Theme.gap
        TextEntry {
            id: path
            objectName: "path"
            width: parent.width
            visible: !page.intake.isRead
            label: qsTr("File")
            hint: qsTr("File")
            onAccepted: text => page.intake.read(text)
        }
        AnswerBar {
            objectName: "fileAnswers"
            width: parent.width
            visible: !page.intake.isRead
            large: false
            answers: [{ name: "choose", text: qsTr("Choose a file"), sign: "search" }, { name: "read", text: qsTr("Read this file"), kind: path.text.trim().length > 0 ? "primary" : "plain", enabled: path.text.trim().length > 0 }]
            onAnswered: name => { if (name === "choose") page.choose(); else page.intake.read(path.text) }
        }
        Notice { objectName: "refusal"; width: parent.width; kind: "stop"; text: page.intake.refusal }
        Card {
            width: parent.width
            visible: page.intake.isRead
            Column {
                width: parent.width
                spacing: Theme.grid
                Words { objectName: "summary"; width: parent.width; size: "head"; text: qsTr("%1 to add, %2 to change, %3 unchanged").arg(page.intake.added).arg(page.intake.altered).arg(page.intake.unchanged) }
                Words {
                    width: parent.width
                    visible: page.intake.questioned + page.intake.refused > 0
                    tone: page.intake.refused > 0 ? "stop" : "see"
                    bold: true
                    text: page.intake.refused > 0 ? qsTr("%1 questioned, %2 refused. Refused rows stay out; the others go in.").arg(page.intake.questioned).arg(page.intake.refused)
                        : qsTr("%1 questioned, each to be answered below.").arg(page.intake.questioned)
                }
                Words { width: parent.width; text: qsTr("Nothing is written yet."); tone: "quiet"; size: "small" }
            }
        }
    }
    delegate: Column {
        id: entry
        required property int index
        readonly property var row: page.intake.rows[entry.index] ?? ({ line: "", kind: "added", who: "", why: "", question: "", answers: [] })
        readonly property var mark: page.marks[entry.row.kind]
        width: page.rowWidth
        spacing: Theme.grid / 2
        ListRow {
            width: entry.width
            title: entry.row.who.length > 0 ? entry.row.who : qsTr("Line %1").arg(entry.row.line)
            detail: entry.row.why
            tone: entry.mark.tone === "snug" || entry.mark.tone === "info" ? "plain" : entry.mark.tone
            note: entry.row.line.length > 0 ? qsTr("line %1").arg(entry.row.line) : ""
            tagText: entry.mark.text
            tagTone: entry.mark.tone
            tagShape: entry.mark.shape
        }
        ChipGrid {
            objectName: "answers " + entry.row.question
            width: entry.width
            visible: count > 0
            label: qsTr("Is it right?")
            mostColumns: 2
            choices: entry.row.answers
            onChosen: name => page.intake.answer(entry.row.question, name)
        }
    }
    foot: [
        UndoBar { objectName: "rosterUndo"; Layout.fillWidth: true; text: page.intake.isRead ? "" : page.intake.lastWords; onUndone: page.intake.undo() },
        AnswerBar {
            objectName: "answers"
            Layout.fillWidth: true
            visible: page.intake.isRead
            answers: [
                { name: "aside", text: qsTr("Put aside") },
                { name: "take", text: qsTr("Take it in"), detail: page.intake.unanswered > 0 ? qsTr("%1 not answered: in doubt it stays out").arg(page.intake.unanswered) : "",
                  kind: page.intake.unanswered > 0 ? "plain" : "primary", enabled: !page.intake.isBusy && page.intake.added + page.intake.altered > 0 }
            ]
            onAnswered: name => { if (name === "take") page.intake.takeIn(); else page.intake.putAside() }
        }
    ]
    // Made when it is first asked for: no page waits for the system's dialog, or fails where there is none.
    Loader { id: chooser; objectName: "chooser"; visible: false }
    Connections {
        target: chooser.item
        function onChosen(file: string): void { page.intake.read(file) }
    }
}
