// SPDX-License-Identifier: Apache-2.0
// The model sheets of the Book: those that count, with their helmets; one that is half written; taking one in from a file; those that were
// replaced.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property SheetsModel sheets

    readonly property var dialog: chooser.item
    readonly property SheetEditor editor: page.sheets.editor

    signal openSheet(string hash)
    signal write()
    signal showChange()

    function choose(): void {
        if (chooser.status === Loader.Null)
            chooser.setSource("FileChooser.qml", { title: qsTr("Choose a model sheet"), nameFilters: [qsTr("Model sheets (*.json)"), qsTr("All files (*)")] })
        if (page.dialog)
            page.dialog.open()
    }

    title: qsTr("Model sheets")
    subtitle: qsTr("The facts of each helmet model, as its maker states them")
    hasBack: true
    Component.onCompleted: page.sheets.forget()

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.sheets.refusal }
    Column {
        id: faults
        Layout.fillWidth: true
        visible: page.sheets.faults.length > 1
        spacing: 4
        Repeater {
            model: Math.max(0, Math.min(page.sheets.faults.length, 12) - 1)
            Words { required property int index; objectName: "fault"; width: faults.width; text: page.sheets.faults[index + 1] ?? ""; size: "small"; tone: "stop" }
        }
        Words { width: parent.width; visible: page.sheets.faults.length > 12; text: qsTr("and %1 more").arg(page.sheets.faults.length - 12); size: "small"; tone: "stop" }
    }
    BigButton {
        objectName: "mend"
        Layout.fillWidth: true
        visible: page.sheets.canMend
        text: qsTr("Put it right here")
        detail: qsTr("As much of the file as could be read is taken over. The file itself stays as it is.")
        onClicked: { page.sheets.mend(); page.write() }
    }
    Notice { objectName: "remark"; Layout.fillWidth: true; kind: "good"; text: page.sheets.remark }
    Card {
        objectName: "halfWritten"
        Layout.fillWidth: true
        visible: page.editor.isOpen
        tone: "info"
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { width: parent.width; text: qsTr("Half written: %1").arg(page.editor.title); bold: true }
            Words { width: parent.width; text: page.editor.insteadWords; size: "small"; tone: "quiet" }
            AnswerBar {
                objectName: "halfAnswers"
                width: parent.width
                large: false
                answers: [{ name: "goOn", text: qsTr("Go on with it") }, { name: "drop", text: qsTr("Drop it"), kind: "quiet" }]
                onAnswered: name => { if (name === "goOn") page.write(); else page.editor.drop() }
            }
        }
    }
    Words { Layout.fillWidth: true; visible: page.sheets.sheets.length === 0; text: qsTr("None adopted yet. A helmet can be taken in once its sheet is here."); tone: "quiet" }
    Repeater {
        model: page.sheets.sheets
        ListRow {
            id: row
            required property int index
            required property var modelData
            objectName: "sheet" + index
            Layout.fillWidth: true
            title: modelData.title
            detail: modelData.detail + "\n" + modelData.note
            onClicked: page.openSheet(row.modelData.hash)
        }
    }
    BigButton {
        objectName: "newSheet"
        Layout.fillWidth: true
        visible: !page.editor.isOpen
        sign: "plus"
        text: qsTr("Write a new sheet")
        onClicked: { page.editor.beginNew(); page.write() }
    }
    Card {
        Layout.fillWidth: true
        Column {
            width: parent.width
            spacing: Theme.grid
            TextEntry {
                id: path
                objectName: "path"
                width: parent.width
                label: qsTr("Take a sheet in from a file")
                hint: qsTr("File")
                onAccepted: text => page.sheets.adopt(text)
            }
            AnswerBar {
                objectName: "fileAnswers"
                width: parent.width
                large: false
                answers: [{ name: "choose", text: qsTr("Choose a file"), sign: "search" }, { name: "adopt", text: qsTr("Take it in"), enabled: path.text.trim().length > 0 && !page.sheets.isBusy }]
                onAnswered: name => { if (name === "choose") page.choose(); else page.sheets.adopt(path.text) }
            }
        }
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.gap; visible: page.sheets.earlier.length > 0; text: qsTr("Replaced"); size: "head"; Accessible.role: Accessible.Heading }
    Repeater {
        model: page.sheets.earlier
        ListRow {
            id: old
            required property int index
            required property var modelData
            objectName: "earlier" + index
            Layout.fillWidth: true
            title: modelData.title
            detail: modelData.detail
            onClicked: page.openSheet(old.modelData.hash)
        }
    }
    foot: [
        UndoBar {
            objectName: "sheetUndo"
            Layout.fillWidth: true
            text: page.editor.droppedWords.length > 0 ? page.editor.droppedWords : page.sheets.lastWords
            onUndone: { if (page.editor.droppedWords.length > 0) page.editor.undoDrop(); else page.sheets.undo() }
        }
    ]
    // Made when it is first asked for: no page waits for the system's dialog, or fails where there is none.
    Loader { id: chooser; objectName: "chooser"; visible: false }
    Connections {
        target: chooser.item
        function onChosen(file: string): void { page.sheets.adopt(file) }
    }
    Connections {
        target: page.sheets
        function onChangeWanted(): void { page.showChange() }
    }
}
