// SPDX-License-Identifier: Apache-2.0
// One model sheet as it stands: its drawing with the figures, sizes as a chart, limits, questions, cautions, who goes by it, and how it came
// to be so. From here it is changed, copied, put back or written out as a file.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: screen

    required property SheetsModel sheets
    readonly property SheetPage sheet: screen.sheets.page
    readonly property SheetEditor editor: screen.sheets.editor
    property string touched: ""
    readonly property var touchedOne: screen.sheet.callouts.find(one => one.place === screen.touched) ?? null

    signal write()
    signal showChange()

    function answer(name: string): void {
        if (name === "export")
            return screen.sheet.writeOut()
        if (name === "copy")
            screen.editor.beginCopy(screen.sheet.hash)
        else
            screen.editor.beginChange(screen.sheet.hash)
        if (name === "putBack")
            screen.showChange()
        else
            screen.write()
    }

    component Head: Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; size: "head"; Accessible.role: Accessible.Heading }

    title: screen.sheet.name.length > 0 ? screen.sheet.name : qsTr("Model sheet")
    subtitle: screen.sheet.stateWords
    hasBack: true
    drawingShare: 0.44
    drawing: [
        SheetDrawing {
            objectName: "sheetDrawing"
            anchors.fill: parent
            visible: height > 120
            hasCrownAir: screen.sheet.drawn.hasCrownAir ?? false
            hasSideAir: screen.sheet.drawn.hasSideAir ?? false
            hasJawAir: screen.sheet.drawn.hasJawAir ?? false
            strapPoints: screen.sheet.drawn.strapPoints ?? 4
            description: screen.sheet.drawn.description ?? ""
            callouts: screen.sheet.callouts
            focusPart: screen.touched
            onPartTouched: name => screen.touched = screen.touched === name ? "" : name
        }
    ]

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: screen.sheet.refusal.length > 0 ? screen.sheet.refusal : screen.sheets.refusal }
    Notice { objectName: "remark"; Layout.fillWidth: true; kind: "good"; text: screen.sheet.exported.length > 0 ? screen.sheet.exported : screen.sheets.remark }
    Notice { Layout.fillWidth: true; kind: "attention"; text: screen.sheet.isStanding || screen.sheet.name.length === 0 ? "" : qsTr("This sheet counts no more. Checks that began with it keep it.") }
    Words { objectName: "use"; Layout.fillWidth: true; text: screen.sheet.useWords; bold: true }
    Words {
        objectName: "touched"
        Layout.fillWidth: true
        text: screen.touchedOne ? qsTr("%1: %2").arg(screen.touchedOne.title).arg(screen.touchedOne.detail) : qsTr("Touch a place on the drawing to read its limits.")
        size: "small"
        tone: screen.touchedOne ? "plain" : "quiet"
    }
    FactGrid {
        Layout.fillWidth: true
        facts: screen.sheet.callouts.map(one => ({ name: one.title, words: one.detail }))
        narrow: 190
    }
    AnswerBar {
        objectName: "sheetAnswers"
        Layout.fillWidth: true
        large: false
        answers: {
            const free = !screen.editor.isOpen
            const list = [screen.sheet.isStanding ? { name: "change", text: qsTr("Change it"), enabled: free } : { name: "putBack", text: qsTr("Put it back"), enabled: free },
                          { name: "copy", text: qsTr("Copy it"), detail: qsTr("as a model of its own"), enabled: free }]
            if (screen.sheet.canExport)
                list.push({ name: "export", text: qsTr("Write a file") })
            return list
        }
        onAnswered: name => screen.answer(name)
    }
    Words {
        Layout.fillWidth: true
        visible: screen.editor.isOpen
        text: qsTr("A half written sheet waits on the page before: go on with it or drop it first.")
        size: "small"
        tone: "see"
    }
    Head { text: qsTr("Sizes, head around") }
    SizeChart { objectName: "chart"; Layout.fillWidth: true; bands: screen.sheet.chart }
    Head { text: qsTr("Limits") }
    FactGrid { Layout.fillWidth: true; facts: screen.sheet.facts; narrow: 230 }
    Head { visible: screen.sheet.questions.length > 0; text: qsTr("Questions") }
    Repeater {
        model: screen.sheet.questions
        Column {
            id: question
            required property var modelData
            Layout.fillWidth: true
            Words { width: parent.width; text: question.modelData.name; size: "small"; bold: true }
            Words { width: parent.width; text: question.modelData.words; size: "small"; tone: "quiet" }
        }
    }
    Head { visible: screen.sheet.cautions.length > 0; text: qsTr("Cautions") }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: screen.sheet.cautions; size: "small"; tone: "see" }
    Head { text: qsTr("History") }
    Repeater {
        model: screen.sheet.history
        Column {
            id: entry
            required property int index
            required property var modelData
            objectName: "history" + index
            Layout.fillWidth: true
            spacing: 2
            UnitFact { width: parent.width; when: entry.modelData.when; who: entry.modelData.who; text: entry.modelData.words }
            Repeater {
                model: entry.modelData.lines
                Words { required property string modelData; x: Theme.gap; width: entry.width - x; text: modelData; size: "small" }
            }
        }
    }
    Head { visible: screen.sheet.others.length > 0; text: qsTr("Other sheets of this model") }
    Repeater {
        model: screen.sheet.others
        ListRow {
            id: other
            required property int index
            required property var modelData
            objectName: "other" + index
            Layout.fillWidth: true
            title: modelData.title
            detail: modelData.detail
            onClicked: screen.sheet.open(other.modelData.hash)
        }
    }
    foot: [
        UndoBar { objectName: "sheetUndo"; Layout.fillWidth: true; text: screen.sheets.aboutWords; onUndone: screen.sheets.undo() }
    ]
}
