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
    readonly property bool isAtPoints: card.model.stage === DockModel.Points

    signal openUnit(string unitId)

    tone: card.model.isKnown ? (card.model.due.length > 0 ? "see" : "snug") : "info"
    padding: Theme.phone ? 12 : Theme.gap

    RowLayout {
        width: parent.width
        spacing: Theme.grid
        Column {
            id: said
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            spacing: 4
            Words { width: said.width; text: card.model.serial; size: "head"; wrapMode: Text.WrapAnywhere }
            Words {
                width: said.width
                text: card.model.isKnown ? card.model.kindWords : card.isAtPoints && card.model.kindWords.length > 0 ? qsTr("New here: %1").arg(card.model.kindWords) : qsTr("New here")
                bold: true
            }
            Words { width: said.width; visible: text.length > 0; text: card.model.remark; size: "small"; tone: "quiet" }
            Words {
                width: said.width
                visible: text.length > 0 && card.isAtPoints && (card.model.isLabelGood || !card.model.isKnown || card.model.isLabelRead)
                text: card.model.labelWords
                size: "small"
                tone: card.model.isLabelGood ? "quiet" : "stop"
            }
            Repeater {
                model: card.model.due
                Words {
                    required property string modelData
                    width: said.width
                    text: modelData
                    size: "small"
                    bold: true
                    tone: "see"
                }
            }
            Words {
                width: said.width
                visible: card.model.isKnown && card.model.due.length === 0
                text: qsTr("Nothing else is due on it")
                size: "small"
                tone: "snug"
                bold: true
            }
        }
        GridLayout {
            Layout.alignment: Qt.AlignTop
            columns: card.width >= 400 && !Theme.stacks ? 2 : 1
            columnSpacing: Theme.grid
            rowSpacing: Theme.grid
            layoutDirection: Qt.RightToLeft
            BigButton {
                objectName: "putAside"
                Layout.alignment: Qt.AlignRight
                sign: "cross"
                spokenName: qsTr("Put aside, nothing is written")
                onClicked: card.model.putAside()
            }
            BigButton {
                objectName: "openUnit"
                Layout.alignment: Qt.AlignRight
                visible: card.model.isKnown
                sign: "next"
                spokenName: qsTr("Open the page of this helmet")
                onClicked: card.openUnit(card.model.unitId)
            }
            BigButton {
                objectName: "change"
                Layout.alignment: Qt.AlignRight
                visible: card.isAtPoints
                leftPadding: Theme.grid
                rightPadding: Theme.grid
                sign: card.model.isKnown ? "" : "undo"
                text: card.model.isKnown ? qsTr("Label") : ""
                spokenName: card.model.isKnown ? qsTr("Read the label again") : qsTr("Change sheet, size or label")
                onClicked: card.model.toWhat()
            }
        }
    }
}
