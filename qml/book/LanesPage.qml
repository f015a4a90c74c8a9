// SPDX-License-Identifier: Apache-2.0
// Helmets by the lane they stood in, week by week: where a season went, and whether it is getting better. The figures of one week are a
// touch away.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property LanesModel lanes

    title: qsTr("Lanes week by week")
    hasBack: true
    Component.onCompleted: lanes.begin()
    Component.onDestruction: lanes.leave()

    Notice { objectName: "lanes-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.lanes.trouble }
    ProgressStrip {
        objectName: "lanes-progress"
        Layout.fillWidth: true
        visible: slow.isOver && page.lanes.progress >= 0
        text: qsTr("Reading the log")
        progress: page.lanes.progress
        onStopped: page.back()
        // A read that is done at once shows no strip.
        Timer { id: slow; property bool isOver: false; interval: 200; running: page.lanes.progress >= 0 && !isOver; onTriggered: isOver = true }
    }
    Words { objectName: "lanes-empty"; Layout.fillWidth: true; visible: text.length > 0; text: page.lanes.emptyWords; tone: "quiet" }
    GridLayout {
        Layout.fillWidth: true
        visible: page.lanes.columns.length > 0
        columns: page.width >= 900 && !Theme.stacks ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.margin
        Columns {
            objectName: "lane-columns"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.alignment: Qt.AlignTop
            plotHeight: Theme.phone ? 220 : 340
            columns: page.lanes.columns
            chosen: page.lanes.chosen
            description: page.lanes.rule
            onPicked: column => page.lanes.choose(column)
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.grid
            Stepper {
                objectName: "lane-week"
                Layout.fillWidth: true
                from: 0
                to: Math.max(0, page.lanes.columns.length - 1)
                value: page.lanes.chosen
                text: page.lanes.chosenTitle
                minusText: qsTr("Week before")
                plusText: qsTr("Week after")
                onMoved: value => page.lanes.choose(value)
            }
            Repeater {
                model: page.lanes.figures
                RowLayout {
                    id: figure
                    required property var modelData
                    objectName: "lane-" + modelData.name
                    Layout.fillWidth: true
                    spacing: Theme.gap
                    Accessible.role: Accessible.StaticText
                    Accessible.name: modelData.title + ": " + modelData.count
                    FilledBar { opacity: figure.modelData.kind.length > 0 ? 1 : 0; Layout.preferredWidth: 34; Layout.preferredHeight: 26; upright: true; kind: figure.modelData.kind; color: Theme.tone(figure.modelData.tone) }
                    Words { Layout.fillWidth: true; text: figure.modelData.title; tone: figure.modelData.tone; Accessible.ignored: true }
                    Words { text: figure.modelData.count; bold: true; Accessible.ignored: true }
                }
            }
        }
    }
    Words { Layout.fillWidth: true; text: page.lanes.rule; size: "small"; tone: "quiet" }
}
