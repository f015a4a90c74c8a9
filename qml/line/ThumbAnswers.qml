// SPDX-License-Identifier: Apache-2.0
// At most three large answers side by side at the thumb; their words wrap, and a word that does not fit is set smaller; very large words stack.
// Two lines have room whatever is said, so that from one question to the next an answer stays under the thumb.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Grid {
    id: bar

    property var answers: []
    property bool busy: false
    property bool large: true
    property string liveName: ""          // the answer whose words move while it stands, and what they are now
    property string liveText: ""
    property string liveDetail: ""
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
    readonly property real room: cell - 2 * padding
    readonly property bool stacked: Theme.stacks && count > 1 && Math.ceil(widestWord) > room
    readonly property real most: stacked || widestWord <= room ? 1 : room / Math.ceil(widestWord)   // a long word is set smaller
    function tallest(): real {
        let most = 2 * line.height + 2 * Theme.grid
        for (let i = 0; i < buttons.count; ++i)
            most = Math.max(most, (buttons.itemAt(i) as BigButton)?.implicitHeight ?? 0)
        return most
    }

    FontMetrics { id: line; font.family: Theme.family; font.bold: true; font.pixelSize: bar.cell < Theme.headSize * 8 ? Theme.bodySize : Theme.headSize }
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
            font.pixelSize: Math.floor(width < Theme.headSize * 8 ? Theme.bodySize * bar.most : Theme.headSize)
            kind: modelData.kind ?? "plain"
            readonly property bool isLive: modelData.name === bar.liveName
            text: isLive ? bar.liveText : modelData.text
            detail: isLive ? bar.liveDetail : modelData.detail ?? ""
            enabled: modelData.enabled ?? true
            sign: kind === "danger" && width > 200 ? "stop" : ""
            onClicked: if (!bar.busy) bar.answered(modelData.name)
        }
    }
}
