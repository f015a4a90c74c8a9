// SPDX-License-Identifier: Apache-2.0
// Progress on anything longer than a second, with a way to stop it. progress below 0 means the length is not known.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

RowLayout {
    id: strip

    property string text: ""
    property real progress: -1
    property string stopText: qsTr("Stop")
    property bool stoppable: true
    signal stopped()

    spacing: Theme.gap
    Accessible.role: Accessible.ProgressBar
    Accessible.name: text

    ColumnLayout {
        Layout.fillWidth: true
        spacing: 4
        Words { Layout.fillWidth: true; text: strip.text; Accessible.ignored: true }
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: 12
            radius: 6
            color: "transparent"
            border.width: Theme.stroke
            border.color: Theme.ink
            visible: strip.progress >= 0
            Rectangle { x: 2; y: 2; height: parent.height - 4; width: (parent.width - 4) * Math.max(0, Math.min(1, strip.progress)); radius: 4; color: Theme.turf }
        }
    }
    BigButton { visible: strip.stoppable; text: strip.stopText; sign: "cross"; onClicked: strip.stopped() }
}
