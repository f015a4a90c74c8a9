// SPDX-License-Identifier: Apache-2.0
// At most three large answers at the thumb. Nothing is preselected. answers: [{ name, text, detail, kind, sign, enabled }].
import QtQuick
import Snugline.Tokens

ButtonRow {
    id: bar

    property var answers: []

    signal answered(string name, int index)

    entries: answers
    large: true
    spacing: Theme.phone ? Theme.grid : Theme.gap
    onPressed: (name, index) => bar.answered(name, index)
}
