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
    property real edgeX: 0
    property real edgeY: 0
    property real browY: 0
    property real lowY: 0
    property real highY: 0
    property bool known: true
    property bool inBand: true
    property string first: ""
    property string second: ""
    readonly property color tint: !known ? Theme.slate : inBand ? Theme.turf : Theme.ochre

    // px that the ruler and its words need at the left of the front edge
    readonly property real room: Math.max(84, words.implicitWidth + 22)
    readonly property real lineX: edgeX - 54 / view.drawScale

    width: view.field.width
    height: view.field.height

    Rectangle {                           // the band
        x: ruler.lineX - width / 2
        width: 34 / ruler.view.drawScale
        y: ruler.highY
        height: ruler.lowY - ruler.highY
        color: Theme.tints.air
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
            PathSvg { path: "M " + ruler.lineX + " " + ruler.edgeY + " L " + ruler.lineX + " " + ruler.browY }
        }
        ShapePath {
            strokeColor: ruler.tint
            strokeWidth: ruler.view.pen
            fillColor: "transparent"
            capStyle: ShapePath.FlatCap
            PathSvg {
                path: "M " + (ruler.lineX - 18 / ruler.view.drawScale) + " " + ruler.edgeY + " L " + (ruler.edgeX - 6) + " " + ruler.edgeY
                      + " M " + (ruler.lineX - 18 / ruler.view.drawScale) + " " + ruler.browY + " L " + (ruler.edgeX + 30) + " " + ruler.browY
            }
        }
    }
    Column {
        id: words
        x: ruler.edgeX - 18 / ruler.view.drawScale - width
        // above the edge; below the brow where there is no room above
        readonly property bool above: (ruler.edgeY - ruler.view.crop.y) * ruler.view.drawScale >= height + 30
        y: above ? ruler.edgeY - 34 / ruler.view.drawScale - height : ruler.browY + 10 / ruler.view.drawScale
        scale: 1 / ruler.view.drawScale
        transformOrigin: above ? Item.BottomRight : Item.TopRight
        visible: ruler.known
        Words { anchors.right: parent.right; text: ruler.first; size: "head"; color: ruler.tint; wrapMode: Text.NoWrap }
        Words { anchors.right: parent.right; text: ruler.second; bold: true; color: ruler.tint; wrapMode: Text.NoWrap; visible: text.length > 0 }
    }
}
