// SPDX-License-Identifier: Apache-2.0
// The line check: everybody whom the weather put into one lane stands in a line, gone along screen by screen. Touch only what is off; then
// one touch notes brow, straps and hold as seen in line for those on the screen. Never nine marks: whoever needs those stays on the board.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property LineCheckModel check: shell.lineCheck
    readonly property bool done: check.isThrough
    signal go(string screen, string what)

    title: qsTr("Line check")
    subtitle: check.summary
    hasBack: true
    Component.onCompleted: check.begin()

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.check.trouble; actionText: qsTr("Understood"); onActed: page.check.dismissTrouble() }
    GridLayout {
        id: tiles
        readonly property real least: Math.max(100, 132 * Theme.textScale)
        Layout.fillWidth: true
        columns: Math.max(1, Math.floor((width + Theme.grid) / (least + Theme.grid)))
        columnSpacing: Theme.grid
        rowSpacing: Theme.grid
        Repeater {
            model: page.check.tiles
            JerseyTile {
                required property var modelData
                objectName: "tile-" + modelData.jersey
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                enabled: !page.done
                jersey: modelData.jersey
                name: modelData.name
                noted: modelData.noted
                state: modelData.state
                onClicked: {
                    page.check.openTile(modelData.athlete)
                    sheet.open()
                }
            }
        }
    }
    Words { Layout.fillWidth: true; visible: page.check.apart.length > 0; text: qsTr("Not in the line; see them one by one:"); bold: true; size: "small" }
    Repeater {
        model: page.check.apart
        Words { required property string modelData; Layout.fillWidth: true; text: modelData; size: "small"; tone: "see" }
    }

    foot: [
        Words { Layout.fillWidth: true; visible: !page.done && page.check.tiles.length > 0; text: qsTr("Notes brow, straps and hold as seen in line. It is no full look: nine marks are not asked."); size: "small"; tone: "quiet" },
        UndoBar { id: undo; objectName: "line-undo"; Layout.fillWidth: true; text: page.check.doneWords; onUndone: page.check.undo() },
        BigButton {
            objectName: "line-all"
            Layout.fillWidth: true
            visible: page.done || page.check.tiles.length > 0
            kind: "primary"
            large: true
            text: page.done ? qsTr("Back to the board") : page.check.allWords
            detail: page.done ? "" : page.check.offWords.length > 0 ? page.check.offWords : qsTr("Brow, straps, hold")
            enabled: page.done || page.check.canRecord
            onClicked: page.done ? page.back() : page.check.record()
        }
    ]

    PullSheet {
        id: sheet
        objectName: "line-sheet"
        title: page.check.openName
        closeText: qsTr("Done")
        Words { Layout.fillWidth: true; text: qsTr("What is off?") }
        ChipGrid {
            objectName: "line-off"
            Layout.fillWidth: true
            mostColumns: 2
            choices: page.check.openChoices
            onChosen: name => page.check.note(name)
        }
        BigButton {
            objectName: "line-away"
            Layout.fillWidth: true
            text: page.check.isOpenAway ? qsTr("Stands here after all") : qsTr("Not here")
            detail: page.check.isOpenAway ? "" : qsTr("Nothing is noted; stays on the board")
            onClicked: {
                page.check.setAway(!page.check.isOpenAway)
                sheet.close()
            }
        }
    }
}
