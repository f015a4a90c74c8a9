// SPDX-License-Identifier: Apache-2.0
// The next season: its name, its days, who leaves the roster, what is carried over. Nobody is preselected; a year takes all who were born
// in it. One touch writes all of it down.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property TurnModel turn
    readonly property bool wide: page.width >= 900 && !Theme.stacks

    title: qsTr("The next season")
    subtitle: page.turn.stateWords
    hasBack: true

    Notice { objectName: "next-refusal"; Layout.fillWidth: true; kind: "stop"; text: page.turn.refusal }
    GridLayout {
        Layout.fillWidth: true
        columns: page.wide ? 3 : Theme.stacks || page.phone ? 1 : 2
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        TextEntry { objectName: "next-name"; Layout.fillWidth: true; Layout.columnSpan: page.wide ? 1 : parent.columns; Layout.preferredWidth: 1; label: qsTr("Name"); maximumLength: 80; text: page.turn.name; onEdited: text => page.turn.setName(text) }
        TextEntry { id: start; objectName: "next-start"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("First day: year-month-day"); text: page.turn.start; onEdited: text => page.turn.setDays(text, end.text) }
        TextEntry { id: end; objectName: "next-end"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("Last day"); text: page.turn.end; onEdited: text => page.turn.setDays(start.text, text) }
    }
    Notice { objectName: "next-name-message"; Layout.fillWidth: true; kind: "attention"; text: page.turn.nameMessage }
    Notice { objectName: "next-days-message"; Layout.fillWidth: true; kind: "attention"; text: page.turn.daysMessage }
    ChipGrid {
        objectName: "next-offers"
        Layout.fillWidth: true
        visible: count > 0
        mostColumns: page.phone ? 1 : 2
        choices: (page.turn.nameOffer.length > 0 && page.turn.name.length === 0 ? [{ name: "offer-name", text: qsTr("Call it %1").arg(page.turn.nameOffer) }] : [])
            .concat(page.turn.daysOffer.length > 0 && page.turn.start.length + page.turn.end.length === 0 ? [{ name: "offer-days", text: page.turn.daysOffer }] : [])
        onChosen: name => { if (name === "offer-name") page.turn.takeNameOffer(); else page.turn.takeDaysOffer() }
    }
    GridLayout {
        Layout.fillWidth: true
        columns: page.wide ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.gap
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            Layout.alignment: Qt.AlignTop
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: qsTr("Who leaves"); size: "head"; Accessible.role: Accessible.Heading }
            Words { objectName: "next-roster"; Layout.fillWidth: true; text: page.turn.rosterWords; bold: true }
            ChipGrid {
                objectName: "next-years"
                Layout.fillWidth: true
                visible: count > 0
                mostColumns: 3
                choices: page.turn.years
                onChosen: name => page.turn.toggleYear(name.slice(5))
            }
            Words { Layout.fillWidth: true; text: qsTr("A touch on an athlete takes them off the roster when the season is opened; one more touch keeps them. Their record stays."); size: "small"; tone: "quiet" }
            Repeater {
                model: page.turn.roster.length
                ListRow {
                    required property int index
                    readonly property var row: page.turn.roster[index] ?? ({ athlete: "", number: "", title: "", detail: "", isLeaving: false })
                    objectName: "leave-" + row.number
                    Layout.fillWidth: true
                    number: row.number
                    title: row.title
                    detail: row.detail
                    tagText: row.isLeaving ? qsTr("Leaves") : ""
                    tagTone: "see"
                    tagShape: "square"
                    checked: row.isLeaving
                    onClicked: page.turn.toggle(row.athlete)
                }
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.alignment: Qt.AlignTop
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: qsTr("What is carried over"); size: "head"; Accessible.role: Accessible.Heading }
            Words { objectName: "next-carried"; Layout.fillWidth: true; text: page.turn.carriedWords; bold: true }
            CountList { objectName: "next-states"; Layout.fillWidth: true; rows: page.turn.carried }
            Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; text: qsTr("By model and size, without lost ones"); tone: "quiet" }
            CountList { objectName: "next-sizes"; Layout.fillWidth: true; rows: page.turn.carriedSizes }
            Words { Layout.fillWidth: true; text: qsTr("Every helmet needs a first fit again when it is given out, also one that an athlete kept."); size: "small"; tone: "quiet" }
        }
    }

    foot: BigButton {
        objectName: "next-open"
        Layout.fillWidth: true
        large: true
        kind: page.turn.canOpen ? "primary" : "plain"
        enabled: page.turn.canOpen
        text: page.turn.openText
        detail: page.turn.openDetail
        onClicked: page.turn.openNext()
    }
    Connections {
        target: page.turn
        function onOpened(): void { page.back() }
    }
}
