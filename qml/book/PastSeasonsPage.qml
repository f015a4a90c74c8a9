// SPDX-License-Identifier: Apache-2.0
// Seasons that are over, the latest first: when they ran, who had helmets, what was missing at the close. A touch opens one.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property PastModel past

    signal chosen(string season)

    title: qsTr("Past seasons")
    hasBack: true
    Component.onCompleted: page.past.begin()
    Component.onDestruction: page.past.leave()

    Notice { objectName: "past-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.past.trouble }
    ProgressStrip {
        objectName: "past-progress"
        Layout.fillWidth: true
        visible: slow.isOver && page.past.progress >= 0
        text: qsTr("Reading the log")
        progress: page.past.progress
        onStopped: page.back()
        // A read that is done at once shows no strip.
        Timer { id: slow; property bool isOver: false; interval: 200; running: page.past.progress >= 0 && !isOver; onTriggered: isOver = true }
    }
    Words { objectName: "past-empty"; Layout.fillWidth: true; visible: text.length > 0; text: page.past.emptyWords; tone: "quiet" }
    Repeater {
        model: page.past.seasons
        WidePanel {
            required property var modelData
            objectName: "past-" + modelData.name
            Layout.fillWidth: true
            title: modelData.title
            detail: modelData.detail
            more: modelData.more.length > 0 ? modelData.note + ". " + modelData.more : modelData.note
            onClicked: page.chosen(modelData.name)
        }
    }
}
