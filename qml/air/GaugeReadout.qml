// SPDX-License-Identifier: Apache-2.0
// What a live gauge says: a big number, its trend in an arrow and a word, the steady mark, kPa or psi, which gauge, its battery and its
// sensor; before the zero, what the zero is for; when nothing comes, why. All words come in. Typing stands beside it, equal in rank.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

Card {
    id: face

    // What it shows: { stage, value, unit, trend, trendWords, steadyWords, gaugeName, facts, state, isTrouble, refusal, zeroHint, unitCode,
    // canTake }. stage: "none" (no gauge chosen), "waiting" (connecting, or trouble), "zero", "live".
    property var gauge: null
    property string takeText: ""          // on the button that takes the value; empty: the caller takes it
    property bool takeEnabled: true       // what else the caller asks for was said
    property bool choosesElsewhere: false // the page itself chooses the gauge
    readonly property string stage: gauge?.stage ?? "none"

    signal unitChosen(string name)
    signal zeroWanted()
    signal taken()
    signal chooseWanted()

    ColumnLayout {
        width: parent.width
        spacing: Theme.grid
        Words { Layout.fillWidth: true; visible: text.length > 0; text: face.gauge?.gaugeName ?? ""; bold: true }
        Readout {
            objectName: "readout"
            Layout.fillWidth: true
            visible: face.stage === "live"
            value: face.gauge?.value ?? ""
            unit: face.gauge?.unit ?? ""
            trend: face.gauge?.trend ?? ""
            steadyText: face.gauge?.steadyWords ?? ""
            caption: (face.gauge?.steadyWords ?? "").length > 0 ? "" : face.gauge?.trendWords ?? ""
        }
        Words { objectName: "zero-hint"; Layout.fillWidth: true; visible: face.stage === "zero"; text: face.gauge?.zeroHint ?? "" }
        BigButton {
            objectName: "zero"
            Layout.fillWidth: true
            visible: face.stage === "zero"
            kind: "primary"
            text: qsTr("Zero in open air")
            detail: (face.gauge?.steadyWords ?? "").length > 0 ? face.gauge?.steadyWords ?? "" : face.gauge?.trendWords ?? ""
            enabled: face.gauge?.canTake ?? false
            onClicked: face.zeroWanted()
        }
        Words { objectName: "refusal"; Layout.fillWidth: true; visible: text.length > 0; text: face.gauge?.refusal ?? ""; tone: "stop"; bold: true }
        Words { objectName: "gauge-state"; Layout.fillWidth: true; visible: text.length > 0; text: face.gauge?.state ?? ""; tone: face.gauge?.isTrouble ?? false ? "see" : "quiet" }
        Words { objectName: "gauge-facts"; Layout.fillWidth: true; visible: text.length > 0; text: face.gauge?.facts ?? ""; size: "small"; tone: "quiet" }
        GridLayout {
            Layout.fillWidth: true
            visible: face.stage === "live" || face.stage === "none" && !face.choosesElsewhere
            columns: Theme.stacks || Theme.phone || face.takeText.length === 0 ? 1 : 2
            columnSpacing: Theme.grid
            rowSpacing: Theme.grid
            ChoiceRow {
                objectName: "gauge-units"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                visible: face.stage === "live"
                label: qsTr("Unit of the read-out")
                choices: [{ name: "kpa", text: qsTr("kPa") }, { name: "psi", text: qsTr("psi") }]
                current: face.gauge?.unitCode ?? ""
                onChosen: name => face.unitChosen(name)
            }
            BigButton {
                objectName: "take"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                visible: face.stage === "live" && face.takeText.length > 0
                kind: "primary"
                text: face.takeText
                enabled: (face.gauge?.canTake ?? false) && face.takeEnabled
                onClicked: face.taken()
            }
            BigButton {
                objectName: "choose-gauge"
                Layout.fillWidth: true
                visible: face.stage === "none"
                text: qsTr("Choose a gauge")
                onClicked: face.chooseWanted()
            }
        }
    }
}
