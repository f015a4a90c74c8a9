// SPDX-License-Identifier: Apache-2.0
// The model sheets the Book has adopted, read only, and adopting another from a file.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property SheetsModel sheets

    readonly property var dialog: chooser.item

    function choose(): void {
        if (chooser.status === Loader.Null)
            chooser.setSource("FileChooser.qml", { title: qsTr("Choose a model sheet"), nameFilters: [qsTr("Model sheets (*.json)"), qsTr("All files (*)")] })
        if (page.dialog)
            page.dialog.open()
    }

    title: qsTr("Model sheets")
    subtitle: qsTr("The facts of each helmet model, as its maker states them")
    hasBack: true

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.sheets.refusal }
    Notice { objectName: "remark"; Layout.fillWidth: true; kind: "good"; text: page.sheets.remark }
    Words { Layout.fillWidth: true; visible: page.sheets.sheets.length === 0; text: qsTr("None adopted yet. A helmet can be taken in once its sheet is here."); tone: "quiet" }

    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 1000 ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Repeater {
            model: page.sheets.sheets
            Card {
                id: card
                required property var modelData
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                Layout.alignment: Qt.AlignTop
                Column {
                    width: parent.width
                    spacing: Theme.grid
                    Words { width: parent.width; text: card.modelData.name; size: "head" }
                    Words { width: parent.width; text: qsTr("%1. Helmets in the Book: %2").arg(card.modelData.adopted).arg(card.modelData.units); size: "small"; tone: "quiet" }
                    Words { width: parent.width; text: qsTr("Sizes, head around"); bold: true }
                    FactGrid { width: parent.width; facts: card.modelData.sizes; narrow: 90 }
                    Words { width: parent.width; text: qsTr("Limits"); bold: true }
                    FactGrid { width: parent.width; facts: card.modelData.facts; narrow: 190 }
                    Words { width: parent.width; visible: text.length > 0; text: card.modelData.cautions; size: "small"; tone: "see" }
                }
            }
        }
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
                label: qsTr("Adopt a sheet from a file")
                hint: qsTr("File")
                onAccepted: text => page.sheets.adopt(text)
            }
            AnswerBar {
                objectName: "fileAnswers"
                width: parent.width
                large: false
                answers: [{ name: "choose", text: qsTr("Choose a file"), sign: "search" }, { name: "adopt", text: qsTr("Adopt it"), enabled: path.text.trim().length > 0 && !page.sheets.isBusy }]
                onAnswered: name => { if (name === "choose") page.choose(); else page.sheets.adopt(path.text) }
            }
        }
    }
    // Made when it is first asked for: no page waits for the system's dialog, or fails where there is none.
    Loader { id: chooser; objectName: "chooser"; visible: false }
    Connections {
        target: chooser.item
        function onChosen(file: string): void { page.sheets.adopt(file) }
    }
}
