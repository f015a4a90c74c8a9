// SPDX-License-Identifier: Apache-2.0
// What a tag leaves open where helmets are handed in: refused, in no Book, away, or several meant. The next tag puts each of them aside.
import QtQuick
import Snugline.Dock
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Column {
    id: asked

    required property CollectModel collect

    visible: asked.collect.refusal.length + asked.collect.strayWords.length + asked.collect.awayWords.length + asked.collect.asked.length > 0
    spacing: Theme.grid

    Notice {
        objectName: "collect-refusal"
        width: parent.width
        kind: "stop"
        text: asked.collect.refusal
        place: asked.collect.meant.length > 0 ? qsTr("It seems to have sent: %1").arg(asked.collect.meant) : ""
        actionText: asked.collect.meant.length > 0 ? qsTr("Read it as that") : ""
        onActed: asked.collect.takeMeant()
    }
    Notice {
        objectName: "collect-stray"
        width: parent.width
        kind: "attention"
        text: asked.collect.strayWords
        actionText: qsTr("It is ours: take it in, on hold")
        onActed: asked.collect.takeStray()
    }
    Notice {
        objectName: "collect-away"
        width: parent.width
        kind: "attention"
        text: asked.collect.awayWords
        actionText: qsTr("It is back: hand it in")
        onActed: back.open()
    }
    ReturnSheet {
        id: back
        objectName: "return-sheet"
        last: asked.collect.lastReturn
        onReturned: (by, done, paper, isCleaned) => asked.collect.sayBack(by, done, paper, isCleaned)
    }
    Words { width: parent.width; visible: asked.collect.asked.length > 0; text: asked.collect.askedWords; size: "head" }
    Repeater {
        model: asked.collect.asked
        ListRow {
            required property var modelData
            required property int index
            objectName: "collect-asked" + index
            width: asked.width
            title: modelData.title
            detail: modelData.detail
            onClicked: asked.collect.chooseAsked(modelData.unit)
        }
    }
    BigButton {
        objectName: "collect-aside"
        width: parent.width
        kind: "quiet"
        text: qsTr("Put aside, nothing is written")
        onClicked: asked.collect.putAside()
    }
}
