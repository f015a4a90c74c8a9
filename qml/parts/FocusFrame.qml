// SPDX-License-Identifier: Apache-2.0
// The frame around whatever has the keyboard. Anchored outside its parent, two-toned so that it shows on any colour.
import QtQuick
import Snugline.Tokens

Rectangle {
    property bool shown: parent ? parent.activeFocus : false
    property real corner: Theme.radius

    anchors.fill: parent
    anchors.margins: -Theme.focusWidth
    visible: shown
    color: "transparent"
    radius: corner + Theme.focusWidth
    border.width: Theme.focusWidth
    border.color: Theme.lake
}
