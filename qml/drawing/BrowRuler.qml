// SPDX-License-Identifier: Apache-2.0
// Dimension lines between eyebrow and front edge, with the band that the sheet allows. Both texts come in. Inside and outside of the
// band differ in shape (whole or broken line) as well as in colour.
import QtQuick
import QtQuick.Shapes
import Snugline.Parts
import Snugline.Tokens

Item {
    id: ruler

    required property DrawnView view
    property real edgeY: 0
    property real browY: 0
    property real lowY: 0
    property real highY: 0
    property bool known: true
    property bool inBand: true
    property string first: ""
    property string second: ""
    readonly property color tint: !known ? Theme.slate : inBand ? Theme.turf : Theme.ochre

    width: view.field.width
    height: view.field.height

    Rectangle {                           // the band
        x: 96
        width: 20
        y: ruler.highY
        height: ruler.lowY - ruler.highY
        color: Theme.tints.wash
        border.width: ruler.view.thin * 0.6
        border.color: Theme.slate
        radius: 4
    }
    Shape {
        width: parent.width
        height: parent.height
        ShapePath {
            strokeColor: ruler.tint
            strokeWidth: ruler.view.pen
            strokeStyle: ruler.inBand ? ShapePath.SolidLine : ShapePath.DashLine
            dashPattern: [2, 2]
            fillColor: "transparent"
            capStyle: ShapePath.FlatCap
            PathSvg { path: "M 106 " + ruler.edgeY + " L 106 " + ruler.browY }
        }
        ShapePath {
            strokeColor: ruler.tint
            strokeWidth: ruler.view.pen
            fillColor: "transparent"
            capStyle: ShapePath.FlatCap
            PathSvg { path: "M 84 " + ruler.edgeY + " L 138 " + ruler.edgeY + " M 84 " + ruler.browY + " L 180 " + ruler.browY }
        }
    }
    Column {
        x: 76 - width
        y: (ruler.edgeY + ruler.browY) / 2 - height / 2
        scale: 1 / ruler.view.drawScale
        transformOrigin: Item.Right
        visible: ruler.known
        Words { anchors.right: parent.right; text: ruler.first; size: "head"; color: ruler.tint; wrapMode: Text.NoWrap }
        Words { anchors.right: parent.right; text: ruler.second; bold: true; color: ruler.tint; wrapMode: Text.NoWrap; visible: text.length > 0 }
    }
}
