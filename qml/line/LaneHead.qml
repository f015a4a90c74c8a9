// SPDX-License-Identifier: Apache-2.0
// The head of a lane, or of a group in one: its name and count. A touch folds it away or out.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Touchable {
    id: head

    property string title: ""
    property string empty: ""
    property string tone: "plain"
    property bool isOpen: true
    property bool isGroup: false
    signal toggled()

    implicitHeight: Math.max(Theme.touch, column.implicitHeight + 2 * Theme.grid)
    Accessible.role: Accessible.Button
    Accessible.name: head.title + ". " + (empty.length > 0 ? empty : isOpen ? qsTr("open") : qsTr("folded"))
    Accessible.onPressAction: clicked()
    onClicked: toggled()

    Column {
        id: column
        anchors { left: parent.left; right: fold.left; bottom: parent.bottom; bottomMargin: Theme.grid; rightMargin: Theme.gap }
        Words { width: parent.width; text: head.title; size: head.isGroup ? "body" : "head"; bold: head.isGroup; tone: head.tone; Accessible.ignored: true }
        Words { width: parent.width; visible: text.length > 0; text: head.empty; size: "small"; tone: "quiet"; Accessible.ignored: true }
    }
    IconStroke {
        id: fold
        visible: head.empty.length === 0
        anchors { right: parent.right; rightMargin: Theme.gap; bottom: parent.bottom; bottomMargin: Theme.grid }
        name: head.isOpen ? "up" : "down"
        color: Theme.slate
    }
    FocusFrame { shown: head.visualFocus }
}
