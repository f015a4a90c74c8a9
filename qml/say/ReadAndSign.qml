// SPDX-License-Identifier: Apache-2.0
// The yearly warning in the athlete's hands, or a parent's: read to its end, initials, then a staff code as witness. No other way out.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property WarningModel warning
    required property LockModel lock
    readonly property bool isReading: warning.step === "read"
    property bool isRead: false

    // Read to its end once: a short text is read when it stands there in full.
    function look(): void {
        const isLaidOut = sentences.height > Theme.touch && scrollArea.height > 0 && scrollArea.contentHeight >= sentences.height
        if (isReading && isLaidOut && scrollArea.contentY + scrollArea.height >= scrollArea.contentHeight - Theme.gap)
            isRead = true
    }

    title: isReading ? qsTr("Yearly warning") : qsTr("Seen by staff")
    subtitle: warning.asGuardian ? qsTr("Number %1, for the parent or guardian to read and sign").arg(warning.jersey) : qsTr("Number %1, to read and sign").arg(warning.jersey)
    headerRight: BigButton {
        objectName: "sign-language"
        visible: page.isReading
        text: page.warning.language === "es" ? qsTr("English") : qsTr("Español")
        onClicked: page.warning.language = page.warning.language === "es" ? "en" : "es"
    }
    hasBack: !isReading
    onBack: warning.again()
    Component.onCompleted: Qt.callLater(look)
    Keys.onReleased: event => { if (event.key === Qt.Key_Back || event.key === Qt.Key_Escape) event.accepted = true }

    Words {
        id: sentences
        objectName: "warning-text"
        Layout.fillWidth: true
        visible: page.isReading
        text: page.warning.text
        size: "body"
        font.pixelSize: Theme.headSize
        font.bold: false
        lineHeight: 1.25
    }
    Item { objectName: "sign-end"; visible: page.isReading; Layout.fillWidth: true; implicitHeight: 1 }
    CodePad {
        objectName: "witness-pad"
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        Layout.alignment: Qt.AlignHCenter
        visible: !page.isReading && page.warning.needsCode
        lock: page.lock
        enterText: qsTr("I saw it signed")
    }
    Words {
        Layout.fillWidth: true
        visible: !page.isReading
        text: qsTr("Give the tablet to staff. The code of whoever saw it signed makes it count.")
    }
    Connections {
        target: page.scrollArea
        function onContentYChanged(): void { page.look() }
        function onContentHeightChanged(): void { Qt.callLater(page.look) }
    }
    foot: [
        Notice { Layout.fillWidth: true; kind: "attention"; text: page.warning.trouble },
        Words { Layout.fillWidth: true; visible: page.isReading && !page.isRead; text: qsTr("Read to the end, then sign."); tone: "quiet" },
        TextEntry {
            id: initials
            objectName: "sign-initials"
            Layout.fillWidth: true
            visible: page.isReading && page.isRead
            label: page.warning.asGuardian ? qsTr("Initials of the parent or guardian") : qsTr("Your initials")
            maximumLength: 4
            inputMethodHints: Qt.ImhUppercaseOnly | Qt.ImhNoPredictiveText
            onEdited: page.lock.touched()
            onAccepted: text => page.warning.sign(text)
        },
        BigButton {
            objectName: "sign-read"
            Layout.fillWidth: true
            visible: page.isReading && page.isRead
            kind: "primary"
            large: true
            enabled: initials.text.trim().length > 0
            text: page.warning.asGuardian ? qsTr("I have read this") : qsTr("I have read this and the label on my helmet")
            onClicked: page.warning.sign(initials.text)
        },
        BigButton {
            objectName: "sign-witness"
            Layout.fillWidth: true
            visible: !page.isReading && !page.warning.needsCode
            kind: "primary"
            large: true
            text: qsTr("I saw it signed")
            onClicked: page.warning.witnessed()
        },
        BigButton {
            objectName: "sign-leave"
            Layout.fillWidth: true
            kind: "quiet"
            text: qsTr("Not now: back to staff")
            onClicked: page.warning.leave()
        }
    ]
}
