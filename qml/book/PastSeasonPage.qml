// SPDX-License-Identifier: Apache-2.0
// One past season: its figures, what was missing at the close, and who had which helmet; each athlete and each helmet is a touch away, and
// the table goes out as a file.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property PastModel past
    property var chosen: ({ athlete: "", unit: "", number: "", title: "", detail: "" })

    signal openUnit(string unitId)
    signal openAthlete(string athleteId)

    title: page.past.title
    subtitle: page.past.days
    hasBack: true

    Notice { objectName: "past-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.past.trouble }
    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 && !Theme.stacks ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.gap
        CountList { objectName: "past-figures"; Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.alignment: Qt.AlignTop; rows: page.past.figures }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: qsTr("Missing at the close, %1").arg(page.past.missing.length); size: "head"; Accessible.role: Accessible.Heading }
            Words { Layout.fillWidth: true; visible: page.past.missing.length === 0; text: qsTr("None was noted as missing."); tone: "quiet" }
            Repeater {
                model: page.past.missing
                ListRow {
                    required property var modelData
                    required property int index
                    objectName: "past-missing" + index
                    Layout.fillWidth: true
                    title: modelData.title
                    detail: modelData.detail
                    tone: modelData.tone
                    onClicked: page.openUnit(modelData.unit)
                }
            }
        }
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; text: qsTr("Who had which helmet"); size: "head"; Accessible.role: Accessible.Heading }
    Repeater {
        model: page.past.pairs
        ListRow {
            id: row
            required property var modelData
            required property int index
            objectName: "past-pair" + index
            Layout.fillWidth: true
            number: modelData.number
            title: modelData.title
            detail: modelData.detail
            note: modelData.more
            onClicked: {
                page.chosen = row.modelData
                sheet.open()
            }
        }
    }

    foot: [
        Words { objectName: "past-place"; Layout.fillWidth: true; visible: text.length > 0; text: page.past.place.length > 0 ? qsTr("It lies at %1").arg(page.past.place) : ""; tone: "snug" },
        BigButton {
            objectName: "past-csv"
            Layout.fillWidth: true
            text: qsTr("This table as a CSV file")
            onClicked: page.past.handOut()
        }
    ]

    PullSheet {
        id: sheet
        objectName: "past-sheet"
        title: page.chosen.title
        Words { Layout.fillWidth: true; text: page.chosen.detail }
        BigButton { objectName: "past-athlete"; Layout.fillWidth: true; text: qsTr("The athlete's page"); onClicked: { sheet.close(); page.openAthlete(page.chosen.athlete) } }
        BigButton { objectName: "past-unit"; Layout.fillWidth: true; text: qsTr("The helmet's page"); onClicked: { sheet.close(); page.openUnit(page.chosen.unit) } }
    }
}
