// SPDX-License-Identifier: Apache-2.0
// One kept photo, large: what it shows, when and by whom it was taken; and removing it, which nothing brings back.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property UnitPage unit
    required property PhotoAlbum album
    property string fact: ""
    readonly property var kept: page.unit.photos.find(p => p.fact === page.fact) ?? ({ fact: "", photo: "", title: "", seen: "", hold: "" })
    readonly property string keptWhy: page.kept.fact.length > 0 ? page.album.keptWhy(page.unit.unitId, page.kept.fact) : ""

    title: page.kept.title
    subtitle: qsTr("%1, %2").arg(page.unit.serial).arg(page.kept.seen)
    hasBack: true
    drawingShare: 0.7
    showsDrawing: large.words.length === 0
    drawing: [
        PhotoView {
            id: large
            objectName: "largeView"
            anchors.fill: parent
            album: page.album
            photo: page.kept.photo
            Accessible.role: Accessible.Graphic
            Accessible.name: page.kept.title
        }
    ]
    Component.onCompleted: page.album.forgetRefusal()

    Notice { objectName: "photoTrouble"; Layout.fillWidth: true; kind: "stop"; text: large.words }
    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.album.refusal }
    Words { objectName: "photoHold"; Layout.fillWidth: true; visible: text.length > 0; text: page.kept.hold; tone: "stop"; bold: true }
    Words { objectName: "keptWhy"; Layout.fillWidth: true; visible: text.length > 0; text: page.keptWhy; tone: "quiet" }
    BigButton {
        objectName: "removePhoto"
        Layout.fillWidth: true
        visible: page.kept.fact.length > 0 && page.keptWhy.length === 0
        enabled: !page.album.isBusy
        kind: "danger"
        text: qsTr("Remove this photo")
        onClicked: sheet.open()
    }
    PullSheet {
        id: sheet
        objectName: "removeSheet"
        title: qsTr("Remove this photo")
        closeText: qsTr("Leave it")
        Words { Layout.fillWidth: true; text: qsTr("Its file is deleted from this device at once. Nothing brings it back, not even Undo."); bold: true; tone: "stop" }
        Words { Layout.fillWidth: true; text: qsTr("The record keeps that a photo was taken, when, by whom, and the words to it.") }
        Words { Layout.fillWidth: true; text: qsTr("A backup made before may still hold it. Delete it there too.") }
        BigButton {
            objectName: "removeForGood"
            Layout.fillWidth: true
            large: true
            kind: "danger"
            text: qsTr("Delete it for good")
            onClicked: {
                sheet.close()
                page.album.remove(page.unit.unitId, page.kept.fact)
            }
        }
    }
    Connections {
        target: page.album
        function onRemoved(): void { if (page.album.refusal.length === 0) page.back() }
    }
}
