// SPDX-License-Identifier: Apache-2.0
// At most three large answers side by side, stacked when their words do not fit or on a phone that is too narrow.
// Nothing is preselected. answers: [{ name, text, detail, kind, sign, enabled }].
import QtQuick
import Snugline.Tokens

Grid {
    id: bar

    property var answers: []
    property bool large: true
    readonly property int count: answers ? answers.length : 0
    readonly property real cell: (width - spacing * (count - 1)) / Math.max(1, count)
    readonly property bool stacked: count > 1 && widest > cell
    property real widest: 0

    signal answered(string name, int index)

    function measure(): void {
        let most = 0
        for (let i = 0; i < buttons.count; ++i) {
            const button = buttons.itemAt(i) as BigButton
            if (button)
                most = Math.max(most, button.naturalWidth)
        }
        widest = most
    }
    function buttonAt(index: int): Item { return buttons.itemAt(index) }

    columns: stacked ? 1 : Math.max(1, count)
    spacing: stacked ? Theme.grid : Theme.gap

    Repeater {
        id: buttons
        model: bar.answers
        onCountChanged: bar.measure()
        BigButton {
            required property var modelData
            required property int index
            objectName: modelData.name ?? ""
            width: bar.stacked ? bar.width : bar.cell
            height: bar.stacked ? implicitHeight : bar.tallest()
            large: bar.large
            text: modelData.text ?? ""
            detail: modelData.detail ?? ""
            kind: modelData.kind ?? "plain"
            sign: modelData.sign ?? ""
            enabled: modelData.enabled ?? true
            onNaturalWidthChanged: bar.measure()
            onClicked: bar.answered(modelData.name ?? "", index)
        }
    }

    function tallest(): real {
        let most = 0
        for (let i = 0; i < buttons.count; ++i) {
            const button = buttons.itemAt(i) as BigButton
            if (button)
                most = Math.max(most, button.implicitHeight)
        }
        return most
    }
}
