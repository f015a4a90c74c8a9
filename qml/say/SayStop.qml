// SPDX-License-Identifier: Apache-2.0
// A hit, or feeling unwell: stop, tell the trainer now. It names nobody, asks nothing and advises nothing about the person.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property SayModel say

    title: qsTr("Stop")
    drawingShare: 0.3
    drawing: Item {
        anchors.fill: parent
        IconStroke { anchors.centerIn: parent; name: "stop"; color: Theme.brick; side: Math.min(parent.width, parent.height, 240) }
    }

    Words { objectName: "say-stop"; Layout.fillWidth: true; size: "head"; bold: true; tone: "stop"; text: page.say.stopText }
    Words { Layout.fillWidth: true; text: qsTr("Trainer not here? Any adult. Emergency: the emergency action plan.") }
    Notice { Layout.fillWidth: true; kind: "attention"; text: page.say.trouble }

    foot: BigButton {
        objectName: "say-told"
        Layout.fillWidth: true
        large: true
        text: qsTr("The trainer knows")
        onClicked: page.say.begin()
    }
}
