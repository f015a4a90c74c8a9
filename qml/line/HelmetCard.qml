// SPDX-License-Identifier: Apache-2.0
// The helmet an athlete wears: what it is, its label, its seven points, what holds it.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    property var helmet: ({})
    property var points: []

    tone: (helmet.holds ?? []).length > 0 ? "stop" : ""
    ColumnLayout {
        width: parent.width
        spacing: Theme.grid / 2
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            Words { Layout.fillWidth: true; text: qsTr("Helmet %1").arg(card.helmet.serial ?? ""); size: "head" }
            PointStrip { points: card.points }
        }
        Words { Layout.fillWidth: true; text: card.helmet.model ?? "" }
        Words { Layout.fillWidth: true; text: card.helmet.label ?? ""; tone: card.helmet.labelTone ?? "quiet" }
        Repeater {
            model: card.helmet.holds ?? []
            Words { required property string modelData; Layout.fillWidth: true; text: modelData; tone: "stop"; bold: true }
        }
    }
}
