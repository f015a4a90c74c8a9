// SPDX-License-Identifier: Apache-2.0
// The guide: one question a screen. The drawing is the control, at most three large answers stand at the thumb, undo is one touch away.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Models
import Snugline.Parts
import Snugline.Say
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property GuideModel guide: shell.guide
    readonly property bool hasEntry: guide.entry.label !== undefined
    property string asked: ""             // the question that stands; a new one begins at its top
    signal go(string screen, string what)
    signal replace(string screen, string what)
    signal home(string screen)

    title: guide.title
    subtitle: phone ? guide.who : guide.kind + "  " + guide.who
    hasBack: true
    steadyFoot: true
    backText: qsTr("Leave the check open")
    headerRight: BigButton {
        objectName: "more"
        leftPadding: text.length > 0 ? Theme.gap : Theme.grid
        rightPadding: leftPadding
        sign: "more"
        text: page.phone || Theme.stacks ? "" : qsTr("More")
        spokenName: qsTr("More")
        onClicked: more.open()
    }
    edge: StepLadder {
        objectName: "ladder"
        anchors.fill: parent
        steps: page.guide.ladder
        current: page.guide.ladderAt
        layout: page.edgeLayout
        onStepTouched: name => page.guide.openStep(name)
    }
    drawing: GuideDrawing {
        anchors.fill: parent
        guide: page.guide
        onPartTouched: name => page.guide.choose(name)
        onGapMoved: mm => page.guide.moveGap(mm)
    }
    // Where a number is entered the pad takes the drawing's place on a phone.
    // With very large words a phone has room for the question or the drawing; every drawing also works by its buttons.
    showsDrawing: !(hasEntry && (phone || !landscape && (Theme.stacks || height < 900))) && !(phone && (Theme.stacks || isShort && (guide.stage === "fitted" || guide.isBrow && guide.notice.length > 0)))
    readonly property bool isShort: phone && height < 720
    readonly property real leastShare: guide.stage === "fitted" ? 0.26 : guide.stage === "stop" || hasEntry ? 0.2 : guide.stage === "advice" || guide.choices.length > 0 ? 0.4 : 0.55
    // On a phone a drawing that is the control, or that shows where to put the hand, gets 300 px wherever that leaves room for the question.
    drawingShare: isShort && (guide.notice.length > 0 || guide.stage === "advice") ? 0.3 : phone && (guide.isBrow || guide.stage === "advice") ? Math.max(leastShare, Math.min(0.6, 300 / Math.max(1, above))) : leastShare

    Connections {
        target: page.guide
        function onChanged(): void {
            if (page.asked !== page.guide.stage + page.guide.ask)
                page.scrollArea.contentY = 0
            page.asked = page.guide.stage + page.guide.ask
            if (page.guide.stage === "verdict")
                page.replace("verdict", "")
        }
        function onLeft(): void { page.back() }
        function onWhoWanted(): void { page.go("people", "sign") }
    }
    Component.onCompleted: if (guide.stage === "verdict") Qt.callLater(() => page.replace("verdict", ""))

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.guide.trouble; actionText: qsTr("Understood"); onActed: page.guide.dismissTrouble() }
    Notice { Layout.fillWidth: true; kind: "inform"; text: page.guide.notice }
    Words {
        objectName: "ask"
        Layout.fillWidth: true
        text: page.guide.ask
        size: page.hasEntry && !page.phone && page.split ? "body" : "head"   // the number pad needs the room
        bold: true
        tone: page.guide.stage === "stop" ? "stop" : "plain"
    }
    Stepper {
        objectName: "gap-stepper"
        Layout.alignment: Qt.AlignHCenter
        visible: page.guide.isBrow
        label: page.guide.title
        known: page.guide.isGapKnown
        value: 0
        from: -1
        to: 1
        text: page.guide.gapText
        minusText: qsTr("Lower")
        plusText: qsTr("Higher")
        onMoved: value => page.guide.nudgeGap(value)
    }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: page.guide.hint; tone: "quiet" }
    AirEntry {
        objectName: "air-entry"
        Layout.fillWidth: true
        visible: page.hasEntry
        focus: page.hasEntry
        entry: page.guide.entry
        live: Loader {
            width: parent ? parent.width : 0
            active: page.hasEntry && page.shell.gauge.isChosen
            visible: active
            sourceComponent: GaugeReadout {
                objectName: "gauge-face"
                gauge: page.shell.gauge
                takeText: qsTr("Use this reading")
                onUnitChosen: name => page.shell.gauge.setUnit(name)
                onZeroWanted: page.shell.gauge.zero()
                onTaken: page.guide.takeLive()
                Component.onCompleted: page.shell.gauge.attach()
                Component.onDestruction: page.shell.gauge.detach()
            }
        }
        onTyped: digits => page.guide.typeEntry(digits)
        onStepped: steps => page.guide.stepEntry(steps)
        onUnitWanted: page.guide.switchUnit()
    }
    Words { objectName: "pumps"; Layout.fillWidth: true; visible: text.length > 0; text: page.guide.pumps; tone: "info" }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: page.guide.reopens; bold: true; tone: "see" }
    ChoiceTiles { Layout.fillWidth: true; guide: page.guide }
    Words { Layout.fillWidth: true; visible: text.length > 0; text: page.guide.caution; size: "small"; tone: "quiet" }

    foot: [
        ThumbAnswers {
            objectName: "answers"
            Layout.fillWidth: true
            answers: page.guide.answers
            busy: page.guide.isBusy
            liveName: page.guide.isBrow && page.guide.isGapKnown ? "gap" : ""
            liveText: page.guide.gapAnswer
            liveDetail: page.guide.gapFound
            onAnswered: name => page.guide.answer(name)
        },
        GuideAsides { Layout.fillWidth: true; guide: page.guide },
        RedWay { visible: page.guide.stage !== "stop"; onClicked: page.guide.sayUnwell() }
    ]

    GuideMore { id: more; objectName: "more-sheet"; guide: page.guide; onLeft: page.back() }
}
