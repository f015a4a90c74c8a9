// SPDX-License-Identifier: Apache-2.0
// The frame around whatever has the keyboard. Anchored outside its parent, two-toned so that it shows on any colour.
// Made when it is first shown: every row of a list has three of them and at most one is seen.
import QtQuick
import Snugline.Tokens

Loader {
    id: frame

    property bool shown: parent ? parent.activeFocus : false
    property real corner: Theme.radius

    anchors.fill: parent
    anchors.margins: -Theme.focusWidth
    active: shown
    visible: shown
    sourceComponent: Rectangle {
        color: "transparent"
        radius: frame.corner + Theme.focusWidth
        border.width: Theme.focusWidth
        border.color: Theme.lake
    }
}
