// SPDX-License-Identifier: Apache-2.0
// The head from its left side: neck, jaw, face, ear and hair. 1.75 units to the millimetre: brow to vertex 95 mm, length 195 mm.
import QtQuick
import Snugline.Tokens

Item {
    id: head

    required property DrawnView view
    readonly property bool isWet: view.hair === "wet"
    readonly property bool isShort: view.hair === "short"

    PartShape {
        view: head.view
        names: ["head"]
        fill: Theme.tints.skin
        keepsFill: true
        d: "M 322 616 C 322 584 314 560 296 544 C 276 534 240 540 216 534 C 197 529 187 514 188 497 C 188 486 197 480 194 470 C 187 465 181 461 183 453 C 184 449 188 448 191 446 C 184 443 178 437 181 428 C 184 420 180 414 170 413 C 152 411 142 402 149 389 C 160 368 171 346 175 324 C 177 313 181 307 180 299 C 178 291 172 285 173 275 C 176 240 190 190 236 152 C 280 118 360 108 420 128 C 490 152 528 222 520 300 C 515 350 494 380 486 412 C 480 446 486 530 508 600 C 452 628 380 632 322 616 Z"
    }
    PartShape {                           // jaw line
        view: head.view
        names: ["jaw-line"]
        weight: head.view.thin
        d: "M 338 410 C 338 446 332 474 316 494 C 302 510 284 522 262 530"
    }
    PartShape {                           // hair: a cap over the skull; short follows it closely, wet lies in strands
        view: head.view
        names: ["hair"]
        fill: head.isShort ? "transparent" : Theme.tints.hair
        line: Theme.tints.hairLine
        weight: head.isShort ? head.view.thin : head.view.pen
        opacity: 0.9
        d: head.isShort ? "M 222 166 C 276 122 360 110 420 130 C 488 154 526 222 518 298 C 514 330 504 354 495 378 M 250 176 L 258 184 M 300 150 L 306 160 M 356 140 L 360 151 M 412 148 L 410 160 M 456 182 L 450 192 M 486 232 L 477 238 M 497 286 L 487 288 M 330 190 L 335 200 M 396 196 L 396 207 M 440 244 L 433 251"
                        : head.isWet ? "M 204 186 C 236 134 330 100 420 124 C 494 148 532 222 524 300 C 519 346 502 372 492 400 C 470 392 452 372 440 346 C 420 318 400 306 378 304 C 362 302 340 300 326 292 C 316 274 314 250 300 232 C 276 206 240 198 204 186 Z"
                                     : "M 204 194 C 216 128 320 92 424 116 C 502 138 542 222 532 302 C 526 350 508 376 494 404 C 470 396 452 372 440 346 C 420 318 400 306 378 304 C 362 302 340 306 330 318 C 318 290 318 250 300 232 C 276 214 240 208 204 194 Z"
    }
    PartShape {                           // strands of wet hair
        view: head.view
        names: ["hair"]
        visible: head.isWet
        line: Theme.mode === "sun" ? Theme.ink : Theme.card
        weight: head.view.thin * 0.8
        d: "M 248 178 C 300 136 380 124 430 142 C 490 168 512 230 508 296 M 276 196 C 326 158 390 150 430 172 C 470 198 488 246 484 306 M 308 214 C 350 186 396 188 424 214 C 446 238 456 276 456 322"
    }
    PartShape {                           // ear
        view: head.view
        names: ["ears", "ears-left"]
        fill: Theme.tints.skinDeep
        keepsFill: true
        d: "M 338 330 C 334 306 356 292 378 302 C 402 314 402 350 388 374 C 380 388 376 410 358 410 C 344 410 340 396 340 384"
    }
    PartShape {
        view: head.view
        names: ["ears", "ears-left"]
        weight: head.view.thin
        d: "M 352 334 C 352 318 370 314 380 326 C 388 340 380 356 372 366 M 340 344 C 352 348 354 364 342 370"
    }
    PartShape {                           // brow
        view: head.view
        names: ["brow", "brows"]
        weight: head.view.pen * 2
        line: Theme.tints.hairLine
        d: "M 183 287 C 200 274 222 272 244 280"
    }
    PartShape {                           // eye
        view: head.view
        names: ["eye"]
        weight: head.view.thin
        d: "M 188 316 C 198 306 216 306 228 318 M 196 312 C 196 324 206 328 210 320 C 212 316 211 312 209 310"
    }
    PartShape {
        view: head.view
        names: ["mouth"]
        weight: head.view.thin
        d: "M 191 446 C 202 447 212 446 222 442 M 170 413 C 178 414 186 410 188 402"
    }
}
