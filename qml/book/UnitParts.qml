// SPDX-License-Identifier: Apache-2.0
// A part that was replaced: one touch opens the parts, one names it. Each says which marks of the athlete are to be seen again.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Models

Item {
    id: parts

    required property UnitPage unit

    implicitHeight: button.implicitHeight
    BigButton {
        id: button
        objectName: "changePart"
        width: parent.width
        text: qsTr("A part was replaced")
        enabled: !parts.unit.isBusy
        onClicked: {
            parts.unit.forgetRefusal()
            what.clear()
            sheet.open()
        }
    }
    PullSheet {
        id: sheet
        objectName: "partSheet"
        title: qsTr("Which part is new?")
        TextEntry { id: what; objectName: "partWords"; Layout.fillWidth: true; label: qsTr("In your own words, if wanted") }
        ChipGrid {
            objectName: "parts"
            Layout.fillWidth: true
            mostColumns: 2
            choices: parts.unit.parts.map(p => ({ name: "part-" + p.code, text: p.name, detail: parts.unit.wearers.length > 0 ? p.reopens : "" }))
            onChosen: name => parts.unit.changePart(name.slice(5), what.text)
        }
    }
    Connections {
        target: parts.unit
        function onWritten(): void { sheet.close() }
    }
}
