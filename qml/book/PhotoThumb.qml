// SPDX-License-Identifier: Apache-2.0
// A kept photo, small: one touch opens it. One that does not hold shows its sign, and says why beside it (words).
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Touchable {
    id: thumb

    required property PhotoAlbum album
    property string photo: ""
    property string title: ""
    readonly property alias words: view.words

    implicitWidth: Math.max(Theme.touch * 1.4, 108)
    implicitHeight: Math.max(Theme.touch, 81)
    Accessible.role: Accessible.Button
    Accessible.name: view.words.length > 0 ? qsTr("Photo, %1. %2").arg(thumb.title).arg(view.words) : qsTr("Photo, %1. Opens large").arg(thumb.title)
    Accessible.onPressAction: thumb.clicked()

    Rectangle { anchors.fill: parent; color: Theme.wash; border.width: Theme.stroke; border.color: view.words.length > 0 ? Theme.brick : Theme.ink }
    PhotoView {
        id: view
        objectName: "thumbView"
        anchors.fill: parent
        anchors.margins: Theme.stroke
        album: thumb.album
        photo: thumb.photo
        crops: true
    }
    IconStroke { anchors.centerIn: parent; visible: view.words.length > 0; name: "stop"; color: Theme.brick }
    FocusFrame { shown: thumb.visualFocus }
}
