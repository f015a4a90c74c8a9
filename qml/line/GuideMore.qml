// SPDX-License-Identifier: Apache-2.0
// What can be done beside the question: the gauge; leaving the check open; ending it.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PullSheet {
    id: more

    required property GuideModel guide
    signal left()

    title: guide.who

    BigButton {
        objectName: "read-gauge"
        Layout.fillWidth: true
        visible: more.guide.hasAir
        text: qsTr("Read the gauge")
        detail: qsTr("Nothing is changed; hold is seen again")
        onClicked: {
            more.close()
            more.guide.readGauge()
        }
    }
    BigButton {
        objectName: "leave-open"
        Layout.fillWidth: true
        text: qsTr("Leave it open")
        detail: qsTr("Stands on the board under See before practice, at this question")
        onClicked: {
            more.close()
            more.left()
        }
    }
    BigButton {
        objectName: "end-here"
        Layout.fillWidth: true
        text: qsTr("End it here")
        detail: qsTr("Recorded as it stands")
        onClicked: {
            more.close()
            more.guide.endHere()
        }
    }
}
