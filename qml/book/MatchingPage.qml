// SPDX-License-Identifier: Apache-2.0
// Heads to helmets for the whole roster: who gets none, who gets another, who keeps what is worn; then the shelf. A touch on a pair opens
// what it costs, and pins it or sets it aside.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property MatchingModel matching
    readonly property real above: top.height + Theme.gap

    signal openAthlete(string athleteId)

    title: qsTr("Matching")
    subtitle: matching.summary
    hasBack: true
    Component.onCompleted: matching.begin()

    ColumnLayout {
        id: top
        Layout.fillWidth: true
        spacing: Theme.gap
        Notice { objectName: "matching-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.matching.trouble }
        ChoiceRow {
            objectName: "keeps"
            Layout.fillWidth: true
            label: qsTr("Who wears one that can be given")
            choices: [{ name: "keep", text: qsTr("Keeps it") }, { name: "anew", text: qsTr("All anew") }]
            current: page.matching.keepsWorn ? "keep" : "anew"
            onChosen: name => page.matching.setKeepsWorn(name === "keep")
        }
        Words { Layout.fillWidth: true; visible: text.length > 0; text: page.matching.through; size: "small"; tone: "quiet" }
        Repeater {
            model: page.matching.wishes
            BigButton {
                required property var modelData
                objectName: modelData.name
                Layout.fillWidth: true
                sign: "cross"
                text: modelData.text
                detail: qsTr("Touch to take this back")
                onClicked: page.matching.takeBack(modelData.name)
            }
        }
    }
    ListView {
        id: list
        objectName: "matches"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(Theme.touch * 4, page.scrollArea.height - page.above)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.grid
        reuseItems: false
        model: page.matching.rows
        delegate: Loader {
            id: entry
            required property var modelData
            width: list.width
            sourceComponent: modelData.kind === "head" ? headEntry : modelData.kind === "words" ? wordsEntry : rowEntry

            Component {
                id: headEntry
                Words { topPadding: Theme.gap; text: entry.modelData.title; size: "head"; tone: entry.modelData.tone; Accessible.role: Accessible.Heading }
            }
            Component {
                id: wordsEntry
                Column {
                    Words { width: parent.width; text: entry.modelData.title; bold: true }
                    Words { width: parent.width; text: entry.modelData.detail; size: "small"; tone: entry.modelData.tone }
                }
            }
            Component {
                id: rowEntry
                ListRow {
                    objectName: entry.modelData.name
                    number: entry.modelData.number
                    title: entry.modelData.title
                    detail: entry.modelData.detail
                    tone: entry.modelData.tone
                    onClicked: {
                        if (entry.modelData.kind === "none") {
                            page.openAthlete(entry.modelData.athlete)
                        } else {
                            page.matching.open(entry.modelData.athlete)
                            sheet.open()
                        }
                    }
                }
            }
        }
    }

    PullSheet {
        id: sheet
        objectName: "match-sheet"
        title: page.matching.opened.title ?? ""
        WhyLines { Layout.fillWidth: true; why: page.matching.opened.why ?? ({}) }
        BigButton {
            objectName: "pin"
            Layout.fillWidth: true
            visible: !(page.matching.opened.isPinned ?? false)
            text: qsTr("Pin this pair")
            detail: qsTr("Stays, whatever the others get")
            onClicked: {
                page.matching.pin()
                sheet.close()
            }
        }
        BigButton {
            objectName: "set-aside"
            Layout.fillWidth: true
            text: qsTr("Not this helmet")
            detail: qsTr("Another one for this head")
            onClicked: {
                page.matching.setAside()
                sheet.close()
            }
        }
        BigButton {
            objectName: "open-athlete"
            Layout.fillWidth: true
            text: qsTr("Open the athlete")
            onClicked: {
                sheet.close()
                page.openAthlete(page.matching.opened.athlete)
            }
        }
    }
}
