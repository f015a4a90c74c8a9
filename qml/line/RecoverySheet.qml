// SPDX-License-Identifier: Apache-2.0
// The recovery sheet, made by an admin.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Say

PageFrame {
    id: page

    required property Shell shell
    readonly property RecoveryModel recovery: shell.recovery
    readonly property bool isShown: recovery.step === "sheet"

    title: qsTr("Recovery sheet")
    subtitle: recovery.made.length > 0 ? recovery.made : qsTr("None was made yet")
    hasBack: !isShown
    Component.onCompleted: recovery.leave()
    Component.onDestruction: recovery.leave()

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.isShown ? "" : page.recovery.trouble }
    Words {
        Layout.fillWidth: true
        visible: !page.isShown
        text: qsTr("When every admin's code is forgotten, the key on this sheet lets one admin set a new one. It works once. Without it a forgotten code locks the app for good.")
    }
    Words {
        Layout.fillWidth: true
        visible: !page.isShown && page.recovery.made.length > 0
        text: qsTr("A new sheet makes every one before it void.")
    }
    Words { Layout.fillWidth: true; visible: !page.isShown && text.length > 0; tone: "quiet"; text: Bearer.adminOnly }
    SheetShown { Layout.fillWidth: true; visible: page.isShown; recovery: page.recovery }
    foot: [
        BigButton {
            objectName: "recovery-make"
            Layout.fillWidth: true
            visible: !page.isShown
            enabled: page.recovery.mayMake && !page.recovery.isBusy
            kind: "primary"
            large: true
            text: page.recovery.made.length > 0 ? qsTr("Make a new sheet") : qsTr("Make the sheet")
            onClicked: page.recovery.make()
        },
        BigButton {
            objectName: "recovery-kept"
            Layout.fillWidth: true
            visible: page.isShown
            kind: "primary"
            large: true
            text: qsTr("I keep it on paper")
            onClicked: {
                page.recovery.finish()
                page.back()
            }
        }
    ]
}
