// SPDX-License-Identifier: Apache-2.0
// Finding an athlete by the number on the jersey.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property LineModel line: shell.line
    signal go(string screen, string what)
    signal replace(string screen, string what)

    function act(athlete: string, code: string): void {
        if (code === "choose")
            replace("swap", athlete)
        else if (code === "athlete")
            replace("athlete", athlete)
        else
            shell.guide.start(athlete, code)
    }

    title: qsTr("Jersey number")
    hasBack: true
    Component.onCompleted: line.query = ""

    Connections {
        target: page.shell.guide
        function onBegun(): void { page.replace("guide", "") }
    }

    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 760 ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.gap
        Keypad {
            id: pad
            objectName: "keypad"
            focus: true
            Layout.alignment: Qt.AlignTop
            Layout.fillWidth: true
            Layout.maximumWidth: page.width >= 760 ? 320 : page.width
            maximumLength: 3
            text: page.line.query
            showsEnter: false
            keepsNote: false
            onEdited: text => page.line.query = text
            onEntered: if (page.line.matches.length > 0) page.replace("athlete", page.line.matches[0].athleteId)
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            spacing: Theme.grid
            Notice { Layout.fillWidth: true; kind: "attention"; text: page.shell.guide.trouble }
            Words {
                Layout.fillWidth: true
                visible: pad.text.length > 0 && page.line.matches.length === 0
                text: qsTr("Nobody wears %1.").arg(pad.text)
            }
            Repeater {
                model: page.line.matches
                BoardRow {
                    required property var modelData
                    Layout.fillWidth: true
                    jersey: modelData.jersey
                    name: modelData.name
                    reason: modelData.reason
                    more: modelData.more
                    strip: width < 480 ? [] : modelData.strip
                    serial: width < 480 ? "" : modelData.serial
                    deed: modelData.action
                    onOpened: page.replace("athlete", modelData.athleteId)
                    onActed: page.act(modelData.athleteId, modelData.actionCode)
                }
            }
        }
    }
}
