// SPDX-License-Identifier: Apache-2.0
// A maker's notice: its words and day, which helmets it means, what that would hold; kept by one touch. Below, the notices kept and the
// helmets that each still holds; those are released on their own pages.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property NoticeModel notices
    property string opened: ""            // the kept notice whose helmets show
    property bool showsMeant: false

    signal openUnit(string unitId)

    title: qsTr("Maker's notice")
    subtitle: qsTr("Holds every helmet it means, in one act")
    hasBack: true
    Component.onCompleted: page.notices.begin()

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.notices.refusal }
    TextEntry {
        id: words
        objectName: "noticeText"
        Layout.fillWidth: true
        label: qsTr("What it says")
        maximumLength: 500
        onEdited: text => page.notices.setText(text)
    }
    TextEntry {
        id: day
        objectName: "noticeDay"
        Layout.fillWidth: true
        label: qsTr("Its date, if not today: year-month-day")
        hint: "2026-10-14"
        onEdited: text => { if (text.trim().length > 0) page.notices.setDay(text) }
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; text: qsTr("Which helmets"); size: "head" }
    ChipGrid {
        objectName: "noticeSheets"
        Layout.fillWidth: true
        label: qsTr("Model sheet")
        mostColumns: 4
        choices: page.notices.sheets
        onChosen: name => page.notices.chooseSheet(name)
    }
    GridLayout {
        Layout.fillWidth: true
        columns: Theme.stacks ? 1 : 2
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        TextEntry { id: yearFrom; objectName: "yearFrom"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("Made in, from"); inputMethodHints: Qt.ImhDigitsOnly; maximumLength: 4; onEdited: page.years() }
        TextEntry { id: yearTo; objectName: "yearTo"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("to"); inputMethodHints: Qt.ImhDigitsOnly; maximumLength: 4; onEdited: page.years() }
        TextEntry { id: serialFrom; objectName: "serialFrom"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("Serial from"); onEdited: page.serials() }
        TextEntry { id: serialTo; objectName: "serialTo"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("to"); onEdited: page.serials() }
    }
    TextEntry { id: lot; objectName: "lot"; Layout.fillWidth: true; label: qsTr("Lot"); onEdited: text => page.notices.setLot(text) }
    BigButton {
        objectName: "takesUnknown"
        Layout.fillWidth: true
        visible: page.notices.notKnown.length > 0
        text: page.notices.notKnown
        detail: page.notices.takesUnknown ? qsTr("Held too: touch to leave them out") : qsTr("Left out: touch to hold them too")
        checked: page.notices.takesUnknown
        onClicked: page.notices.setTakesUnknown(!page.notices.takesUnknown)
    }
    Card {
        Layout.fillWidth: true
        visible: page.notices.preview.length > 0
        tone: "see"
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { objectName: "preview"; width: parent.width; text: page.notices.preview; size: "head" }
            Words { width: parent.width; text: page.notices.scopeWords; tone: "quiet" }
            BigButton {
                objectName: "showMeant"
                width: parent.width
                visible: page.notices.meant.length > 0
                kind: "quiet"
                text: page.showsMeant ? qsTr("Hide them") : qsTr("Show them")
                onClicked: page.showsMeant = !page.showsMeant
            }
        }
    }
    Column {
        id: meantRows
        Layout.fillWidth: true
        visible: page.showsMeant && page.notices.meant.length > 0
        spacing: Theme.grid
        Repeater {
            model: page.showsMeant ? page.notices.meant.length : 0
            ListRow {
                id: meantRow
                required property int index
                readonly property var helmet: page.notices.meant[index] ?? ({ unit: "", title: "", detail: "", isWorn: false })
                objectName: "meant"
                width: meantRows.width
                title: helmet.title
                detail: helmet.detail
                tagText: helmet.isWorn ? qsTr("On a head") : ""
                tagTone: "stop"
                onClicked: page.openUnit(meantRow.helmet.unit)
            }
        }
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.gap; visible: page.notices.kept.length > 0; text: qsTr("Kept"); size: "head" }
    Column {
        id: keptRows
        Layout.fillWidth: true
        spacing: Theme.grid
        Repeater {
            model: page.notices.kept.length
            Column {
                id: entry
                required property int index
                readonly property var kept: page.notices.kept[index] ?? ({ notice: "", words: "", scope: "", state: "", units: [], isOpen: false })
                readonly property bool isOpened: page.opened.length > 0 && page.opened === kept.notice
                width: keptRows.width
                spacing: Theme.grid
                ListRow {
                    objectName: "kept"
                    width: entry.width
                    title: entry.kept.words
                    detail: entry.kept.state
                    note: entry.kept.scope
                    tone: entry.kept.isOpen ? "stop" : "plain"
                    onClicked: page.opened = entry.isOpened ? "" : entry.kept.notice
                }
                Repeater {
                    model: entry.isOpened ? entry.kept.units.length : 0
                    ListRow {
                        id: heldRow
                        required property int index
                        readonly property var helmet: entry.kept.units[index] ?? ({ unit: "", title: "", detail: "" })
                        objectName: "stillHeld"
                        x: Theme.margin
                        width: entry.width - x
                        title: helmet.title
                        detail: helmet.detail
                        onClicked: page.openUnit(heldRow.helmet.unit)
                    }
                }
            }
        }
    }

    foot: [
        BigButton {
            objectName: "keepNotice"
            Layout.fillWidth: true
            large: true
            kind: "danger"
            enabled: page.notices.canKeep
            text: page.notices.preview.length > 0 ? qsTr("Hold %1").arg(page.notices.preview) : qsTr("Hold the helmets it means")
            onClicked: page.notices.keep()
        },
        UndoBar {
            objectName: "noticeUndo"
            Layout.fillWidth: true
            text: page.notices.lastWords
            onUndone: page.notices.undo()
        }
    ]

    function years(): void { page.notices.setYears(yearFrom.text, yearTo.text) }
    function serials(): void { page.notices.setSerials(serialFrom.text, serialTo.text) }
    Connections {
        target: page.notices
        function onWritten(): void {
            for (const entry of [words, day, yearFrom, yearTo, serialFrom, serialTo, lot])
                entry.clear()
            page.showsMeant = false
        }
    }
}
