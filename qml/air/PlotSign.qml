// SPDX-License-Identifier: Apache-2.0
// One kind of the plot as its legend shows it: "raw", "carried", "refill", "slope".
import QtQuick
import Snugline.Parts
import Snugline.Tokens

SignGlyph {
    id: sign

    property string kind: ""

    implicitWidth: 24
    implicitHeight: 24
    color: kind === "refill" ? Theme.ochre : kind === "slope" ? Theme.lake : kind === "raw" ? Theme.slate : Theme.ink
    weight: kind === "carried" ? 10 : Theme.stroke   // a dot is one fat stroke
    strokes: kind === "raw" ? "M 7 7 H 17 V 17 H 7 Z"
           : kind === "carried" ? "M 12 12 H 12.1"
           : kind === "refill" ? "M 12 22 V 3 M 6 10 L 12 3 L 18 10"
           : kind === "slope" ? "M 1 7 L 23 17 M 4 4 V 13 M 9 6 V 15 M 14 9 V 18 M 19 11 V 20" : ""
}
