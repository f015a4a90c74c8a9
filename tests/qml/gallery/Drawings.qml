// SPDX-License-Identifier: Apache-2.0
// Every drawing side by side, to be looked at.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing

Rectangle {
    id: page
    property string mode: "day"
    property string hair: "dry"
    property string focusPart: ""
    property string motion: ""
    Binding { target: Theme; property: "mode"; value: page.mode }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(page.width) }
    Binding { target: Theme; property: "reducedMotion"; value: true }
    color: Theme.card
    Grid {
        anchors.fill: parent
        columns: page.width > 700 ? 2 : 1
        readonly property real w: width / columns
        readonly property real h: height / (columns === 2 ? 2 : 4)
        HeadFront { width: parent.w; height: parent.h; hair: page.hair; focusPart: page.focusPart; motion: page.motion; strapPoints: 6
            touchParts: ["jaw-left", "jaw-right", "chin"]; findings: ({ "jaw-left": "said-over", "chin": "snug" }) }
        HelmetPoints { width: parent.w; height: parent.h; focusPart: page.focusPart; findings: ({ "shell": "fault", "liner": "sound" }) }
        LookDrawing { width: parent.w; height: parent.h; view: "front"; focusPart: "straps" }
        LookDrawing { width: parent.w; height: parent.h; view: "hold"; hair: page.hair; focusPart: page.focusPart }
    }
}
