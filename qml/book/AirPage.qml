// SPDX-License-Identifier: Apache-2.0
// The air of one helmet, port by port: what it did over time, whether it leaks, and a reading taken here, typed or from the gauge.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property UnitAir air
    property GaugeModel gauge: null
    property bool listed: false
    property string head: ""              // "on", "off"; nothing is preselected
    property string deed: ""              // "read", "refill"
    readonly property bool said: head.length > 0 && deed.length > 0

    signal chooseGauge()

    title: qsTr("Air of %1").arg(air.title)
    subtitle: air.subtitle
    hasBack: true
    Component.onCompleted: if (gauge) gauge.attach()
    Component.onDestruction: if (gauge) gauge.detach()

    Connections {
        target: page.air
        function onRecorded(): void {
            typed.clear()
            page.head = page.deed = ""
        }
    }

    Words { Layout.fillWidth: true; visible: !page.air.hasAir; text: qsTr("This model has no air.") }
    ChipGrid { objectName: "ports"; Layout.fillWidth: true; visible: page.air.hasAir; label: qsTr("Bladder"); choices: page.air.ports; onChosen: name => page.air.choosePort(name) }
    Words { objectName: "leak"; Layout.fillWidth: true; visible: page.air.hasAir; text: page.air.leakWords; tone: page.air.isLeaking ? "see" : "plain"; bold: page.air.isLeaking }
    Loader {
        Layout.fillWidth: true
        active: page.air.hasPlot
        visible: active
        sourceComponent: AirPlot {
            objectName: "plot"
            raw: page.air.plot.raw ?? []
            carried: page.air.plot.carried ?? []
            refills: page.air.plot.refills ?? []
            slopes: page.air.plot.slopes ?? []
            heights: page.air.plot.heights ?? []
            times: page.air.plot.times ?? []
            unit: page.air.plot.unit ?? ""
            legend: page.air.plot.legend ?? ({})
            description: page.air.plot.description ?? ""
        }
    }
    Words { Layout.fillWidth: true; visible: page.air.hasAir && text.length > 0; text: page.air.bandWords; size: "small"; tone: "quiet" }
    GridLayout {
        Layout.fillWidth: true
        visible: page.air.hasAir
        columns: Theme.stacks ? 1 : 2
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        BigButton { objectName: "numbers"; Layout.fillWidth: true; Layout.preferredWidth: 1; sign: "list"; enabled: page.air.readings.length > 0; text: page.listed ? qsTr("Hide the numbers") : qsTr("The numbers"); onClicked: page.listed = !page.listed }
        BigButton { objectName: "why"; Layout.fillWidth: true; Layout.preferredWidth: 1; sign: "inform"; text: qsTr("Today's weather"); onClicked: why.open() }
        BigButton { objectName: "why-leak"; Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.columnSpan: Theme.stacks ? 1 : 2; visible: page.air.hasPlot; sign: "inform"; text: qsTr("How the leak is worked out"); onClicked: whyLeak.open() }
    }
    Repeater {
        model: page.listed ? page.air.readings : []
        Card {
            id: entry
            required property var modelData
            Layout.fillWidth: true
            ColumnLayout {
                width: parent.width
                spacing: 0
                GridLayout {
                    Layout.fillWidth: true
                    columns: Theme.stacks ? 1 : 2
                    Words { Layout.fillWidth: true; text: entry.modelData.when }
                    Words { Layout.fillWidth: Theme.stacks; text: entry.modelData.carried.length > 0 ? qsTr("%1, carried %2").arg(entry.modelData.raw).arg(entry.modelData.carried) : entry.modelData.raw; bold: true }
                }
                Words { Layout.fillWidth: true; text: entry.modelData.how; size: "small"; tone: "quiet" }
            }
        }
    }
    Card {
        Layout.fillWidth: true
        visible: page.air.hasAir
        ColumnLayout {
            width: parent.width
            spacing: Theme.gap
            Words { Layout.fillWidth: true; text: qsTr("Take a reading"); size: "head" }
            Words { Layout.fillWidth: true; text: qsTr("A reading through the needle lets out a little air; it is seen again for hold."); size: "small"; tone: "quiet" }
            ChipGrid { objectName: "head"; Layout.fillWidth: true; label: qsTr("Where is the helmet?"); choices: [{ name: "on", text: qsTr("On the head"), chosen: page.head === "on" }, { name: "off", text: qsTr("Off the head"), chosen: page.head === "off" }]; onChosen: name => page.head = name }
            ChipGrid { objectName: "deed"; Layout.fillWidth: true; label: qsTr("What was done?"); choices: [{ name: "read", text: qsTr("Only read"), chosen: page.deed === "read" }, { name: "refill", text: qsTr("Filled, then read"), chosen: page.deed === "refill" }]; onChosen: name => page.deed = name }
            Notice { objectName: "air-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.air.trouble; actionText: qsTr("Understood"); onActed: page.air.dismissTrouble() }
            GridLayout {
                Layout.fillWidth: true
                columns: Theme.stacks || page.width < 640 ? 1 : 2
                columnSpacing: Theme.gap
                rowSpacing: Theme.gap
                ColumnLayout {
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.alignment: Qt.AlignTop
                    spacing: Theme.grid
                    TextEntry { id: typed; objectName: "typed-air"; Layout.fillWidth: true; label: qsTr("Typed, in %1").arg(page.air.unitName); maximumLength: 12; inputMethodHints: Qt.ImhFormattedNumbersOnly; onAccepted: if (page.said) page.air.takeTyped(text, page.head === "on", page.deed === "refill") }
                    BigButton { objectName: "record-typed"; Layout.fillWidth: true; kind: "primary"; text: qsTr("Record what is typed"); enabled: page.said && typed.text.length > 0 && !page.air.isBusy; onClicked: page.air.takeTyped(typed.text, page.head === "on", page.deed === "refill") }
                }
                GaugeReadout {
                    objectName: "gauge-face"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Layout.alignment: Qt.AlignTop
                    visible: page.gauge !== null
                    gauge: page.gauge
                    takeText: page.said ? qsTr("Record this reading") : qsTr("Say both above first")
                    takeEnabled: page.said && !page.air.isBusy
                    onUnitChosen: name => page.gauge.setUnit(name)
                    onZeroWanted: page.gauge.zero()
                    onChooseWanted: page.chooseGauge()
                    onTaken: page.air.takeLive(page.head === "on", page.deed === "refill")
                }
            }
        }
    }
    foot: UndoBar { objectName: "air-undo"; Layout.fillWidth: true; text: page.air.doneWords; onUndone: page.air.undo() }

    WhySheet { id: why; why: page.air.why }
    WhySheet { id: whyLeak; objectName: "why-leak-sheet"; why: page.air.leakArithmetic }
}
