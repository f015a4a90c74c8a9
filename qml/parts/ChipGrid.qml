// SPDX-License-Identifier: Apache-2.0
// Short choices in a grid of equal cells, as many columns as their words allow: years, sizes, filters. Nothing is preselected.
// choices: [{ name, text, detail, chosen, enabled }]. The caller sets chosen; a touch only says what was chosen.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

Item {
    id: grid

    property var choices: []
    property string label: ""
    property int mostColumns: 6
    readonly property int count: choices ? choices.length : 0
    property real widest: 0
    readonly property int fitting: Math.max(1, Math.min(count, mostColumns, Math.floor((width + Theme.grid) / (Math.max(widest, Theme.touch) + Theme.grid))))
    readonly property int columns: Math.max(1, Math.ceil(count / Math.ceil(count / fitting)))   // no lone last one where the rows can be even

    signal chosen(string name)

    function buttonAt(index: int): Item { return buttons.itemAt(index) as Item }
    // Of the check that a chosen one shows: a single word needs it kept free, so that choosing breaks no word; others wrap between words.
    function room(button: BigButton): real {
        const check = 28 * Math.min(Theme.textScale, 1.6) + Theme.grid
        const isOneWord = button.text.length < 7 || !button.text.includes(" ")
        return button.checked === isOneWord ? 0 : isOneWord ? check : -check
    }
    function measure(): void {
        let most = 0
        for (let i = 0; i < buttons.count; ++i) {
            const button = buttons.itemAt(i) as BigButton
            if (button)
                most = Math.max(most, button.naturalWidth + room(button))
        }
        widest = most
    }

    implicitWidth: 320
    implicitHeight: column.implicitHeight
    Accessible.role: Accessible.Grouping
    Accessible.name: label

    Column {
        id: column
        width: grid.width
        spacing: Theme.grid
        Words { width: parent.width; visible: text.length > 0; text: grid.label; size: "small"; tone: "quiet"; Accessible.ignored: true }
        GridLayout {
            width: parent.width
            visible: grid.count > 0
            columns: grid.columns
            columnSpacing: Theme.grid
            rowSpacing: Theme.grid
            Repeater {
                id: buttons
                model: grid.count         // not the list itself: a new list of the same length keeps the buttons and the focus
                onItemAdded: grid.measure()
                BigButton {
                    required property int index
                    readonly property var choice: grid.choices[index] ?? ({ name: "", text: "" })
                    objectName: choice.name
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    text: choice.text
                    onNaturalWidthChanged: Qt.callLater(grid.measure)
                    detail: choice.detail || ""
                    checked: choice.chosen === true
                    enabled: choice.enabled !== false
                    spokenName: checked ? qsTr("%1, chosen").arg(text) : text
                    onClicked: grid.chosen(choice.name)
                }
            }
        }
    }
}
