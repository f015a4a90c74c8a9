// SPDX-License-Identifier: Apache-2.0
// The wall: a staff code opens what was open before; athletes go to Say from here.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property LockModel lock
    signal say()

    title: qsTr("Staff code")
    subtitle: qsTr("Whoever opens it signs from now on")

    CodePad {
        objectName: "lock-pad"
        focus: true
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        Layout.alignment: Qt.AlignHCenter
        lock: page.lock
        enterText: qsTr("Open")
    }
    foot: BigButton {
        objectName: "lock-say"
        Layout.fillWidth: true
        text: qsTr("Athlete? Say where it hurts or slips")
        onClicked: page.say()
    }
}
