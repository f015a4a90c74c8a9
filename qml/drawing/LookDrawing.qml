// SPDX-License-Identifier: Apache-2.0
// The drawing for one grouped view of a look: "front" (brow, chin, straps), "side" (ears, nape, jaw), "hold" (crown, sides, hold).
// The marks of the view can be touched unless the caller names others. The picture is a HeadFront or a HeadProfile inside.
import QtQuick

DrawnView {
    id: look

    property string view: "front"
    readonly property var groups: ({ "front": ["brow", "chin", "straps"], "side": ["ears", "nape", "jaw"], "hold": ["crown", "sides", "hold"] })
    readonly property DrawnView shown: front.visible ? front : side

    touchParts: groups[view] ?? []

    data: [
        HeadFront {
            id: front
            anchors.fill: parent
            visible: look.view === "front"
            hasCrownAir: look.hasCrownAir; hasSideAir: look.hasSideAir; hasJawAir: look.hasJawAir; hasFaceguard: look.hasFaceguard
            hasWarningLabel: look.hasWarningLabel; hasRecertLabel: look.hasRecertLabel; strapPoints: look.strapPoints
            hair: look.hair; helmetOn: look.helmetOn; showsLiner: look.showsLiner
            focusPart: look.focusPart; findings: visible ? look.findings : ({}); touchParts: visible ? look.touchParts : []
            partTexts: look.partTexts; motion: look.motion
            onPartTouched: name => look.partTouched(name)
        },
        HeadProfile {
            id: side
            anchors.fill: parent
            visible: look.view !== "front"
            hasCrownAir: look.hasCrownAir; hasSideAir: look.hasSideAir; hasJawAir: look.hasJawAir; hasFaceguard: look.hasFaceguard
            hasWarningLabel: look.hasWarningLabel; hasRecertLabel: look.hasRecertLabel; strapPoints: look.strapPoints
            hair: look.hair; helmetOn: look.helmetOn; showsLiner: look.showsLiner
            focusPart: look.focusPart; findings: visible ? look.findings : ({}); touchParts: visible ? look.touchParts : []
            partTexts: look.partTexts; motion: look.motion.length > 0 || look.view !== "hold" ? look.motion : "twist"
            onPartTouched: name => look.partTouched(name)
        }
    ]
}
