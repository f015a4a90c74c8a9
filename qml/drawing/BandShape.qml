// SPDX-License-Identifier: Apache-2.0
// A band of even width with an outline: straps and bars. Drawn as two strokes along one path.
import QtQuick
import QtQuick.Shapes
import Snugline.Tokens

Shape {
    id: band

    required property DrawnView view
    property var names: []
    property string d: ""
    property color fill: Theme.tints.glass
    property color ring: Theme.ink        // the outline
    property real thickness: 12
    readonly property bool lit: view.isLit(names)

    width: view.field.width
    height: view.field.height

    ShapePath {
        strokeColor: band.lit ? Theme.lake : band.ring
        strokeWidth: band.thickness + 2 * (band.lit ? band.view.thin * 1.7 : band.view.thin)
        fillColor: "transparent"
        capStyle: ShapePath.RoundCap
        joinStyle: ShapePath.RoundJoin
        PathSvg { path: band.d }
    }
    ShapePath {
        strokeColor: band.lit ? Theme.tints.air : band.fill
        strokeWidth: band.thickness
        fillColor: "transparent"
        capStyle: ShapePath.RoundCap
        joinStyle: ShapePath.RoundJoin
        PathSvg { path: band.d }
    }
}
