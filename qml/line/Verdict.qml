// SPDX-License-Identifier: Apache-2.0
// What came of the check: the word, why, what happens next and when, who signed; then the next athlete.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property GuideModel guide: shell.guide
    readonly property var verdict: guide.verdict
    signal go(string screen, string what)
    signal replace(string screen, string what)
    signal home(string screen)

    title: guide.kind
    subtitle: guide.who

    Connections {
        target: page.guide
        function onChanged(): void {
            if (page.guide.stage !== "verdict" && page.guide.stage !== "none")
                page.replace("guide", "")
        }
    }
    Card {
        Layout.fillWidth: true
        tone: page.verdict.tone ?? ""
        ColumnLayout {
            width: parent.width
            spacing: Theme.grid
            RowLayout {
                Layout.fillWidth: true
                spacing: Theme.gap
                IconStroke {
                    name: page.verdict.verdict === "fits" ? "check" : page.verdict.verdict === "do-not-wear" ? "stop" : "attention"
                    color: Theme.tone(page.verdict.tone ?? "plain")
                    side: Theme.titleSize * 1.4
                }
                Heading {
                    objectName: "verdict-word"
                    Layout.fillWidth: true
                    text: page.verdict.word ?? ""
                    most: Theme.titleSize * 1.6
                    tone: page.verdict.tone ?? "plain"
                }
            }
            Repeater {
                model: page.verdict.reasons ?? []
                Words { required property string modelData; Layout.fillWidth: true; text: modelData }
            }
            PointStrip { objectName: "stop-points"; Layout.topMargin: Theme.grid; implicitWidth: 196; implicitHeight: 56; visible: (page.verdict.points ?? []).length > 0; points: page.verdict.points ?? [] }
            FitStrip { visible: (page.verdict.points ?? []).length === 0; Layout.topMargin: Theme.grid; implicitWidth: 252; implicitHeight: 88; marks: page.verdict.strip ?? [] }
        }
    }
    Words { Layout.fillWidth: true; text: page.verdict.next ?? ""; size: "head" }
    Words { Layout.fillWidth: true; text: page.verdict.signed ?? ""; tone: "quiet" }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: page.verdict.unseen ?? ""; size: "small"; tone: "quiet" }
    Words { Layout.fillWidth: true; text: page.verdict.caution ?? ""; size: "small"; tone: "quiet" }
    Notice { Layout.fillWidth: true; kind: "attention"; text: page.guide.trouble }

    foot: [
        UndoBar {
            Layout.fillWidth: true
            text: page.guide.canUndo ? page.guide.undoWords : ""
            onUndone: page.guide.undo()
        },
        AnswerBar {
            Layout.fillWidth: true
            answers: page.verdict.offersHelmet
                     ? [{ name: "choose-helmet", text: qsTr("Swap helmet"), kind: "primary" }, { name: "next-athlete", text: qsTr("Next athlete") }]
                     : [{ name: "next-athlete", text: qsTr("Next athlete"), kind: "primary" }]
            onAnswered: name => {
                if (name === "choose-helmet") {
                    page.replace("swap", page.guide.athleteId)
                } else if (page.shell.line.isWalking) {
                    page.shell.line.walkOn()
                    page.go("turn", "")
                } else {
                    page.home("line")
                }
            }
        }
    ]
}
