// SPDX-License-Identifier: Apache-2.0
// Readings over time: as read (hollow squares, dashed), as carried to one temperature and one ambient (filled dots, drawn through), refills
// (a line from foot to top with an arrow), a slope with its band (hatched). Every kind has a shape of its own and is named in the legend,
// so that it reads without colour. Knows nothing of air: places are 0..1 from left and foot, words come in.
import QtQuick
import QtQuick.Shapes
import Snugline.Parts
import Snugline.Tokens

Item {
    id: plot

    property var raw: []                  // [{ x, y, run }]
    property var carried: []              // [{ x, y, run }]
    property var refills: []              // [x]
    property var slopes: []               // [{ x1, y1, x2, y2, low1, low2, high1, high2 }]
    property var heights: []              // [{ at, text }]: the scale at the left
    property var times: []                // [{ at, text }]: the scale at the foot
    property string unit: ""
    property var legend: ({})             // { raw, carried, refill, slope, band }: words, empty where there is none
    property string description: ""
    property real plotHeight: 240        // of the field itself; words take what they need beside it

    readonly property real edge: Math.max(figures.widest, unitWords.implicitWidth) + Theme.grid
    readonly property real roof: unitWords.implicitHeight + Theme.grid / 2
    readonly property real foot: Theme.smallSize * 1.6
    readonly property real wide: Math.max(1, width - edge - Theme.gap)
    readonly property real high: Math.max(1, height - roof - foot - words.implicitHeight - Theme.grid)
    readonly property real half: Math.max(4, Math.min(7, wide / 60))

    function px(x: real): real { return edge + x * wide }
    function py(y: real): real { return roof + (1 - y) * high }
    // A line through the points of each run.
    function lines(points: var): string {
        let path = ""
        let run = -1
        for (const p of points) {
            path += (p.run === run ? " L " : " M ") + px(p.x).toFixed(1) + " " + py(p.y).toFixed(1)
            run = p.run
        }
        return path
    }
    function dots(points: var): string {
        return points.map(p => "M " + (px(p.x) - half) + " " + py(p.y) + " a " + half + " " + half + " 0 1 0 " + 2 * half + " 0 a " + half + " " + half + " 0 1 0 " + -2 * half + " 0 Z").join(" ")
    }
    function squares(points: var): string {
        return points.map(p => "M " + (px(p.x) - half) + " " + (py(p.y) - half) + " h " + 2 * half + " v " + 2 * half + " h " + -2 * half + " Z").join(" ")
    }
    function marks(): string {
        return refills.map(x => "M " + px(x) + " " + (roof + high) + " V " + roof + " M " + (px(x) - 6) + " " + (roof + 9) + " L " + px(x) + " " + roof + " L " + (px(x) + 6) + " " + (roof + 9)).join(" ")
    }
    function slopeLines(): string { return slopes.map(s => "M " + px(s.x1) + " " + py(s.y1) + " L " + px(s.x2) + " " + py(s.y2)).join(" ") }
    function band(): string {
        return slopes.map(s => "M " + px(s.x1) + " " + py(s.high1) + " L " + px(s.x2) + " " + py(s.high2) + " L " + px(s.x2) + " " + py(s.low2) + " L " + px(s.x1) + " " + py(s.low1) + " Z").join(" ")
    }
    // Uprights through the band: what a tint alone would not say in the sun.
    function hatch(): string {
        let path = ""
        for (const s of slopes) {
            const from = px(s.x1), to = px(s.x2)
            for (let x = from; x <= to + 0.5; x += 9) {
                const t = to > from ? (x - from) / (to - from) : 0
                path += " M " + x.toFixed(1) + " " + py(s.low1 + (s.low2 - s.low1) * t).toFixed(1) + " V " + py(s.high1 + (s.high2 - s.high1) * t).toFixed(1)
            }
        }
        return path
    }

    implicitWidth: 320
    implicitHeight: roof + plotHeight + foot + words.implicitHeight + Theme.grid
    Accessible.role: Accessible.Graphic
    Accessible.name: description

    component Line: ShapePath { fillColor: "transparent"; strokeColor: Theme.ink; strokeWidth: Theme.stroke; capStyle: ShapePath.RoundCap; joinStyle: ShapePath.RoundJoin }

    Words { id: unitWords; text: plot.unit; size: "small"; tone: "quiet"; wrapMode: Text.NoWrap; Accessible.ignored: true }
    Repeater {
        id: figures
        property real widest: 0
        model: plot.heights
        Item {
            required property var modelData
            Rectangle { x: plot.edge; y: plot.py(parent.modelData.at); width: plot.wide; height: 1; color: Theme.hairline }
            Words {
                x: plot.edge - Theme.grid - width
                y: plot.py(parent.modelData.at) - height / 2
                text: parent.modelData.text
                size: "small"
                tone: "quiet"
                wrapMode: Text.NoWrap
                Accessible.ignored: true
                Component.onCompleted: figures.widest = Math.max(figures.widest, implicitWidth)
            }
        }
    }
    Repeater {
        model: plot.times
        Words {
            required property var modelData
            x: Math.max(plot.edge, Math.min(plot.width - width, plot.px(modelData.at) - width / 2))
            y: plot.roof + plot.high + Theme.grid / 2
            text: modelData.text
            size: "small"
            tone: "quiet"
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Shape {
        anchors.fill: parent
        ShapePath { fillColor: Theme.lakeWash; strokeColor: "transparent"; PathSvg { path: plot.band() } }
        Line { strokeColor: Theme.lake; strokeWidth: 1; PathSvg { path: plot.hatch() } }
        Line { strokeColor: Theme.slate; strokeWidth: Theme.hairlineWidth; PathSvg { path: "M " + plot.edge + " " + plot.roof + " v " + plot.high + " h " + plot.wide } }
        Line { strokeColor: Theme.slate; strokeStyle: ShapePath.DashLine; dashPattern: [2, 3]; PathSvg { path: plot.lines(plot.raw) } }
        Line { strokeColor: Theme.ochre; PathSvg { path: plot.marks() } }
        Line { strokeColor: Theme.lake; strokeWidth: Theme.stroke + 1; PathSvg { path: plot.slopeLines() } }
        Line { PathSvg { path: plot.lines(plot.carried) } }
        Line { strokeColor: Theme.slate; fillColor: Theme.card; PathSvg { path: plot.squares(plot.raw) } }
        Line { fillColor: Theme.ink; PathSvg { path: plot.dots(plot.carried) } }
    }
    Flow {
        id: words
        y: plot.height - implicitHeight
        width: plot.width
        spacing: Theme.gap
        Repeater {
            model: ["carried", "raw", "refill", "slope"].filter(kind => (plot.legend[kind] ?? "").length > 0)
            Row {
                id: entry
                required property string modelData
                spacing: Theme.grid
                PlotSign { kind: entry.modelData; anchors.verticalCenter: parent.verticalCenter }
                Words { width: Math.min(implicitWidth, words.width - 40); text: plot.legend[entry.modelData] ?? ""; size: "small"; Accessible.ignored: true }
            }
        }
    }
}
