// SPDX-License-Identifier: Apache-2.0
// The turn of the season: what a closing leaves open, closing it, taking that back; and the way to the next one.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property TurnModel turn
    property string opened: ""            // the section whose athletes show

    signal openAthlete(string athleteId)
    signal openMissing()
    signal openNext()

    title: page.turn.seasonWords
    subtitle: page.turn.stateWords
    hasBack: true

    Notice { objectName: "turn-refusal"; Layout.fillWidth: true; kind: "stop"; text: page.turn.refusal }
    Notice {
        objectName: "turn-between"
        Layout.fillWidth: true
        kind: "inform"
        text: page.turn.isBetween ? qsTr("No season is open. No looks are due, and nobody is asked for a helmet. Helmets still with athletes stay on the Line.") : ""
    }
    ListRow { objectName: "turn-missing"; Layout.fillWidth: true; title: qsTr("Helmets"); detail: page.turn.missingWords; onClicked: page.openMissing() }
    Repeater {
        model: page.turn.open.length
        Column {
            id: section
            required property int index
            readonly property var part: page.turn.open[index] ?? ({ name: "", title: "", rows: [] })
            readonly property bool isOpened: page.opened === part.name && part.rows.length > 0
            Layout.fillWidth: true
            spacing: Theme.grid
            ListRow {
                objectName: "turn-" + section.part.name
                width: section.width
                title: section.part.title
                detail: section.part.rows.length === 0 ? qsTr("None") : section.isOpened ? qsTr("%1, touch to hide them").arg(section.part.rows.length) : qsTr("%1, touch to see who").arg(section.part.rows.length)
                tone: section.part.rows.length === 0 ? "quiet" : "see"
                onClicked: page.opened = section.isOpened ? "" : section.part.name
            }
            Repeater {
                model: section.isOpened ? section.part.rows.length : 0
                ListRow {
                    required property int index
                    readonly property var row: section.part.rows[index] ?? ({ athlete: "", number: "", title: "", detail: "" })
                    objectName: section.part.name + index
                    x: Theme.margin
                    width: section.width - x
                    number: row.number
                    title: row.title
                    detail: row.detail
                    onClicked: page.openAthlete(row.athlete)
                }
            }
        }
    }
    Words {
        Layout.fillWidth: true
        visible: !page.turn.isBetween
        text: qsTr("Closing changes no helmet and no athlete. What is still missing is named in it, and everything above stays open.")
        size: "small"
        tone: "quiet"
    }
    BigButton {
        objectName: "turn-reopen"
        Layout.fillWidth: true
        visible: page.turn.isBetween && page.turn.lastWords.length === 0
        enabled: !page.turn.isBusy
        kind: "quiet"
        text: qsTr("Take the closing back")
        detail: qsTr("%1 runs again").arg(page.turn.seasonWords)
        onClicked: page.turn.reopen()
    }

    foot: [
        BigButton {
            objectName: "turn-close"
            Layout.fillWidth: true
            visible: !page.turn.isBetween
            large: true
            kind: page.turn.isLastDay ? "primary" : "plain"     // a season that runs is not closed by the first touch on this page
            enabled: !page.turn.isBusy
            text: qsTr("Close this season")
            spokenName: qsTr("Close %1").arg(page.turn.seasonWords)
            detail: page.turn.closeDetail
            onClicked: page.turn.close()
        },
        BigButton {
            objectName: "turn-next"
            Layout.fillWidth: true
            visible: page.turn.isBetween
            large: true
            kind: "primary"
            text: qsTr("Open the next season")
            detail: qsTr("Its days, and who stays")
            onClicked: page.openNext()
        },
        UndoBar {
            objectName: "turn-undo"
            Layout.fillWidth: true
            text: page.turn.lastWords
            onUndone: page.turn.undo()
        }
    ]
}
