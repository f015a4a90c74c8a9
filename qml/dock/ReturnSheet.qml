// SPDX-License-Identifier: Apache-2.0
// A helmet is back from repair or from the firm: by whom, what was done, on which paper, cleaned or not. Nothing is preselected; several
// that come back on one paper are said once and taken over by name.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts

PullSheet {
    id: sheet

    property var last: ({})               // { by, done, paper, isCleaned, words } of the one before in this sitting; empty: none
    property string by: ""
    property string cleaned: ""           // "yes", "no"
    readonly property bool isWhole: by.length > 0 && cleaned.length > 0 && done.text.trim().length > 0 && (by === "us" || paper.text.trim().length > 0)

    signal returned(string by, string done, string paper, bool isCleaned)

    title: qsTr("Back with us")
    onBegan: {
        sheet.by = ""
        sheet.cleaned = ""
        done.clear()
        paper.clear()
    }

    BigButton {
        objectName: "return-as-last"
        Layout.fillWidth: true
        visible: (sheet.last.words ?? "").length > 0
        text: qsTr("As the one before")
        detail: sheet.last.words ?? ""
        onClicked: { sheet.close(); sheet.returned(sheet.last.by, sheet.last.done, sheet.last.paper, sheet.last.isCleaned) }
    }
    ChipGrid {
        objectName: "return-by"
        Layout.fillWidth: true
        label: qsTr("Who put it right?")
        mostColumns: 2
        choices: [
            { name: "by-us", text: qsTr("We did"), chosen: sheet.by === "us" },
            { name: "by-firm", text: qsTr("A workshop"), chosen: sheet.by === "firm" },
            { name: "by-recertifier", text: qsTr("The recertifying firm"), chosen: sheet.by === "recertifier" },
            { name: "by-maker", text: qsTr("Its maker"), chosen: sheet.by === "maker" }
        ]
        onChosen: name => sheet.by = name.slice(3)
    }
    ChipGrid {
        objectName: "return-usual"
        Layout.fillWidth: true
        label: qsTr("What was done?")
        mostColumns: 3
        choices: [qsTr("recertified"), qsTr("faceguard replaced"), qsTr("hardware replaced"), qsTr("liner or air replaced"), qsTr("chin strap replaced"), qsTr("shell replaced")]
            .map(words => ({ name: words, text: words, chosen: done.text === words }))
        onChosen: name => done.text = name
    }
    TextEntry { id: done; objectName: "return-done"; Layout.fillWidth: true; label: qsTr("Or in your own words") }
    TextEntry { id: paper; objectName: "return-paper"; Layout.fillWidth: true; label: sheet.by === "us" ? qsTr("On which paper, if any") : qsTr("On which paper") }
    ChipGrid {
        objectName: "return-cleaned"
        Layout.fillWidth: true
        label: qsTr("Cleaned?")
        mostColumns: 2
        choices: [{ name: "cleaned-yes", text: qsTr("Cleaned"), chosen: sheet.cleaned === "yes" }, { name: "cleaned-no", text: qsTr("Not cleaned yet"), chosen: sheet.cleaned === "no" }]
        onChosen: name => sheet.cleaned = name.slice(8)
    }
    Words { Layout.fillWidth: true; text: qsTr("Everything on it counts as not checked from now on."); tone: "quiet" }
    BigButton {
        objectName: "return-save"
        Layout.fillWidth: true
        kind: "primary"
        enabled: sheet.isWhole
        text: qsTr("It is back")
        onClicked: { sheet.close(); sheet.returned(sheet.by, done.text, paper.text, sheet.cleaned === "yes") }
    }
}
