// SPDX-License-Identifier: Apache-2.0
// An arithmetic in plain numbers, line by line: what, how it is worked out, the figure. why: { sentence, parts: [{ title, lines: [{ name,
// value, how }] }], advice, caution }. All words come in.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

ColumnLayout {
    id: lines

    property var why: ({})

    spacing: Theme.gap
    Words { Layout.fillWidth: true; visible: text.length > 0; text: lines.why.sentence ?? ""; bold: true; tone: lines.why.tone ?? "see" }
    Repeater {
        model: lines.why.parts ?? []
        Card {
            id: part
            required property var modelData
            Layout.fillWidth: true
            tone: modelData.tone ?? ""
            ColumnLayout {
                width: parent.width
                spacing: Theme.grid
                Words { Layout.fillWidth: true; text: part.modelData.title; bold: true }
                Repeater {
                    model: part.modelData.lines
                    ColumnLayout {
                        id: line
                        required property var modelData
                        Layout.fillWidth: true
                        spacing: 0
                        GridLayout {
                            Layout.fillWidth: true
                            columns: Theme.stacks ? 1 : 2
                            columnSpacing: Theme.gap
                            rowSpacing: 0
                            Words { Layout.fillWidth: true; text: line.modelData.name }
                            Words { Layout.maximumWidth: lines.width * (Theme.stacks ? 1 : 0.5); text: line.modelData.value; bold: true; horizontalAlignment: Theme.stacks ? Text.AlignLeft : Text.AlignRight }
                        }
                        Words { Layout.fillWidth: true; visible: text.length > 0; text: line.modelData.how ?? ""; size: "small"; tone: "quiet" }
                    }
                }
            }
        }
    }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: lines.why.advice ?? "" }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: lines.why.caution ?? ""; size: "small"; tone: "quiet" }
}
