// SPDX-License-Identifier: Apache-2.0
// What the Book holds, and the way into each part of it.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property RosterModel roster
    required property UnitsModel units
    required property SettingsModel settings
    property SeasonModel season: null
    property PhonesModel phones: null

    property string unsignedWords: ""     // who has yet to sign the yearly warning

    signal chosen(string name)

    function countOf(filter: int): int {
        const entry = page.units.filters.find(f => f.filter === filter)
        return entry ? entry.count : 0
    }

    title: qsTr("Book")
    subtitle: page.settings.teamWords
    hasBack: true

    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        WidePanel {
            objectName: "athletes"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            title: qsTr("Athletes")
            detail: qsTr("%1 in the Book").arg(page.roster.total)
            more: page.unsignedWords
            onClicked: page.chosen("athletes")
        }
        WidePanel {
            objectName: "helmets"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            title: qsTr("Helmets")
            detail: qsTr("%1 in service").arg(page.countOf(UnitsModel.InService))
            more: qsTr("%1 on hold, %2 with a label that lapses").arg(page.countOf(UnitsModel.OnHold)).arg(page.countOf(UnitsModel.Lapsing))
            onClicked: page.chosen("helmets")
        }
        WidePanel {
            objectName: "season"
            visible: page.season !== null
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            title: qsTr("Season")
            detail: page.season ? page.season.words : ""
            onClicked: page.chosen("season")
        }
        WidePanel {
            objectName: "sheets"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            title: qsTr("Model sheets")
            detail: qsTr("%1 adopted").arg(page.units.sheets.sheets.length)
            onClicked: page.chosen("sheets")
        }
        WidePanel {
            objectName: "sharing"
            visible: page.phones !== null
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            title: qsTr("Sharing")
            detail: page.phones ? page.phones.joinedWords : ""
            onClicked: page.chosen("sharing")
        }
        WidePanel {
            objectName: "settings"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            title: qsTr("Settings")
            detail: page.settings.units === SettingsModel.Us ? qsTr("Inches, psi, °F") : qsTr("Millimetres, kPa, °C")
            onClicked: page.chosen("settings")
        }
    }
}
