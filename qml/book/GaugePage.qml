// SPDX-License-Identifier: Apache-2.0
// Settings of the gauge: which one, how it is doing, its zero in open air, and choosing another. Typing a value works without any of this.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property GaugeModel gauge

    title: qsTr("Gauge")
    subtitle: qsTr("A Bluetooth gauge that offers pressure. Typing the value always works too.")
    hasBack: true
    Component.onCompleted: gauge.attach()
    Component.onDestruction: {
        gauge.stopScan()
        gauge.detach()
    }

    GaugeReadout {
        objectName: "gauge-face"
        Layout.fillWidth: true
        visible: page.gauge.isChosen || page.gauge.state.length > 0
        gauge: page.gauge
        choosesElsewhere: true
        onUnitChosen: name => page.gauge.setUnit(name)
        onZeroWanted: page.gauge.zero()
    }
    Notice { objectName: "zero-doubt"; Layout.fillWidth: true; kind: "attention"; text: page.gauge.zeroDoubt; actionText: page.gauge.canZeroAnyway ? qsTr("It is open air: zero") : ""; onActed: page.gauge.zeroAnyway() }
    Words { objectName: "zeroed"; Layout.fillWidth: true; visible: text.length > 0; text: page.gauge.zeroWords; tone: "quiet" }
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.phone || Theme.stacks ? 1 : 3
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        BigButton { objectName: "zero-again"; Layout.fillWidth: true; Layout.preferredWidth: 1; visible: page.gauge.zeroWords.length > 0; text: qsTr("Zero again"); onClicked: page.gauge.zeroAgain() }
        BigButton { objectName: "try-again"; Layout.fillWidth: true; Layout.preferredWidth: 1; visible: page.gauge.canTryAgain; sign: "again"; text: qsTr("Try again"); onClicked: page.gauge.tryAgain() }
        BigButton { objectName: "forget"; Layout.fillWidth: true; Layout.preferredWidth: 1; visible: page.gauge.remembered.length > 0; text: qsTr("Forget this gauge"); spokenName: qsTr("Forget %1").arg(page.gauge.remembered); onClicked: page.gauge.forget() }
    }
    BigButton {
        objectName: "scan"
        Layout.fillWidth: true
        kind: page.gauge.isChosen ? "plain" : "primary"
        sign: page.gauge.isScanning ? "cross" : "search"
        text: page.gauge.isScanning ? qsTr("Stop looking") : page.gauge.isChosen ? qsTr("Look for another gauge") : qsTr("Look for gauges")
        onClicked: page.gauge.isScanning ? page.gauge.stopScan() : page.gauge.scan()
    }
    Repeater {
        model: page.gauge.found
        ListRow {
            required property var modelData
            objectName: "found-" + modelData.name
            Layout.fillWidth: true
            title: modelData.name
            detail: modelData.detail
            tone: modelData.isGauge ? "plain" : "quiet"
            onClicked: page.gauge.choose(modelData.id)
        }
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Two gauges may read one bladder half a psi (3 kPa) apart. Which gauge it was is kept with every reading, and both raw values.")
        size: "small"
        tone: "quiet"
    }
}
