// SPDX-License-Identifier: Apache-2.0
// What all drawings of head and helmet share: the model sheet's parts, what is highlighted, what was found, what can be touched.
// The drawing is made in its own units (field) and scaled to fit; a subclass gives the places as name -> [x, y].
// One touch area serves all places: the nearest touchable one within reach is meant, so that no target is smaller than it looks.
import QtQuick
import Snugline.Drawing
import Snugline.Tokens

Item {
    id: view

    // Which parts exist: the model sheet decides, the caller sets.
    property bool hasCrownAir: true
    property bool hasSideAir: true
    property bool hasJawAir: true
    property bool hasFaceguard: true
    property bool hasWarningLabel: true
    property bool hasRecertLabel: true
    property int strapPoints: 4           // 4 or 6
    property string hair: "dry"           // "dry", "wet", "short"
    property bool helmetOn: true
    property bool showsLiner: true        // shell drawn open, so that pads and bladders show

    property string focusPart: ""         // mark, point, part or port drawn strong
    property var findings: ({})           // name -> "snug", "over", "under", "fault", "unseen", "said-over" ...
    property var touchParts: []           // names that can be touched
    property var partTexts: ({})          // name -> own word, for screen readers
    property string motion: ""            // "tape", "pump", "twist", "rock" or none; plays once, at most 2 s
    property string description: ""       // the drawing in words

    signal partTouched(string name)

    property size field: Qt.size(600, 640)
    property rect crop: Qt.rect(0, 0, field.width, field.height)   // the part of the field that is shown
    property real leftRoom: 0             // px kept free at the left for words
    property var places: ({})             // name -> [x, y] in field units
    property var hiddenSigns: []          // places whose sign another control stands for
    default property alias strokes: stage.data
    readonly property real drawScale: Math.max(0.01, Math.min((width - leftRoom) / crop.width, height / crop.height))
    readonly property real pen: Math.max(Theme.drawStroke, 2.4 / drawScale)       // outlines: never thinner than 2.4 px
    readonly property real thin: pen * 0.6                                        // inner lines
    property real phase: 0                // 0..1 of the motion; 0 when still
    readonly property bool moves: motion.length > 0 && !Theme.reducedMotion && visible

    // Names that have a place here and are touchable or found.
    readonly property var signNames: {
        let names = touchParts.filter(name => places[name] !== undefined)
        names = names.filter(name => hiddenSigns.indexOf(name) < 0)
        for (const name in findings)
            if (places[name] !== undefined && names.indexOf(name) < 0 && hiddenSigns.indexOf(name) < 0 && findings[name] !== "unseen")
                names.push(name)
        return names
    }

    function isLit(names: var): bool { return focusPart.length > 0 && names.indexOf(focusPart) >= 0 }
    // Where a place is, in px of this item.
    function placeAt(name: string): point {
        const at = places[name] ?? [field.width / 2, field.height / 2]
        return Qt.point(stage.x + at[0] * drawScale, stage.y + at[1] * drawScale)
    }
    function nameAt(x: real, y: real): string {
        let best = ""
        let least = Math.max(Theme.touch, 90 * drawScale)
        for (const name of touchParts) {
            if (places[name] === undefined)
                continue
            const at = placeAt(name)
            const distance = Math.hypot(at.x - x, at.y - y)
            if (distance < least) {
                least = distance
                best = name
            }
        }
        return best
    }

    implicitWidth: 300
    implicitHeight: 320
    Accessible.role: Accessible.Graphic
    Accessible.name: description
    onMotionChanged: phase = 0

    NumberAnimation {
        target: view
        property: "phase"
        running: view.moves
        from: 0
        to: 1
        duration: 2000
        onStopped: view.phase = 0
    }
    Item {
        id: stage
        objectName: "stage"
        width: view.field.width
        height: view.field.height
        x: view.leftRoom + (view.width - view.leftRoom - view.crop.width * view.drawScale) / 2 - view.crop.x * view.drawScale
        y: (view.height - view.crop.height * view.drawScale) / 2 - view.crop.y * view.drawScale
        scale: view.drawScale
        transformOrigin: Item.TopLeft
    }
    TapHandler {
        enabled: view.touchParts.some(name => view.places[name] !== undefined)
        gesturePolicy: TapHandler.ReleaseWithinBounds
        onTapped: point => {
            const name = view.nameAt(point.position.x, point.position.y)
            if (name.length > 0)
                view.partTouched(name)
        }
    }
    Repeater {
        model: view.signNames
        PlaceSign {
            required property string modelData
            readonly property point at: view.placeAt(modelData)
            objectName: "place-" + modelData
            x: at.x - width / 2
            y: at.y - height / 2
            found: view.findings[modelData] ?? "unseen"
            lit: view.focusPart === modelData
            touchable: view.touchParts.indexOf(modelData) >= 0
            spoken: PartWords.of(modelData, view.partTexts) + (view.findings[modelData] ? ", " + PartWords.state(view.findings[modelData]) : "")
            onPressed: view.partTouched(modelData)
        }
    }
}
