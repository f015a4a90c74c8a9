// SPDX-License-Identifier: Apache-2.0
// A strip where every place can be touched and names itself. places: [{ name, text, state, detail }]; current: the name shown open.
// Serves the nine marks and the seven points alike; the detail (when and by whom) comes in words.
import QtQuick
import Snugline.Drawing
import Snugline.Parts
import Snugline.Tokens

Column {
    id: strip

    property var places: []
    property string current: ""
    readonly property var open: {
        for (let i = 0; i < places.length; ++i)
            if (places[i].name === current)
                return places[i]
        return null
    }
    signal placeTouched(string name)

    spacing: Theme.grid

    Item {
        id: band
        width: strip.width
        height: Math.max(Theme.touch, Math.min(120, strip.width / Math.max(1, strip.places.length) * 1.6))
        StripGlyph {
            anchors.fill: parent
            places: strip.places.map(p => p.state)
            current: strip.places.findIndex(p => p.name === strip.current)
            snugColor: Theme.turf
            seeColor: Theme.ochre
            stopColor: Theme.brick
            lineColor: Theme.slate
            unseenColor: Theme.ink
            weight: Theme.stroke * 1.5
        }
        Row {
            anchors.fill: parent
            Repeater {
                model: strip.places
                Item {
                    id: cell
                    required property var modelData
                    objectName: "place-" + modelData.name
                    width: band.width / Math.max(1, strip.places.length)
                    height: band.height
                    activeFocusOnTab: true
                    Accessible.role: Accessible.Button
                    Accessible.name: modelData.text + ", " + PartWords.state(modelData.state)
                    Accessible.onPressAction: strip.placeTouched(modelData.name)
                    Keys.onSpacePressed: strip.placeTouched(modelData.name)
                    Keys.onReturnPressed: strip.placeTouched(modelData.name)
                    TapHandler {
                        gesturePolicy: TapHandler.ReleaseWithinBounds
                        onTapped: strip.placeTouched(cell.modelData.name)
                    }
                    FocusFrame { anchors.margins: 0 }
                }
            }
        }
    }
    Words { width: parent.width; visible: strip.open !== null; text: strip.open ? strip.open.text + ": " + PartWords.state(strip.open.state) : ""; bold: true }
    Words { width: parent.width; visible: strip.open !== null && text.length > 0; text: strip.open ? strip.open.detail ?? "" : ""; tone: "quiet"; size: "small" }
}
