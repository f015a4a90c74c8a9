// SPDX-License-Identifier: Apache-2.0
// One choice out of a few. current "" means nothing chosen yet. choices: [{ name, text, detail, enabled }].
// The caller sets current; a touch only says what was chosen.
import QtQuick

ButtonRow {
    id: row

    property var choices: []
    property string label: ""

    signal chosen(string name)

    entries: choices
    isChoice: true
    Accessible.role: Accessible.Grouping
    Accessible.name: label
    onPressed: name => row.chosen(name)
}
