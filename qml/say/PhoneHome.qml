// SPDX-License-Identifier: Apache-2.0
// The athlete's own phone: the next look, what came of what was said, and the two files that pass between phone and staff.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property PhoneModel own
    readonly property var dialog: chooser.item

    function choose(): void {
        if (chooser.status === Loader.Null)
            chooser.setSource(Qt.resolvedUrl("PhoneChooser.qml"), { title: qsTr("Choose the answer") })
        if (page.dialog)
            page.dialog.open()
    }

    title: qsTr("Number %1").arg(page.own.jersey)
    subtitle: qsTr("This phone speaks for you alone")
    headerRight: BigButton {
        objectName: "phone-language"
        text: page.own.say.otherLanguageText
        onClicked: page.own.say.language = page.own.say.otherLanguage
    }

    Notice { objectName: "phone-trouble"; Layout.fillWidth: true; kind: "attention"; text: page.own.trouble }
    Notice { objectName: "phone-remark"; Layout.fillWidth: true; kind: "good"; text: page.own.remark }
    Card {
        Layout.fillWidth: true
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { objectName: "phone-next"; width: parent.width; text: page.own.next; size: "head"; bold: true }
            Words { width: parent.width; visible: text.length > 0; text: page.own.waiting; tone: "see" }
        }
    }
    Words { Layout.fillWidth: true; visible: page.own.outcomes.length > 0; text: qsTr("What came of what you said"); bold: true }
    Repeater {
        model: page.own.outcomes
        Card {
            id: outcome
            required property string modelData
            Layout.fillWidth: true
            Words { width: parent.width; text: outcome.modelData }
        }
    }
    Card {
        Layout.fillWidth: true
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { width: parent.width; text: qsTr("By file, without a network"); bold: true }
            BigButton {
                objectName: "phone-write"
                width: parent.width
                text: qsTr("Write the file for staff")
                onClicked: page.own.writeReports("")
            }
            TextEntry {
                id: path
                objectName: "phone-path"
                width: parent.width
                label: qsTr("Take in the answer of the staff")
                hint: qsTr("File")
                onAccepted: text => page.own.takeAnswers(text)
            }
            AnswerBar {
                objectName: "phone-answers"
                width: parent.width
                large: false
                answers: [{ name: "choose", text: qsTr("Choose a file"), sign: "search" }, { name: "take", text: qsTr("Take it in"), enabled: path.text.trim().length > 0 }]
                onAnswered: name => { if (name === "choose") page.choose(); else page.own.takeAnswers(path.text) }
            }
        }
    }
    foot: [
        BigButton {
            objectName: "phone-say"
            Layout.fillWidth: true
            kind: "primary"
            large: true
            text: qsTr("Helmet bothering you? Show us where.")
            onClicked: {
                page.own.forget()
                page.own.say.beginOwn()
            }
        },
        RedWay { onClicked: page.own.say.unwell() }
    ]
    Loader { id: chooser; visible: false }
    Connections {
        target: chooser.item
        function onChosen(file: string): void { page.own.takeAnswers(file) }
    }
}
