// SPDX-License-Identifier: Apache-2.0
// The drawing of the guide: which of the drawings, and what of the model goes into it. What is touched goes out by name.
import QtQuick
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Item {
    id: frame

    required property GuideModel guide
    readonly property var drawn: guide.drawn
    readonly property Item item: loader.item as Item

    signal partTouched(string name)
    signal gapMoved(real mm)

    function give(view: DrawnView): void {
        view.hasCrownAir = Qt.binding(() => frame.drawn.hasCrownAir ?? false)
        view.hasSideAir = Qt.binding(() => frame.drawn.hasSideAir ?? false)
        view.hasJawAir = Qt.binding(() => frame.drawn.hasJawAir ?? false)
        view.strapPoints = Qt.binding(() => frame.drawn.strapPoints ?? 4)
        view.hasRecertLabel = Qt.binding(() => frame.drawn.hasRecertLabel ?? true)
        view.hair = Qt.binding(() => frame.drawn.hair ?? "dry")
        view.focusPart = Qt.binding(() => frame.drawn.focus ?? "")
        view.findings = Qt.binding(() => frame.drawn.findings ?? ({}))
        view.touchParts = Qt.binding(() => frame.drawn.touch ?? [])
        view.motion = Qt.binding(() => frame.drawn.motion ?? "")
        view.description = Qt.binding(() => frame.drawn.description ?? "")
    }

    Loader {
        id: loader
        anchors.fill: parent
        sourceComponent: frame.guide.drawing === "profile" ? profile : frame.guide.drawing === "front" ? front
                       : frame.guide.drawing === "look" ? look : frame.guide.drawing === "points" ? points
                       : frame.guide.drawing === "stop" ? stop : null
        onLoaded: if (item instanceof DrawnView) frame.give(item as DrawnView)
    }
    Connections {
        target: loader.item instanceof DrawnView ? loader.item : null
        function onPartTouched(name: string): void { frame.partTouched(name) }
    }
    Component {
        id: profile
        HeadProfile {
            objectName: "profile"
            browGap: frame.guide.isBrow ? frame.guide.gapMm : 25.4
            browKnown: frame.guide.isGapKnown
            browShown: frame.guide.isBrow
            browDraggable: frame.guide.isBrow
            browLow: frame.drawn.browLow ?? 19
            browHigh: frame.drawn.browHigh ?? 32
            browTarget: frame.drawn.browTarget ?? 25.4
            browText: frame.guide.gapText
            browText2: frame.guide.gapText2
            onBrowGapMoved: mm => frame.gapMoved(mm)
            onBrowGapReleased: mm => frame.gapMoved(mm)
        }
    }
    Component {
        id: stop
        Item { IconStroke { anchors.centerIn: parent; name: "stop"; color: Theme.brick; side: Math.min(parent.width, parent.height, 240) } }
    }
    Component { id: front; HeadFront { objectName: "front" } }
    Component { id: look; LookDrawing { objectName: "look"; view: frame.drawn.view ?? "front" } }
    Component { id: points; HelmetPoints { objectName: "points" } }
}
