// SPDX-License-Identifier: Apache-2.0
// The grip on the front edge. A drag anywhere on the front of the drawing moves it 1:1 with the finger, in millimetres of the drawing.
import QtQuick
import QtQuick.Shapes
import Snugline.Tokens

Item {
    id: grip

    required property DrawnView view
    property real edgeX: 0
    property real edgeY: 0
    property real unitsPerMm: 1
    property real gap: 0
    property real from: 0
    property real to: 60
    property real gapAtPress: 0

    signal moved(real mm)
    signal released(real mm)

    x: edgeX - 110
    width: 260
    height: 400
    objectName: "browGrip"

    function gapAfter(translation: real): real {
        const mm = gapAtPress - translation / unitsPerMm
        return Math.max(from, Math.min(to, Math.round(mm * 10) / 10))
    }

    DragHandler {
        id: drag
        target: null
        xAxis.enabled: false
        dragThreshold: 4
        onActiveChanged: {
            if (active)
                grip.gapAtPress = grip.gap
            else
                grip.released(grip.gap)
        }
        onTranslationChanged: if (active) grip.moved(grip.gapAfter(translation.y / grip.view.drawScale))
    }
    Rectangle {
        readonly property real side: 52 / grip.view.drawScale
        x: 110 - side / 2
        y: grip.edgeY - side / 2
        width: side
        height: side
        radius: side / 2
        color: drag.active ? Theme.lake : Theme.card
        border.width: grip.view.pen
        border.color: Theme.lake
        Shape {
            width: 24
            height: 24
            anchors.centerIn: parent
            scale: parent.side / 44
            ShapePath {
                strokeColor: drag.active ? Theme.onFill : Theme.lake
                strokeWidth: 2.6
                fillColor: "transparent"
                capStyle: ShapePath.RoundCap
                joinStyle: ShapePath.RoundJoin
                PathSvg { path: "M 6 8 L 12 2 L 18 8 M 6 16 L 12 22 L 18 16 M 12 3 V 21" }
            }
        }
    }
}
