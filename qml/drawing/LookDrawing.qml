// SPDX-License-Identifier: Apache-2.0
// The drawing for one grouped view of a look: "front" (brow, chin, straps), "side" (ears, nape, jaw), "hold" (crown, sides, hold).
// The marks of the view can be touched unless the caller names others.
import QtQuick

Item {
    id: look

    property string view: "front"
    property var findings: ({})
    property var partTexts: ({})
    property string focusPart: ""
    property string hair: "dry"
    property string description: ""
    property bool hasCrownAir: true
    property bool hasSideAir: true
    property bool hasJawAir: true
    property bool hasFaceguard: true
    property int strapPoints: 4
    readonly property var groups: ({ "front": ["brow", "chin", "straps"], "side": ["ears", "nape", "jaw"], "hold": ["crown", "sides", "hold"] })
    property var touchParts: groups[view] ?? []

    signal partTouched(string name)

    implicitWidth: 300
    implicitHeight: 320

    Loader {
        id: shown
        anchors.fill: parent
        sourceComponent: look.view === "front" ? frontView : sideView
    }
    Component {
        id: frontView
        HeadFront {
            findings: look.findings; partTexts: look.partTexts; touchParts: look.touchParts; hair: look.hair; description: look.description
            focusPart: look.focusPart; hasCrownAir: look.hasCrownAir; hasSideAir: look.hasSideAir; hasJawAir: look.hasJawAir
            hasFaceguard: look.hasFaceguard; strapPoints: look.strapPoints
            onPartTouched: name => look.partTouched(name)
        }
    }
    Component {
        id: sideView
        HeadProfile {
            findings: look.findings; partTexts: look.partTexts; touchParts: look.touchParts; hair: look.hair; description: look.description
            focusPart: look.focusPart; hasCrownAir: look.hasCrownAir; hasSideAir: look.hasSideAir; hasJawAir: look.hasJawAir
            hasFaceguard: look.hasFaceguard; strapPoints: look.strapPoints
            motion: look.view === "hold" ? "twist" : ""
            onPartTouched: name => look.partTouched(name)
        }
    }
}
