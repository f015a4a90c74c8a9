// SPDX-License-Identifier: Apache-2.0
// Where a hand scanner types and people can too. Whatever is typed anywhere on the page lands here, and Enter hands it over. Control
// characters, which a text field drops or takes for editing keys, are written as \x1d, so that the tag is judged by what was sent.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens

FocusScope {
    id: scan

    property alias text: field.text
    property bool brief: false            // a unit is on the table: the label steps back
    property bool done: false             // what stands there was handed over already

    signal scanned(string text)

    // A hand scanner types faster than anybody. One that ends with Tab, or with nothing, is as good as one that ends with Enter.
    property real lastKeyMs: 0
    property int fastKeys: 0
    readonly property int fastMs: 35      // ours: a fast typist needs about 80 ms a key
    readonly property int fastLeast: 6    // ours
    readonly property bool isBurst: scan.fastKeys >= scan.fastLeast
    function noteKey(event: var): void {
        if (event.isAutoRepeat)
            return                        // a key held down
        const now = Date.now()
        scan.fastKeys = now - scan.lastKeyMs <= scan.fastMs ? scan.fastKeys + 1 : 1
        scan.lastKeyMs = now
        if (scan.isBurst)
            quiet.restart()
    }
    function handOver(): void {
        quiet.stop()
        scan.fastKeys = 0
        if (field.text.length === 0 || scan.done)
            return
        scan.done = true
        scan.scanned(field.text)
        field.selectAll()
    }
    Timer { id: quiet; interval: 180; onTriggered: scan.handOver() }

    // A key pressed while something else on the page has the focus. True when it was taken.
    function takeKey(event: var): bool {
        if (event.text.length !== 1 || event.text === " " || event.modifiers & Qt.AltModifier)
            return false                  // a blank presses the button it stands on
        if (event.text.charCodeAt(0) < 32 || event.text.charCodeAt(0) === 127)
            return scan.takeControl(event)
        scan.noteKey(event)
        field.forceActiveFocus()
        scan.put(event.text)
        return true
    }
    function takeControl(event: var): bool {
        const character = event.text.length === 1 ? event.text.charCodeAt(0) : 32
        if (event.key === Qt.Key_Tab && scan.isBurst) {
            scan.handOver()
            return true
        }
        const isEditing = !(event.modifiers & Qt.ControlModifier)       // Enter, Tab, Escape, Backspace
        if (character >= 32 || isEditing || event.key === Qt.Key_V)     // pasting stays possible
            return false
        field.forceActiveFocus()
        scan.put("\\x" + character.toString(16).padStart(2, "0"))
        return true
    }
    function put(words: string): void {
        if (scan.done)
            field.clear()
        scan.done = false
        field.insert(field.length, words)
    }

    implicitWidth: 320
    implicitHeight: field.height

    TextField {
        id: field
        objectName: "scan"
        width: scan.width
        height: Math.max(Theme.touch, implicitHeight)
        focus: true
        font.family: Theme.family
        font.pixelSize: Theme.headSize
        color: Theme.ink
        placeholderText: Theme.stacks ? qsTr("Tag") : scan.brief ? qsTr("Next tag") : qsTr("Scan or type a tag")
        placeholderTextColor: Theme.slate
        selectionColor: Theme.lake
        selectedTextColor: Theme.onFill
        leftPadding: Theme.gap
        rightPadding: Theme.gap
        maximumLength: 512
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Accessible.name: qsTr("Serial tag")
        Keys.onPressed: event => {
            if (event.text.length === 1 && event.text.charCodeAt(0) > 32)
                scan.noteKey(event)
            event.accepted = scan.takeControl(event)
        }
        Keys.onShortcutOverride: event => { event.accepted = (event.modifiers & Qt.ControlModifier) && event.key !== Qt.Key_V }
        onTextEdited: scan.done = false
        onAccepted: {
            quiet.stop()
            scan.fastKeys = 0
            scan.done = true
            scan.scanned(text)
            selectAll()
        }
        background: Rectangle {
            radius: Theme.radius
            color: Theme.card
            border.width: field.activeFocus ? Theme.focusWidth : Theme.stroke
            border.color: field.activeFocus ? Theme.lake : Theme.ink
        }
    }
}
