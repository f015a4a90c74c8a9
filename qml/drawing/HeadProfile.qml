// SPDX-License-Identifier: Apache-2.0
// The head from its left side with the helmet over it. The front edge can be dragged: the brow gap is read off in mm.
import QtQuick

DrawnView {
    id: profile

    // Brow gap, mm above the eyebrows. The caller keeps the value and the words of both units.
    property real browGap: 25.4
    property bool browKnown: true         // false: not read yet; drawn at the target without a figure
    property bool browShown: false        // dimension lines
    property bool browDraggable: false
    property real browLow: 19
    property real browHigh: 32
    property real browTarget: 25.4
    property real browFrom: 0
    property real browTo: 60
    property string browText: ""          // "25 mm"
    property string browText2: ""         // "1 in"

    signal browGapMoved(real mm)
    signal browGapReleased(real mm)

    readonly property real unitsPerMm: 1.75
    readonly property real browY: 282     // top of the eyebrows, drawing units
    readonly property real drawnGap: Math.max(browFrom, Math.min(browTo, browKnown ? browGap : browTarget))
    readonly property real edgeY: browY - drawnGap * unitsPerMm
    // The helmet tips about a point over the ear so that its front edge lies at edgeY.
    readonly property point pivot: Qt.point(386, 318)
    readonly property point edge: Qt.point(150, 238)
    readonly property real reach: Math.hypot(edge.x - pivot.x, edge.y - pivot.y)
    function tip(y: real): real {
        const still = Math.asin((pivot.y - edge.y) / reach)
        return (Math.asin(Math.max(-1, Math.min(1, (pivot.y - y) / reach))) - still) * 180 / Math.PI
    }
    readonly property real rock: motion === "rock" && phase > 0 ? 5 * Math.sin(phase * 4 * Math.PI) : 0
    readonly property real twist: motion === "twist" && phase > 0 ? 10 * Math.sin(phase * 4 * Math.PI) : 0

    // With the ruler shown the words stand at the left of the front edge, outside the field.
    crop: browShown ? Qt.rect(edge.x, 44, 430, 590) : Qt.rect(66, motion.length > 0 ? 0 : 44, 522, motion.length > 0 ? 634 : 590)
    leftRoom: browShown ? ruler.room : 0

    hiddenSigns: browDraggable ? ["brow"] : []
    places: ({
        "brow": [152, edgeY], "ears": [360, 358], "ears-left": [360, 358], "nape": [520, 446], "chin": [196, 520],
        "straps": [262, 420], "straps-left": [262, 420], "jaw": [326, 436], "jaw-left": [326, 436], "crown": [326, 96],
        "sides": [536, 258], "sides-left": [536, 258], "hold": [440, 290], "shell": [470, 290],
        "certification": [460, 417], "warning-label": [465, 206], "hardware": [304, 312], "faceguard": [84, 398],
        "liner": [326, 436], "chin-strap": [196, 520],
        "port-crown": [378, 118], "port-sides": [526, 352], "port-jaw-left": [326, 462]
    })

    Item {
        width: profile.field.width
        height: profile.field.height
        x: profile.twist
        ProfileHead { view: profile; width: parent.width; height: parent.height }
        Item {
            width: parent.width
            height: parent.height
            visible: profile.helmetOn
            transform: Rotation {
                origin.x: profile.pivot.x
                origin.y: profile.pivot.y
                angle: profile.tip(profile.edgeY) + profile.rock
            }
            ProfileHelmet { view: profile; guardFaint: profile.browShown }
        }
    }
    ProfileMotion { view: profile }
    BrowRuler {
        id: ruler
        visible: profile.browShown
        view: profile
        edgeX: profile.edge.x
        edgeY: profile.edgeY
        browY: profile.browY
        lowY: profile.browY - profile.browLow * profile.unitsPerMm
        highY: profile.browY - profile.browHigh * profile.unitsPerMm
        known: profile.browKnown
        inBand: profile.browKnown && profile.browGap >= profile.browLow && profile.browGap <= profile.browHigh
        first: profile.browText
        second: profile.browText2
    }
    BrowGrip {
        view: profile
        enabled: profile.browDraggable
        visible: enabled
        edgeX: profile.edge.x
        edgeY: profile.edgeY
        unitsPerMm: profile.unitsPerMm
        gap: profile.drawnGap
        from: profile.browFrom
        to: profile.browTo
        onMoved: mm => profile.browGapMoved(mm)
        onReleased: mm => profile.browGapReleased(mm)
    }
}
