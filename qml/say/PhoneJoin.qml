// SPDX-License-Identifier: Apache-2.0
// A phone becomes one athlete's own: the code that staff show is typed or pasted here. Offered while the Book of this device is empty.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    readonly property PhoneModel own: shell.phone

    title: qsTr("Join as an athlete")
    subtitle: qsTr("Staff show you a code under your number")
    hasBack: true

    Notice { objectName: "join-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.own.trouble }
    TextEntry {
        id: code
        objectName: "join-code"
        Layout.fillWidth: true
        focus: true
        label: qsTr("The code, as the letters stand")
        maximumLength: 400
        onAccepted: text => page.own.join(text)
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("The code is yours alone: whoever has it can speak for you. This phone then holds what you say, your next look and what came of it, and no name.")
        tone: "quiet"
        size: "small"
    }
    foot: BigButton {
        objectName: "join"
        Layout.fillWidth: true
        kind: "primary"
        large: true
        text: qsTr("Join")
        enabled: code.text.trim().length > 0
        onClicked: page.own.join(code.text)
    }
}
