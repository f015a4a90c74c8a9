// SPDX-License-Identifier: Apache-2.0
// A panel that comes up from the foot of the window, over the page. Touch outside, Escape or Close puts it away, and what had the keyboard
// before has it again, so that the next scan is heard. A key that nothing in the sheet takes is handed on by keyPressed.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

Popup {
    id: sheet

    property string title: ""
    property string closeText: qsTr("Close")
    // Asked for, and put away by whoever asked. Where the page is covered the sheet goes too, and comes back as it was: neither is said.
    signal began()
    signal ended()
    property bool waits: false
    onOpened: waits = false
    readonly property bool isCovered: Glass.isCovered
    onIsCoveredChanged: {
        if (isCovered && visible) {
            waits = true
            close()
        } else if (!isCovered && waits) {
            open()
        }
    }
    default property alias content: area.content
    property bool fills: false            // as high as may be, whatever stands in it: keys in it never move
    property real drop: 0                 // how far it is still below its place while it comes up
    property Item before: null            // that had the keyboard

    signal keyPressed(var event)

    onAboutToShow: {
        before = parent?.Window.activeFocusItem ?? null
        if (!waits)
            began()
    }
    onActiveFocusChanged: if (activeFocus && parent && parent.Window.activeFocusItem === layout.parent.parent) layout.forceActiveFocus()
    onClosed: {
        if (!waits)
            ended()
        const now = parent?.Window.activeFocusItem ?? null
        if (before && (!now || now === parent.Window.contentItem))   // nobody asked for it meanwhile
            before.forceActiveFocus()
        before = null
    }

    parent: T.Overlay.overlay
    modal: true
    focus: true
    padding: Theme.margin
    width: parent ? Math.min(parent.width, 720) : 0
    x: parent ? (parent.width - width) / 2 : 0
    height: parent ? Math.min(parent.height - Theme.touch, fills ? parent.height : implicitHeight) : 0
    y: parent ? parent.height - height + drop : 0
    implicitHeight: head.implicitHeight + Theme.gap + area.implicitHeight + 2 * padding
    T.Overlay.modal: Rectangle { color: "#99000000" }

    background: Rectangle {
        color: Theme.paper
        radius: Theme.radius
        border.width: Theme.hairlineWidth
        border.color: Theme.hairline
    }
    ColumnLayout {
        id: layout
        anchors.fill: parent
        spacing: Theme.gap
        Keys.onPressed: event => sheet.keyPressed(event)
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
    // Of the height that it has at each moment: the first time the content is only now laid out.
    enter: Transition {
        NumberAnimation { property: "drop"; from: sheet.height; to: 0; duration: Theme.reducedMotion ? 0 : 160; easing.type: Easing.OutCubic }
    }
}
