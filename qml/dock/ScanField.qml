// SPDX-License-Identifier: Apache-2.0
// Where a hand scanner types and people can too. Whatever is typed anywhere on the page lands here, and Enter hands it over. Control
// characters, which a text field would drop without a word, are written as \x1d, so that the tag is judged by what was sent.
import QtQuick
import Snugline.Parts

FocusScope {
    id: scan

    property alias message: entry.message
    property alias text: entry.text
    property bool brief: false            // a unit is on the table: the label steps back

    signal scanned(string text)

    // A key pressed while something else on the page has the focus. True when it was taken.
    function takeKey(event: var): bool {
        if (event.text.length !== 1 || event.modifiers & Qt.AltModifier)
            return false
        const character = event.text.charCodeAt(0)
        const isControl = character < 32
        if (isControl && !(event.modifiers & Qt.ControlModifier) && character !== 29)
            return false                  // Tab, Return, Escape, Backspace keep their meaning
        if (isControl && [1, 3, 22, 24, 25, 26].includes(character))
            return false                  // select all, copy, paste, cut, redo, undo
        if (character === 32 || character === 127)
            return false                  // a blank presses the button it stands on
        entry.forceActiveFocus()
        if (scan.done)
            entry.clear()
        scan.done = false
        entry.text += isControl ? "\\x" + character.toString(16).padStart(2, "0") : event.text
        return true
    }

    property bool done: false             // what stands there was handed over already

    implicitWidth: 320
    implicitHeight: entry.implicitHeight
    Keys.onPressed: event => { event.accepted = scan.takeKey(event) }

    TextEntry {
        id: entry
        objectName: "scan"
        width: scan.width
        focus: true
        scanner: true
        label: scan.brief ? "" : qsTr("Scan the serial tag, or type it and press Enter")
        hint: scan.brief ? qsTr("Next tag") : qsTr("Serial tag")
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        onEdited: scan.done = false
        onAccepted: text => {
            scan.done = true
            scan.scanned(text)
        }
    }
}
