// SPDX-License-Identifier: Apache-2.0
// The Dock: scan after scan, each unit in service or held. The scan field keeps whatever is typed; the answers stand at the thumb.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing
import Snugline.Models

PageFrame {
    id: page

    required property DockModel model
    property ScanModel scan: null         // none in a program without camera and printer
    readonly property bool isOnTable: page.model.stage !== DockModel.Waiting
    readonly property bool atPoints: page.model.stage === DockModel.Points

    property bool takesPhotos: false
    // What comes of it as it stands, or why something was not done.
    readonly property string saidWords: !page.isOnTable ? "" : page.model.refusal.length > 0 ? page.model.refusal : page.model.outcomeWords
    readonly property string saidTone: page.model.refusal.length > 0 ? "stop" : page.model.isInServiceOpen ? "snug"
        : page.model.isReasonNeeded || page.model.points.every(p => p.state === 0) ? "quiet" : "stop"

    signal openUnit(string unitId)
    signal addPhoto(string unitId)

    function found(): var {
        const findings = {}
        for (const point of page.model.points)
            findings[point.code] = ["unseen", "sound", "fault"][point.state]
        return findings
    }

    title: qsTr("Dock")
    subtitle: (page.model.count === 0 ? qsTr("Nothing taken in today yet")
        : qsTr("Today %1: %2 in service, %3 on hold").arg(page.model.count).arg(page.model.inServiceCount).arg(page.model.heldCount))
        + (page.model.aside.length > 0 ? ". " + qsTr("%1 unfinished").arg(page.model.aside.length) : "")
    hasBack: true
    showsDrawing: page.landscape || !page.phone && page.height >= 900 && Theme.textScale < 1.4 && page.model.stage !== DockModel.What
    fixedDrawing: !page.landscape && page.atPoints ? page.height * 0.2 : 0
    drawingShare: page.isOnTable ? 0.2 : page.model.count > 0 ? 0.3 : 0.5
    Keys.onPressed: event => { event.accepted = field.takeKey(event) }

    headerRight: ScanField {
        id: field
        // Under the title where the header is narrow, beside it elsewhere; it never scrolls away.
        width: page.phone || Theme.stacks && page.width < 900 ? page.width - 2 * Theme.margin : Math.min(560, page.width * 0.5)
        focus: true
        brief: page.isOnTable
        onScanned: text => page.model.scan(text)
    }
    drawing: [
        HelmetPoints {
            objectName: "drawing"
            anchors.fill: parent
            findings: page.isOnTable ? page.found() : ({})
            touchParts: page.atPoints ? PartWords.points : []
            description: page.isOnTable ? qsTr("The helmet on the table with its seven points") : qsTr("A helmet with its seven points")
            onPartTouched: name => page.model.touchPoint(page.model.points.findIndex(p => p.code === name))
        }
    ]

    // With a helmet on the table a refusal stands at the foot: nothing may push the points from under a thumb.
    Notice {
        objectName: "refusal"
        Layout.fillWidth: true
        kind: page.model.doubted.length > 0 ? "attention" : "stop"
        text: page.isOnTable ? "" : page.model.refusal
        place: page.model.meant.length > 0 ? qsTr("It seems to have sent: %1").arg(page.model.meant) : ""
        actionText: page.model.meant.length > 0 ? qsTr("Read it as that") : ""
        onActed: page.model.takeMeant()
    }
    BigButton {
        objectName: "asRead"
        Layout.fillWidth: true
        visible: page.model.doubted.length > 0
        text: qsTr("It really reads %1").arg(page.model.doubted)
        onClicked: page.model.takeDoubted()
    }
    DockAsked { Layout.fillWidth: true; model: page.model }
    DockUnit {
        Layout.fillWidth: true
        visible: page.isOnTable
        model: page.model
        onOpenUnit: id => page.openUnit(id)
    }
    DockWhat { Layout.fillWidth: true; visible: page.model.stage === DockModel.What; model: page.model }
    DockPoints {
        Layout.fillWidth: true
        visible: page.atPoints
        brief: page.phone || page.height < 1000
        model: page.model
        onKeyPressed: event => { event.accepted = field.takeKey(event) }
    }
    // Large words grow by lines: above the answers they would push them.
    Words { Layout.fillWidth: true; visible: Theme.stacks && text.length > 0; text: page.saidWords; tone: page.saidTone; bold: true }
    // Below what is touched: a word of the camera comes and goes.
    Loader {
        Layout.fillWidth: true
        active: page.scan !== null && page.scan.hasCamera
        visible: active
        sourceComponent: DockCamera { scan: page.scan; brief: page.isOnTable || page.model.asked.length > 0 }
    }
    Loader {
        Layout.fillWidth: true
        active: page.scan !== null && page.scan.nfc.hasReader
        visible: active
        sourceComponent: DockNfc { nfc: page.scan.nfc; brief: page.isOnTable || page.model.asked.length > 0 }
    }
    Words {
        Layout.fillWidth: true
        objectName: "intro"
        visible: !page.isOnTable && page.model.refusal.length === 0 && page.model.count === 0 && page.model.asked.length === 0
        text: qsTr("A hand scanner types for you. A known unit shows what is due on it; a new one is taken in.")
            + (page.scan !== null && !page.scan.nfc.hasReader ? " " + qsTr("This device does not read NFC tags.") : "")
        tone: "quiet"
    }
    Notice {
        objectName: "return-asked"
        Layout.fillWidth: true
        kind: "attention"
        text: page.model.isReturnAsked ? qsTr("It stands as away for repair or recertification.") : ""
        actionText: qsTr("It is back: say what was done")
        onActed: returnSheet.open()
    }
    Repeater {
        model: page.isOnTable ? [] : page.model.aside
        ListRow {
            required property var modelData
            required property int index
            objectName: "aside" + index
            Layout.fillWidth: true
            title: modelData.title
            detail: modelData.detail
            tone: "see"
            onClicked: page.model.takeUp(index)
        }
    }
    Repeater {
        model: page.isOnTable ? [] : page.model.arrivals
        ListRow {
            required property var modelData
            objectName: "arrival"
            Layout.fillWidth: true
            title: qsTr("%1, %2").arg(modelData.serial).arg(modelData.kind)
            detail: modelData.status
            tone: modelData.isHeld ? "stop" : "plain"
            onClicked: page.openUnit(modelData.unit)
        }
    }
    BigButton {
        readonly property var last: page.model.arrivals[0] ?? ({ unit: "", serial: "", isHeld: false, photos: "" })
        objectName: "photoOfLast"
        Layout.fillWidth: true
        visible: page.takesPhotos && !page.isOnTable && page.model.lastWords.length > 0 && last.isHeld
        text: qsTr("Add a photo of it")
        spokenName: qsTr("Add a photo of %1").arg(last.serial)
        detail: last.photos
        onClicked: page.addPhoto(last.unit)
    }
    Loader {
        Layout.fillWidth: true
        active: page.scan !== null && page.scan.hasSheets && !page.isOnTable && page.model.asked.length === 0
        visible: active
        sourceComponent: DockLabels { scan: page.scan; onDone: field.forceActiveFocus() }
    }

    foot: [
        Words { objectName: "outcome"; Layout.fillWidth: true; visible: !Theme.stacks && text.length > 0; text: page.saidWords; tone: page.saidTone; bold: true },
        DockAnswers {
            objectName: "answers"
            Layout.fillWidth: true
            visible: page.atPoints
            model: page.model
            onHeld: {
                if (page.model.isReasonNeeded || page.model.isWorn)
                    holdSheet.open()
                else
                    page.model.hold("", false)
            }
        },
        UndoBar {
            objectName: "undoBar"
            Layout.fillWidth: true
            text: page.isOnTable ? "" : page.model.lastWords
            onUndone: page.model.undoLast()
        }
    ]

    HoldSheet {
        id: holdSheet
        objectName: "holdSheet"
        worn: page.model.isWorn
        reasonNeeded: page.model.isReasonNeeded
        outcome: page.model.isReasonNeeded ? "" : page.model.outcomeWords
        onHeld: (what, isWithAthlete) => page.model.hold(what, isWithAthlete)
        onKeyPressed: event => { event.accepted = field.takeKey(event) }
        property string serial: ""
        onOpened: serial = page.model.serial
    }
    ReturnSheet {
        id: returnSheet
        objectName: "return-sheet"
        last: page.model.lastReturn
        onReturned: (by, done, paper, isCleaned) => page.model.sayBack(by, done, paper, isCleaned)
    }
    Connections {
        target: page.model
        function onTaken(): void {
            field.text = ""
            field.forceActiveFocus()
        }
        function onChanged(): void {
            if (page.isOnTable && field.done)
                field.text = ""
            if (holdSheet.opened && holdSheet.serial !== page.model.serial)
                holdSheet.close()
        }
    }
}
