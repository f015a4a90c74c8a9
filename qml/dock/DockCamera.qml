// SPDX-License-Identifier: Apache-2.0
// The camera as a scanner: one touch turns it on, the picture shows what it sees, one sentence says what to do or why it sees nothing.
// While a unit is on the table the picture steps back; the camera goes on looking.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: camera

    required property ScanModel scan
    property bool brief: false            // a unit is on the table

    visible: camera.scan.hasCamera && (!camera.brief || camera.scan.isTrouble)
    spacing: Theme.grid

    BigButton {
        objectName: "cameraOn"
        width: parent.width
        visible: !camera.brief && !camera.scan.isOn
        text: qsTr("Scan with the camera")
        onClicked: camera.scan.start()
    }
    Item {
        width: parent.width
        height: visible ? Math.min(width * 0.62, Theme.phone ? 240 : 340) : 0
        visible: !camera.brief && camera.scan.isOn && !camera.scan.isTrouble || !camera.brief && camera.scan.isSeeing
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
        Rectangle { anchors.fill: parent; color: Theme.wash; radius: 4; border.width: Theme.stroke; border.color: Theme.ink }
        TagPicture { objectName: "seen"; anchors.fill: parent; anchors.margins: 2; scan: camera.scan }
        // Four corners: the part that is looked at.
        Item {
            id: frame
            anchors.centerIn: parent
            width: parent.width * 0.7
            height: parent.height * 0.7
            Repeater {
                model: [[0, 0], [1, 0], [0, 1], [1, 1]]
                Item {
                    required property var modelData
                    readonly property real side: 28
                    x: modelData[0] === 0 ? 0 : frame.width - side
                    y: modelData[1] === 0 ? 0 : frame.height - side
                    width: side
                    height: side
                    Rectangle { width: parent.side; height: 5; y: parent.modelData[1] === 0 ? 0 : parent.side - height; color: Theme.card; border.width: 1; border.color: Theme.ink }
                    Rectangle { width: 5; height: parent.side; x: parent.modelData[0] === 0 ? 0 : parent.side - width; color: Theme.card; border.width: 1; border.color: Theme.ink }
                }
            }
        }
    }
    Notice { objectName: "cameraTrouble"; width: parent.width; kind: "attention"; text: camera.scan.isTrouble ? camera.scan.words : "" }
    Words { objectName: "cameraWords"; width: parent.width; visible: text.length > 0; text: camera.scan.isTrouble || camera.brief ? "" : camera.scan.words; tone: "quiet" }
    BigButton {
        objectName: "cameraOff"
        width: parent.width
        visible: !camera.brief && camera.scan.isOn
        kind: "quiet"
        text: qsTr("Camera off")
        onClicked: camera.scan.stop()
    }
    readonly property bool isCovered: Glass.isCovered
    onIsCoveredChanged: if (isCovered) scan.stop()
    Component.onDestruction: camera.scan.stop()
}
