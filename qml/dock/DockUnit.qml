// SPDX-License-Identifier: Apache-2.0
// The unit on the table: its serial, whether the Book knows it, what its label is good for, and what is due on it.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Card {
    id: card

    required property DockModel model

    signal openUnit(string unitId)

    tone: card.model.isKnown ? (card.model.due.length > 0 ? "see" : "snug") : "info"

    ColumnLayout {
        width: parent.width
        spacing: 6
        GridLayout {
            Layout.fillWidth: true
            columns: card.width < 420 * Theme.textScale ? 1 : 2
            Words { Layout.fillWidth: true; text: card.model.serial; size: "head"; wrapMode: Text.WrapAnywhere }
            Row {
                spacing: Theme.grid
                BigButton {
                    objectName: "openUnit"
                    visible: card.model.isKnown
                    kind: "quiet"
                    text: qsTr("Its page")
                    onClicked: card.openUnit(card.model.unitId)
                }
                BigButton {
                    objectName: "change"
                    visible: !card.model.isKnown && card.model.stage === DockModel.Points
                    kind: "quiet"
                    text: qsTr("Change")
                    spokenName: qsTr("Change sheet, size or label")
                    onClicked: card.model.toWhat()
                }
                BigButton {
                    objectName: "putAside"
                    kind: "quiet"
                    text: qsTr("Put aside")
                    spokenName: qsTr("Put aside, nothing is written")
                    onClicked: card.model.putAside()
                }
            }
        }
        Words {
            Layout.fillWidth: true
            text: card.model.isKnown ? card.model.kindWords : card.model.kindWords.length > 0 ? qsTr("New here: %1").arg(card.model.kindWords) : qsTr("New here")
            bold: true
        }
        Words { Layout.fillWidth: true; visible: text.length > 0; text: card.model.remark; size: "small"; tone: "quiet" }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0 && card.model.stage === DockModel.Points && (card.model.isLabelGood || !card.model.isKnown)
            text: card.model.labelWords
            size: "small"
            tone: card.model.isLabelGood ? "quiet" : "stop"
        }
        Repeater {
            model: card.model.due
            Words {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
                size: "small"
                bold: true
                tone: "see"
            }
        }
        Words {
            Layout.fillWidth: true
            visible: card.model.isKnown && card.model.due.length === 0
            text: qsTr("Nothing else is due on it")
            size: "small"
            tone: "snug"
            bold: true
        }
    }
}
