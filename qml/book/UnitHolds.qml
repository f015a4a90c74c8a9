// SPDX-License-Identifier: Apache-2.0
// The open holds of a helmet, each with its release and why; and holding it for another cause. A hold that a rule keeps shut says so.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: holds

    required property UnitPage unit
    property bool takesPhotos: false

    signal addPhoto(string hold)

    spacing: Theme.gap

    Repeater {
        model: holds.unit.holds
        Card {
            id: card
            required property var modelData
            width: holds.width
            tone: "stop"
            Column {
                width: parent.width
                spacing: Theme.grid
                Words { width: parent.width; text: card.modelData.words; bold: true; tone: "stop" }
                Words { width: parent.width; text: card.modelData.seen; size: "small"; tone: "quiet" }
                Words { objectName: "rule"; width: parent.width; visible: text.length > 0; text: card.modelData.rule }
                BigButton {
                    objectName: "photoOfHold"
                    width: parent.width
                    visible: holds.takesPhotos
                    text: qsTr("Add a photo of it")
                    onClicked: holds.addPhoto(card.modelData.fact)
                }
                TextEntry { id: why; objectName: "why"; width: parent.width; visible: card.modelData.rule.length === 0; label: qsTr("Put right by") }
                BigButton {
                    objectName: "release"
                    width: parent.width
                    visible: card.modelData.rule.length === 0
                    enabled: why.text.trim().length > 0 && !holds.unit.isBusy && Bearer.isStaff
                    detail: Bearer.staffOnly
                    text: qsTr("Release this hold")
                    onClicked: holds.unit.release(card.modelData.fact, why.text)
                }
            }
        }
    }
    BigButton {
        objectName: "hold"
        width: parent.width
        visible: holds.unit.holds.length === 0
        kind: "danger"
        text: qsTr("Hold this helmet")
        enabled: !holds.unit.isBusy
        onClicked: sheet.open()
    }
    PullSheet {
        id: sheet
        objectName: "holdSheet"
        title: qsTr("Hold this helmet")
        readonly property string known: holds.unit.knownCause.words ?? ""
        onBegan: {
            words.text = holds.unit.knownCause.what ?? ""
            sheet.reason = holds.unit.knownCause.reason ?? ""
        }
        Words { objectName: "knownCause"; Layout.fillWidth: true; visible: text.length > 0; text: sheet.known; tone: "stop"; bold: true }
        ChipGrid {
            objectName: "reasons"
            Layout.fillWidth: true
            visible: sheet.known.length === 0
            label: qsTr("Which point")
            mostColumns: 2
            choices: holds.unit.points.map(p => ({ name: p.code, text: p.name, chosen: sheet.reason === p.code }))
                .concat([{ name: "broken", text: qsTr("Something broke"), chosen: sheet.reason === "broken" }, { name: "other", text: qsTr("Another cause"), chosen: sheet.reason === "other" }])
            onChosen: name => sheet.reason = name
        }
        TextEntry { id: words; objectName: "holdWords"; Layout.fillWidth: true; visible: sheet.known.length === 0; label: qsTr("What is wrong") }
        AnswerBar {
            objectName: "where"
            Layout.fillWidth: true
            answers: [{ name: "hands", text: qsTr("Hold, in our hands"), kind: "danger", enabled: sheet.reason.length > 0 }].concat(
                holds.unit.wearers.length > 0 ? [{ name: "athlete", text: qsTr("Hold, still with the athlete"), kind: "danger", enabled: sheet.reason.length > 0 }] : [])
            onAnswered: name => {
                sheet.close()
                holds.unit.hold(sheet.reason, words.text, name === "athlete")
                sheet.reason = ""
            }
        }
        property string reason: ""
    }
}
