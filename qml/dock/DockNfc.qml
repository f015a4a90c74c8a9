// SPDX-License-Identifier: Apache-2.0
// The device's NFC reader as a scanner: one touch turns it on, one sentence says what to do or why a tag was not read. Where the device has
// none there is nothing to touch. While a unit is on the table only trouble shows; the reader goes on waiting.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: reader

    required property NfcModel nfc
    property bool brief: false            // a unit is on the table

    visible: reader.nfc.hasReader && (!reader.brief || reader.nfc.isTrouble)
    spacing: Theme.grid

    BigButton {
        objectName: "nfcOn"
        width: parent.width
        visible: !reader.brief && !reader.nfc.isOn
        text: qsTr("Scan by NFC")
        onClicked: reader.nfc.start()
    }
    Notice { objectName: "nfcTrouble"; width: parent.width; kind: "attention"; text: reader.nfc.isTrouble ? reader.nfc.words : "" }
    Words { objectName: "nfcWords"; width: parent.width; visible: text.length > 0; text: reader.nfc.isTrouble || reader.brief ? "" : reader.nfc.words; bold: true }
    BigButton {
        objectName: "nfcOff"
        width: parent.width
        visible: !reader.brief && reader.nfc.isOn
        kind: "quiet"
        text: qsTr("NFC off")
        onClicked: reader.nfc.stop()
    }
    readonly property bool isCovered: Glass.isCovered
    onIsCoveredChanged: if (isCovered) nfc.stop()
    Component.onDestruction: reader.nfc.stop()
}
