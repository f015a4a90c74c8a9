// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing

PageFrame {
    id: page
    property string mode: "day"
    property real scaled: 1
    property string hair: "dry"
    property string focusPart: ""
    property string motion: ""
    property bool brow: true
    property real gap: 25.4
    property bool marks: false
    Binding { target: Theme; property: "mode"; value: page.mode }
    Binding { target: Theme; property: "textScale"; value: page.scaled }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(page.width) }
    Binding { target: Theme; property: "reducedMotion"; value: true }
    title: "Brow gap"
    subtitle: "88 Lindqvist · helmet H-0207"
    hasBack: true
    edge: StepLadder {
        anchors.fill: parent
        layout: page.edgeLayout
        current: 2
        steps: ["hair", "size", "brow", "ears", "nape", "chin", "straps", "jaw", "crown", "sides", "hold"].map((n, i) => ({ name: n, text: n, state: i < 2 ? "done" : i === 6 ? "again" : "open" }))
    }
    drawing: Card {
        anchors.fill: parent
        HeadProfile {
            anchors.fill: parent
            browShown: page.brow; browDraggable: page.brow; browText: Math.round(page.gap) + " mm"; browText2: "1 in"
            browGap: page.gap
            hair: page.hair
            focusPart: page.focusPart
            motion: page.motion
            touchParts: page.marks ? PartWords.marks : []
            findings: page.marks ? ({ "jaw": "over", "ears": "snug", "nape": "under", "straps": "fault", "crown": "said-over" }) : ({})
            onBrowGapMoved: mm => page.gap = mm
        }
    }
    Stepper { Layout.fillWidth: true; label: "Brow gap"; value: page.gap; text: Math.round(page.gap) + " mm" }
    Words { Layout.fillWidth: true; tone: "quiet"; size: "small"; text: "Drag the front edge to where it sits. Athlete looks straight ahead, chin strap done up." }
    foot: AnswerBar { Layout.fillWidth: true; answers: [{ name: "low", text: "Sits low" }, { name: "snug", text: "On the mark" }, { name: "high", text: "Sits high" }] }
}
