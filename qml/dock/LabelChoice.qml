// SPDX-License-Identifier: Apache-2.0
// What the certification label says: a year, a full date from paperwork with its source, or that there is no label.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: choice

    required property DockModel model
    property bool allYears: false
    property bool dateOpen: false
    readonly property int yearsShown: 4
    readonly property int marksShown: 3

    function recertified(): var {
        const shown = choice.allYears ? choice.model.years : choice.model.years.slice(0, choice.yearsShown)
        const list = shown.map(y => ({ name: String(y.year), text: String(y.year), chosen: y.isRecertified }))
        if (!choice.allYears)
            list.push({ name: "earlier", text: qsTr("Earlier") })
        return list
    }

    spacing: Theme.gap

    ChipGrid {
        objectName: "years"
        width: parent.width
        label: qsTr("Recertification label, year")
        mostColumns: 5
        choices: choice.recertified()
        onChosen: name => {
            if (name === "earlier")
                choice.allYears = true
            else
                choice.model.chooseYear(parseInt(name), false)
        }
    }
    ChipGrid {
        objectName: "marks"
        width: parent.width
        label: qsTr("New unit, maker's mark, year")
        mostColumns: 5
        choices: choice.model.years.slice(0, choice.marksShown).map(y => ({ name: String(y.year), text: String(y.year), chosen: y.isMark }))
        onChosen: name => choice.model.chooseYear(parseInt(name), true)
    }
    ChipGrid {
        objectName: "otherLabel"
        width: parent.width
        mostColumns: 2
        choices: [
            { name: "date", text: qsTr("Full date on paper"), chosen: choice.model.isDateKnown },
            { name: "missing", text: qsTr("No label on it"), chosen: choice.model.isLabelMissing }
        ]
        onChosen: name => {
            if (name === "date")
                choice.dateOpen = !choice.dateOpen
            else
                choice.model.chooseLabelMissing()
        }
    }
    Card {
        width: parent.width
        visible: choice.dateOpen
        Column {
            width: parent.width
            spacing: Theme.grid
            TextEntry { id: date; objectName: "date"; width: parent.width; label: qsTr("Certified on, year-month-day"); hint: "2025-03-14"; inputMethodHints: Qt.ImhDate }
            TextEntry { id: source; objectName: "source"; width: parent.width; label: qsTr("Where it stands, such as the firm's list") }
            BigButton {
                objectName: "useDate"
                width: parent.width
                text: qsTr("Use this date")
                onClicked: choice.model.chooseDate(date.text, source.text)
            }
        }
    }
    Words {
        width: parent.width
        visible: text.length > 0
        text: choice.model.labelWords
        tone: choice.model.isLabelGood ? "snug" : "stop"
        bold: true
    }
}
