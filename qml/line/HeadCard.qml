// SPDX-License-Identifier: Apache-2.0
// The head: tape readings, and for each model the size they speak for with its odds.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    required property AthleteModel athlete
    property var tapes: []
    property var sizes: []
    signal tapeWanted()

    ColumnLayout {
        width: parent.width
        spacing: Theme.grid
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            Words { Layout.fillWidth: true; text: qsTr("Head"); size: "head" }
            BigButton { objectName: "tape"; text: qsTr("Tape"); onClicked: card.tapeWanted() }
        }
        Words { Layout.fillWidth: true; visible: card.tapes.length === 0; text: qsTr("Not taped yet."); tone: "quiet" }
        Repeater {
            model: card.tapes.slice(0, 4)
            RowLayout {
                id: tape
                required property var modelData
                required property int index
                Layout.fillWidth: true
                spacing: Theme.gap
                Words { Layout.fillWidth: true; text: tape.modelData.readings.filter(r => !r.isAside).map(r => r.text).join(", ") }
                Words { text: tape.modelData.when; size: "small"; tone: "quiet" }
                BigButton {
                    objectName: "readings-of-" + tape.index
                    kind: "quiet"
                    leftPadding: Theme.grid
                    rightPadding: Theme.grid
                    sign: "more"
                    spokenName: qsTr("Readings of %1").arg(tape.modelData.when)
                    onClicked: {
                        sheet.readings = tape.modelData.readings
                        sheet.open()
                    }
                }
            }
        }
        Words { objectName: "tape-note"; Layout.fillWidth: true; visible: text.length > 0; text: card.athlete.tapeNote; tone: "see" }
        Repeater {
            model: card.sizes
            SizeOdds { required property var modelData; Layout.fillWidth: true; size: modelData }
        }
    }

    ReadingsSheet { id: sheet; objectName: "card-readings"; athlete: card.athlete }
}
