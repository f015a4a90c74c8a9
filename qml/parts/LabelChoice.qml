// SPDX-License-Identifier: Apache-2.0
// What a certification label says: a year, a full date from paperwork with its source, or that there is no label. The caller owns what
// is chosen: years [{year, isRecertified, isMark}], latest first; a touch only says what was chosen.
import QtQuick
import Snugline.Tokens

Column {
    id: choice

    property var years: []
    property bool isDateKnown: false
    property bool isMissing: false
    property string words: ""             // what the label is good for, as chosen
    property bool isGood: true
    property string message: ""           // what is wrong with the date
    property bool allYears: false
    property bool dateOpen: false
    readonly property int yearsShown: 4
    readonly property int marksShown: 3

    signal yearChosen(int year, bool isMakersMark)
    signal dateChosen(string isoDay, string source)
    signal missingChosen()

    function recertified(): var {
        const shown = choice.allYears ? choice.years : choice.years.slice(0, choice.yearsShown)
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
                choice.yearChosen(parseInt(name), false)
        }
    }
    ChipGrid {
        objectName: "marks"
        width: parent.width
        label: qsTr("New unit, maker's mark, year")
        mostColumns: 5
        choices: choice.years.slice(0, choice.marksShown).map(y => ({ name: String(y.year), text: String(y.year), chosen: y.isMark }))
        onChosen: name => choice.yearChosen(parseInt(name), true)
    }
    ChipGrid {
        objectName: "otherLabel"
        width: parent.width
        mostColumns: 2
        choices: [
            { name: "date", text: qsTr("Full date on paper"), chosen: choice.isDateKnown },
            { name: "missing", text: qsTr("No label on it"), chosen: choice.isMissing }
        ]
        onChosen: name => {
            if (name === "date")
                choice.dateOpen = !choice.dateOpen
            else
                choice.missingChosen()
        }
    }
    Card {
        width: parent.width
        visible: choice.dateOpen
        Column {
            width: parent.width
            spacing: Theme.grid
            TextEntry { id: date; objectName: "certifiedOn"; width: parent.width; label: qsTr("Certified on, year-month-day"); hint: "2025-03-14"; inputMethodHints: Qt.ImhDate }
            TextEntry { id: source; objectName: "source"; width: parent.width; label: qsTr("Where it stands, such as the firm's list") }
            Words { width: parent.width; visible: text.length > 0; text: choice.message; tone: "stop" }
            BigButton {
                objectName: "useDate"
                width: parent.width
                text: qsTr("Use this date")
                onClicked: choice.dateChosen(date.text, source.text)
            }
        }
    }
    Words {
        width: parent.width
        visible: text.length > 0
        text: choice.words
        tone: choice.isGood ? "snug" : "stop"
        bold: true
    }
}
