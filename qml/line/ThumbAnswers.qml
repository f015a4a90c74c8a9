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
    readonly property real narrowest: Theme.bodySize * 5.2
    readonly property bool stacked: count > 1 && cell < narrowest
    function tallest(): real {
        let most = 0
        for (let i = 0; i < buttons.count; ++i)
            most = Math.max(most, (buttons.itemAt(i) as BigButton)?.implicitHeight ?? 0)
        return most
    }

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
            leftPadding: Theme.phone ? Theme.grid / 2 : Theme.grid
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
