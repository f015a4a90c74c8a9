// SPDX-License-Identifier: Apache-2.0
// A helmet for this athlete now: why the old one comes off and where it is, then one touch on a spare gives the new one and opens its first
// fit. Nothing is preselected; where there is no spare, it says so and why.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    property string what: ""
    readonly property SwapModel swap: shell.swap
    readonly property bool asks: swap.needsReason || swap.needsWhere
    signal go(string screen, string what)
    signal replace(string screen, string what)

    title: qsTr("Swap helmet")
    subtitle: swap.who
    hasBack: true
    Component.onCompleted: swap.open(what)

    Connections {
        target: page.swap
        function onSwapped(athlete: string): void { page.shell.guide.start(athlete, "resume") }
    }
    Connections {
        target: page.shell.guide
        function onBegun(): void { page.replace("guide", "") }
    }

    Notice { objectName: "trouble"; Layout.fillWidth: true; kind: "stop"; text: page.swap.trouble.length > 0 ? page.swap.trouble : page.shell.guide.trouble }
    Card {
        Layout.fillWidth: true
        visible: page.swap.oldWords.length > 0
        tone: "stop"
        ColumnLayout {
            width: parent.width
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: qsTr("Comes off: %1").arg(page.swap.oldWords); bold: true }
            Words { Layout.fillWidth: true; visible: text.length > 0; text: page.swap.oldHolds.join("\n"); tone: "stop" }
            ChipGrid {
                objectName: "reasons"
                Layout.fillWidth: true
                visible: page.swap.reasons.length > 0
                label: qsTr("Why does it come off?")
                mostColumns: 4
                // Once touched, only the reason stays where there is little room, so that the spares come into view.
                choices: page.phone && !page.asks ? page.swap.reasons.filter(r => r.chosen) : page.swap.reasons
                onChosen: name => page.swap.chooseReason(name)
            }
            ChipGrid {
                objectName: "whereabouts"
                Layout.fillWidth: true
                label: qsTr("Where is it now?")
                mostColumns: 2
                choices: page.swap.whereabouts
                onChosen: name => page.swap.sayWhere(name)
            }
            TextEntry {
                objectName: "what"
                Layout.fillWidth: true
                visible: page.swap.reasons.length > 0 && !page.swap.needsReason
                label: qsTr("In your own words, if wanted")
                onEdited: text => page.swap.sayWhat(text)
            }
        }
    }
    Words { objectName: "size"; Layout.fillWidth: true; text: page.swap.sizeWords; tone: "quiet" }
    ChipGrid {
        objectName: "shelves"
        Layout.fillWidth: true
        visible: page.swap.shelves.length > 0
        label: qsTr("Where do you stand?")
        mostColumns: 4
        choices: page.swap.shelves
        onChosen: name => page.swap.standAt(name)
    }
    Words {
        Layout.fillWidth: true
        visible: page.swap.offers.length > 0
        size: "head"
        text: page.swap.needsReason ? qsTr("Spares: touch the reason first") : page.swap.needsWhere ? qsTr("Spares: say first where the old one is") : qsTr("Touch the spare to give it now")
    }
    // By number and in a column of its own: rows stay while others come and go, and no layout keeps one that is gone.
    Column {
        id: rows
        Layout.fillWidth: true
        visible: page.swap.offers.length > 0
        spacing: Theme.grid
        Repeater {
            model: page.swap.offers.length
            ListRow {
                id: row
                required property int index
                readonly property var spare: page.swap.offers[index] ?? ({ unit: "", serial: "", title: "", detail: "", odds: "", isTryOn: false })
                objectName: "spare-" + spare.serial
                width: rows.width
                title: spare.title
                detail: spare.detail
                tagText: spare.isTryOn ? qsTr("%1, try on").arg(spare.odds) : spare.odds
                tagTone: spare.isTryOn ? "quiet" : "snug"
                tagShape: spare.isTryOn ? "hollow" : "dot"
                enabled: !page.asks && !page.swap.isBusy
                opacity: enabled ? 1 : 0.55
                onClicked: page.swap.take(row.spare.unit)
            }
        }
    }
    Notice { objectName: "none"; Layout.fillWidth: true; kind: "attention"; text: page.swap.none }
    Card {
        Layout.fillWidth: true
        visible: page.swap.notOffered.length > 0
        ColumnLayout {
            width: parent.width
            spacing: 4
            Words { Layout.fillWidth: true; text: qsTr("Not offered"); bold: true }
            Words { objectName: "notOffered"; Layout.fillWidth: true; text: page.swap.notOffered.join("\n"); tone: "quiet" }
        }
    }
}
