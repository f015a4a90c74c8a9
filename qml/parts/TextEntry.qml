// SPDX-License-Identifier: Apache-2.0
// One line of text with its label above. With scanner set it keeps the focus and selects what it holds after Enter, so that the
// next scan replaces it. Control characters a scanner may send (FNC1 as character 29) are kept; the caller judges them.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens

FocusScope {
    id: entry

    property alias text: field.text
    property string label: ""
    property string hint: ""              // shown while empty
    property string message: ""           // what is wrong with it
    property bool scanner: false
    property alias inputMethodHints: field.inputMethodHints
    property alias maximumLength: field.maximumLength
    property alias readOnly: field.readOnly

    signal accepted(string text)
    signal edited(string text)

    function clear(): void { field.clear() }
    function selectAll(): void { field.selectAll() }

    implicitWidth: 320
    implicitHeight: column.implicitHeight

    Column {
        id: column
        width: entry.width
        spacing: 4
        Words { width: parent.width; visible: text.length > 0; text: entry.label; size: "small"; tone: "quiet"; Accessible.ignored: true }
        TextField {
            id: field
            width: parent.width
            height: Math.max(Theme.touch, implicitHeight)
            focus: true
            font.family: Theme.family
            font.pixelSize: Theme.headSize
            color: Theme.ink
            placeholderText: entry.hint
            placeholderTextColor: Theme.slate
            selectionColor: Theme.lake
            selectedTextColor: Theme.onFill
            leftPadding: Theme.gap
            rightPadding: Theme.gap
            maximumLength: 512
            inputMethodHints: entry.scanner ? Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase : Qt.ImhNone
            Accessible.role: Accessible.EditableText
            Accessible.name: entry.message.length > 0 ? entry.label + ". " + entry.message : entry.label
            onTextEdited: entry.edited(text)
            onAccepted: {
                entry.accepted(text)
                if (entry.scanner)
                    selectAll()
            }
            background: Rectangle {
                radius: Theme.radius
                color: Theme.card
                border.width: field.activeFocus ? Theme.focusWidth : Theme.stroke
                border.color: entry.message.length > 0 ? Theme.brick : field.activeFocus ? Theme.lake : Theme.ink
            }
        }
        Words { width: parent.width; visible: text.length > 0; text: entry.message; tone: "stop" }
    }
}
