// SPDX-License-Identifier: Apache-2.0
// The helmet from its left side: liner, shell, labels, ports, faceguard, straps and chin cup. Drawn over the head or by itself.
// An own neutral form: it follows the head at an even distance and has no ridges, vents or stripes of any model.
import QtQuick
import Snugline.Tokens

Item {
    id: helmet

    required property DrawnView view
    property bool guardFaint: false       // while the brow is measured the bars step back
    readonly property color padFill: Theme.tints.pad
    readonly property color airFill: Theme.tints.air

    width: view.field.width
    height: view.field.height

    // Near side of the shell under the liner, so that pads stand on it.
    PartShape {
        view: helmet.view
        weight: 0
        line: "transparent"
        fill: Theme.tints.shell
        opacity: helmet.view.showsLiner ? (Theme.mode === "sun" ? 0 : 0.55) : 1
        d: helmet.outline + " " + helmet.earOpening      // the opening stays open: odd-even filling
    }
    Item {
        anchors.fill: parent
        visible: helmet.view.showsLiner
        PartShape {                       // front pad
            view: helmet.view
            names: ["front-pad", "liner"]
            fill: helmet.padFill
            weight: helmet.view.thin
            d: "M 158 238 C 158 204 168 176 186 150 C 192 144 200 144 206 149 L 216 158 C 222 164 222 171 218 177 C 198 198 190 220 187 240 C 186 248 178 250 172 248 L 166 246 C 160 244 158 243 158 238 Z"
        }
        PartShape {                       // crown bladder or pad
            view: helmet.view
            names: ["crown", "crown-pad", "liner", "port-crown"]
            fill: helmet.view.hasCrownAir ? helmet.airFill : helmet.padFill
            weight: helmet.view.thin
            d: "M 214 136 C 262 84 344 68 424 90 C 434 93 438 100 436 108 L 433 122 C 431 130 424 132 416 130 C 356 112 290 120 240 160 C 233 165 226 164 221 158 L 213 149 C 209 145 210 140 214 136 Z"
        }
        PartShape {                       // seams of the crown
            view: helmet.view
            weight: helmet.view.thin
            names: ["crown", "crown-pad", "liner", "port-crown"]
            d: helmet.view.hasCrownAir ? "M 280 92 C 280 108 284 122 292 132 M 352 78 C 350 92 350 106 352 118" : "M 316 82 L 320 120"
        }
        PartShape {                       // side and back bladder or pad
            view: helmet.view
            names: ["sides", "sides-left", "side-pad", "liner", "port-sides"]
            fill: helmet.view.hasSideAir ? helmet.airFill : helmet.padFill
            weight: helmet.view.thin
            d: "M 452 104 C 516 132 556 204 556 288 C 556 326 548 362 536 394 C 532 402 524 404 518 400 L 506 393 C 500 389 499 382 502 374 C 512 350 520 326 522 300 C 528 226 494 162 440 136 C 433 132 430 126 433 118 L 438 108 C 441 102 446 101 452 104 Z"
        }
        PartShape {
            view: helmet.view
            names: ["sides", "sides-left", "side-pad", "liner", "port-sides"]
            weight: helmet.view.thin
            d: helmet.view.hasSideAir ? "M 516 166 C 508 172 500 180 494 190 M 554 262 C 544 262 532 264 522 268 M 550 338 C 540 336 528 334 518 332" : "M 540 222 L 514 236"
        }
        PartShape {                       // nape pad
            view: helmet.view
            names: ["nape", "nape-pad", "liner"]
            fill: helmet.padFill
            weight: helmet.view.thin
            d: "M 500 408 C 506 402 512 402 518 406 L 528 412 C 532 416 533 420 531 426 L 526 440 C 522 448 514 449 508 446 L 496 440 C 490 436 489 430 492 424 Z"
        }
        PartShape {                       // jaw pad
            view: helmet.view
            names: ["jaw", "jaw-left", "liner", "port-jaw-left"]
            fill: helmet.view.hasJawAir ? helmet.airFill : helmet.padFill
            weight: helmet.view.thin
            d: "M 312 400 C 318 392 332 394 340 404 C 352 420 356 442 350 458 C 344 472 322 478 308 474 C 298 470 296 460 299 448 C 302 432 306 412 312 400 Z"
        }
        PartShape {
            view: helmet.view
            names: ["jaw", "jaw-left", "liner", "port-jaw-left"]
            weight: helmet.view.thin
            d: "M 303 440 C 318 446 336 444 352 436"
        }
    }
    readonly property string outline: "M 138 226 C 134 128 224 60 348 60 C 484 60 574 156 574 290 C 574 350 562 404 546 446 C 540 461 528 466 514 462 C 474 452 442 452 412 464 C 384 477 352 494 318 495 C 294 495 281 483 284 462 C 289 424 302 384 298 344 C 294 306 264 276 222 260 C 200 252 178 246 152 242 C 143 240 138 236 138 226 Z"
    readonly property string earOpening: "M 358 294 C 392 292 412 320 410 358 C 408 396 388 422 358 422 C 328 422 314 394 316 356 C 317 320 332 296 358 294 Z"
    PartShape {
        view: helmet.view
        names: ["shell", "hold"]
        d: helmet.outline
    }
    PartShape {                           // rim, parallel to the edge of the face opening
        view: helmet.view
        names: ["shell", "hold", "brow"]
        weight: helmet.view.thin
        d: "M 140 216 C 170 226 206 234 234 244 C 282 262 314 298 318 342 C 320 366 314 384 310 396"
    }
    PartShape {                           // front edge
        view: helmet.view
        names: ["brow", "front-edge"]
        visible: lit
        weight: helmet.view.pen * 1.4
        d: "M 140 232 C 141 238 146 241 152 242 C 178 246 200 252 222 260"
    }
    PartShape {                           // back edge
        view: helmet.view
        names: ["nape", "back-edge"]
        visible: lit
        weight: helmet.view.pen * 1.4
        d: "M 552 428 C 546 458 532 467 514 462 C 490 456 468 452 446 453"
    }
    PartShape {                           // ear opening
        view: helmet.view
        names: ["ears", "ears-left", "ear-opening"]
        d: helmet.earOpening
    }
    ProfileFittings { view: helmet.view }
    ProfileStraps { view: helmet.view }
    ProfileGuard { view: helmet.view; visible: helmet.view.hasFaceguard; opacity: helmet.guardFaint ? 0.22 : 1 }
}
