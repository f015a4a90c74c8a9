// SPDX-License-Identifier: Apache-2.0
// A surface with a hairline. One child decides the height; give it width: parent.width.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens

Pane {
    id: card
    property string tone: ""              // "" or a tone: then a bar stands at the left edge, beside the word that says it

    padding: Theme.gap
    background: Rectangle {
        color: Theme.card
        radius: Theme.radius
        border.width: Theme.hairlineWidth
        border.color: Theme.hairline
        Rectangle {
            visible: card.tone.length > 0
            x: 0
            y: Theme.radius
            width: 6
            height: parent.height - 2 * Theme.radius
            color: visible ? Theme.tone(card.tone) : "transparent"
        }
    }
}
