// SPDX-License-Identifier: Apache-2.0
// One kind of the plot as its legend shows it: "raw", "carried", "refill", "slope".
import QtQuick
import QtQuick.Shapes
import Snugline.Tokens

Shape {
    id: sign

    property string kind: ""
    readonly property var paths: ({
        "raw": "M 9 6 h 10 v 10 h -10 Z", "carried": "M 9 11 a 5 5 0 1 0 10 0 a 5 5 0 1 0 -10 0 Z",
        "refill": "M 14 21 V 2 M 8 10 L 14 2 L 20 10", "slope": "M 1 6 L 27 16 M 4 3 V 12 M 10 5 V 14 M 16 8 V 17 M 22 10 V 19"
    })
    readonly property color ink: kind === "refill" ? Theme.ochre : kind === "slope" ? Theme.lake : kind === "raw" ? Theme.slate : Theme.ink

    width: 28
    height: 22
    ShapePath {
        strokeColor: sign.ink
        strokeWidth: Theme.stroke
        fillColor: sign.kind === "carried" ? sign.ink : "transparent"
        joinStyle: ShapePath.RoundJoin
        PathSvg { path: sign.paths[sign.kind] ?? "" }
    }
}
