// SPDX-License-Identifier: Apache-2.0
// Names and values in two columns; one above the other where there is no room.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts

Column {
    id: grid

    property var facts: []                // { name, words }
    property real narrow: 160             // width of the names at 100 % text
    readonly property bool stacked: Theme.stacks || Theme.phone && grid.narrow > 100

    spacing: 4
    Repeater {
        model: grid.facts
        GridLayout {
            id: entry
            required property var modelData
            width: grid.width
            columns: grid.stacked ? 1 : 2
            columnSpacing: Theme.gap
            rowSpacing: 0
            Words {
                Layout.preferredWidth: grid.narrow * Theme.textScale
                Layout.fillWidth: grid.stacked
                Layout.alignment: Qt.AlignTop
                text: entry.modelData.name
                size: "small"
                tone: "quiet"
            }
            Words { Layout.fillWidth: true; text: entry.modelData.words; size: "small" }
        }
    }
}
