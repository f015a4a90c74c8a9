// SPDX-License-Identifier: Apache-2.0
// Legal holds of one athlete or of everybody: those that stand, and making or ending one with a reason.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Card {
    id: card

    required property PrivacyModel privacy
    property string athleteId: ""         // empty: everybody
    property var holds: []
    property string ending: ""            // hold that is about to end

    ColumnLayout {
        width: parent.width
        spacing: Theme.grid
        Words { Layout.fillWidth: true; size: "head"; text: card.athleteId.length > 0 ? qsTr("Legal hold") : qsTr("Legal hold on everybody") }
        Words { Layout.fillWidth: true; size: "small"; tone: "quiet"; text: qsTr("While one stands, no name is kept back.") }
        Repeater {
            model: card.holds
            ListRow {
                id: row
                required property var modelData
                objectName: "legal-hold"
                Layout.fillWidth: true
                title: row.modelData.text
                detail: row.modelData.detail
                onClicked: card.ending = card.ending === row.modelData.id ? "" : row.modelData.id
                Tag { text: card.ending === row.modelData.id ? qsTr("to end") : qsTr("stands"); tone: "see" }
            }
        }
        TextEntry {
            id: reason
            objectName: "legal-reason"
            Layout.fillWidth: true
            enabled: card.privacy.mayChange
            label: card.ending.length > 0 ? qsTr("Why it ends") : qsTr("Reason of a new hold")
            maximumLength: 200
        }
        BigButton {
            objectName: "legal-keep"
            Layout.fillWidth: true
            enabled: card.privacy.mayChange && reason.text.trim().length > 0 && !card.privacy.isBusy
            text: card.ending.length > 0 ? qsTr("End this hold") : qsTr("Hold")
            onClicked: {
                if (card.ending.length > 0)
                    card.privacy.endHold(card.athleteId, card.ending, reason.text)
                else
                    card.privacy.hold(card.athleteId, reason.text)
                card.ending = ""
                reason.clear()
            }
        }
        Words { Layout.fillWidth: true; visible: !card.privacy.mayChange; size: "small"; tone: "quiet"; text: Bearer.adminOnly }
    }
}
