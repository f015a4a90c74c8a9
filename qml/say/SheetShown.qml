// SPDX-License-Identifier: Apache-2.0
// A recovery key that was just made: on the glass until it is put away, and in a file to print.
import QtQuick
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Column {
    id: frame

    required property RecoveryModel recovery

    spacing: Theme.gap
    Words { width: parent.width; text: qsTr("This key lets one admin set a new code when every code is forgotten. Keep it on paper, under lock and key, away from this tablet.") }
    Card {
        width: parent.width
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { width: parent.width; text: qsTr("Recovery key"); size: "small"; tone: "quiet" }
            Words { objectName: "recovery-key"; width: parent.width; text: frame.recovery.key; size: "title" }
        }
    }
    Notice { width: parent.width; kind: "attention"; text: frame.recovery.trouble.length > 0 ? qsTr("%1. Write the key down.").arg(frame.recovery.trouble) : "" }
    Words {
        width: parent.width
        visible: frame.recovery.place.length > 0
        text: qsTr("The sheet to print: %1").arg(frame.recovery.place)
    }
    Words { width: parent.width; size: "small"; tone: "quiet"; text: qsTr("Print it and delete the file, or write the key down. Nobody can read it from the Book again. Every sheet made before is void. Do not photograph it.") }
}
