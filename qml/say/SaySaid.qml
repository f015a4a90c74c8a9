// SPDX-License-Identifier: Apache-2.0
// What was recorded, and what happens next and when. Goes away by itself.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property SayModel say

    title: qsTr("Thank you, %1").arg(say.jersey)
    subtitle: qsTr("It is recorded")

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.say.trouble }
    Card {
        Layout.fillWidth: true
        Column {
            width: parent.width
            spacing: Theme.gap
            Words { objectName: "say-recorded"; width: parent.width; size: "head"; bold: true; text: page.say.said }
            Words { objectName: "say-next"; width: parent.width; size: page.say.isBroken ? "head" : "body"; tone: page.say.isBroken ? "stop" : "plain"; text: page.say.next }
        }
    }
    Words { Layout.fillWidth: true; size: "small"; tone: "quiet"; text: page.say.caution }

    foot: ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.grid
        BigButton {
            objectName: "say-done"
            Layout.fillWidth: true
            kind: "primary"
            large: true
            text: qsTr("Done")
            onClicked: page.say.begin()
        }
        AnswerBar {
            objectName: "say-after"
            Layout.fillWidth: true
            large: false
            answers: [{ name: "more", text: qsTr("Another place") }, { name: "undo", text: qsTr("Take it back"), sign: "undo", enabled: !page.say.isBusy }]
            onAnswered: name => name === "more" ? page.say.another() : page.say.takeBack()
        }
        RedWay { onClicked: page.say.unwell() }
    }
}
