// SPDX-License-Identifier: Apache-2.0
// A hit or feeling bad that was said: what stands, and what can be done now, or who can.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    property string words: ""
    property var acts: []                 // [{ name, text, detail, enabled }]
    property string trouble: ""

    signal acted(string name)

    visible: words.length > 0
    Column {
        width: parent.width
        spacing: Theme.grid
        Words { width: parent.width; bold: true; tone: "stop"; text: card.words }
        Words { width: parent.width; visible: text.length > 0; tone: "see"; text: card.trouble }
        ButtonRow { objectName: "unwell-acts"; width: parent.width; entries: card.acts; onPressed: name => card.acted(name) }
    }
}
