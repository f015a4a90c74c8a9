// SPDX-License-Identifier: Apache-2.0
// Digits of a code, never shown. The caller says what they are for.
import QtQuick
import Snugline.Models
import Snugline.Parts

Column {
    id: frame

    required property LockModel lock
    property alias enterText: pad.enterText

    Keypad {
        id: pad
        objectName: "code-keys"
        width: parent.width
        focus: true
        enabled: !frame.lock.isBusy && frame.lock.waiting.length === 0
        isSecret: true
        message: frame.lock.waiting.length > 0 ? frame.lock.waiting : frame.lock.trouble
        maximumLength: frame.lock.mostDigits
        onEdited: frame.lock.touched()
        onEntered: text => {
            clear()
            frame.lock.enter(text)
        }
    }
}
