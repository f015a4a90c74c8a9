// SPDX-License-Identifier: Apache-2.0
// One line of a history: when, what, by whom, and where there is one the photo.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

GridLayout {
    id: line

    property string when: ""
    property string who: ""
    property string text: ""
    property PhotoAlbum album: null       // with photo: shown small beside the words
    property string photo: ""

    signal opened()

    columns: Theme.phone || Theme.stacks ? 1 : 2
    columnSpacing: Theme.gap
    rowSpacing: 0
    Words {
        Layout.preferredWidth: 170 * Theme.textScale
        Layout.fillWidth: line.columns === 1
        Layout.alignment: Qt.AlignTop
        text: line.who.length > 0 ? qsTr("%1, %2").arg(line.when).arg(line.who) : line.when
        size: "small"
        tone: "quiet"
    }
    ColumnLayout {
        Layout.fillWidth: true
        spacing: 4
        Words { Layout.fillWidth: true; text: line.text; size: "small" }
        Loader {
            id: thumb
            active: line.photo.length > 0 && line.album !== null
            visible: active
            sourceComponent: PhotoThumb { objectName: "historyThumb"; album: line.album; photo: line.photo; title: line.text; onClicked: line.opened() }
        }
        Words { objectName: "photoTrouble"; Layout.fillWidth: true; visible: text.length > 0; text: thumb.item ? thumb.item["words"] : ""; size: "small"; tone: "stop" }
    }
}
