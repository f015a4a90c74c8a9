// SPDX-License-Identifier: Apache-2.0
// Helmets that should be in and are not: those with athletes first, then the shelf. A touch on one hands it in, marks it as lost with a
// reason, or leads on to its page. Below, what is elsewhere and not looked for.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property CollectModel collect
    property var chosen: ({ unit: "", athlete: "", serial: "", title: "", hasAthlete: false })
    readonly property int withAthletes: page.collect.missing.filter(m => m.hasAthlete).length

    signal openUnit(string unitId)
    signal openAthlete(string athleteId)

    title: qsTr("Missing")
    subtitle: page.collect.missingWords
    hasBack: true

    Notice { objectName: "missing-refusal"; Layout.fillWidth: true; kind: "stop"; text: page.collect.refusal }
    Words { objectName: "missing-none"; Layout.fillWidth: true; visible: page.collect.missing.length === 0; text: qsTr("Every helmet that is to come is in.") }
    Repeater {
        model: page.collect.missing.length
        ColumnLayout {
            id: entry
            required property int index
            readonly property var row: page.collect.missing[index] ?? page.chosen
            Layout.fillWidth: true
            spacing: Theme.grid
            Words {
                Layout.fillWidth: true
                Layout.topMargin: entry.index > 0 ? Theme.gap : 0
                visible: entry.index === 0 || entry.index === page.withAthletes
                text: entry.index < page.withAthletes ? qsTr("With athletes, %1").arg(page.withAthletes) : qsTr("Should be on the shelf, %1").arg(page.collect.missing.length - page.withAthletes)
                size: "head"
                Accessible.role: Accessible.Heading
            }
            ListRow {
                objectName: "missing" + entry.index
                Layout.fillWidth: true
                number: entry.row.number ?? ""
                title: entry.row.title
                detail: entry.row.detail ?? ""
                tone: entry.row.tone ?? "plain"
                onClicked: {
                    page.chosen = entry.row
                    sheet.open()
                }
            }
        }
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.gap; visible: page.collect.elsewhere.length > 0; text: qsTr("Elsewhere, not counted as missing"); size: "head"; Accessible.role: Accessible.Heading }
    Repeater {
        model: page.collect.elsewhere.length
        ListRow {
            required property int index
            readonly property var row: page.collect.elsewhere[index] ?? ({ unit: "", title: "", detail: "" })
            objectName: "elsewhere" + index
            Layout.fillWidth: true
            title: row.title
            detail: row.detail
            onClicked: page.openUnit(row.unit)
        }
    }

    foot: UndoBar {
        objectName: "missing-undo"
        Layout.fillWidth: true
        text: page.collect.lastWords
        onUndone: page.collect.undoLast()
    }

    PullSheet {
        id: sheet
        objectName: "missing-sheet"
        title: page.chosen.serial
        Words { Layout.fillWidth: true; visible: page.chosen.hasAthlete; text: page.chosen.title }
        BigButton {
            objectName: "missing-in"
            Layout.fillWidth: true
            kind: "primary"
            text: qsTr("It is here: hand it in")
            enabled: !page.collect.isBusy
            onClicked: { sheet.close(); page.collect.handIn(page.chosen.unit) }
        }
        ChipGrid {
            objectName: "lost-reasons"
            Layout.fillWidth: true
            label: qsTr("Mark it as lost, because")
            mostColumns: 2
            choices: [
                { name: qsTr("not handed in"), text: qsTr("Not handed in"), enabled: !page.collect.isBusy },
                { name: qsTr("the athlete lost it"), text: qsTr("The athlete lost it"), enabled: !page.collect.isBusy },
                { name: qsTr("stolen"), text: qsTr("Stolen"), enabled: !page.collect.isBusy },
                { name: qsTr("not found on the shelf"), text: qsTr("Not found on the shelf"), enabled: !page.collect.isBusy }
            ]
            onChosen: name => { sheet.close(); page.collect.markLost(page.chosen.unit, name) }
        }
        TextEntry { id: why; objectName: "lost-words"; Layout.fillWidth: true; label: qsTr("Or in your own words") }
        BigButton {
            objectName: "lost-now"
            Layout.fillWidth: true
            visible: why.text.trim().length > 0
            kind: "danger"
            text: qsTr("Mark it as lost")
            onClicked: { sheet.close(); page.collect.markLost(page.chosen.unit, why.text) }
        }
        BigButton { objectName: "missing-unit"; Layout.fillWidth: true; kind: "quiet"; text: qsTr("The helmet's page"); onClicked: { sheet.close(); page.openUnit(page.chosen.unit) } }
        BigButton { objectName: "missing-athlete"; Layout.fillWidth: true; visible: page.chosen.hasAthlete; kind: "quiet"; text: qsTr("The athlete's page"); onClicked: { sheet.close(); page.openAthlete(page.chosen.athlete) } }
        onBegan: why.clear()
    }
}
