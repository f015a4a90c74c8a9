// SPDX-License-Identifier: Apache-2.0
// A model sheet while it is written, one section at a time: what is wrong stands beside its value at once, the drawing and the chart follow.
// Every change is on this device before the next; leaving the page loses nothing. What it changes is asked for before it is kept.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: screen

    required property SheetEditor editor

    signal showChange()

    title: screen.editor.title
    subtitle: screen.editor.insteadWords
    hasBack: true
    drawingShare: 0.28
    showsDrawing: screen.landscape
    drawing: [
        SheetDrawing {
            anchors.fill: parent
            hasCrownAir: screen.editor.drawn.hasCrownAir ?? false
            hasSideAir: screen.editor.drawn.hasSideAir ?? false
            hasJawAir: screen.editor.drawn.hasJawAir ?? false
            strapPoints: screen.editor.drawn.strapPoints ?? 4
            description: screen.editor.drawn.description ?? ""
            callouts: screen.editor.callouts
        }
    ]

    edge: [
        StepLadder {
            objectName: "sections"
            anchors.fill: parent
            title: qsTr("Sections")
            layout: screen.edgeLayout
            steps: screen.editor.sections
            current: screen.editor.sections.findIndex(one => one.name === screen.editor.section)
            onStepTouched: name => { screen.editor.section = name; screen.scrollArea.contentY = 0 }
        }
    ]

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: screen.editor.refusal }
    Notice { objectName: "unread"; Layout.fillWidth: true; kind: "attention"; text: screen.editor.unread.length > 0 ? qsTr("Of the file this could not be taken over. %1").arg(screen.editor.unread.join(". ")) : "" }
    Words { objectName: "sectionName"; Layout.fillWidth: true; text: screen.editor.sections.find(one => one.name === screen.editor.section)?.text ?? ""; size: "head"; Accessible.role: Accessible.Heading }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: screen.editor.intro; tone: "quiet" }
    Repeater {
        model: screen.editor.troubles
        Words { required property string modelData; objectName: "trouble"; Layout.fillWidth: true; text: modelData; tone: "stop" }
    }
    SizeChart { objectName: "chart"; Layout.fillWidth: true; visible: screen.editor.section === "sizes"; bands: visible ? screen.editor.chart : [] }
    Column {
        id: groups
        Layout.fillWidth: true
        spacing: Theme.gap
        Repeater {
            model: screen.editor.groups.length
            Card {
                id: card
                required property int index
                readonly property var group: screen.editor.groups[index] ?? ({ key: "", title: "", fields: [], actions: [] })
                objectName: "group-" + group.key
                width: groups.width
                Column {
                    id: inside
                    width: parent.width
                    spacing: Theme.gap
                    Words { width: parent.width; visible: text.length > 0; text: card.group.title; bold: true }
                    Repeater {
                        model: card.group.fields.length
                        SheetField {
                            required property int index
                            width: inside.width
                            value: card.group.fields[index] ?? ({ path: "", kind: "", label: "", text: "", note: "", message: "", steps: [], typedLabel: "", choices: [], current: "", longest: 60, isNumber: true })
                            onStepped: (path, wholes) => screen.editor.step(path, wholes)
                            onTyped: (path, text) => screen.editor.type(path, text)
                            onChosen: (path, name) => screen.editor.choose(path, name)
                        }
                    }
                    AnswerBar {
                        objectName: "actions-" + card.group.key
                        width: parent.width
                        visible: card.group.actions.length > 0
                        large: false
                        answers: card.group.actions.map(one => ({ name: one.name, text: one.text, kind: "quiet" }))
                        onAnswered: name => screen.editor.act(name)
                    }
                }
            }
        }
    }
    AnswerBar {
        objectName: "sectionActions"
        Layout.fillWidth: true
        visible: screen.editor.actions.length > 0
        large: false
        answers: screen.editor.actions.map(one => ({ name: one.name, text: one.text, sign: "plus" }))
        onAnswered: name => screen.editor.act(name)
    }

    foot: [
        BigButton {
            objectName: "next"
            Layout.fillWidth: true
            large: true
            kind: screen.editor.isWhole ? "primary" : "plain"
            enabled: screen.editor.isOpen && screen.editor.isDifferent
            text: screen.editor.isWhole ? (screen.editor.isDifferent ? qsTr("See what it changes") : qsTr("Nothing is changed yet")) : screen.editor.openWords
            detail: screen.editor.isWhole ? "" : qsTr("Go to %1").arg(screen.editor.nextFault)
            onClicked: { if (screen.editor.isWhole) screen.showChange(); else screen.editor.goToFault() }
        }
    ]
}
