// SPDX-License-Identifier: Apache-2.0
// A figure that is changed by large buttons, one touch a step, or typed after touching the figure itself. All words come in:
// steps: [{ name, text, spokenName, enabled }], those that lower first, an even number. The caller owns the figure.
import QtQuick
import Snugline.Tokens

FocusScope {
    id: stepper

    property string label: ""
    property string text: ""              // "" shows a dash: not said yet
    property var steps: []
    property string typedLabel: ""        // above the field while typing: what is typed and in which unit
    property string message: ""           // what is wrong with what was typed
    property bool typing: false
    readonly property int count: steps ? steps.length : 0
    readonly property real buttonWide: Math.max(Theme.touch, widest)
    readonly property real figureWide: Math.max(figure.naturalWidth, 110 * Theme.textScale)
    readonly property bool inRow: width >= count * (buttonWide + Theme.grid) + figureWide
    readonly property real cell: inRow ? buttonWide : (width - (perRow - 1) * Theme.grid) / perRow
    readonly property int perRow: inRow ? Math.max(1, count) : widest * count + Theme.grid * (count - 1) <= width ? Math.max(1, count) : 2
    property real widest: 0

    signal stepped(string name)
    signal typed(string text)

    function measure(): void {
        let most = 0
        for (let i = 0; i < buttons.count; ++i)
            most = Math.max(most, (buttons.itemAt(i) as BigButton)?.naturalWidth ?? 0)
        widest = most
    }
    function xOf(index: int): real {
        if (!inRow)
            return (index % perRow) * (cell + Theme.grid)
        const half = count / 2
        return index < half ? index * (cell + Theme.grid) : width - (count - index) * (cell + Theme.grid) + Theme.grid
    }
    function endTyping(): void {
        typing = false
        figure.forceActiveFocus()
    }

    implicitWidth: 320
    implicitHeight: column.implicitHeight
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    Column {
        id: column
        width: stepper.width
        spacing: Theme.grid / 2

        Words { width: parent.width; visible: text.length > 0; text: stepper.label; size: "small"; tone: "quiet"; Accessible.ignored: true }
        Item {
            readonly property real rowTop: stepper.inRow ? 0 : figure.height + Theme.grid
            width: parent.width
            height: stepper.inRow ? figure.height : rowTop + Math.ceil(stepper.count / stepper.perRow) * (Theme.touch + Theme.grid) - Theme.grid
            BigButton {
                id: figure
                objectName: "figure"
                x: stepper.inRow ? stepper.count / 2 * (stepper.cell + Theme.grid) : 0
                width: stepper.inRow ? parent.width - stepper.count * (stepper.cell + Theme.grid) : parent.width
                kind: "quiet"
                large: true
                height: Theme.touch
                text: stepper.text.length > 0 ? stepper.text : "\u2013"
                spokenName: qsTr("%1 %2. Touch to type it").arg(stepper.label).arg(stepper.text.length > 0 ? stepper.text : qsTr("not said"))
                onClicked: stepper.typing = !stepper.typing
            }
            Repeater {
                id: buttons
                model: stepper.count
                onItemAdded: stepper.measure()
                BigButton {
                    required property int index
                    readonly property var one: stepper.steps[index] ?? ({ name: "", text: "" })
                    objectName: "step" + one.name
                    x: stepper.xOf(index)
                    y: stepper.inRow ? 0 : figure.height + Theme.grid + Math.floor(index / stepper.perRow) * (Theme.touch + Theme.grid)
                    width: stepper.cell
                    height: Theme.touch
                    leftPadding: Theme.grid
                    rightPadding: Theme.grid
                    autoRepeat: true
                    text: one.text
                    spokenName: one.spokenName ?? one.text
                    enabled: one.enabled ?? true
                    onNaturalWidthChanged: Qt.callLater(stepper.measure)
                    onClicked: stepper.stepped(one.name)
                }
            }
        }
        Loader {
            width: parent.width
            active: stepper.typing
            visible: active
            sourceComponent: TextEntry {
                objectName: "typed"
                focus: true
                label: stepper.typedLabel
                message: stepper.message
                maximumLength: 12
                onAccepted: text => stepper.typed(text)
                Keys.onEscapePressed: stepper.endTyping()
                Component.onCompleted: forceActiveFocus()
            }
        }
        Words { width: parent.width; visible: text.length > 0 && !stepper.typing; text: stepper.message; tone: "stop" }
    }
}
