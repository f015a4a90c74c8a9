// SPDX-License-Identifier: Apache-2.0
// One athlete on the board. The button starts what is due; the rest of the row opens the athlete.
import QtQuick
import Snugline.Drawing
import Snugline.Parts
import Snugline.Tokens

ListRow {
    id: row

    property string jersey: ""
    property string name: ""
    property string reason: ""
    property string more: ""
    property var strip: []
    property string serial: ""
    property string deed: ""
    property bool isMain: true
    signal opened()
    signal acted()

    objectName: "row-" + jersey
    number: jersey
    title: name
    detail: more.length > 0 ? reason + ", " + more : reason
    onClicked: opened()

    Row {
        spacing: Theme.gap
        Column {
            anchors.verticalCenter: parent.verticalCenter
            visible: row.serial.length > 0
            FitStrip { marks: row.strip; width: 126; height: 44 }
            Words { text: row.serial; size: "small"; tone: "quiet"; wrapMode: Text.NoWrap }
        }
        BigButton {
            objectName: "act-" + row.jersey
            anchors.verticalCenter: parent.verticalCenter
            width: row.stacked ? Math.max(implicitWidth, Theme.touch * 2) : Theme.touch * 2 * Theme.textScale
            visible: row.deed.length > 0
            kind: "plain"
            text: row.deed
            spokenName: row.deed + ", " + row.jersey + " " + row.name
            onClicked: row.acted()
        }
    }
}
