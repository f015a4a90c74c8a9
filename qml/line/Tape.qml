// SPDX-License-Identifier: Apache-2.0
// Taping a head: one reading after another, each on disk at once; the size they speak for stands under the keys. What is said above them
// has room kept for it, so that no key moves.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    property string what: ""
    readonly property AthleteModel athlete: shell.athlete
    readonly property bool hasReadings: athlete.readings.length > 0
    signal go(string screen, string what)

    title: qsTr("Tape")
    subtitle: athlete.jersey + "  " + athlete.name
    hasBack: true
    Component.onCompleted: {
        if (athlete.athleteId !== what)
            athlete.open(what)
        athlete.endTape()
    }
    drawing: HeadProfile { anchors.fill: parent; helmetOn: false; motion: "tape"; description: page.athlete.tapeAdvice }
    drawingShare: 0.15
    holdsStill: true
    showsDrawing: landscape || !phone && height >= 1000

    Words {
        id: advice
        objectName: "tape-advice"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.ceil((page.phone ? 3 : 2) * line.height)
        verticalAlignment: Text.AlignVCenter
        text: page.athlete.tapeDoubt.length > 0 ? page.athlete.tapeDoubt : page.athlete.tapeAdvice
        tone: page.athlete.tapeDoubt.length > 0 ? "see" : "plain"
        bold: true
        fontSizeMode: Text.Fit
        minimumPixelSize: Math.round(Theme.smallSize * 0.6)
        FontMetrics { id: line; font: advice.font }
    }
    Keypad {
        id: pad
        objectName: "tape-pad"
        focus: true
        Layout.fillWidth: true
        Layout.maximumWidth: 460
        Layout.alignment: Qt.AlignHCenter
        maximumLength: 6
        allowDecimal: true
        fractions: page.athlete.tapeKeys
        label: page.athlete.tapeLabel
        message: page.athlete.trouble
        enterText: qsTr("Record reading")
        onEdited: page.athlete.dismissTrouble()
        onEntered: text => page.athlete.addReading(text)
    }
    Connections {
        target: page.athlete
        function onReadingsChanged(): void { pad.text = "" }
    }
    Words {
        objectName: "tape-so-far"
        Layout.fillWidth: true
        visible: page.hasReadings
        text: qsTr("Read so far: %1").arg(page.athlete.readings.filter(r => !r.isAside).map(r => r.text).join(", "))
    }
    Words {
        Layout.fillWidth: true
        visible: page.athlete.readings.some(r => r.isAside)
        text: qsTr("Set aside: %1").arg(page.athlete.readings.filter(r => r.isAside).map(r => r.text).join(", "))
        tone: "quiet"
    }
    Words { objectName: "tape-note"; Layout.fillWidth: true; visible: page.hasReadings && text.length > 0; text: page.athlete.tapeNote; tone: "see" }
    Repeater {
        model: page.hasReadings ? page.athlete.sizes : []
        SizeOdds { required property var modelData; Layout.fillWidth: true; size: modelData }
    }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: page.athlete.lastWords; tone: "quiet" }
    foot: RowLayout {
        Layout.fillWidth: true
        spacing: Theme.grid
        // Always there, so that no key moves when there is something to undo.
        BigButton {
            objectName: "undo"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.fillHeight: true
            enabled: page.athlete.lastWords.length > 0
            text: qsTr("Undo")
            sign: "undo"
            spokenName: qsTr("Undo") + ": " + page.athlete.lastWords
            onClicked: page.athlete.undo()
        }
        BigButton {
            objectName: "set-aside"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.fillHeight: true
            enabled: page.hasReadings
            text: qsTr("Set a reading aside")
            onClicked: aside.open()
        }
        BigButton {
            objectName: "tape-done"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.fillHeight: true
            enabled: page.hasReadings
            text: qsTr("Done")
            onClicked: page.back()
        }
    }

    ReadingsSheet { id: aside; objectName: "readings-sheet"; athlete: page.athlete; readings: page.athlete.readings }
}
