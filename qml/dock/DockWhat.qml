// SPDX-License-Identifier: Apache-2.0
// What an unknown unit is: model sheet, size, and what its label says. Nothing is preselected; the unit before is an offer.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

ColumnLayout {
    id: what

    required property DockModel model

    spacing: Theme.gap

    Card {
        Layout.fillWidth: true
        visible: what.model.offer.length > 0 && what.model.kindWords.length === 0
        ColumnLayout {
            width: parent.width
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: qsTr("The one before: %1").arg(what.model.offer) }
            AnswerBar {
                objectName: "offer"
                Layout.fillWidth: true
                large: false
                answers: [
                    { name: "lastSound", text: qsTr("As the last one, all seven sound"), kind: "primary" },
                    { name: "last", text: qsTr("As the last one") }
                ]
                onAnswered: name => what.model.asTheLast(name === "lastSound")
            }
        }
    }
    Notice {
        Layout.fillWidth: true
        kind: "attention"
        text: what.model.sheets.length === 0 ? qsTr("No model sheet is adopted yet. Adopt one under Book, Helmets, Model sheets.") : ""
    }
    ChipGrid {
        objectName: "sheets"
        Layout.fillWidth: true
        visible: count > 0
        label: qsTr("Model sheet")
        mostColumns: 3
        choices: what.model.sheets.map(s => ({ name: s.key, text: s.name, chosen: s.isChosen }))
        onChosen: name => what.model.chooseSheet(name)
    }
    ChipGrid {
        objectName: "sizes"
        Layout.fillWidth: true
        visible: count > 0
        label: qsTr("Size")
        choices: what.model.sizes.map(s => ({ name: s.key, text: s.name, chosen: s.isChosen }))
        onChosen: name => what.model.chooseSize(name)
    }
    LabelChoice { Layout.fillWidth: true; model: what.model }
    BigButton {
        objectName: "toPoints"
        Layout.fillWidth: true
        visible: what.model.isWhatComplete
        kind: "primary"
        text: qsTr("On to the seven points")
        onClicked: what.model.toPoints()
    }
}
