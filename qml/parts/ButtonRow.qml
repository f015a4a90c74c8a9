// SPDX-License-Identifier: Apache-2.0
// Buttons of equal width side by side; one under the other when their words do not fit. The base of AnswerBar and ChoiceRow.
import QtQuick
import Snugline.Tokens

Item {
    id: row

    property var entries: []              // [{ name, text, detail, kind, sign, enabled }]
    property bool large: false
    property bool isChoice: false         // one of them is current; its sign takes room from the start
    property string current: ""
    property real spacing: Theme.grid
    readonly property int count: entries ? entries.length : 0
    readonly property real cell: (width - spacing * (count - 1)) / Math.max(1, count)
    readonly property bool stacked: count > 1 && widest > cell
    readonly property int columns: stacked ? 1 : Math.max(1, count)
    property real widest: 0
    property real tallest: 0

    signal pressed(string name, int index)

    function buttonAt(index: int): Item { return buttons.itemAt(index) }
    function measure(): void {
        let most = 0
        let high = 0
        for (let i = 0; i < buttons.count; ++i) {
            const button = buttons.itemAt(i) as BigButton
            if (button) {
                most = Math.max(most, button.roomWanted)
                high = Math.max(high, button.implicitHeight)
            }
        }
        widest = most
        tallest = high
    }

    implicitWidth: widest * count + spacing * Math.max(0, count - 1)
    implicitHeight: count === 0 ? 0 : stacked ? count * tallest + (count - 1) * spacing : tallest

    Repeater {
        id: buttons
        model: row.entries
        onCountChanged: row.measure()
        BigButton {
            required property var modelData
            required property int index
            readonly property bool isCurrent: row.isChoice && row.current.length > 0 && row.current === modelData.name
            readonly property real roomWanted: naturalWidth + (row.isChoice && !isCurrent && sign.length === 0 ? 28 * Theme.textScale + Theme.grid : 0)
            objectName: modelData.name ?? ""
            x: row.stacked ? 0 : index * (row.cell + row.spacing)
            y: row.stacked ? index * (row.tallest + row.spacing) : 0
            width: row.stacked ? row.width : row.cell
            height: row.tallest
            large: row.large
            text: modelData.text ?? ""
            detail: modelData.detail ?? ""
            enabled: modelData.enabled ?? true
            kind: row.isChoice ? (isCurrent ? "primary" : "plain") : modelData.kind ?? "plain"
            sign: row.isChoice ? (isCurrent ? "check" : "") : modelData.sign ?? ""
            Accessible.role: row.isChoice ? Accessible.RadioButton : Accessible.Button
            Accessible.checkable: row.isChoice
            Accessible.checked: isCurrent
            onRoomWantedChanged: row.measure()
            onImplicitHeightChanged: row.measure()
            onClicked: row.pressed(modelData.name ?? "", index)
        }
    }
}
