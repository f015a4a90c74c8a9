// SPDX-License-Identifier: Apache-2.0
// A number that can be stepped or typed, and filled by a read-out: big figure with plus and minus, its unit and the other one at a
// touch, a number pad. The caller owns the number and its words; typed() gives the digits as they stand on the pad.
import QtQuick
import Snugline.Tokens

FocusScope {
    id: entry

    property string label: ""
    property string value: ""             // in words of the unit; empty shows a dash
    property string unit: ""
    property string otherUnit: ""         // empty: no switch
    property string note: ""
    property string message: ""           // what is wrong with it
    property string digits: ""            // on the pad; cleared by the caller when the number came another way
    property string trend: ""             // "up", "down" or none
    property string steadyText: ""        // said when a read-out stands still
    property alias extra: slot.data       // above the figure: where a read-out comes from
    readonly property bool wide: width >= 640
    readonly property bool under: Theme.stacks && half < 520     // large words: the other unit has a row of its own
    readonly property real half: wide ? (width - Theme.margin) / 2 : width

    signal typed(string digits)
    signal stepped(int steps)
    signal unitWanted()

    implicitWidth: 320
    implicitHeight: wide ? Math.max(figure.implicitHeight, pad.implicitHeight) : figure.implicitHeight + Theme.grid + pad.implicitHeight
    Accessible.role: Accessible.Grouping
    Accessible.name: label
    onDigitsChanged: if (pad.text !== digits) pad.text = digits

    Column {
        id: figure
        width: entry.half
        spacing: Theme.grid / 2

        Column { id: slot; width: parent.width; spacing: Theme.grid; visible: children.length > 0 }
        Item {
            width: parent.width
            id: row
            readonly property real line: Math.max(Theme.touch, number.implicitHeight)
            implicitHeight: line + (entry.under && unitSwitch.visible ? unitSwitch.height + Theme.grid : 0)
            BigButton {
                id: minus
                objectName: "entry-minus"
                y: (row.line - height) / 2
                width: Theme.touch
                sign: "minus"
                autoRepeat: true
                spokenName: qsTr("Less: %1").arg(entry.label)
                onClicked: entry.stepped(-1)
            }
            Readout {
                id: number
                anchors { left: minus.right; right: plus.left; margins: Theme.grid; verticalCenter: minus.verticalCenter }
                value: entry.value
                unit: entry.unit
                caption: entry.label
                trend: entry.trend
                steadyText: entry.steadyText
            }
            BigButton {
                id: plus
                objectName: "entry-plus"
                readonly property bool beside: unitSwitch.visible && !entry.under
                x: parent.width - width - (beside ? unitSwitch.width + Theme.grid : 0)
                anchors.verticalCenter: minus.verticalCenter
                width: Theme.touch
                sign: "plus"
                autoRepeat: true
                spokenName: qsTr("More: %1").arg(entry.label)
                onClicked: entry.stepped(1)
            }
            BigButton {
                id: unitSwitch
                objectName: "entry-unit"
                x: entry.under ? (parent.width - width) / 2 : parent.width - width
                y: entry.under ? row.line + Theme.grid : (row.line - height) / 2
                visible: entry.otherUnit.length > 0
                leftPadding: Theme.grid
                rightPadding: Theme.grid
                kind: "quiet"
                text: qsTr("in %1", "another unit").arg(entry.otherUnit)
                spokenName: qsTr("Show in %1 instead of %2").arg(entry.otherUnit).arg(entry.unit)
                onClicked: entry.unitWanted()
            }
        }
        Words {                           // the note, and in its place what is wrong: room for two lines, so that no key moves
            id: note
            objectName: "entry-message"
            width: parent.width
            height: Math.ceil(2 * noteLine.height)
            horizontalAlignment: Text.AlignHCenter
            text: entry.message.length > 0 ? entry.message : entry.note
            size: "small"
            tone: entry.message.length > 0 ? "stop" : "quiet"
            fontSizeMode: Text.Fit
            minimumPixelSize: Math.round(Theme.smallSize * 0.6)
        }
        FontMetrics { id: noteLine; font: note.font }
    }
    Keypad {
        id: pad
        objectName: "entry-pad"
        focus: true
        x: entry.wide ? entry.width - width : 0
        y: entry.wide ? 0 : figure.implicitHeight + Theme.grid
        width: entry.half
        label: entry.label
        maximumLength: 6
        allowDecimal: true
        showsReadout: false
        showsEnter: false
        onEdited: text => entry.typed(text)
    }
}
