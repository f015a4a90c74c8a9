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
            Column {
                id: figures
                Layout.fillWidth: true
                spacing: Theme.grid
                Repeater {
                    model: page.lanes.figures
                    Item {
                        id: figure
                        required property var modelData
                        objectName: "lane-" + modelData.name
                        width: figures.width
                        height: Math.max(lane.implicitHeight, 32)
                        Accessible.role: Accessible.StaticText
                        Accessible.name: modelData.title + ": " + modelData.count
                        FilledBar { visible: figure.modelData.kind.length > 0; width: 34; height: 26; anchors.verticalCenter: parent.verticalCenter; upright: true; kind: figure.modelData.kind; color: Theme.tone(figure.modelData.tone) }
                        Words { id: lane; x: 34 + Theme.gap; width: count.x - x - Theme.gap; anchors.verticalCenter: parent.verticalCenter; text: figure.modelData.title; tone: figure.modelData.tone; Accessible.ignored: true }
                        Words { id: count; anchors { right: parent.right; verticalCenter: parent.verticalCenter } text: figure.modelData.count; bold: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
                    }
                }
            }
        }
    }
    Words { Layout.fillWidth: true; text: page.lanes.rule; size: "small"; tone: "quiet" }
}
