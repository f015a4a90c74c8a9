// SPDX-License-Identifier: Apache-2.0
// The nine marks at a glance. marks: nine codes in the order of the marks. One target when touchable.
import QtQuick
import Snugline.Drawing
import Snugline.Parts
import Snugline.Tokens

Item {
    id: strip

    property var marks: []                // "snug", "over", "under", "fault", "unseen", "said-over", "said-under", "said-fault"
    property string description: ""       // said by a screen reader; a plain list of places if empty
    property bool touchable: false
    readonly property var names: PartWords.marks
    property var words: ({})              // own words by name, for the description

    readonly property int paints: glyph.paints

    signal touched()

    function spoken(): string {
        if (description.length > 0)
            return description
        let all = []
        for (let i = 0; i < names.length; ++i)
            all.push(PartWords.of(names[i], words) + " " + PartWords.state(marks[i] ?? "unseen"))
        return all.join(", ")
    }

    implicitWidth: 126
    implicitHeight: 44
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
                all.push(strip.marks[i] ?? "unseen")
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
