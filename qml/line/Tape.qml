// SPDX-License-Identifier: Apache-2.0
// Taping a head: one reading after another, each on disk at once; the size they speak for stands beside.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    property string what: ""
    readonly property AthleteModel athlete: shell.athlete
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
    drawingShare: 0.3

    Words { Layout.fillWidth: true; text: page.athlete.tapeAdvice; bold: true }
    Words {
        Layout.fillWidth: true
        visible: page.athlete.readings.length > 0
        text: qsTr("Read so far: %1").arg(page.athlete.readings.map(r => r.text).join(", "))
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
    Repeater {
        model: page.athlete.readings.length > 0 ? page.athlete.sizes : []
        SizeOdds { required property var modelData; Layout.fillWidth: true; size: modelData }
    }
    foot: BigButton {
        objectName: "tape-done"
        Layout.fillWidth: true
        visible: page.athlete.readings.length > 0
        text: qsTr("Done")
        onClicked: page.back()
    }
}
