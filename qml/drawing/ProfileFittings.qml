// SPDX-License-Identifier: Apache-2.0
// On the shell: the exterior warning label, the recertification label, and the air ports that the sheet has.
import QtQuick
import Snugline.Tokens

Item {
    id: fittings
    required property DrawnView view

    PartShape {
        view: fittings.view
        names: ["warning-label"]
        visible: fittings.view.hasWarningLabel
        fill: Theme.tints.glass
        weight: fittings.view.thin
        d: "M 440 176 L 500 190 L 490 236 L 430 222 Z M 448 190 L 488 200 M 445 202 L 485 212 M 442 214 L 470 221"
    }
    PartShape {
        view: fittings.view
        names: ["certification", "recert-label"]
        visible: fittings.view.hasRecertLabel
        fill: Theme.tints.glass
        weight: fittings.view.thin
        d: "M 436 398 L 484 398 L 484 436 L 436 436 Z M 444 410 L 476 410 M 444 424 L 462 424"
    }
    Repeater {
        model: [
            { names: ["port-crown"], on: fittings.view.hasCrownAir, x: 378, y: 118 },
            { names: ["port-sides"], on: fittings.view.hasSideAir, x: 526, y: 352 },
            { names: ["port-jaw-left"], on: fittings.view.hasJawAir, x: 326, y: 462 }
        ]
        PartShape {
            required property var modelData
            view: fittings.view
            names: modelData.names
            visible: modelData.on
            fill: Theme.tints.glass
            weight: fittings.view.thin
            x: modelData.x
            y: modelData.y
            d: "M 0 -9 C 5 -9 9 -5 9 0 C 9 5 5 9 0 9 C -5 9 -9 5 -9 0 C -9 -5 -5 -9 0 -9 Z M -1 0 L 1 0"
        }
    }
}
