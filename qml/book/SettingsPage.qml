// SPDX-License-Identifier: Apache-2.0
// How this device shows things, kept at every touch; and whom the team calls in an emergency, which is part of the Book.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property SettingsModel settings
    property bool hasGauge: false

    signal openGauge()
    signal openScreen(string screen)

    title: qsTr("Settings")
    subtitle: qsTr("Of this device only")
    hasBack: true

    GridLayout {
        Layout.fillWidth: true
        columns: page.width >= 900 ? 2 : 1
        columnSpacing: Theme.margin
        rowSpacing: Theme.margin
        SettingRow {
            title: qsTr("Language")
            choices: [{ name: "en", text: qsTr("English") }, { name: "es", text: qsTr("Español") }]
            current: page.settings.language
            onChosen: name => page.settings.language = name
        }
        SettingRow {
            title: qsTr("Units")
            choices: [{ name: "metric", text: qsTr("Metric"), detail: qsTr("mm, kPa, °C") }, { name: "us", text: qsTr("US"), detail: qsTr("in, psi, °F") }]
            current: page.settings.units === SettingsModel.Us ? "us" : "metric"
            onChosen: name => page.settings.units = name === "us" ? SettingsModel.Us : SettingsModel.Metric
        }
        SettingRow {
            title: qsTr("Theme")
            choices: [{ name: "day", text: qsTr("Day") }, { name: "sun", text: qsTr("Sun") }, { name: "night", text: qsTr("Night") }]
            current: ["day", "sun", "night"][page.settings.theme]
            onChosen: name => page.settings.theme = name === "sun" ? SettingsModel.Sun : name === "night" ? SettingsModel.Night : SettingsModel.Day
        }
        SettingRow {
            title: qsTr("Text size")
            choices: [100, 125, 150, 200].map(p => ({ name: String(p), text: qsTr("%1 %").arg(p) }))
            current: String(page.settings.textPercent)
            onChosen: name => page.settings.textPercent = parseInt(name)
        }
        SettingRow {
            title: qsTr("Names")
            choices: [{ name: "full", text: qsTr("In full") }, { name: "short", text: qsTr("Initials") }]
            current: page.settings.namesAsInitials ? "short" : "full"
            onChosen: name => page.settings.namesAsInitials = name === "short"
        }
        SettingRow {
            title: qsTr("Motion")
            choices: [{ name: "shown", text: qsTr("Shown") }, { name: "still", text: qsTr("Reduced") }]
            current: page.settings.reducedMotion ? "still" : "shown"
            onChosen: name => page.settings.reducedMotion = name === "still"
        }
        SettingRow {
            title: qsTr("Locks after")
            choices: [1, 5, 15, 60].map(m => ({ name: String(m), text: qsTr("%1 min").arg(m) }))
            current: String(page.settings.lockMinutes)
            onChosen: name => page.settings.lockMinutes = parseInt(name)
        }
    }
    BigButton {
        objectName: "gauge"
        Layout.fillWidth: true
        visible: page.hasGauge
        text: qsTr("Gauge")
        detail: qsTr("Choose a Bluetooth gauge, its zero, its unit")
        onClicked: page.openGauge()
    }
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.gap; text: page.settings.teamWords; bold: true }
    EmergencyWords { Layout.fillWidth: true; settings: page.settings }
    BigButton { objectName: "settings-people"; Layout.fillWidth: true; text: qsTr("People"); detail: qsTr("Codes, and the recovery sheet"); onClicked: page.openScreen("people") }
    BigButton { objectName: "settings-warning"; Layout.fillWidth: true; text: qsTr("Yearly warning"); detail: qsTr("Its text, and the form to sign at home"); onClicked: page.openScreen("warning-text") }
    BigButton { objectName: "settings-privacy"; Layout.fillWidth: true; text: qsTr("Privacy"); detail: qsTr("How long names are shown, legal holds"); onClicked: page.openScreen("privacy") }
    Words { Layout.fillWidth: true; text: page.settings.bookWords; tone: "quiet"; size: "small" }
    Words {
        Layout.fillWidth: true
        text: qsTr("The instructions of the helmet's maker and local rules come first. No helmet prevents concussion. Snugline judges equipment, never a person.")
        tone: "quiet"
        size: "small"
    }
}
