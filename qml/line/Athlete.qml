// SPDX-License-Identifier: Apache-2.0
// One athlete: the fit as a drawing with what was found, what is due, the helmet, the head, the timeline, and what can be done.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    property string what: ""
    readonly property AthleteModel athlete: shell.athlete
    readonly property bool hasHelmet: athlete.helmet.serial !== undefined
    property var why: ({})
    signal go(string screen, string what)

    function act(name: string): void {
        if (name === "choose")
            go("swap", athlete.athleteId)
        else
            shell.guide.start(athlete.athleteId, name)
    }

    title: athlete.jersey + "  " + athlete.name
    subtitle: athlete.summary
    hasBack: true
    Component.onCompleted: {
        athlete.open(what)
        shell.unwell.open(what)
    }

    Connections {
        target: page.shell.guide
        function onBegun(): void { page.go("guide", "") }
    }
    drawing: [
        HelmetPoints {
            objectName: "drawn-points"
            anchors.fill: parent
            visible: page.athlete.isOfPoints
            touchParts: []
            findings: page.athlete.helmet.found ?? ({})
            description: page.athlete.helmet.status ?? ""
        },
        HeadProfile {
            anchors.fill: parent
            visible: !page.athlete.isOfPoints
            helmetOn: page.hasHelmet
            findings: page.athlete.findings
            hasCrownAir: page.athlete.sheet.hasCrownAir ?? false
            hasSideAir: page.athlete.sheet.hasSideAir ?? false
            hasJawAir: page.athlete.sheet.hasJawAir ?? false
            strapPoints: page.athlete.sheet.strapPoints ?? 4
            hasRecertLabel: page.athlete.sheet.hasRecertLabel ?? true
            description: page.athlete.summary
        }
    ]
    drawingShare: 0.36

    Notice { Layout.fillWidth: true; kind: "attention"; text: page.shell.guide.trouble.length > 0 ? page.shell.guide.trouble : page.athlete.trouble }
    UnwellCard {
        objectName: "unwell-said"
        Layout.fillWidth: true
        words: page.shell.unwell.words
        acts: page.shell.unwell.acts
        trouble: page.shell.unwell.trouble
        onActed: name => page.shell.unwell.act(name)
    }
    Words {
        objectName: "do-not-wear"
        Layout.fillWidth: true
        visible: page.athlete.isStop
        text: qsTr("Do not wear")
        size: "title"
        font.pixelSize: Theme.titleSize * 1.6
        bold: true
        tone: "stop"
        Accessible.role: Accessible.Heading
    }
    // A plain column: a layout of Qt 6.4 may leave rows where they were when the list behind them is another.
    Column {
        id: reasons
        Layout.fillWidth: true
        spacing: Theme.grid / 2
        Repeater {
            model: page.athlete.reasons
            Loader {
                id: reason
                required property var modelData
                required property int index
                width: reasons.width
                sourceComponent: modelData.port.length > 0 ? whyEntry : wordsEntry

                Component {
                    id: wordsEntry
                    Words { text: reason.modelData.text; tone: reason.modelData.tone; bold: reason.index === 0 }
                }
                Component {
                    id: whyEntry
                    BigButton {
                        objectName: (reason.modelData.about === "leak" ? "why-leak-" : "why-") + reason.modelData.port
                        sign: "inform"
                        tone: reason.modelData.tone
                        text: reason.modelData.text
                        detail: qsTr("Why? The arithmetic")
                        onClicked: {
                            page.why = page.athlete.why(reason.modelData.port, reason.modelData.about)
                            whySheet.open()
                        }
                    }
                }
            }
        }
        Words { width: reasons.width; visible: text.length > 0; text: page.athlete.nothingDue }
    }
    // What the seven points stop is not shown under nine good marks.
    LargeStrip {
        id: strip
        Layout.fillWidth: true
        visible: page.hasHelmet && !page.athlete.isOfPoints
        places: page.athlete.places
        onPlaceTouched: name => current = current === name ? "" : name
    }
    HelmetCard { Layout.fillWidth: true; visible: page.hasHelmet; helmet: page.athlete.helmet; points: page.athlete.points; onOpened: page.go("book", page.athlete.helmet.id) }
    HeadCard {
        Layout.fillWidth: true
        athlete: page.athlete
        tapes: page.athlete.tapes
        sizes: page.athlete.sizes
        onTapeWanted: page.go("tape", page.athlete.athleteId)
    }
    WarningCard { Layout.fillWidth: true; warning: page.shell.warning; athleteId: page.what }
    Card {
        Layout.fillWidth: true
        visible: page.athlete.timeline.length > 0
        ColumnLayout {
            width: parent.width
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: qsTr("Timeline"); size: "head" }
            Repeater {
                model: page.athlete.timeline
                ColumnLayout {
                    id: entry
                    required property var modelData
                    Layout.fillWidth: true
                    spacing: 0
                    Words { Layout.fillWidth: true; text: entry.modelData.text }
                    Words { Layout.fillWidth: true; text: entry.modelData.who.length > 0 ? entry.modelData.when + ", " + entry.modelData.who : entry.modelData.when; size: "small"; tone: "quiet" }
                }
            }
        }
    }
    BigButton {
        objectName: "whole-record"
        Layout.fillWidth: true
        kind: "quiet"
        text: qsTr("Whole record, to show or hand out")
        onClicked: page.go("record", page.what)
    }
    WhySheet { id: whySheet; why: page.why }

    foot: [
        UndoBar { Layout.fillWidth: true; text: page.athlete.lastWords; onUndone: page.athlete.undo() },
        ThumbAnswers {
            objectName: "acts"
            Layout.fillWidth: true
            large: false
            answers: page.athlete.actions.map(a => Bearer.isStaff || a.name === "look" || a.name === "resume" ? a : ({ name: a.name, text: a.text, detail: Bearer.staffOnly, enabled: false }))
            onAnswered: name => page.act(name)
        }
    ]
}
