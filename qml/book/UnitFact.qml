// SPDX-License-Identifier: Apache-2.0
// One line of a history: when, what, by whom.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts

GridLayout {
    id: line

    property string when: ""
    property string who: ""
    property string text: ""

    columns: Theme.phone || Theme.stacks ? 1 : 2
    columnSpacing: Theme.gap
    rowSpacing: 0
    Words {
        Layout.preferredWidth: 170 * Theme.textScale
        Layout.fillWidth: line.columns === 1
        Layout.alignment: Qt.AlignTop
        text: line.who.length > 0 ? qsTr("%1, %2").arg(line.when).arg(line.who) : line.when
        size: "small"
        tone: "quiet"
    }
    Words { Layout.fillWidth: true; text: line.text; size: "small" }
}
