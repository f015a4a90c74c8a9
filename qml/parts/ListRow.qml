// SPDX-License-Identifier: Apache-2.0
// A row of a list: number, title, reason, and at the right whatever the caller puts in (a fit strip) over a small note.
// Below 480 px or above 130 % text it stacks: number and title, reason, then what stood at the right.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Touchable {
    id: row

    property string number: ""            // jersey number, kept as text
    property string title: ""
    property string detail: ""
    property string note: ""              // small, beside what stands at the right
    property string tagText: ""
    property string tagTone: "plain"
    property string tagShape: ""
    property string tone: "plain"         // of the detail
    default property alias trailing: face.trailing
    readonly property bool stacked: Theme.rowsStack(width)
    function joined(words: var): string { return words.filter(word => word.length > 0).join(". ") }

    readonly property real padding: Theme.gap

    implicitWidth: 2 * padding
    implicitHeight: Math.max(Theme.touch, face.implicitHeight + 2 * padding)
    Accessible.role: Accessible.Button
    Accessible.name: joined([number, title, detail, tagText, note])
    Accessible.onPressAction: clicked()

    Rectangle {
        anchors.fill: parent
        color: Theme.card
        radius: Theme.radius
        border.width: row.down ? Theme.stroke * 2 : Theme.hairlineWidth
        border.color: row.down ? Theme.ink : Theme.hairline
    }
    FocusFrame { shown: row.visualFocus }
    RowFace {
        id: face
        x: row.padding
        y: (row.height - height) / 2
        width: row.width - 2 * row.padding
        height: implicitHeight
        number: row.number
        title: row.title
        detail: row.detail
        note: row.note
        tagText: row.tagText
        tagTone: row.tagTone
        tagShape: row.tagShape
        tone: row.tone
        stacked: row.stacked
    }
}
