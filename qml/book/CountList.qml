// SPDX-License-Identifier: Apache-2.0
// Names with a count at the right, one under the other. rows: [{ name?, title, count, tone? }].
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

ColumnLayout {
    id: list

    property var rows: []

    spacing: Theme.grid / 2
    Repeater {
        model: list.rows.length
        RowLayout {
            id: line
            required property int index
            readonly property var row: list.rows[index] ?? ({ title: "", count: "" })
            objectName: "count-" + (row.name ?? index)
            Layout.fillWidth: true
            spacing: Theme.gap
            Accessible.role: Accessible.StaticText
            Accessible.name: row.title + ": " + row.count
            Words { Layout.fillWidth: true; text: line.row.title; tone: line.row.tone ?? "plain"; Accessible.ignored: true }
            Words { Layout.alignment: Qt.AlignTop; text: line.row.count; bold: true; Accessible.ignored: true }
        }
    }
}
