// SPDX-License-Identifier: Apache-2.0
// Under the answers, one row: taking back, and what else the question allows. Its room is kept where there is nothing in it yet, so that the
// answers above do not move. On a narrow screen taking back is its sign alone and the words of the others wrap, so that the row stays one;
// very large words stack.
import QtQuick
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

Grid {
    id: row

    required property GuideModel guide
    readonly property bool isBack: guide.canUndo || guide.canStepBack
    readonly property int count: (guide.broken.length > 0 ? 1 : 0) + (guide.canReadGauge ? 1 : 0) + (guide.another.length > 0 ? 1 : 0)
    readonly property bool tight: width < 520 * Theme.textScale
    readonly property bool stacked: Theme.stacks && tight && count > 1
    readonly property real undoRoom: isBack ? Theme.touch + spacing : 0
    readonly property real cell: stacked ? width : (width - undoRoom - spacing * (count - 1)) / Math.max(1, count)
    readonly property real others: (broken.visible ? broken.width + spacing : 0) + (gauge.visible ? gauge.width + spacing : 0) + (another.visible ? another.width + spacing : 0)
    readonly property real tallest: Math.max(least, undo.visible ? undo.implicitHeight : 0, broken.visible ? broken.implicitHeight : 0,
                                             gauge.visible ? gauge.implicitHeight : 0, another.visible ? another.implicitHeight : 0)
    readonly property real least: stacked ? 0 : Math.max(Theme.touch, 2 * line.height + 2 * Theme.grid)

    columns: stacked ? 1 : 4
    spacing: Theme.grid

    Item {                                // keeps the room
        visible: !row.isBack && row.count === 0
        width: 1
        height: row.least
    }
    FontMetrics { id: line; font.family: Theme.family; font.bold: true; font.pixelSize: Theme.bodySize }
    component Aside: BigButton {
        leftPadding: row.tight ? Theme.grid / 2 : Theme.gap
        rightPadding: leftPadding
        width: row.tight ? row.cell : naturalWidth
        height: row.stacked ? implicitHeight : row.tallest
        kind: "quiet"
        enabled: !row.guide.isBusy
    }

    BigButton {
        id: undo
        objectName: "undo"
        readonly property bool brief: row.tight && row.count > 0
        leftPadding: row.tight ? Theme.grid : Theme.gap
        rightPadding: leftPadding
        width: brief ? Theme.touch : Math.min(naturalWidth, row.width - row.others)
        height: row.stacked ? implicitHeight : row.tallest
        visible: row.isBack
        sign: "undo"
        text: brief ? "" : qsTr("Undo")
        detail: row.tight || row.guide.canStepBack || row.count > 1 ? "" : row.guide.undoWords
        spokenName: row.guide.canStepBack ? qsTr("Back to where the guide stands") : qsTr("Undo") + ": " + row.guide.undoWords
        onClicked: row.guide.canStepBack ? row.guide.stepBack() : row.guide.undo()
    }
    Aside { id: broken; objectName: "broken"; visible: row.guide.broken.length > 0; text: row.guide.broken; onClicked: row.guide.openBroken() }
    Aside { id: gauge; objectName: "gauge"; visible: row.guide.canReadGauge; text: qsTr("Read the gauge"); onClicked: row.guide.openGauge() }
    Aside { id: another; objectName: "another"; visible: row.guide.another.length > 0; text: row.guide.another; onClicked: row.guide.anotherWay() }
}
