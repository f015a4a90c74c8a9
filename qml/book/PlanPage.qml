// SPDX-License-Identifier: Apache-2.0
// The year in helmets: what lapses, what goes out and when, what to order for the next season, and what all that rests on.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property PlanModel plan

    component Section: ColumnLayout {
        id: section
        property string title: ""
        property string nothing: ""
        property var rows: []
        Layout.fillWidth: true
        spacing: Theme.grid
        Words { Layout.fillWidth: true; text: section.title; size: "head"; Accessible.role: Accessible.Heading }
        Words { Layout.fillWidth: true; visible: section.rows.length === 0; text: section.nothing; tone: "quiet" }
        Repeater {
            model: section.rows
            Card {
                id: card
                required property var modelData
                Layout.fillWidth: true
                tone: modelData.tone === "plain" ? "" : modelData.tone
                Column {
                    width: parent.width
                    spacing: Theme.grid / 2
                    Words { width: parent.width; text: card.modelData.title; bold: true; tone: card.modelData.tone }
                    Words { width: parent.width; text: card.modelData.detail; size: "small" }
                }
            }
        }
    }

    title: qsTr("Plan")
    subtitle: plan.title
    hasBack: true
    Component.onCompleted: plan.begin()

    Notice { objectName: "plan-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.plan.trouble }
    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 && !Theme.stacks ? 3 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        ChipGrid { objectName: "cover"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("Chance that a size is enough"); choices: page.plan.covers; onChosen: name => page.plan.chooseCover(name) }
        ChipGrid { objectName: "returns"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("Athletes who come back"); choices: page.plan.returns; onChosen: name => page.plan.chooseReturns(name) }
        ChipGrid { objectName: "turnaround"; Layout.fillWidth: true; Layout.preferredWidth: 1; label: qsTr("Away when sent out"); choices: page.plan.turnarounds; onChosen: name => page.plan.chooseTurnaround(name) }
    }
    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 && !Theme.stacks ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.margin
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.margin
            Section { objectName: "missing"; visible: rows.length > 0; title: qsTr("Short"); rows: page.plan.missing }
            Section { objectName: "orders"; title: qsTr("Order for the next season"); nothing: qsTr("No size is known to be needed."); rows: page.plan.orders }
            Words { Layout.fillWidth: true; text: qsTr("What it costs is left to you."); size: "small"; tone: "quiet" }
            Section { objectName: "batches"; title: qsTr("Send out"); nothing: qsTr("Nothing to send out."); rows: page.plan.batches }
            Section { objectName: "lapses"; title: qsTr("What lapses"); nothing: qsTr("Nothing lapses through the next season."); rows: page.plan.lapses }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Theme.gap
            Words { Layout.fillWidth: true; text: qsTr("Needed and good, by size"); size: "head"; Accessible.role: Accessible.Heading }
            Bars { objectName: "size-bars"; Layout.fillWidth: true; rows: page.plan.sizes }
            Words { Layout.fillWidth: true; Layout.topMargin: Theme.gap; text: qsTr("Certified at the start of each month"); size: "head"; Accessible.role: Accessible.Heading }
            Words { Layout.fillWidth: true; text: qsTr("As labels stand, by their earliest day, with nothing sent out."); size: "small"; tone: "quiet" }
            Bars { objectName: "month-bars"; Layout.fillWidth: true; joined: true; rows: page.plan.months }
        }
    }
    Words { Layout.fillWidth: true; text: qsTr("What this rests on"); size: "head"; Accessible.role: Accessible.Heading }
    Repeater {
        model: page.plan.assumptions
        Words { required property string modelData; Layout.fillWidth: true; text: modelData; size: "small"; tone: "quiet" }
    }
    Words { Layout.fillWidth: true; text: qsTr("The maker's instructions and the rules of your league come first."); size: "small"; tone: "see" }
}
