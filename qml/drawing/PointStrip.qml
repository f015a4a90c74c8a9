// SPDX-License-Identifier: Apache-2.0
// The seven points of the unit, smaller, under the fit strip. points: seven codes "sound", "fault", "unseen". One target when touchable.
import QtQuick
import Snugline.Drawing
import Snugline.Parts
import Snugline.Tokens

Item {
    id: strip

    property var points: []
    property string description: ""       // said by a screen reader; a plain list of places if empty
    property bool touchable: false
    readonly property var names: PartWords.points
    property var words: ({})              // own words by name, for the description

    readonly property int paints: glyph.paints

    signal touched()

    function spoken(): string {
        if (description.length > 0)
            return description
        let all = []
        for (let i = 0; i < names.length; ++i)
            all.push(PartWords.of(names[i], words) + " " + PartWords.state(points[i] ?? "unseen"))
        return all.join(", ")
    }

    implicitWidth: 98
    implicitHeight: 28
    activeFocusOnTab: touchable
    Accessible.role: touchable ? Accessible.Button : Accessible.Graphic
    Accessible.name: spoken()
    Accessible.onPressAction: if (touchable) touched()
    Keys.onSpacePressed: if (touchable) touched()
    Keys.onReturnPressed: if (touchable) touched()

    StripGlyph {
        id: glyph
        anchors.fill: parent
        places: {
            let all = []
            for (let i = 0; i < strip.names.length; ++i)
                all.push(strip.points[i] ?? "unseen")
            return all
        }
        snugColor: Theme.turf
        seeColor: Theme.ochre
        stopColor: Theme.brick
        lineColor: Theme.slate
        unseenColor: Theme.ink
        weight: Theme.stroke * Math.max(1, strip.height / 66)
    }
    TapHandler {
        enabled: strip.touchable
        gesturePolicy: TapHandler.ReleaseWithinBounds
        margin: Math.max(0, (Theme.touch - strip.height) / 2)
        onTapped: strip.touched()
    }
    FocusFrame { }
}
