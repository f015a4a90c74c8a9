// SPDX-License-Identifier: Apache-2.0
// Chin cup with an upper and a lower strap on this side; a third to the middle when the sheet draws six points. Snaps are round.
import QtQuick
import Snugline.Tokens

Item {
    id: straps
    required property DrawnView view
    readonly property var called: ["straps", "straps-left", "chin-strap"]

    BandShape { view: straps.view; names: straps.called; thickness: 9; d: "M 222 508 C 246 462 272 396 304 312" }
    BandShape { view: straps.view; names: straps.called; thickness: 9; d: "M 226 530 C 284 526 344 508 404 456" }
    BandShape { view: straps.view; names: straps.called; thickness: 9; visible: straps.view.strapPoints >= 6; d: "M 226 520 C 262 500 290 470 306 430" }
    PartShape {
        view: straps.view
        names: ["chin", "chin-cup", "chin-strap"]
        fill: Theme.tints.glass
        d: "M 180 484 C 178 478 184 474 190 476 C 210 482 226 490 236 502 C 244 512 242 530 234 540 C 226 548 208 548 196 540 C 180 528 176 506 180 484 Z"
    }
    PartShape {
        view: straps.view
        names: ["chin", "chin-cup", "chin-strap"]
        weight: straps.view.thin
        d: "M 192 488 C 190 506 194 522 206 532 M 206 494 C 218 500 226 510 226 522"
    }
    Repeater {
        model: straps.view.strapPoints >= 6 ? [[304, 312], [404, 456], [306, 430]] : [[304, 312], [404, 456]]
        PartShape {
            required property var modelData
            view: straps.view
            names: ["straps", "straps-left", "hardware"]
            fill: Theme.tints.shellDeep
            weight: straps.view.thin
            x: modelData[0]
            y: modelData[1]
            d: "M 0 -10 C 6 -10 10 -6 10 0 C 10 6 6 10 0 10 C -6 10 -10 6 -10 0 C -10 -6 -6 -10 0 -10 Z M -2 0 L 2 0"
        }
    }
}
