// SPDX-License-Identifier: Apache-2.0
// One choice out of a few, side by side, stacked when the words do not fit. current "" means nothing chosen yet.
// choices: [{ name, text, detail, enabled }]. The caller sets current; a touch only says what was chosen.
import QtQuick
import Snugline.Tokens

Grid {
    id: row

    property var choices: []
    property string current: ""
    property string label: ""
    readonly property int count: choices ? choices.length : 0
    readonly property real cell: (width - spacing * (count - 1)) / Math.max(1, count)
    readonly property bool stacked: count > 1 && widest > cell
    property real widest: 0

    signal chosen(string name)

    function measure(): void {
        let most = 0
        for (let i = 0; i < buttons.count; ++i) {
            const button = buttons.itemAt(i) as BigButton
            if (button)
                most = Math.max(most, button.naturalWidth + 36)
        }
        widest = most
    }
    function buttonAt(index: int): Item { return buttons.itemAt(index) }

    columns: stacked ? 1 : Math.max(1, count)
    spacing: Theme.grid
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    Repeater {
        id: buttons
        model: row.choices
        onCountChanged: row.measure()
        BigButton {
            required property var modelData
            objectName: modelData.name ?? ""
            width: row.stacked ? row.width : row.cell
            text: modelData.text ?? ""
            detail: modelData.detail ?? ""
            enabled: modelData.enabled ?? true
            checkable: false
            readonly property bool isCurrent: row.current.length > 0 && row.current === modelData.name
            kind: isCurrent ? "primary" : "plain"
            sign: isCurrent ? "check" : ""
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: isCurrent
            onNaturalWidthChanged: row.measure()
            onClicked: row.chosen(modelData.name ?? "")
        }
    }
}
