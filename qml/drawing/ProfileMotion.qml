// SPDX-License-Identifier: Apache-2.0
// What a motion looks like, standing still as arrows: tape path, pump, twist, rock. The movement itself is in the view's phase.
import QtQuick
import QtQuick.Shapes
import Snugline.Tokens

Item {
    id: motion
    required property DrawnView view
    width: view.field.width
    height: view.field.height

    Shape {                               // the tape: level, 25 mm above the eyebrows, round the back
        width: parent.width
        height: parent.height
        visible: motion.view.motion === "tape"
        ShapePath {
            strokeColor: Theme.lake
            strokeWidth: motion.view.pen * 3
            fillColor: "transparent"
            capStyle: ShapePath.FlatCap
            PathSvg { path: "M 174 240 C 260 262 430 270 528 254" }
        }
        ShapePath {
            strokeColor: Theme.card
            strokeWidth: motion.view.pen * 1.6
            strokeStyle: ShapePath.DashLine
            dashPattern: [0.5, 1.2]
            dashOffset: -motion.view.phase * 24
            fillColor: "transparent"
            capStyle: ShapePath.FlatCap
            PathSvg { path: "M 176 240 C 260 262 430 270 526 254" }
        }
    }
    PartShape {
        view: motion.view
        visible: motion.view.motion === "twist"
        line: Theme.lake
        d: "M 200 34 C 280 4 420 4 500 34 M 216 14 L 198 35 L 226 42 M 484 14 L 502 35 L 474 42"
    }
    PartShape {
        view: motion.view
        visible: motion.view.motion === "rock"
        line: Theme.lake
        d: "M 92 118 C 60 170 50 230 58 290 M 74 130 L 94 116 L 98 142 M 42 270 L 58 292 L 74 268"
    }
    PartShape {                           // pump: arrow into the port
        readonly property var at: motion.view.places[motion.view.focusPart] ?? motion.view.places["port-crown"] ?? [378, 118]
        view: motion.view
        visible: motion.view.motion === "pump"
        line: Theme.lake
        x: at[0]
        y: at[1] - 26 - 10 * Math.abs(Math.sin(motion.view.phase * 3 * Math.PI))
        d: "M 0 -60 L 0 6 M -14 -10 L 0 8 L 14 -10 M -16 -60 L 16 -60"
    }
}
