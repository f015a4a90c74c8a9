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
    Item {                                // pump: an arrow into the port, from outside the shell
        id: pump
        readonly property string port: motion.view.focusPart.startsWith("port-") ? motion.view.focusPart : "port-crown"
        readonly property var at: motion.view.places[port] ?? [378, 118]
        readonly property real push: 10 * Math.abs(Math.sin(motion.view.phase * 3 * Math.PI))
        visible: motion.view.motion === "pump"
        x: at[0]
        y: at[1]
        rotation: port === "port-crown" ? 0 : port === "port-sides" ? 90 : 180
        transformOrigin: Item.TopLeft
        BandShape {
            view: motion.view
            names: ["pump"]
            fill: Theme.lake
            thickness: motion.view.pen
            ring: Theme.card
            y: -14 - pump.push
            d: "M 0 -42 L 0 0 M -13 -15 L 0 0 L 13 -15 M -14 -42 L 14 -42"
        }
    }
}
