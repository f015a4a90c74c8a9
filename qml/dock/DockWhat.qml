// SPDX-License-Identifier: Apache-2.0
// What an unknown unit is: model sheet, size, and what its label says. Nothing is preselected; the unit before is an offer.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: what

    required property DockModel model

    spacing: Theme.gap

    Card {
        width: parent.width
        visible: !what.model.isKnown && what.model.offer.length > 0 && what.model.kindWords.length === 0
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { width: parent.width; text: qsTr("The one before: %1").arg(what.model.offer) }
            AnswerBar {
                objectName: "offer"
                width: parent.width
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
        width: parent.width
        kind: "attention"
        text: !what.model.isKnown && what.model.sheets.length === 0 ? qsTr("No model sheet is adopted yet. Adopt one under Book, Helmets, Model sheets.") : ""
    }
    ChipGrid {
        objectName: "sheets"
        width: parent.width
        visible: count > 0 && !what.model.isKnown
        label: qsTr("Model sheet")
        mostColumns: 3
        choices: what.model.sheets.map(s => ({ name: s.key, text: s.name, chosen: s.isChosen }))
        onChosen: name => what.model.chooseSheet(name)
    }
    ChipGrid {
        objectName: "sizes"
        width: parent.width
        visible: count > 0 && !what.model.isKnown
        label: qsTr("Size")
        choices: what.model.sizes.map(s => ({ name: s.key, text: s.name, chosen: s.isChosen }))
        onChosen: name => what.model.chooseSize(name)
    }
    LabelChoice {
        objectName: "label"
        width: parent.width
        years: what.model.years
        isDateKnown: what.model.isDateKnown
        isMissing: what.model.isLabelMissing
        words: what.model.labelWords
        isGood: what.model.isLabelGood
        onYearChosen: (year, isMakersMark) => what.model.chooseYear(year, isMakersMark)
        onDateChosen: (isoDay, source) => what.model.chooseDate(isoDay, source)
        onMissingChosen: what.model.chooseLabelMissing()
    }
    BigButton {
        objectName: "toPoints"
        width: parent.width
        visible: what.model.isWhatComplete
        kind: "primary"
        text: qsTr("On to the seven points")
        onClicked: what.model.toPoints()
    }
}
