// SPDX-License-Identifier: Apache-2.0
// One setting: its name above its choices.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts

Column {
    id: setting

    property string title: ""
    property var choices: []
    property string current: ""

    signal chosen(string name)

    Layout.fillWidth: true
    Layout.preferredWidth: 1
    Layout.alignment: Qt.AlignTop
    spacing: Theme.grid
    objectName: "setting-" + (choices.length > 0 ? choices[0].name : "")

    Words { width: parent.width; text: setting.title; bold: true }
    ChipGrid {
        objectName: "choices"
        width: parent.width
        Accessible.name: setting.title
        choices: setting.choices.map(c => ({ name: c.name, text: c.text, detail: c.detail ?? "", chosen: c.name === setting.current }))
        onChosen: name => setting.chosen(name)
    }
}
