// SPDX-License-Identifier: Apache-2.0
// One section of the Season page: what it lists and by what rule, its rows, and plain words where there are none.
// rows: [{ name, title, detail, tone, athlete }]. A row that leads nowhere is only read.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts

ColumnLayout {
    id: section

    property string title: ""
    property string rule: ""
    property string nothing: ""
    property var rows: []

    signal rowChosen(var row)

    spacing: Theme.grid
    Words { Layout.fillWidth: true; text: section.title; size: "head"; Accessible.role: Accessible.Heading }
    Words { objectName: "nothing"; Layout.fillWidth: true; visible: section.rows.length === 0; text: section.nothing }
    Repeater {
        model: section.rows
        Loader {
            id: row
            required property var modelData
            Layout.fillWidth: true
            sourceComponent: modelData.athlete.length > 0 ? way : words
            Component {
                id: way
                ListRow {
                    objectName: row.modelData.name
                    title: row.modelData.title
                    detail: row.modelData.detail
                    tone: row.modelData.tone
                    onClicked: section.rowChosen(row.modelData)
                }
            }
            Component {
                id: words
                Card {
                    Column {
                        width: parent.width
                        spacing: Theme.grid / 2
                        Words { width: parent.width; text: row.modelData.title; bold: true }
                        Words { width: parent.width; text: row.modelData.detail; tone: row.modelData.tone }
                    }
                }
            }
        }
    }
    Words { Layout.fillWidth: true; text: section.rule; size: "small"; tone: "quiet" }
}
