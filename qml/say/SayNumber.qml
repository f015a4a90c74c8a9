// SPDX-License-Identifier: Apache-2.0
// The empty screen: a number pad. Whoever wears the number is asked to know themselves by one initial; no list, no name.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property SayModel say
    signal leave()

    title: qsTr("Your jersey number")
    subtitle: qsTr("Say where your helmet hurts or slips")
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
        showsEnter: false
        message: page.say.isNobody ? qsTr("Nobody here wears %1. Look at your jersey, or ask staff.").arg(page.say.number) : ""
        onEdited: text => page.say.number = text
        onEntered: if (page.say.matches.length === 1) page.say.identify(page.say.matches[0].name)
    }
    foot: AnswerBar {
        objectName: "say-me"
        Layout.fillWidth: true
        visible: page.say.matches.length > 0
        answers: page.say.matches.map(match => ({ name: match.name + "-me", text: match.text, kind: page.say.matches.length === 1 ? "primary" : "plain" }))
        onAnswered: (name, index) => page.say.identify(String(index))
    }
}
