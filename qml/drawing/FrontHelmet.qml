// SPDX-License-Identifier: Apache-2.0
// The helmet from the front: shell with its two cheek sides, front pad, jaw pads, straps, chin cup, faceguard.
import QtQuick
import Snugline.Tokens

Item {
    id: helmet
    required property DrawnView view
    width: view.field.width
    height: view.field.height
    readonly property color jawFill: view.hasJawAir ? Theme.tints.air : Theme.tints.pad
    // Mirrors a path about the middle of the field: our paths hold only absolute M, L, C, Z.
    function mirrored(d: string): string {
        let isX = true
        return d.split(" ").map(word => {
            if (isNaN(Number(word)))
                return word
            const out = isX ? String(helmet.view.field.width - Number(word)) : word
            isX = !isX
            return out
        }).join(" ")
    }

    Repeater {                            // jaw pads, between cheek and shell
        model: [false, true]
        PartShape {
            required property bool modelData
            readonly property string rightSide: "M 186 372 C 196 366 206 372 208 384 C 212 416 220 440 232 462 C 236 472 230 482 220 482 C 206 482 194 480 190 468 C 184 444 180 400 180 384 C 180 378 182 374 186 372 Z M 184 424 C 196 430 206 428 216 424"
            view: helmet.view
            names: ["jaw", modelData ? "jaw-left" : "jaw-right", "liner", modelData ? "port-jaw-left" : "port-jaw-right"]
            fill: helmet.jawFill
            weight: helmet.view.thin
            d: modelData ? helmet.mirrored(rightSide) : rightSide
        }
    }
    PartShape {                           // front pad, seen under the edge
        view: helmet.view
        names: ["front-pad", "liner"]
        fill: Theme.tints.pad
        weight: helmet.view.thin
        d: "M 214 244 C 256 228 344 228 386 244 C 384 254 376 258 366 256 C 324 246 276 246 234 256 C 224 258 216 254 214 244 Z"
    }
    PartShape {
        view: helmet.view
        names: ["shell", "hold"]
        fill: Theme.tints.shell
        d: "M 102 296 C 96 140 186 60 300 60 C 414 60 504 140 498 296 C 496 364 480 426 460 474 C 452 494 424 498 412 482 C 404 470 414 424 420 378 C 426 330 420 286 402 262 C 366 232 234 232 198 262 C 180 286 174 330 180 378 C 186 424 196 470 188 482 C 176 498 148 494 140 474 C 120 426 104 364 102 296 Z"
    }
    PartShape {                           // rim
        view: helmet.view
        names: ["shell", "hold", "brow"]
        weight: helmet.view.thin
        d: "M 172 474 C 180 440 164 400 162 356 C 160 306 168 266 190 246 C 240 214 360 214 410 246 C 432 266 440 306 438 356 C 436 400 420 440 428 474"
    }
    Repeater {                            // ear openings, seen from the side they lie on
        model: [false, true]
        PartShape {
            required property bool modelData
            readonly property string rightSide: "M 107 330 C 124 318 138 334 138 358 C 138 384 128 402 114 392"
            view: helmet.view
            names: ["ears", modelData ? "ears-left" : "ears-right", "ear-opening"]
            fill: Theme.tints.skinDeep
            keepsFill: true
            weight: helmet.view.thin
            d: modelData ? helmet.mirrored(rightSide) : rightSide
        }
    }
    PartShape {                           // crown and sides show as fields when they are in focus
        view: helmet.view
        names: ["crown", "crown-pad", "port-crown"]
        visible: lit
        fill: Theme.tints.air
        d: "M 210 104 C 256 72 344 72 390 104 C 372 136 228 136 210 104 Z"
    }
    Repeater {
        model: [false, true]
        PartShape {
            required property bool modelData
            readonly property string rightSide: "M 134 186 C 150 160 168 156 180 164 C 164 192 154 226 150 264 C 142 278 126 274 122 260 C 120 234 126 206 134 186 Z"
            view: helmet.view
            names: ["sides", modelData ? "sides-left" : "sides-right", "port-sides"]
            visible: lit
            fill: Theme.tints.air
            d: modelData ? helmet.mirrored(rightSide) : rightSide
        }
    }
    PartShape {                           // front edge
        view: helmet.view
        names: ["brow", "front-edge"]
        visible: lit
        d: "M 198 262 C 234 232 366 232 402 262"
    }
    Repeater {                            // straps: upper to the temple, lower to the foot of the cheek, a third when there are six
        model: [false, true]
        Item {
            id: one
            required property bool modelData
            readonly property var called: ["straps", modelData ? "straps-left" : "straps-right", "chin-strap"]
            function side(d: string): string { return modelData ? helmet.mirrored(d) : d }
            width: helmet.width
            height: helmet.height
            BandShape { view: helmet.view; names: one.called; thickness: 9; d: one.side("M 264 504 C 236 474 200 412 164 336") }
            BandShape { view: helmet.view; names: one.called; thickness: 9; d: one.side("M 268 528 C 232 522 194 498 162 464") }
            BandShape { view: helmet.view; names: one.called; thickness: 9; visible: helmet.view.strapPoints >= 6; d: one.side("M 264 516 C 230 496 196 458 162 408") }
            Repeater {
                model: helmet.view.strapPoints >= 6 ? [[164, 336], [162, 464], [162, 408]] : [[164, 336], [162, 464]]
                PartShape {
                    required property var modelData
                    view: helmet.view
                    names: ["hardware"].concat(one.called)
                    fill: Theme.tints.shellDeep
                    weight: helmet.view.thin
                    x: one.modelData ? helmet.width - modelData[0] : modelData[0]
                    y: modelData[1]
                    d: "M 0 -10 C 6 -10 10 -6 10 0 C 10 6 6 10 0 10 C -6 10 -10 6 -10 0 C -10 -6 -6 -10 0 -10 Z M -2 0 L 2 0"
                }
            }
        }
    }
    PartShape {
        view: helmet.view
        names: ["chin", "chin-cup", "chin-strap"]
        fill: Theme.tints.glass
        d: "M 250 500 C 252 488 266 486 300 486 C 334 486 348 488 350 500 C 352 524 334 544 300 544 C 266 544 248 524 250 500 Z"
    }
    PartShape {
        view: helmet.view
        names: ["chin", "chin-cup", "chin-strap"]
        weight: helmet.view.thin
        d: "M 270 502 C 290 498 310 498 330 502 M 276 522 C 290 530 310 530 324 522"
    }
    FrontGuard { view: helmet.view; visible: helmet.view.hasFaceguard; opacity: helmet.view.isLit(["brow", "chin", "chin-cup", "straps", "straps-left", "straps-right", "jaw", "jaw-left", "jaw-right", "chin-strap"]) ? 0.3 : 1 }
}
