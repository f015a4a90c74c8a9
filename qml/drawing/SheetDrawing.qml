// SPDX-License-Identifier: Apache-2.0
// The helmet of a model sheet by itself, with the figures of its ports, pads, brow gap and straps beside them. callouts: [{ place, title,
// figure, detail }], place: port-crown, port-sides, port-jaw-left, port-jaw-right, crown-pad, jaw-pad, brow or strap. Touching a place names
// it to the caller; with large words the figures stay away and the caller's list says them.
import QtQuick
import Snugline.Drawing
import Snugline.Tokens

DrawnView {
    id: sheet

    property var callouts: []
    readonly property bool labelled: !Theme.stacks && drawScale > 0.3
    crop: Qt.rect(-30, -10, 700, 660)
    focusPart: ""
    touchParts: sheet.callouts.map(one => one.place)
    hiddenSigns: ["port-jaw-right"]
    // Where each is, and where its words stand.
    places: ({
        "port-crown": [378, 118], "crown-pad": [280, 116], "port-sides": [526, 352], "port-jaw-left": [326, 462], "port-jaw-right": [326, 462],
        "jaw-pad": [326, 432], "brow": [150, 240], "strap": [204, 516],
        "label-port-crown": [480, 24], "label-crown-pad": [180, 40], "label-port-sides": [630, 300], "label-port-jaw-left": [400, 570],
        "label-port-jaw-right": [400, 620], "label-jaw-pad": [480, 540], "label-brow": [44, 150], "label-strap": [120, 600]
    })
    partTexts: {
        const words = {}
        for (const one of sheet.callouts)
            words[one.place] = one.title + ", " + one.detail
        return words
    }

    ProfileHelmet { view: sheet }
    Repeater {
        model: sheet.labelled ? sheet.callouts.length : 0
        Item {
            id: callout
            required property int index
            readonly property var one: sheet.callouts[index] ?? ({ place: "", figure: "" })
            readonly property var from: sheet.places[one.place] ?? [0, 0]
            readonly property var to: sheet.places["label-" + one.place] ?? [0, 0]
            readonly property real reach: Math.hypot(to[0] - from[0], to[1] - from[1])
            Rectangle {
                x: callout.from[0]
                y: callout.from[1] - height / 2
                width: callout.reach
                height: sheet.thin
                color: Theme.slate
                transformOrigin: Item.Left
                rotation: Math.atan2(callout.to[1] - callout.from[1], callout.to[0] - callout.from[0]) * 180 / Math.PI
            }
        }
    }
    Repeater {
        parent: sheet
        model: sheet.labelled ? sheet.callouts.length : 0
        Rectangle {
            id: label
            required property int index
            readonly property var one: sheet.callouts[index] ?? ({ place: "", figure: "" })
            readonly property point spot: { sheet.drawScale; sheet.width; sheet.height; return sheet.placeAt("label-" + one.place) }
            objectName: "callout-" + one.place
            x: Math.max(0, Math.min(sheet.width - width, spot.x - width / 2))
            y: Math.max(0, Math.min(sheet.height - height, spot.y - height / 2))
            width: words.implicitWidth + 2 * Theme.grid
            height: words.implicitHeight + Theme.grid / 2
            radius: Theme.grid / 2
            color: Theme.card
            border.width: Theme.hairlineWidth
            border.color: sheet.focusPart === one.place ? Theme.lake : Theme.slate
            Text {
                id: words
                anchors.centerIn: parent
                text: label.one.figure
                textFormat: Text.PlainText
                font.family: Theme.family
                font.pixelSize: Theme.smallSize
                color: Theme.ink
                Accessible.ignored: true
            }
        }
    }
}
