// SPDX-License-Identifier: Apache-2.0
// The sign at a place of a drawing: the same shapes as in the fit strip, on a small round ground. It does not take touches (the
// drawing does); it is what the keyboard and a screen reader reach.
import QtQuick
import Snugline.Parts
import Snugline.Tokens

Item {
    id: sign

    property string found: "unseen"
    property bool lit: false
    property bool touchable: false
    property string spoken: ""
    readonly property bool said: found.startsWith("said-")
    readonly property string what: said ? found.slice(5) : found
    readonly property color tint: what === "snug" || what === "sound" ? Theme.turf : what === "fault" ? Theme.brick : what === "unseen" ? Theme.ink : Theme.ochre

    signal pressed()

    width: Theme.phone ? 30 : 38
    height: width
    activeFocusOnTab: touchable
    Accessible.role: touchable ? Accessible.Button : Accessible.Indicator
    Accessible.name: spoken
    Accessible.focusable: touchable
    Accessible.onPressAction: if (touchable) pressed()
    Keys.onSpacePressed: if (touchable) pressed()
    Keys.onReturnPressed: if (touchable) pressed()

    Rectangle {
        anchors.fill: parent
        radius: width / 2
        color: Theme.card
        border.width: sign.lit ? Theme.stroke * 2 : Theme.stroke
        border.color: sign.lit ? Theme.lake : sign.tint
    }
    Rectangle {
        readonly property bool bar: sign.what === "over" || sign.what === "under"
        readonly property bool square: sign.what === "fault"
        anchors.centerIn: parent
        anchors.verticalCenterOffset: sign.what === "over" ? -height * 0.5 : sign.what === "under" ? height * 0.5 : 0
        width: parent.width * (bar ? 0.2 : square ? 0.36 : 0.4)
        height: parent.width * (bar ? 0.34 : square ? 0.36 : 0.4)
        radius: bar || square ? 2 : width / 2
        rotation: square ? 45 : 0
        color: sign.said || sign.what === "unseen" ? "transparent" : sign.tint
        border.width: Theme.stroke
        border.color: sign.tint
    }
    Rectangle {                           // the baseline of a bar
        anchors.centerIn: parent
        visible: sign.what === "over" || sign.what === "under"
        width: parent.width * 0.56
        height: Theme.stroke
        color: sign.tint
    }
    FocusFrame { corner: sign.width / 2 }
}
