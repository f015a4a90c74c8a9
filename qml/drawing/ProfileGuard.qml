// SPDX-License-Identifier: Apache-2.0
// The faceguard from the left: three bars and one upright, held by two clips.
import QtQuick
import Snugline.Tokens

Item {
    id: guard
    required property DrawnView view
    readonly property var called: ["faceguard"]

    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 238 262 C 190 292 130 304 96 322" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 298 366 C 232 392 140 404 84 398" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 290 446 C 236 480 168 494 110 476" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 96 322 C 82 348 80 378 84 398 C 88 430 96 458 110 476" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 150 304 C 134 340 132 374 138 402 C 142 436 150 464 160 486" }
    Repeater {
        model: [[240, 262], [294, 370]]
        PartShape {
            required property var modelData
            view: guard.view
            names: ["hardware", "faceguard"]
            fill: Theme.tints.shellDeep
            weight: guard.view.thin
            x: modelData[0]
            y: modelData[1]
            d: "M -12 -8 C -12 -12 -9 -14 -5 -14 L 5 -14 C 9 -14 12 -12 12 -8 L 12 8 C 12 12 9 14 5 14 L -5 14 C -9 14 -12 12 -12 8 Z M -4 -4 L 4 4"
        }
    }
}
