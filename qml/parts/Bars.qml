// SPDX-License-Identifier: Apache-2.0
// Counts as bars that read without colour: filled, hollow, or striped, with the figure in words beside each. rows: [{ label, parts: [{ value,
// words, kind: "full", "hollow", "striped" }] }]. joined: the parts of a row lie in one bar and its words under it.
import QtQuick
import Snugline.Tokens

Column {
    id: bars

    property var rows: []
    property bool joined: false
    readonly property real most: {
        let most = 1
        for (const row of rows) {
            let sum = 0
            for (const part of row.parts) {
                sum += part.value
                most = Math.max(most, bars.joined ? sum : part.value)
            }
        }
        return most
    }

    spacing: Theme.gap
    Repeater {
        model: bars.rows
        Column {
            id: row
            required property var modelData
            width: bars.width
            spacing: Theme.grid / 2
            Accessible.role: Accessible.StaticText
            Accessible.name: modelData.label + ": " + modelData.parts.map(part => part.words).join(", ")
            Words { width: parent.width; text: row.modelData.label; bold: true; size: "small"; Accessible.ignored: true }
            Row {
                visible: bars.joined
                Repeater {
                    model: bars.joined ? row.modelData.parts : []
                    FilledBar { required property var modelData; width: bars.width * modelData.value / bars.most; height: implicitHeight; kind: modelData.kind }
                }
            }
            Words { width: parent.width; visible: bars.joined; text: row.modelData.parts.map(part => part.words).join(", "); size: "small"; tone: "quiet"; Accessible.ignored: true }
            Repeater {
                model: bars.joined ? [] : row.modelData.parts
                Item {
                    id: single
                    required property var modelData
                    readonly property real room: row.width - figure.implicitWidth - Theme.grid
                    width: row.width
                    height: Math.max(figure.implicitHeight, bar.implicitHeight)
                    FilledBar { id: bar; anchors.verticalCenter: parent.verticalCenter; width: single.room * single.modelData.value / bars.most; height: implicitHeight; kind: single.modelData.kind }
                    Words { id: figure; x: bar.width + Theme.grid; anchors.verticalCenter: parent.verticalCenter; text: single.modelData.words; size: "small"; wrapMode: Text.NoWrap; Accessible.ignored: true }
                }
            }
        }
    }
}
