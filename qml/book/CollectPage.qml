// SPDX-License-Identifier: Apache-2.0
// Helmets handed in, one after another: scan, and it says whose it was and how many are in. A question or a tag that nobody knows stands
// above and never stops the line. What is missing is one touch away.
import QtQuick
import QtQuick.Layouts
import Snugline.Dock
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property CollectModel collect
    property ScanModel scan: null         // none in a program without a camera
    readonly property var last: page.collect.last
    readonly property bool hasLast: page.last.unit !== undefined

    signal openUnit(string unitId)
    signal openMissing()

    title: qsTr("Handing in")
    subtitle: page.collect.title
    hasBack: true
    Component.onCompleted: page.collect.begin()
    Component.onDestruction: page.collect.leave()
    Keys.onPressed: event => { event.accepted = field.takeKey(event) }

    headerRight: ScanField {
        id: field
        width: page.phone || Theme.stacks && page.width < 900 ? page.width - 2 * Theme.margin : Math.min(560, page.width * 0.5)
        focus: true
        brief: page.hasLast
        onScanned: text => page.collect.scan(text)
    }

    CollectAsked { Layout.fillWidth: true; collect: page.collect }
    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 && !Theme.stacks ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.gap
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.grid
            Words { objectName: "collect-count"; Layout.fillWidth: true; text: page.collect.countWords; size: "title"; Accessible.role: Accessible.Heading }
            Rectangle {
                Layout.fillWidth: true
                implicitHeight: 16
                radius: 8
                color: "transparent"
                border.width: Theme.stroke
                border.color: Theme.ink
                Accessible.ignored: true
                Rectangle { x: 3; y: 3; height: parent.height - 6; width: (parent.width - 6) * page.collect.share; radius: 5; color: Theme.turf }
            }
            Words { objectName: "collect-shelf"; Layout.fillWidth: true; visible: text.length > 0; text: page.collect.shelfWords; tone: "quiet" }
            Card {
                objectName: "collect-last"
                Layout.fillWidth: true
                visible: page.hasLast
                tone: page.last.isHeld ? "stop" : page.last.isAlready ? "info" : "snug"
                Column {
                    width: parent.width
                    spacing: Theme.grid
                    Words { width: parent.width; text: page.last.title ?? ""; size: "head" }
                    Words { objectName: "collect-whose"; width: parent.width; text: page.last.detail ?? ""; bold: true; tone: page.last.isAlready ? "info" : "plain" }
                    Words { width: parent.width; visible: text.length > 0; text: page.last.note ?? ""; tone: "stop" }
                    ChipGrid {
                        width: parent.width
                        mostColumns: 2
                        choices: [{ name: "collect-hold", text: qsTr("Put it on hold"), enabled: !page.collect.isBusy }, { name: "collect-page", text: qsTr("Its page") }]
                        onChosen: name => { if (name === "collect-page") page.openUnit(page.last.unit); else holdSheet.open() }
                    }
                }
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.gap
            Loader {
                Layout.fillWidth: true
                active: page.scan !== null && page.scan.hasCamera
                visible: active
                sourceComponent: DockCamera { scan: page.scan }
            }
            BigButton { objectName: "collect-number"; Layout.fillWidth: true; text: qsTr("By jersey number"); detail: qsTr("Where a tag cannot be read"); onClicked: numberSheet.open() }
            ListRow {
                objectName: "collect-missing"
                Layout.fillWidth: true
                title: qsTr("Missing")
                detail: page.collect.missingWords
                onClicked: page.openMissing()
            }
        }
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; visible: page.collect.recent.length > 0; text: qsTr("Before that"); size: "head" }
    Repeater {
        model: page.collect.recent.length
        ListRow {
            required property int index
            readonly property var row: page.collect.recent[index] ?? ({ unit: "", title: "", detail: "", tone: "plain" })
            objectName: "collect-recent"
            Layout.fillWidth: true
            title: row.title
            detail: row.detail
            tone: row.tone
            onClicked: page.openUnit(row.unit)
        }
    }
    Words {
        Layout.fillWidth: true
        visible: page.collect.strays.length > 0
        text: qsTr("In no Book and put aside: %1").arg(page.collect.strays.map(s => s.tag).join(", "))
        tone: "quiet"
    }

    foot: UndoBar {
        objectName: "collect-undo"
        Layout.fillWidth: true
        text: page.collect.lastWords
        onUndone: page.collect.undoLast()
    }

    HoldSheet {
        id: holdSheet
        objectName: "collect-hold-sheet"
        onHeld: what => page.collect.hold(what)
    }
    PullSheet {
        id: numberSheet
        objectName: "collect-number-sheet"
        title: page.collect.countWords
        fills: true
        onBegan: page.collect.query = ""
        onEnded: field.forceActiveFocus()
        Keypad {
            objectName: "collect-pad"
            Layout.fillWidth: true
            focus: true
            label: qsTr("Jersey number")
            maximumLength: 3
            text: page.collect.query
            showsEnter: false
            onEdited: text => page.collect.query = text
        }
        ColumnLayout {                    // room is kept for what comes up, so that the keys stay where they are
            Layout.fillWidth: true
            Layout.preferredHeight: Math.max(implicitHeight, 2.5 * Theme.touch)
            Words { Layout.fillWidth: true; visible: page.collect.query.length > 0 && page.collect.matches.length === 0; text: qsTr("Nobody of that number has a helmet.") }
            Repeater {
                model: page.collect.matches.length
                ListRow {
                    required property int index
                    readonly property var row: page.collect.matches[index] ?? ({ unit: "", number: "", title: "", detail: "" })
                    objectName: "match" + index
                    Layout.fillWidth: true
                    number: row.number
                    title: row.title
                    detail: row.detail
                    onClicked: {
                        page.collect.handIn(row.unit)
                        page.collect.query = ""
                    }
                }
            }
            Words { Layout.fillWidth: true; visible: page.collect.query.length === 0 && page.hasLast; text: page.hasLast ? page.last.title + ". " + page.last.detail : ""; tone: "snug" }
            Item { Layout.fillHeight: true }
        }
    }
    Connections {
        target: page.collect
        function onCounted(): void { field.text = "" }
    }
}
