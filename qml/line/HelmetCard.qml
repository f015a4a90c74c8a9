// SPDX-License-Identifier: Apache-2.0
// The helmet an athlete wears: what it is, its label, its seven points, its standing. Leads to its page.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    property var helmet: ({})
    property var points: []

    signal opened()

    tone: (helmet.tone ?? "") === "stop" ? "stop" : ""
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
        Words { objectName: "helmet-status"; Layout.fillWidth: true; text: card.helmet.status ?? ""; tone: card.tone === "stop" ? "stop" : "plain"; bold: card.tone === "stop" }
        Words { Layout.fillWidth: true; text: card.helmet.label ?? ""; tone: card.helmet.labelTone ?? "quiet" }
        BigButton {
            objectName: "open-helmet"
            Layout.fillWidth: true
            kind: "quiet"
            sign: "next"
            text: qsTr("Its page")
            spokenName: qsTr("Page of helmet %1").arg(card.helmet.serial ?? "")
            onClicked: card.opened()
        }
    }
}
