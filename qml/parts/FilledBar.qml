// SPDX-License-Identifier: Apache-2.0
// One bar, told apart without colour by its filling: "full", "striped", "dotted", "hollow". upright: of a column, its stripes lie across.
import QtQuick
import Snugline.Tokens

Item {
    id: bar

    property string kind: "full"
    property color color: Theme.ink
    property bool upright: false

    implicitHeight: 16 * Math.min(Theme.textScale, 1.5)
    clip: true
    Rectangle {
        anchors.fill: parent
        visible: bar.width >= 1 && bar.height >= 1
        radius: bar.upright ? 0 : 2
        color: bar.kind === "full" ? bar.color : "transparent"
        border.width: Theme.stroke
        border.color: bar.color
    }
    Repeater {
        model: bar.kind === "striped" ? Math.max(0, Math.floor((bar.upright ? bar.height : bar.width) / 8)) : 0
        Rectangle {
            required property int index
            x: bar.upright ? 0 : 4 + 8 * index
            y: bar.upright ? 4 + 8 * index : 0
            width: bar.upright ? bar.width : Theme.stroke
            height: bar.upright ? Theme.stroke : bar.height
            color: bar.color
        }
    }
    Grid {
        id: dots
        visible: bar.kind === "dotted"
        anchors.centerIn: parent
        columns: Math.max(1, Math.floor((bar.width - 4) / 9))
        spacing: 6
        Repeater {
            model: dots.visible ? dots.columns * Math.max(0, Math.floor((bar.height - 4) / 9)) : 0
            Rectangle { width: 3; height: 3; radius: 1.5; color: bar.color }
        }
    }
}
