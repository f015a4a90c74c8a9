// SPDX-License-Identifier: Apache-2.0
// Why a unit is held, and where it is: in our hands, or still with the athlete.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts

PullSheet {
    id: sheet

    property bool worn: false             // somebody wears it, so it may not be in our hands
    property bool reasonNeeded: true
    property string outcome: ""           // what the faults say already

    signal held(string what, bool isWithAthlete)

    title: qsTr("Hold this helmet")
    onBegan: words.clear()

    Words { Layout.fillWidth: true; visible: text.length > 0; text: sheet.outcome; tone: "stop"; bold: true }
    ChipGrid {
        objectName: "holdReasons"
        Layout.fillWidth: true
        visible: sheet.reasonNeeded
        label: qsTr("Why")
        mostColumns: 2
        choices: [
            { name: qsTr("waits for a part"), text: qsTr("Waits for a part"), chosen: words.text === qsTr("waits for a part") },
            { name: qsTr("to be cleaned"), text: qsTr("To be cleaned"), chosen: words.text === qsTr("to be cleaned") },
            { name: qsTr("look again tomorrow"), text: qsTr("Look again tomorrow"), chosen: words.text === qsTr("look again tomorrow") },
            { name: qsTr("not ours"), text: qsTr("Not ours"), chosen: words.text === qsTr("not ours") }
        ]
        onChosen: name => words.text = name
    }
    TextEntry { id: words; objectName: "holdWords"; Layout.fillWidth: true; label: sheet.reasonNeeded ? qsTr("Or in your own words") : qsTr("More words, if wanted") }
    AnswerBar {
        objectName: "holdWhere"
        Layout.fillWidth: true
        answers: sheet.worn
            ? [{ name: "hands", text: qsTr("Hold, in our hands"), kind: "danger", enabled: !sheet.reasonNeeded || words.text.trim().length > 0 },
               { name: "athlete", text: qsTr("Hold, still with the athlete"), kind: "danger", enabled: !sheet.reasonNeeded || words.text.trim().length > 0 }]
            : [{ name: "hands", text: qsTr("Hold, in our hands"), kind: "danger", enabled: !sheet.reasonNeeded || words.text.trim().length > 0 }]
        onAnswered: name => {
            sheet.close()
            sheet.held(words.text, name === "athlete")
        }
    }
}
