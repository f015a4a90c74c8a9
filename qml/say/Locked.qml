// SPDX-License-Identifier: Apache-2.0
// The wall: a staff code opens what was open before; athletes go to Say from here; who has forgotten every code, to the recovery sheet.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

FocusScope {
    id: wall

    required property LockModel lock
    required property RecoveryModel recovery
    signal say()

    Component.onCompleted: recovery.leave()

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: wall.recovery.step.length > 0 ? recoveryPage : codePage
        onLoaded: item.forceActiveFocus()
    }
    Component {
        id: recoveryPage
        Recovery { focus: true; recovery: wall.recovery }
    }
    Component {
        id: codePage
        PageFrame {
            title: qsTr("Staff code")
            subtitle: qsTr("Whoever opens it signs from now on")
            focus: true

            CodePad {
                objectName: "lock-pad"
                focus: true
                Layout.fillWidth: true
                Layout.maximumWidth: 640
                Layout.alignment: Qt.AlignHCenter
                lock: wall.lock
                enterText: qsTr("Open")
            }
            foot: [
                BigButton {
                    objectName: "lock-say"
                    Layout.fillWidth: true
                    text: qsTr("Helmet bothering you? Show us where.")
                    onClicked: wall.say()
                },
                BigButton {
                    objectName: "lock-recovery"
                    Layout.fillWidth: true
                    kind: "quiet"
                    text: qsTr("Every code forgotten")
                    onClicked: wall.recovery.begin()
                }
            ]
        }
    }
}
