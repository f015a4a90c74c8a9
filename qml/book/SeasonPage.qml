// SPDX-License-Identifier: Apache-2.0
// What is only seen over weeks, section by section.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens
import Snugline.Models

PageFrame {
    id: page

    required property SeasonModel season
    required property SettingsModel settings

    signal openAthlete(string athleteId)
    signal chosen(string name)

    title: qsTr("Season")
    subtitle: page.settings.teamWords
    hasBack: true

    ListRow { objectName: "collect"; Layout.fillWidth: true; title: qsTr("Hand helmets in"); detail: qsTr("One scan after another, and what is missing"); onClicked: page.chosen("collect") }
    ListRow { objectName: "turn"; Layout.fillWidth: true; title: qsTr("Turn of the season"); detail: page.season.turn.stateWords; onClicked: page.chosen("turn") }
    ListRow { objectName: "past"; Layout.fillWidth: true; title: qsTr("Past seasons"); detail: qsTr("Who had which helmet, and what was missing"); onClicked: page.chosen("past") }
    ListRow { objectName: "matching"; Layout.fillWidth: true; title: qsTr("Matching"); detail: qsTr("Heads to helmets for the whole roster, and what is short"); onClicked: page.chosen("matching") }
    ListRow { objectName: "plan"; Layout.fillWidth: true; title: qsTr("Plan"); detail: qsTr("What lapses, what goes out, what to order"); onClicked: page.chosen("plan") }
    ListRow { objectName: "lanes"; Layout.fillWidth: true; title: qsTr("Lanes week by week"); detail: qsTr("Helmets by the lane they stood in, over the season"); onClicked: page.chosen("lanes") }
    SeasonSection {
        objectName: "said-again"
        Layout.fillWidth: true
        title: qsTr("Said again and again")
        rule: page.season.againRule
        nothing: qsTr("Nothing so far.")
        rows: page.season.saidAgain
        onRowChosen: row => page.openAthlete(row.athlete)
    }
    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 && !Theme.stacks ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.margin
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.gap
            Words { Layout.fillWidth: true; text: qsTr("The seven points, as last seen"); size: "head"; Accessible.role: Accessible.Heading }
            Bars { objectName: "point-bars"; Layout.fillWidth: true; joined: true; rows: page.season.pointBars }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.gap
            Words { Layout.fillWidth: true; text: qsTr("From a fit to the first look"); size: "head"; Accessible.role: Accessible.Heading }
            Bars { objectName: "look-bars"; Layout.fillWidth: true; rows: page.season.lookBars }
        }
    }
}
