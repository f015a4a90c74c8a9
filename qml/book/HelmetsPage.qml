// SPDX-License-Identifier: Apache-2.0
// The helmets of the Book: filtered, searched by serial or wearer, each with its seven points and what stands open.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing
import Snugline.Models

ListPage {
    id: page

    required property UnitsModel units

    signal openUnit(string unitId)
    signal openNotices()

    title: qsTr("Helmets")
    subtitle: qsTr("%1 shown").arg(page.units.count)
    emptyText: qsTr("No helmet here. Take one in at the Dock, or choose another filter.")
    rows: page.units
    head: Column {
        spacing: Theme.gap
        ChipGrid {
            objectName: "filters"
            width: parent.width
            mostColumns: 6
            choices: page.units.filters.map(f => ({ name: String(f.filter), text: f.name, detail: String(f.count), chosen: f.filter === page.units.filter }))
            onChosen: name => page.units.filter = parseInt(name)
        }
        TextEntry {
            objectName: "search"
            width: parent.width
            label: qsTr("Serial or wearer")
            hint: qsTr("Search")
            text: page.units.search
            onEdited: text => page.units.search = text
        }
        BigButton {
            objectName: "notices"
            width: parent.width
            text: qsTr("Maker's notice")
            detail: page.units.notices.kept.length > 0 ? page.units.notices.kept[0].state : qsTr("Hold every helmet of a model, year, lot or serials at once")
            onClicked: page.openNotices()
        }
    }
    delegate: ListRow {
        id: entry
        required property string unitId
        required property string serial
        required property string kind
        required property string status
        required property var points
        required property string standingTone
        width: page.rowWidth
        title: qsTr("%1, %2").arg(entry.serial).arg(entry.kind)
        detail: entry.status
        tone: entry.standingTone === "stop" ? "stop" : "plain"
        onClicked: page.openUnit(entry.unitId)
        PointStrip { points: entry.points }
    }
}
