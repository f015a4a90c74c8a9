// SPDX-License-Identifier: Apache-2.0
// The choices of a question that are more than the three answers: equal tiles in as many columns as their words allow.
import QtQuick
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Grid {
    id: tiles

    required property GuideModel guide
    readonly property var choices: guide.choices
    readonly property int count: choices.length
    readonly property bool isLong: guide.stage === "fitted"       // a place and its value: half the width at least
    readonly property int most: isLong || count > 3 ? 2 : count
    readonly property real narrowest: (isLong ? 150 : 104) * Theme.textScale
    readonly property real cell: (width - spacing * (columns - 1)) / columns
    function tallest(): real {
        let high = 0
        for (let i = 0; i < buttons.count; ++i)
            high = Math.max(high, (buttons.itemAt(i) as BigButton)?.implicitHeight ?? 0)
        return high
    }

    visible: count > 0
    columns: Math.max(1, width >= most * narrowest + (most - 1) * spacing ? most : 1)
    spacing: Theme.grid

    Repeater {
        id: buttons
        model: tiles.choices
        BigButton {
            required property var modelData
            objectName: "choice-" + modelData.name
            width: tiles.cell
            height: tiles.columns === 1 ? implicitHeight : tiles.tallest()
            leftPadding: Theme.phone ? Theme.grid / 2 : Theme.grid
            rightPadding: leftPadding
            text: modelData.text
            detail: modelData.detail
            enabled: !tiles.guide.isBusy
            onClicked: tiles.guide.choose(modelData.name)
        }
    }
}
