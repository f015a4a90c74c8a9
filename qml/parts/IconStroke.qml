// SPDX-License-Identifier: Apache-2.0
// Our few icons, in one stroke weight on a 24 x 24 field. An unknown name draws nothing.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

SignGlyph {
    id: icon

    property string name: ""
    property real side: 28 * Math.min(Theme.textScale, 1.6)

    function pathOf(sign: string): string {
        switch (sign) {
        case "back": return "M 15 4 L 7 12 L 15 20"
        case "next": return "M 9 4 L 17 12 L 9 20"
        case "down": return "M 4 9 L 12 17 L 20 9"
        case "up": return "M 4 15 L 12 7 L 20 15"
        case "plus": return "M 12 4 V 20 M 4 12 H 20"
        case "minus": return "M 4 12 H 20"
        case "check": return "M 4 13 L 10 19 L 20 5"
        case "cross": return "M 5 5 L 19 19 M 19 5 L 5 19"
        case "undo": return "M 8 5 L 3 10 L 8 15 M 3 10 H 15 A 5 5 0 0 1 15 20 H 10"
        case "erase": return "M 8 5 H 21 V 19 H 8 L 2 12 Z M 11.5 9 L 17.5 15 M 17.5 9 L 11.5 15"
        case "scan": return "M 3 8 V 3 H 8 M 16 3 H 21 V 8 M 21 16 V 21 H 16 M 8 21 H 3 V 16 M 3 12 H 21"
        case "search": return "M 10 3 A 7 7 0 1 1 9.99 3 Z M 15 15 L 21 21"
        case "more": return "M 4 12 H 4.8 M 11.6 12 H 12.4 M 19.2 12 H 20"
        case "list": return "M 4 6 H 20 M 4 12 H 20 M 4 18 H 20"
        case "attention": return "M 12 3 L 22 21 H 2 Z M 12 10 V 15 M 12 17.6 V 18.2"
        case "stop": return "M 8 2 H 16 L 22 8 V 16 L 16 22 H 8 L 2 16 V 8 Z M 7 12 H 17"
        case "inform": return "M 12 2 A 10 10 0 1 1 11.99 2 Z M 12 11 V 17 M 12 7 V 7.6"
        case "again": return "M 19 8 A 8 8 0 1 0 20 13 M 20 3 V 8.5 H 14.5"
        case "water": return "M 12 3 C 15 8 18 11 18 15 A 6 6 0 0 1 6 15 C 6 11 9 8 12 3 Z"
        }
        return ""
    }

    color: Theme.ink
    weight: Theme.stroke
    strokes: pathOf(name)
    implicitWidth: side
    implicitHeight: side
}
