// SPDX-License-Identifier: Apache-2.0
// The faceguard from the front: two bars across, one below, two uprights. Steps back while something behind it is asked about.
import QtQuick
import Snugline.Tokens

Item {
    id: guard
    required property DrawnView view
    readonly property var called: ["faceguard"]

    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 146 304 C 158 348 178 370 206 380 C 250 394 350 394 394 380 C 422 370 442 348 454 304" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 142 430 C 190 454 244 462 300 462 C 356 462 410 454 458 430" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 246 390 C 248 416 250 438 254 460" }
    BandShape { view: guard.view; names: guard.called; thickness: 7; d: "M 354 390 C 352 416 350 438 346 460" }
    Repeater {
        model: [[146, 304], [454, 304], [142, 430], [458, 430]]
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
