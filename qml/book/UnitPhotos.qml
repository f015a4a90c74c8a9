// SPDX-License-Identifier: Apache-2.0
// The photos of a helmet in a row, latest first, and taking one more.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: row

    required property UnitPage unit
    required property PhotoModel photos

    signal add()
    signal opened(string fact)

    spacing: Theme.grid

    Notice { objectName: "photoKept"; width: parent.width; kind: "good"; text: row.photos.unitId === row.unit.unitId ? row.photos.lastWords : "" }
    Flow {
        width: parent.width
        visible: row.unit.photos.length > 0
        spacing: Theme.grid
        Repeater {
            model: row.unit.photos.length
            PhotoThumb {
                required property int index
                readonly property var kept: row.unit.photos[index] ?? ({ fact: "", photo: "", title: "" })
                objectName: "thumb"
                album: row.photos.album
                photo: kept.photo
                title: kept.title
                onClicked: row.opened(kept.fact)
            }
        }
    }
    BigButton {
        objectName: "addPhoto"
        width: parent.width
        visible: row.photos.canTake
        text: qsTr("Add a photo")
        detail: qsTr("Of the helmet only, never of a person")
        onClicked: row.add()
    }
}
