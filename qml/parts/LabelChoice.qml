// SPDX-License-Identifier: Apache-2.0
// What a certification label says: a year, a full date from paperwork with its source, or that there is no label, or one that nobody can read. The caller owns what
// is chosen: years [{year, isRecertified, isMark}], latest first; a touch only says what was chosen.
import QtQuick
import Snugline.Tokens

Column {
    id: choice

    property var years: []
    property bool isDateKnown: false
    property bool isMissing: false
    property bool isUnreadable: false
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
    signal unreadableChosen()

    function chips(years: var): var { return years.map(y => ({ name: String(y.year), text: String(y.year), chosen: y.isRecertified })) }

    spacing: Theme.gap

    ChipGrid {
        objectName: "years"
        width: parent.width
        label: qsTr("Recertification label, year")
        mostColumns: 5
        choices: choice.chips(choice.years.slice(0, choice.yearsShown)).concat([{ name: "earlier", text: qsTr("Earlier"), chosen: choice.allYears }])
        onChosen: name => {
            if (name === "earlier")
                choice.allYears = !choice.allYears
            else
                choice.yearChosen(parseInt(name), false)
        }
    }
    // In a grid of their own: no year comes to stand where the thumb asked for earlier ones.
    ChipGrid {
        objectName: "earlierYears"
        width: parent.width
        visible: choice.allYears
        mostColumns: 5
        choices: choice.chips(choice.years.slice(choice.yearsShown))
        onChosen: name => choice.yearChosen(parseInt(name), false)
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
        mostColumns: 3
        choices: [
            { name: "date", text: qsTr("Full date on paper"), chosen: choice.isDateKnown },
            { name: "missing", text: qsTr("No label on it"), chosen: choice.isMissing },
            { name: "unreadable", text: qsTr("Cannot be read"), chosen: choice.isUnreadable }
        ]
        onChosen: name => {
            if (name === "date")
                choice.dateOpen = !choice.dateOpen
            else if (name === "missing")
                choice.missingChosen()
            else
                choice.unreadableChosen()
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
