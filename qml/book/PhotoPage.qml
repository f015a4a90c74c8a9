// SPDX-License-Identifier: Apache-2.0
// A photo of gear: what it is of, a line before each picture, the camera or a file, the picture looked at, and only then kept.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property PhotoModel photos
    readonly property var dialog: chooser.item
    readonly property string onlyHelmet: qsTr("Only the helmet in the picture: no person, no face, no name.")

    signal done()

    function choose(): void {
        if (chooser.status === Loader.Null)
            chooser.setSource("FileChooser.qml", { title: qsTr("Choose a picture of the helmet"), nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png *.bmp *.webp *.heic)"), qsTr("All files (*)")] })
        if (page.dialog)
            page.dialog.open()
    }

    title: qsTr("Photo of a fault")
    subtitle: page.photos.helmetWords
    hasBack: true
    onBack: page.done()
    showsDrawing: page.photos.isPicked || page.photos.isOn && !page.photos.isCameraTrouble
    drawingShare: 0.6
    drawing: [
        Rectangle { anchors.fill: parent; color: Theme.wash; border.width: Theme.stroke; border.color: Theme.ink },
        PhotoView {
            objectName: "takenView"
            anchors.fill: parent
            anchors.margins: Theme.stroke
            taking: page.photos
            Accessible.role: Accessible.Graphic
            Accessible.name: page.photos.isPicked ? qsTr("The picture, not kept yet") : qsTr("What the camera sees")
        }
    ]

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.photos.refusal }
    Words { objectName: "photoHold"; Layout.fillWidth: true; visible: text.length > 0; text: page.photos.holdWords; bold: true; tone: "stop" }
    Notice {
        objectName: "caution"
        Layout.fillWidth: true
        kind: "attention"
        text: page.photos.isPicked || page.photos.isSeeing ? "" : page.onlyHelmet
        place: qsTr("Leave the fault as it is: no prying, bending or cleaning. What the maker says about damage comes first.")
    }
    Words { objectName: "cameraWords"; Layout.fillWidth: true; visible: text.length > 0 && !page.photos.isCameraTrouble; text: page.photos.cameraWords; tone: "quiet" }
    Notice { objectName: "cameraTrouble"; Layout.fillWidth: true; kind: "attention"; text: page.photos.isCameraTrouble ? page.photos.cameraWords : "" }
    Words { objectName: "making"; Layout.fillWidth: true; visible: page.photos.isMaking; text: qsTr("The picture is being read."); tone: "quiet" }
    BigButton {
        objectName: "camera"
        Layout.fillWidth: true
        large: true
        visible: page.photos.hasCamera && !page.photos.isPicked && (!page.photos.isOn || page.photos.isCameraTrouble)
        enabled: !page.photos.isMaking
        text: qsTr("Use the camera")
        onClicked: { page.photos.stop(); page.photos.start() }
    }
    BigButton {
        objectName: "chooseFile"
        Layout.fillWidth: true
        large: true
        visible: !page.photos.isPicked && !page.photos.isSeeing
        enabled: !page.photos.isMaking
        text: qsTr("Choose a picture file")
        sign: "search"
        onClicked: page.choose()
    }
    Words { objectName: "noDialog"; Layout.fillWidth: true; visible: chooser.status === Loader.Error; text: qsTr("This device has no way to choose a file."); tone: "see" }
    Words { Layout.fillWidth: true; visible: !page.photos.isPicked; text: qsTr("Place, time and camera are taken out of the picture before it is kept. It stays on this device, beside the Book."); size: "small"; tone: "quiet" }
    ChipGrid {
        objectName: "photoPoint"
        Layout.fillWidth: true
        visible: page.photos.isPicked && page.photos.asksPoint
        label: qsTr("What it shows, if one of the points")
        mostColumns: 2
        choices: page.photos.points
        onChosen: name => page.photos.choosePoint(name)
    }
    TextEntry {
        id: words
        objectName: "photoWords"
        Layout.fillWidth: true
        visible: page.photos.isPicked
        label: qsTr("In your words, if wanted")
        maximumLength: 500
        onEdited: text => page.photos.words = text
    }

    foot: [
        Words { objectName: "cautionAtCamera"; Layout.fillWidth: true; visible: page.photos.isSeeing && !page.photos.isPicked; text: page.onlyHelmet; tone: "see"; bold: true },
        AnswerBar {
            objectName: "cameraAnswers"
            Layout.fillWidth: true
            visible: page.photos.isSeeing && !page.photos.isPicked
            answers: [{ name: "off", text: qsTr("Camera off") }, { name: "take", text: qsTr("Take the picture"), kind: "primary" }]
            onAnswered: name => { if (name === "take") page.photos.take(); else page.photos.stop() }
        },
        Words {
            objectName: "askedPerson"
            Layout.fillWidth: true
            visible: page.photos.isPicked
            text: qsTr("Look at it: is a person or a name in it?")
            bold: true
        },
        AnswerBar {
            objectName: "keepAnswers"
            Layout.fillWidth: true
            visible: page.photos.isPicked
            answers: [{ name: "throw", text: qsTr("Yes, throw it away"), sign: "cross" }, { name: "keep", text: qsTr("No, keep it"), kind: "primary", sign: "check", enabled: !page.photos.isBusy }]
            onAnswered: name => { if (name === "keep") page.photos.keep(); else page.photos.throwAway() }
        }
    ]
    // Made when it is first asked for: no page waits for the system's dialog, or fails where there is none.
    Loader { id: chooser; objectName: "chooser"; visible: false }
    Connections {
        target: chooser.item
        function onChosen(file: string): void { page.photos.choose(file) }
    }
    Connections {
        target: page.photos
        function onKept(): void { page.done() }
    }
    readonly property bool isCovered: Glass.isCovered
    onIsCoveredChanged: if (isCovered) photos.stop()
    Component.onDestruction: page.photos.stop()
}
