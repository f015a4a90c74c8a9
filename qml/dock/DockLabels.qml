// SPDX-License-Identifier: Apache-2.0
// Labels with serials of our own for helmets without a tag: how many, and where the sheet to print lies.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Models

Item {
    id: labels

    required property ScanModel scan

    signal done()                         // the field is waiting for the next scan again

    visible: labels.scan.hasSheets
    implicitHeight: button.implicitHeight
    BigButton {
        id: button
        objectName: "labels"
        width: parent.width
        kind: "quiet"
        text: qsTr("Labels for helmets without a tag")
        onClicked: sheet.open()
    }
    PullSheet {
        id: sheet
        objectName: "labelSheets"
        title: qsTr("Labels to print")
        onEnded: labels.done()
        Words { Layout.fillWidth: true; text: qsTr("Each label has a serial of our own, as a code and in letters, and is given only once. Print it, stick it on the shell, scan it."); tone: "quiet" }
        Words { objectName: "nextSerial"; Layout.fillWidth: true; text: qsTr("The next one is %1").arg(labels.scan.nextSerial); bold: true }
        ChipGrid {
            objectName: "labelCounts"
            Layout.fillWidth: true
            label: qsTr("How many")
            mostColumns: 4
            choices: [24, 48, 96, 192].map(n => ({ name: "labels-" + n, text: String(n) }))
            onChosen: name => labels.scan.writeSheet(parseInt(name.slice(7)))
        }
        Notice { objectName: "sheetWords"; Layout.fillWidth: true; kind: labels.scan.isSheetTrouble ? "attention" : "good"; text: labels.scan.sheetWords }
    }
}
