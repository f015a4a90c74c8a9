// SPDX-License-Identifier: Apache-2.0
// Text of several lines with its label above; grows with what it holds.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens

FocusScope {
    id: entry

    property alias text: field.text
    property string label: ""
    property int maximumLength: 6000      // characters; more is cut

    implicitWidth: 320
    implicitHeight: column.implicitHeight

    Column {
        id: column
        width: entry.width
        spacing: 4
        Words { width: parent.width; visible: text.length > 0; text: entry.label; size: "small"; tone: "quiet"; Accessible.ignored: true }
        TextArea {
            id: field
            width: parent.width
            height: Math.max(3 * Theme.touch, implicitHeight)
            focus: true
            font.family: Theme.family
            font.pixelSize: Theme.bodySize
            color: Theme.ink
            selectionColor: Theme.lake
            selectedTextColor: Theme.onFill
            textFormat: TextEdit.PlainText
            wrapMode: TextEdit.Wrap
            leftPadding: Theme.gap
            rightPadding: Theme.gap
            topPadding: Theme.grid
            bottomPadding: Theme.grid
            Accessible.role: Accessible.EditableText
            Accessible.name: entry.label
            onTextChanged: if (length > entry.maximumLength) remove(entry.maximumLength, length)
            KeyNavigation.priority: KeyNavigation.BeforeItem
            KeyNavigation.tab: nextItemInFocusChain(true)
            background: Rectangle {
                radius: Theme.radius
                color: Theme.card
                border.width: field.activeFocus ? Theme.focusWidth : Theme.stroke
                border.color: field.activeFocus ? Theme.lake : Theme.ink
            }
        }
    }
}
