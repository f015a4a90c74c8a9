// SPDX-License-Identifier: Apache-2.0
// Counts over time as columns that read without colour: each part has a filling of its own ("full", "striped", "dotted", "hollow") from the
// foot up. columns: [{ label, words, parts: [{ value, kind, tone }] }]. A touch, a drag or the arrow keys choose one; the caller keeps which.
import QtQuick
import Snugline.Tokens

FocusScope {
    id: chart

    property var columns: []
    property int chosen: -1
    property string description: ""
    property real plotHeight: 240
    signal picked(int column)

    readonly property int most: columns.reduce((most, column) => Math.max(most, column.parts.reduce((sum, part) => sum + part.value, 0)), 1)
    readonly property real edge: top.implicitWidth + Theme.grid
    readonly property real roof: Theme.smallSize
    readonly property real pace: (width - edge) / Math.max(1, columns.length)
    readonly property real thick: Math.max(6, Math.min(56, pace * 0.7))
    readonly property var boxes: columns.reduce((all, column, index) => all.concat(chart.stack(column, index)), [])
    // Labels that fit beside one another, counted back from the newest.
    readonly property int every: Math.max(1, Math.ceil((1.5 * widest.width + Theme.grid) / Math.max(1, pace)))

    function stack(column: var, index: int): var {
        const made = []
        let floor = 0
        for (const part of column.parts) {
            if (part.value > 0) {
                const high = chart.plotHeight * part.value / chart.most
                made.push({ x: chart.edge + index * chart.pace + (chart.pace - chart.thick) / 2, y: chart.roof + chart.plotHeight - floor - high, high: high, kind: part.kind, tone: part.tone })
                floor += high
            }
        }
        return made
    }
    function pickAt(x: real): void {
        const column = Math.floor((x - edge) / pace)
        if (columns.length > 0)
            chart.picked(Math.max(0, Math.min(columns.length - 1, column)))
    }

    implicitWidth: 320
    implicitHeight: roof + plotHeight + Theme.grid + sample.implicitHeight + Theme.grid
    activeFocusOnTab: true
    Accessible.role: Accessible.Slider
    Accessible.name: description + (chosen >= 0 && chosen < columns.length ? ". " + columns[chosen].label + ": " + columns[chosen].words : "")
    Accessible.focusable: true
    Accessible.onIncreaseAction: picked(Math.min(columns.length - 1, chosen + 1))
    Accessible.onDecreaseAction: picked(Math.max(0, chosen - 1))
    Keys.onLeftPressed: picked(Math.max(0, chosen - 1))
    Keys.onRightPressed: picked(Math.min(columns.length - 1, chosen + 1))

    Words { id: top; text: chart.most; size: "small"; tone: "quiet"; wrapMode: Text.NoWrap; y: chart.roof - height / 2; Accessible.ignored: true }
    Words { text: "0"; size: "small"; tone: "quiet"; wrapMode: Text.NoWrap; x: top.width - width; y: chart.roof + chart.plotHeight - height / 2; Accessible.ignored: true }
    Words { id: sample; visible: false; text: "0"; size: "small" }
    TextMetrics { id: widest; font: sample.font; text: chart.columns.reduce((most, column) => column.label.length > most.length ? column.label : most, "") }
    Rectangle { x: chart.edge; y: chart.roof; width: chart.width - chart.edge; height: 1; color: Theme.hairline }
    Rectangle {
        objectName: "chosenColumn"
        visible: chart.chosen >= 0
        x: chart.edge + chart.chosen * chart.pace
        width: chart.pace
        height: chart.roof + chart.plotHeight
        color: Theme.wash
        border { width: Theme.mode === "sun" ? Theme.stroke : 0; color: Theme.ink }
    }
    Repeater {
        model: chart.boxes
        FilledBar {
            required property var modelData
            x: modelData.x
            y: modelData.y
            width: chart.thick
            height: modelData.high
            upright: true
            kind: modelData.kind
            color: Theme.tone(modelData.tone)
        }
    }
    Rectangle { x: chart.edge; y: chart.roof + chart.plotHeight; width: chart.width - chart.edge; height: Theme.stroke; color: Theme.slate }
    Repeater {
        model: chart.columns
        Words {
            required property int index
            required property var modelData
            visible: (chart.columns.length - 1 - index) % chart.every === 0
            x: Math.min(chart.width - width, chart.edge + (index + 0.5) * chart.pace - width / 2)
            y: chart.roof + chart.plotHeight + Theme.grid
            text: modelData.label
            size: "small"
            tone: "quiet"
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    MouseArea {
        anchors.fill: parent
        preventStealing: false
        onPressed: mouse => { chart.forceActiveFocus(); chart.pickAt(mouse.x) }
        onPositionChanged: mouse => chart.pickAt(mouse.x)
    }
    FocusFrame { shown: chart.activeFocus && chart.focusByKey }
    property bool focusByKey: false
    Keys.onPressed: focusByKey = true
}
