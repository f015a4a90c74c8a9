// SPDX-License-Identifier: Apache-2.0
// A tag that means several helmets: which one is it? One touch answers.
import QtQuick
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

Column {
    id: asked

    required property DockModel model

    visible: asked.model.asked.length > 0
    spacing: Theme.grid

    Words { objectName: "askedWords"; width: parent.width; text: asked.model.askedWords; size: "head" }
    Repeater {
        model: asked.model.asked
        ListRow {
            required property var modelData
            required property int index
            objectName: "asked" + index
            width: asked.width
            title: modelData.title
            detail: modelData.detail
            onClicked: asked.model.chooseAsked(modelData.unit)
        }
    }
    BigButton {
        objectName: "askedNew"
        width: parent.width
        visible: asked.model.canBeNew
        text: qsTr("None of them: it is new here")
        onClicked: asked.model.chooseAsked("")
    }
    BigButton {
        objectName: "askedNone"
        width: parent.width
        kind: "quiet"
        text: qsTr("Put aside, nothing is written")
        onClicked: asked.model.dropAsked()
    }
}
