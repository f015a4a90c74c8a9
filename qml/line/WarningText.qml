// SPDX-License-Identifier: Apache-2.0
// The team's own text of the yearly warning, in English and Spanish.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property Shell shell
    readonly property WarningModel warning: shell.warning
    property bool asksAnew: false
    readonly property bool isChanged: english.text !== warning.englishText || spanish.text !== warning.spanishText

    title: qsTr("Yearly warning")
    subtitle: warning.setWords
    hasBack: true
    Component.onCompleted: {
        warning.forgetTrouble()
        english.text = warning.englishText
        spanish.text = warning.spanishText
    }

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.warning.trouble }
    Words { Layout.fillWidth: true; visible: page.warning.openWords.length > 0; text: page.warning.openWords; tone: "see"; bold: true }
    Words { Layout.fillWidth: true; size: "small"; tone: "quiet"; text: qsTr("Read and signed once a season by the athlete, and by a parent or guardian of a minor. Whoever signed keeps what they signed: the Book holds every text by its hash. Ask who answers for it at your school before you change it.") }
    TextPage { id: english; objectName: "text-en"; Layout.fillWidth: true; label: qsTr("In English"); maximumLength: page.warning.textMost }
    TextPage { id: spanish; objectName: "text-es"; Layout.fillWidth: true; label: qsTr("In Spanish; empty where it is not offered"); maximumLength: page.warning.textMost }
    Words { Layout.fillWidth: true; visible: page.isChanged; text: qsTr("Whoever signed already this season"); bold: true }
    ChoiceRow {
        objectName: "ask-anew"
        Layout.fillWidth: true
        visible: page.isChanged
        label: qsTr("Whoever signed already this season")
        choices: [{ name: "stands", text: qsTr("Stays signed") }, { name: "anew", text: qsTr("Signs anew") }]
        current: page.asksAnew ? "anew" : "stands"
        onChosen: name => page.asksAnew = name === "anew"
    }
    Words { Layout.fillWidth: true; visible: page.warning.place.length > 0; text: qsTr("The form to print: %1").arg(page.warning.place) }
    foot: [
        BigButton {
            objectName: "text-keep"
            Layout.fillWidth: true
            visible: page.isChanged
            kind: "primary"
            text: qsTr("Keep this text")
            detail: Bearer.adminOnly
            enabled: Bearer.isAdmin && (english.text.trim().length > 0 || spanish.text.trim().length > 0) && !page.warning.isBusy
            onClicked: page.warning.setTexts(english.text, spanish.text, page.asksAnew)
        },
        BigButton {
            objectName: "text-form"
            Layout.fillWidth: true
            visible: !page.isChanged
            text: qsTr("Form to sign at home")
            detail: qsTr("A PDF with lines for the signatures")
            onClicked: page.warning.printForm()
        }
    ]
}
