// SPDX-License-Identifier: Apache-2.0
// Who gets this helmet: athletes without one first. A touch writes it down and goes back; of whoever has another one, where that is now is asked first.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

ListPage {
    id: page

    required property UnitPage unit
    property var wanted: ({ athlete: "", name: "", old: "" })     // has another helmet: where that is now is asked

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
        onClicked: {
            if (entry.modelData.old.length === 0)
                return page.unit.pairWith(entry.modelData.athlete, false)
            page.wanted = entry.modelData
            where.open()
        }
    }
    PullSheet {
        id: where
        objectName: "whereSheet"
        title: qsTr("Where is %1 now?").arg(page.wanted.old)
        AnswerBar {
            objectName: "whereabouts"
            Layout.fillWidth: true
            answers: [{ name: "hands", text: qsTr("In our hands") }, { name: "athlete", text: qsTr("Still with %1").arg(page.wanted.name) }]
            onAnswered: name => {
                where.close()
                page.unit.pairWith(page.wanted.athlete, name === "athlete")
            }
        }
    }
    Connections {
        target: page.unit
        function onWritten(): void { page.back() }
    }
}
