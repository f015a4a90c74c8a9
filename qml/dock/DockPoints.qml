// SPDX-License-Identifier: Apache-2.0
// The seven points of the unit on the table as tiles, with one touch for all seven sound, and naming a fault.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: page

    required property DockModel model
    property bool brief: false            // little height: tiles without what to look for

    signal keyPressed(var event)

    spacing: Theme.phone ? Theme.grid : Theme.gap

    GridLayout {
        width: parent.width
        columns: page.width < 300 * Theme.textScale ? 1 : page.width > 760 * Theme.textScale ? 3 : 2
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        BigButton {
            objectName: "allSound"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
            sign: "check"
            text: qsTr("All seven sound")
            tone: "snug"
            onClicked: page.model.allSound()
        }
        Repeater {
            model: page.model.points.length
            PointTile {
                required property int index
                objectName: "point" + index
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Layout.minimumHeight: page.brief ? Theme.touch : Theme.answerHeight
                brief: page.brief
                point: page.model.points[index] || ({})
                onClicked: page.model.touchPoint(index)
            }
        }
    }

    PullSheet {
        id: faultSheet
        readonly property int index: page.model.faultOpen
        readonly property var point: index >= 0 ? page.model.points[index] : ({ name: "", faults: [] })
        objectName: "faultSheet"
        title: qsTr("%1: what is wrong?").arg(point.name)
        closeText: qsTr("Without words")
        onEnded: page.model.closeFault()
        onKeyPressed: event => page.keyPressed(event)
        ChipGrid {
            objectName: "faults"
            Layout.fillWidth: true
            mostColumns: 2
            choices: (faultSheet.point.faults || []).map(f => ({ name: f, text: f }))
            onChosen: name => { page.model.sayFault(faultSheet.index, name); faultSheet.close() }
        }
        TextEntry {
            id: own
            objectName: "ownFault"
            Layout.fillWidth: true
            label: qsTr("In your own words")
            onAccepted: text => { page.model.sayFault(faultSheet.index, text); faultSheet.close() }
        }
        BigButton {
            objectName: "useOwnFault"
            Layout.fillWidth: true
            visible: own.text.trim().length > 0
            kind: "primary"
            text: qsTr("Note this fault")
            onClicked: { page.model.sayFault(faultSheet.index, own.text); faultSheet.close() }
        }
        Connections {
            target: page.model
            function onChanged(): void {
                if (page.model.faultOpen >= 0 && !faultSheet.opened) {
                    own.clear()
                    faultSheet.open()
                } else if (page.model.faultOpen < 0 && faultSheet.opened) {
                    faultSheet.close()
                }
            }
        }
    }
}
