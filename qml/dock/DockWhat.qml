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

    BigButton {
        objectName: "last"
        width: parent.width
        visible: what.model.offer.length > 0
        text: qsTr("As %1").arg(what.model.offerSerial)
        detail: qsTr("%1. Its points are still to be checked.").arg(what.model.offer)
        onClicked: what.model.asTheLast()
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
    // There from the start, so that what stands below does not move when the sheet is chosen.
    ChipGrid {
        objectName: "sizes"
        width: parent.width
        visible: !what.model.isKnown && count > 0
        label: what.model.sizes[0]?.isOpen ? qsTr("Size") : qsTr("Size, once the model sheet is chosen")
        choices: what.model.sizes.map(s => ({ name: s.key, text: s.name, chosen: s.isChosen, enabled: s.isOpen }))
        onChosen: name => what.model.chooseSize(name)
    }
    LabelChoice {
        objectName: "label"
        width: parent.width
        years: what.model.years
        isDateKnown: what.model.isDateKnown
        isMissing: what.model.isLabelMissing
        isUnreadable: what.model.isLabelUnreadable
        words: what.model.labelWords
        isGood: what.model.isLabelGood
        onYearChosen: (year, isMakersMark) => what.model.chooseYear(year, isMakersMark)
        onDateChosen: (isoDay, source) => what.model.chooseDate(isoDay, source)
        onMissingChosen: what.model.chooseLabelMissing()
        onUnreadableChosen: what.model.chooseLabelUnreadable()
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
