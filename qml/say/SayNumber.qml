// SPDX-License-Identifier: Apache-2.0
// The empty screen: a number pad. The second digit opens the helmet; a number of one digit is done by a touch.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property SayModel say
    signal leave()

    title: qsTr("Your jersey number")
    subtitle: qsTr("Helmet bothering you? Show us where.")
    headerRight: [
        BigButton {
            objectName: "say-language"
            text: page.say.otherLanguageText
            onClicked: page.say.language = page.say.otherLanguage
        },
        BigButton {
            objectName: "say-staff"
            kind: "quiet"
            text: qsTr("Staff")
            onClicked: page.leave()
        }
    ]

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.say.trouble }
    Keypad {
        id: pad
        objectName: "say-keypad"
        focus: true
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        Layout.alignment: Qt.AlignHCenter
        maximumLength: 3
        text: page.say.number
        enterText: qsTr("Done")
        onEdited: text => page.say.number = text
        onEntered: page.say.enterNumber()
    }
    // Under the keys, which stay where they are.
    Words {
        Layout.fillWidth: true
        visible: page.say.isNobody
        tone: "stop"
        text: qsTr("Nobody here wears %1. Look at your jersey, or ask staff.").arg(page.say.number)
    }
    foot: RedWay { onClicked: page.say.unwell() }
}
