// SPDX-License-Identifier: Apache-2.0
// A panel that comes up from the foot of the window, over the page. Touch outside, Escape or Close puts it away.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import QtQuick.Layouts
import Snugline.Tokens

Popup {
    id: sheet

    property string title: ""
    property string closeText: qsTr("Close")
    default property alias content: area.content

    parent: T.Overlay.overlay
    modal: true
    focus: true
    padding: Theme.margin
    width: parent ? Math.min(parent.width, 720) : 0
    x: parent ? (parent.width - width) / 2 : 0
    height: parent ? Math.min(parent.height - Theme.touch, implicitHeight) : 0
    y: parent ? parent.height - height : 0
    implicitHeight: head.implicitHeight + Theme.gap + area.implicitHeight + 2 * padding
    T.Overlay.modal: Rectangle { color: "#99000000" }

    background: Rectangle {
        color: Theme.paper
        radius: Theme.radius
        border.width: Theme.hairlineWidth
        border.color: Theme.hairline
    }
    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap
        GridLayout {
            id: head
            Layout.fillWidth: true
            columns: Theme.stacks && sheet.width < 480 ? 1 : 2    // large words beside a button would break within a word
            columnSpacing: Theme.gap
            rowSpacing: Theme.grid
            Words { Layout.fillWidth: true; text: sheet.title; size: "head" }
            BigButton { objectName: "close"; text: sheet.closeText; sign: "cross"; onClicked: sheet.close() }
        }
        // Focus frames and the place mark stand beside the content, not on it.
        ScrollArea { id: area; inset: Theme.grid; Layout.fillWidth: true; Layout.fillHeight: true; Layout.leftMargin: -Theme.grid; Layout.rightMargin: -Theme.grid }
    }
    enter: Transition {
        NumberAnimation { property: "y"; from: sheet.parent ? sheet.parent.height : 0; to: sheet.parent ? sheet.parent.height - sheet.height : 0; duration: Theme.reducedMotion ? 0 : 160; easing.type: Easing.OutCubic }
    }
}
