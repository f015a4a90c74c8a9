// SPDX-License-Identifier: Apache-2.0
// Says what was just done and takes it back. Stays until the next deed replaces it; nothing to do hides it.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

Rectangle {
    id: bar

    property string text: ""
    signal undone()

    function show(what: string): void { text = what }
    function hide(): void { text = "" }

    visible: text.length > 0
    implicitWidth: 320
    implicitHeight: visible ? line.implicitHeight + Theme.grid : 0
    radius: Theme.radius
    // At night a bright bar would blind; there it is a card with a frame.
    readonly property bool dark: Theme.mode === "night"
    color: dark ? Theme.card : Theme.ink
    border.width: dark ? Theme.stroke : 0
    border.color: Theme.ink
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    GridLayout {
        id: line
        columns: Theme.stacks && bar.width < 600 ? 1 : 2
        x: Theme.gap
        y: Theme.grid / 2
        width: bar.width - Theme.gap - Theme.grid / 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.grid / 2
        Words { Layout.fillWidth: true; text: bar.text; color: bar.dark ? Theme.ink : Theme.paper; Accessible.ignored: true }
        BigButton {
            objectName: "undo"
            Layout.fillWidth: line.columns === 1
            text: qsTr("Undo")
            sign: "undo"
            spokenName: qsTr("Undo") + ": " + bar.text
            onClicked: bar.undone()
        }
    }
}
