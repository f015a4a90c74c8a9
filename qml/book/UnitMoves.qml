// SPDX-License-Identifier: Apache-2.0
// Where a helmet goes and why: a touch on the place, then a touch on the usual reason or own words. Where no reason is asked, one touch.
// And the shelf on which it belongs, by which a spare is found.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Dock
import Snugline.Models

Card {
    id: moves

    required property UnitPage unit
    property var going: ({ to: "", words: "", reasons: [] })

    visible: moves.unit.moves.length > 0

    Column {
        width: parent.width
        spacing: Theme.grid
        Words { width: parent.width; text: qsTr("Where it goes"); bold: true }
        Words { width: parent.width; visible: text.length > 0; tone: "quiet"; text: Bearer.staffOnly }
        ChipGrid {
            objectName: "moves"
            width: parent.width
            mostColumns: 3
            choices: moves.unit.moves.map(m => ({ name: "to-" + m.to, text: m.words, enabled: !moves.unit.isBusy && Bearer.isStaff }))
            onChosen: name => {
                const move = moves.unit.moves.find(m => "to-" + m.to === name)
                if (move.to === "back")
                    return back.open()
                if (move.reasons.length === 0)
                    return moves.unit.moveTo(move.to, "")
                moves.going = move
                why.clear()
                where.clear()
                sheet.open()
            }
        }
        TextEntry {
            id: shelf
            objectName: "shelf"
            width: parent.width
            label: qsTr("Shelf where it belongs")
            hint: qsTr("Shelf 3")
            // Not bound: what is being typed must outlast a change from elsewhere.
            Component.onCompleted: text = moves.unit.shelf
            onAccepted: text => moves.unit.setShelf(text)
        }
        ChipGrid {
            objectName: "shelves"
            width: parent.width
            visible: count > 0
            mostColumns: 6
            choices: moves.unit.shelves.map(s => ({ name: "shelf-" + s, text: s, chosen: s === moves.unit.shelf, enabled: !moves.unit.isBusy && Bearer.isStaff }))
            onChosen: name => moves.unit.setShelf(name.slice(6))
        }
        BigButton {
            objectName: "keepShelf"
            width: parent.width
            visible: shelf.text.trim() !== moves.unit.shelf
            text: qsTr("Keep this shelf")
            enabled: !moves.unit.isBusy && Bearer.isStaff
            onClicked: moves.unit.setShelf(shelf.text)
        }
    }
    Connections {
        target: moves.unit
        function onWritten(): void { shelf.text = moves.unit.shelf }
    }
    ReturnSheet {
        id: back
        objectName: "return-sheet"
        onReturned: (by, done, paper, isCleaned) => moves.unit.comeBack(by, done, paper, isCleaned)
    }
    PullSheet {
        id: sheet
        objectName: "moveSheet"
        title: moves.going.words
        TextEntry { id: where; objectName: "where"; Layout.fillWidth: true; label: qsTr("Firm or place, if wanted") }
        ChipGrid {
            objectName: "moveReasons"
            Layout.fillWidth: true
            label: qsTr("Why")
            mostColumns: 2
            choices: moves.going.reasons.map(r => ({ name: "why-" + r, text: r }))
            onChosen: name => { sheet.close(); moves.unit.moveTo(moves.going.to, where.text, name.slice(4)) }
        }
        TextEntry { id: why; objectName: "moveWhy"; Layout.fillWidth: true; label: qsTr("Or in your own words") }
        BigButton {
            objectName: "moveNow"
            Layout.fillWidth: true
            visible: why.text.trim().length > 0
            kind: "primary"
            text: moves.going.words
            onClicked: { sheet.close(); moves.unit.moveTo(moves.going.to, where.text, why.text) }
        }
    }
}
