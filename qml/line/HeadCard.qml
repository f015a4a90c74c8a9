// SPDX-License-Identifier: Apache-2.0
// The head: tape readings, and for each model the size they speak for with its odds.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

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
                Layout.fillWidth: true
                spacing: Theme.gap
                Words { Layout.fillWidth: true; text: tape.modelData.reading }
                Words { text: tape.modelData.when; size: "small"; tone: "quiet" }
            }
        }
        Repeater {
            model: card.sizes
            SizeOdds { required property var modelData; Layout.fillWidth: true; size: modelData }
        }
    }
}
