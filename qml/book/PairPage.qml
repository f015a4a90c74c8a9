// SPDX-License-Identifier: Apache-2.0
// Who gets this helmet: athletes without one first. A touch writes it down and goes back.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

ListPage {
    id: page

    required property UnitPage unit

    title: qsTr("Who wears %1?").arg(page.unit.serial)
    subtitle: page.unit.kindWords
    rows: page.unit.candidates
    emptyText: qsTr("Nobody matches.")
    Component.onCompleted: {
        page.unit.forgetRefusal()
        page.unit.candidateSearch = ""
    }
    head: Column {
        spacing: Theme.gap
        TextEntry {
            objectName: "search"
            width: parent.width
            label: qsTr("Jersey or name")
            hint: qsTr("Search")
            onEdited: text => page.unit.candidateSearch = text
        }
        Notice { objectName: "refusal"; width: parent.width; kind: "stop"; text: page.unit.refusal }
    }
    delegate: ListRow {
        id: entry
        required property var modelData
        required property int index
        objectName: "candidate" + entry.index
        width: page.rowWidth
        title: entry.modelData.name
        note: entry.modelData.words
        onClicked: page.unit.pairWith(entry.modelData.athlete)
    }
    Connections {
        target: page.unit
        function onWritten(): void { page.back() }
    }
}
