// SPDX-License-Identifier: Apache-2.0
// The head from the front, symmetric, looking straight ahead. The same measures as the profile.
import QtQuick
import Snugline.Tokens

Item {
    id: head
    required property DrawnView view
    width: view.field.width
    height: view.field.height

    PartShape {                           // neck
        view: head.view
        names: ["neck"]
        fill: Theme.tints.skinDeep
        keepsFill: true
        d: "M 228 470 C 230 530 228 574 216 606 C 262 630 338 630 384 606 C 372 574 370 530 372 470 Z"
    }
    Repeater {                            // ears
        model: [["ears-right", "M 170 316 C 146 302 136 332 144 366 C 148 392 164 406 176 396 Z"], ["ears-left", "M 430 316 C 454 302 464 332 456 366 C 452 392 436 406 424 396 Z"]]
        PartShape {
            required property var modelData
            view: head.view
            names: ["ears", modelData[0]]
            fill: Theme.tints.skinDeep
        keepsFill: true
            d: modelData[1]
        }
    }
    PartShape {
        view: head.view
        names: ["head"]
        fill: Theme.tints.skin
        keepsFill: true
        d: "M 300 116 C 218 116 166 176 165 262 C 164 304 167 342 172 374 C 178 428 214 492 262 520 C 284 532 316 532 338 520 C 386 492 422 428 428 374 C 433 342 436 304 435 262 C 434 176 382 116 300 116 Z"
    }
    PartShape {                           // hair
        view: head.view
        names: ["hair"]
        fill: head.view.hair === "short" ? "transparent" : Theme.tints.hair
        line: Theme.tints.hairLine
        weight: head.view.hair === "short" ? head.view.thin : head.view.pen
        d: head.view.hair === "short" ? "M 172 250 C 180 170 228 124 300 124 C 372 124 420 170 428 250"
          : head.view.hair === "wet" ? "M 168 270 C 160 168 220 106 300 106 C 380 106 440 168 432 270 C 424 232 404 206 372 192 C 330 178 270 178 228 192 C 196 206 176 232 168 270 Z"
                                     : "M 162 292 C 148 160 216 96 300 96 C 384 96 452 160 438 292 C 432 240 412 206 380 196 C 344 212 256 212 220 196 C 188 206 168 240 162 292 Z"
    }
    PartShape {                           // brows
        view: head.view
        names: ["brow", "brows"]
        weight: head.view.pen * 2
        line: Theme.tints.hairLine
        d: "M 218 290 C 232 278 252 276 272 284 M 382 290 C 368 278 348 276 328 284"
    }
    PartShape {                           // eyes, nose, mouth
        view: head.view
        names: ["face"]
        weight: head.view.thin
        d: "M 224 322 C 236 308 256 308 268 322 C 256 330 236 330 224 322 Z M 376 322 C 364 308 344 308 332 322 C 344 330 364 330 376 322 Z M 246 314 C 240 320 242 326 247 327 C 252 326 253 319 250 314 M 354 314 C 348 320 350 326 355 327 C 360 326 361 319 358 314 M 292 336 C 290 364 280 384 280 394 C 282 404 292 404 300 408 C 308 404 318 404 320 394 M 266 452 C 284 446 294 448 300 450 C 306 448 316 446 334 452 M 286 470 C 296 474 304 474 314 470"
    }
}
