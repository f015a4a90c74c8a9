// SPDX-License-Identifier: Apache-2.0
// Says what was just done and takes it back. Stays until the next deed replaces it; nothing to do hides it.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

Rectangle {
    id: bar

    property string text: ""
    property string undoText: qsTr("Undo")
    signal undone()

    function show(what: string): void { text = what }
    function hide(): void { text = "" }

    visible: text.length > 0
    implicitWidth: 320
    implicitHeight: visible ? line.implicitHeight + Theme.grid : 0
    radius: Theme.radius
    color: Theme.ink
    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    RowLayout {
        id: line
        x: Theme.gap
        y: Theme.grid / 2
        width: bar.width - Theme.gap - Theme.grid / 2
        spacing: Theme.gap
        Words { Layout.fillWidth: true; text: bar.text; color: Theme.paper; Accessible.ignored: true }
        BigButton {
            objectName: "undo"
            text: bar.undoText
            sign: "undo"
            spokenName: bar.undoText + ": " + bar.text
            onClicked: bar.undone()
        }
    }
}
