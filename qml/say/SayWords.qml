// SPDX-License-Identifier: Apache-2.0
// Own words, never needed.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property SayModel say

    title: say.isShared ? say.jersey + "  " + say.initials : say.jersey
    subtitle: qsTr("In your own words, if you like")
    hasBack: true
    backText: qsTr("Back without words")
    onBack: say.backToWhere()

    TextEntry {
        id: entry
        objectName: "say-words"
        focus: true
        Layout.fillWidth: true
        label: qsTr("About the helmet")
        text: page.say.words
        maximumLength: 500
        onEdited: text => page.say.typeWords(text)
        onAccepted: text => page.say.keepWords(text)
    }
    foot: [
        BigButton {
            objectName: "say-keep"
            Layout.fillWidth: true
            kind: "primary"
            text: qsTr("Save these words")
            onClicked: page.say.keepWords(entry.text)
        },
        RedWay { onClicked: page.say.unwell() }
    ]
}
