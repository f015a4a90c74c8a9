// SPDX-License-Identifier: Apache-2.0
// Several wear this number: each knows their own initials.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property SayModel say

    title: qsTr("Number %1").arg(say.number)
    subtitle: qsTr("Which are you?")
    hasBack: true
    backText: qsTr("Begin again")
    onBack: say.begin()

    Repeater {
        model: page.say.matches
        BigButton {
            required property var modelData
            objectName: modelData.name + "-me"
            Layout.fillWidth: true
            large: true
            text: modelData.text
            onClicked: page.say.identify(modelData.name)
        }
    }
    foot: RedWay { onClicked: page.say.unwell() }
}
