// SPDX-License-Identifier: Apache-2.0
// A head that hurts: stop, tell the athletic trainer now. It names nobody, asks nothing and advises nothing about the person.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property SayModel say
    readonly property bool isTight: phone && Theme.stacks

    title: qsTr("Stop")
    headerRight: BigButton {
        objectName: "say-mistake"
        kind: "quiet"
        text: qsTr("Touched by mistake")
        onClicked: page.say.touchedByMistake()
    }
    showsDrawing: !isTight
    drawingShare: 0.3
    drawing: Item {
        anchors.fill: parent
        IconStroke { anchors.centerIn: parent; name: "stop"; color: Theme.brick; side: Math.min(parent.width, parent.height, 240) }
    }

    Words {
        objectName: "say-stop"
        Layout.fillWidth: true
        size: page.isTight ? "body" : "title"
        bold: true
        tone: "stop"
        text: qsTr("Tell the athletic trainer now.")
    }
    Words { Layout.fillWidth: true; size: page.isTight ? "body" : "head"; bold: false; text: page.say.notHere }
    Notice { Layout.fillWidth: true; kind: "attention"; text: page.say.trouble }

    // Where the red way was only words stand: whoever touches it twice has not left.
    foot: [
        BigButton {
            objectName: "say-told"
            Layout.fillWidth: true
            large: true
            text: qsTr("I told an adult")
            onClicked: page.say.toldAdult()
        },
        Words {
            objectName: "say-emergency"
            Layout.fillWidth: true
            Layout.minimumHeight: Theme.touch
            verticalAlignment: Text.AlignVCenter
            size: page.isTight ? "body" : "head"
            bold: true
            text: page.say.emergency
        }
    ]
}
