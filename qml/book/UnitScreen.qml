// SPDX-License-Identifier: Apache-2.0
// One helmet: drawn with its seven points, its label, open holds and their release, who wears it, where it goes, and its history.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing
import Snugline.Models

PageFrame {
    id: page

    required property UnitPage unit
    property PhotoModel photos: null
    property UnitCard card: null
    property string touched: ""           // the point that was touched on the drawing
    readonly property var touchedPoint: page.unit.points.find(p => p.code === page.touched)

    signal openAthlete(string athleteId)
    signal chooseAthlete()
    signal openAir()
    signal addPhoto(string hold)
    signal openPhoto(string fact)

    function found(): var {
        const findings = {}
        for (const point of page.unit.points)
            findings[point.code] = ["unseen", "sound", "fault"][point.state]
        return findings
    }

    title: page.unit.serial
    subtitle: page.unit.kindWords
    hasBack: true
    drawingShare: 0.42
    drawing: [
        HelmetPoints {
            objectName: "drawing"
            anchors.fill: parent
            visible: height > 120
            findings: page.found()
            focusPart: page.touched
            description: page.unit.points.map(p => p.name + ": " + p.words).join(". ")
            onPartTouched: name => page.touched = page.touched === name ? "" : name
        }
    ]

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.unit.refusal }
    Words {
        objectName: "do-not-wear"
        Layout.fillWidth: true
        visible: page.unit.isStop
        text: qsTr("Do not wear")
        size: "title"
        font.pixelSize: Theme.titleSize * 1.6
        bold: true
        tone: "stop"
        Accessible.role: Accessible.Heading
    }
    Words { objectName: "status"; Layout.fillWidth: true; text: page.unit.statusWords; size: "head"; tone: page.unit.standingTone === "stop" ? "stop" : "plain" }
    Repeater {
        model: page.unit.reasons
        Words { required property var modelData; required property int index; visible: index > 0; objectName: "reason"; Layout.fillWidth: true; text: modelData.text; tone: "stop" }
    }
    AnswerBar {
        objectName: "where-now"
        Layout.fillWidth: true
        visible: page.unit.acts.includes("where-now")
        answers: [{ name: "in-hand", text: qsTr("It is in our hands"), enabled: !page.unit.isBusy }]
        onAnswered: page.unit.whereNow(false)
    }
    Words { objectName: "label"; Layout.fillWidth: true; text: page.unit.labelWords; tone: page.unit.isLabelGood ? "plain" : "stop" }
    Words { objectName: "age"; Layout.fillWidth: true; visible: text.length > 0; text: page.unit.ageWords; size: "small"; tone: "quiet" }
    UnitLabel { Layout.fillWidth: true; unit: page.unit }
    Words {
        objectName: "point"
        Layout.fillWidth: true
        text: page.touchedPoint ? qsTr("%1: %2, %3").arg(page.touchedPoint.name).arg(page.touchedPoint.words).arg(page.touchedPoint.seen) : qsTr("Touch a point on the drawing to see when it was seen, or to see it again.")
        tone: page.touchedPoint ? (page.touchedPoint.state === 2 ? "stop" : "plain") : "quiet"
        size: "small"
    }
    UnitPoint { Layout.fillWidth: true; visible: page.touched.length > 0; unit: page.unit; point: page.touchedPoint ?? ({}) }
    BigButton {
        objectName: "air"
        Layout.fillWidth: true
        visible: page.unit.hasAir
        text: qsTr("Air")
        detail: page.unit.airWords
        onClicked: page.openAir()
    }
    UnitParts { Layout.fillWidth: true; visible: page.unit.parts.length > 0; unit: page.unit }
    UnitHolds { Layout.fillWidth: true; unit: page.unit; takesPhotos: page.photos?.canTake ?? false; onAddPhoto: hold => page.addPhoto(hold) }
    Loader {
        Layout.fillWidth: true
        active: page.photos !== null && (page.photos.canTake || page.unit.photos.length > 0)
        visible: active
        sourceComponent: UnitPhotos { unit: page.unit; photos: page.photos; onAdd: page.addPhoto(""); onOpened: fact => page.openPhoto(fact) }
    }
    Card {
        Layout.fillWidth: true
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { width: parent.width; text: page.unit.wearers.length > 0 ? qsTr("Worn by") : qsTr("Nobody wears it"); bold: true }
            Repeater {
                model: page.unit.wearers
                GridLayout {
                    id: wearer
                    required property var modelData
                    width: parent ? parent.width : 0
                    columns: Theme.phone || Theme.stacks ? 1 : 2
                    BigButton { objectName: "wearer"; Layout.fillWidth: true; text: wearer.modelData.name; onClicked: page.openAthlete(wearer.modelData.athlete) }
                    BigButton { objectName: "unpair"; Layout.fillWidth: columns === 1; text: qsTr("Given back"); spokenName: qsTr("%1 gave it back").arg(wearer.modelData.name); readonly property int columns: wearer.columns; onClicked: page.unit.unpair(wearer.modelData.athlete) }
                }
            }
            BigButton {
                objectName: "pair"
                width: parent.width
                text: page.unit.wearers.length > 0 ? qsTr("Give it to another athlete") : qsTr("Give it to an athlete")
                onClicked: page.chooseAthlete()
            }
        }
    }
    UnitMoves { objectName: "moveCard"; Layout.fillWidth: true; unit: page.unit }
    BigButton {
        objectName: "printCard"
        Layout.fillWidth: true
        visible: page.card !== null
        text: qsTr("Print its card")
        detail: qsTr("With its photos, without names of athletes")
        onClicked: page.card.print(page.unit.unitId)
    }
    Notice { objectName: "cardRefusal"; Layout.fillWidth: true; kind: "stop"; text: page.card?.unitId === page.unit.unitId ? page.card.refusal : "" }
    Notice { objectName: "cardPlace"; Layout.fillWidth: true; kind: "good"; text: page.card?.unitId === page.unit.unitId && page.card.place.length > 0 ? qsTr("The card is kept as a file.") : ""; place: page.card?.place ?? "" }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; text: qsTr("History"); size: "head" }
    Repeater {
        model: page.unit.history
        UnitFact {
            required property var modelData
            Layout.fillWidth: true
            when: modelData.when
            who: modelData.who
            text: modelData.words
            album: page.photos?.album ?? null
            photo: modelData.photo
            onOpened: page.openPhoto(modelData.fact)
        }
    }
    foot: UndoBar { objectName: "unitUndo"; Layout.fillWidth: true; text: page.unit.lastWords; onUndone: page.unit.undo() }
}
