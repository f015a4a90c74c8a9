// SPDX-License-Identifier: Apache-2.0
// One value of a sheet that is written: a number by steps or typed, a line or a page of text, or one of a few. What it is called, what is
// wrong with it and how it moves come in.
import QtQuick
import Snugline.Parts

FocusScope {
    id: field

    property var value: ({ path: "", kind: "", label: "", text: "", note: "", message: "", steps: [], typedLabel: "", choices: [], current: "", longest: 60, isNumber: true })

    signal stepped(string path, string wholes)
    signal typed(string path, string text)
    signal chosen(string path, string name)

    implicitWidth: 320
    implicitHeight: column.implicitHeight

    Column {
        id: column
        width: field.width
        spacing: 2
        Loader {
            width: parent.width
            sourceComponent: field.value.kind === "figure" ? figure : field.value.kind === "text" ? line : field.value.kind === "page" ? sheet : field.value.kind === "choice" ? choice : null
        }
        Words { objectName: "note"; width: parent.width; visible: text.length > 0; text: field.value.note; size: "small"; tone: "quiet" }
    }
    Component {
        id: figure
        FigureStepper {
            id: stepper
            objectName: field.value.path
            label: field.value.label
            text: field.value.text
            steps: field.value.steps
            typedLabel: field.value.typedLabel
            message: field.value.message
            onStepped: wholes => field.stepped(field.value.path, wholes)
            onTyped: text => {
                field.typed(field.value.path, text)
                if (field.value.isNumber)
                    stepper.endTyping()
            }
        }
    }
    Component {
        id: line
        TextEntry {
            id: entry
            objectName: field.value.path
            readonly property string kept: field.value.text
            label: field.value.label
            message: field.value.message
            maximumLength: field.value.longest + 20      // what is too long is said, not cut off
            onKeptChanged: if (text !== kept) text = kept
            Component.onCompleted: text = kept
            onEdited: text => field.typed(field.value.path, text)
        }
    }
    Component {
        id: sheet
        Column {
            TextPage {
                id: page
                objectName: field.value.path
                readonly property string kept: field.value.text
                width: parent.width
                label: field.value.label
                onKeptChanged: if (text !== kept) text = kept
                Component.onCompleted: text = kept
                onTextChanged: if (text !== kept) field.typed(field.value.path, text)
            }
            Words { width: parent.width; visible: text.length > 0; text: field.value.message; tone: "stop" }
        }
    }
    Component {
        id: choice
        Column {
            spacing: 4
            Words { width: parent.width; text: field.value.label; size: "small"; tone: "quiet"; Accessible.ignored: true }
            ChipGrid {
                objectName: field.value.path
                width: parent.width
                label: field.value.label
                choices: field.value.choices.map(one => ({ name: one.name, text: one.text, chosen: one.name === field.value.current }))
                onChosen: name => field.chosen(field.value.path, name)
            }
            Words { width: parent.width; visible: text.length > 0; text: field.value.message; tone: "stop" }
        }
    }
}
