// SPDX-License-Identifier: Apache-2.0
// One drawn part: a closed or open path with the common stroke; strong while it is in focus.
import QtQuick
import QtQuick.Shapes
import Snugline.Tokens

Shape {
    id: part

    required property DrawnView view
    property var names: []                // what this part is called: marks, points, parts
    property string d: ""
    property color fill: "transparent"
    property color line: Theme.ink
    property real weight: view.pen
    property bool keepsFill: false        // skin stays skin while it is in focus
    readonly property bool lit: view.isLit(names)

    width: view.field.width
    height: view.field.height

    ShapePath {
        strokeColor: part.lit ? Theme.lake : part.line
        strokeWidth: part.lit ? Math.max(part.weight * 1.5, part.view.pen * 1.5) : part.weight
        fillColor: part.lit && !part.keepsFill && part.fill.a > 0 ? Theme.tints.air : part.fill
        capStyle: ShapePath.RoundCap
        joinStyle: ShapePath.RoundJoin
        PathSvg { path: part.d }
    }
}
