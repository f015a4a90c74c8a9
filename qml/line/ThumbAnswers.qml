// SPDX-License-Identifier: Apache-2.0
// At most three large answers side by side at the thumb; their words wrap. They stack only where a single word would not fit.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Grid {
    id: bar

    property var answers: []
    property bool busy: false
    property bool large: true
    signal answered(string name)

    readonly property int count: answers ? answers.length : 0
    readonly property real cell: (width - Theme.grid * (count - 1)) / Math.max(1, count)
    readonly property real padding: Theme.phone ? Theme.grid / 2 : Theme.grid
    readonly property real widestWord: {
        let most = 0
        for (const answer of answers ?? []) {
            const sign = answer.kind === "danger" ? 28 * Math.min(Theme.textScale, 1.6) + Theme.grid : 0
            for (const word of (answer.text ?? "").split(/[ -]/))
                most = Math.max(most, metrics.advanceWidth(word) + sign)
        }
        return most
    }
    readonly property bool stacked: count > 1 && Math.ceil(widestWord) + 2 * padding > cell
    function tallest(): real {
        let most = 0
        for (let i = 0; i < buttons.count; ++i)
            most = Math.max(most, (buttons.itemAt(i) as BigButton)?.implicitHeight ?? 0)
        return most
    }

    FontMetrics { id: metrics; font.family: Theme.family; font.bold: true; font.pixelSize: Theme.bodySize }

    columns: stacked ? 1 : Math.max(1, count)
    spacing: Theme.grid

    Repeater {
        id: buttons
        model: bar.answers
        BigButton {
            required property var modelData
            objectName: modelData.name
            width: bar.stacked ? bar.width : bar.cell
            height: bar.stacked ? implicitHeight : bar.tallest()
            leftPadding: bar.padding
            rightPadding: leftPadding
            large: bar.large
            font.pixelSize: width < Theme.headSize * 8 ? Theme.bodySize : Theme.headSize
            kind: modelData.kind ?? "plain"
            text: modelData.text
            detail: modelData.detail ?? ""
            sign: kind === "danger" && width > 200 ? "stop" : ""
            onClicked: if (!bar.busy) bar.answered(modelData.name)
        }
    }
}
