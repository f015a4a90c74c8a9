// SPDX-License-Identifier: Apache-2.0
// What passes between this device and others. So far: what athletes said on phones of their own, by file.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property PhonesModel phones
    readonly property var dialog: chooser.item

    function choose(): void {
        if (chooser.status === Loader.Null)
            chooser.setSource("FileChooser.qml", { title: qsTr("Choose the file of a phone"), nameFilters: [qsTr("Files of phones (*.json)"), qsTr("All files (*)")] })
        if (page.dialog)
            page.dialog.open()
    }

    title: qsTr("Sharing")
    subtitle: page.phones.joinedWords
    hasBack: true
    Component.onCompleted: page.phones.close()

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.phones.refusal }
    Notice { objectName: "remark"; Layout.fillWidth: true; kind: "good"; text: page.phones.remark }
    Card {
        Layout.fillWidth: true
        Column {
            width: parent.width
            spacing: Theme.grid
            Words { width: parent.width; text: qsTr("What an athlete's phone wrote"); size: "head" }
            TextEntry {
                id: path
                objectName: "path"
                width: parent.width
                label: qsTr("Take in from a file")
                hint: qsTr("File")
                onAccepted: text => page.phones.takeIn(text)
            }
            AnswerBar {
                objectName: "fileAnswers"
                width: parent.width
                large: false
                answers: [{ name: "choose", text: qsTr("Choose a file"), sign: "search" }, { name: "take-in", text: qsTr("Take it in"), enabled: path.text.trim().length > 0 && !page.phones.isBusy }]
                onAnswered: name => { if (name === "choose") page.choose(); else page.phones.takeIn(path.text) }
            }
            Words {
                width: parent.width
                text: qsTr("The same file twice changes nothing. An answer for the phone is written beside it: give it back. A code for a phone is shown under Athletes, Change.")
                size: "small"
                tone: "quiet"
            }
        }
    }
    Loader { id: chooser; objectName: "chooser"; visible: false }
    Connections {
        target: chooser.item
        function onChosen(file: string): void { page.phones.takeIn(file) }
    }
}
