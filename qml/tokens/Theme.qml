// SPDX-License-Identifier: Apache-2.0
// Every colour, size and weight of the screens stands here once. Units: px at tablet scale (72 px = 12 mm).
pragma Singleton
import QtQuick
import Snugline.Tokens

QtObject {
    id: theme

    // Written by the application window and by Settings, read by everyone.
    property string mode: "day"             // "day", "sun" (maximum contrast, no tints, thicker strokes), "night"
    property real textScale: 1.0            // 1.0 to 2.0
    property bool reducedMotion: false
    property bool phone: false              // the window is narrower than 480 px: smaller targets, smaller type

    // ink, slate, turf, ochre, brick, lake are text colours on paper and on card; onFill is the text on any of them as a filling.
    readonly property var day: ({
        paper: "#F4F1E8", card: "#FFFFFF", ink: "#12232B", slate: "#425159",
        turf: "#0A5A40", ochre: "#7C3D00", brick: "#9B1423", lake: "#1B4B6B", onFill: "#FFFFFF"
    })
    readonly property var sun: ({
        paper: "#FFFFFF", card: "#FFFFFF", ink: "#000000", slate: "#1C1C1C",
        turf: "#003D29", ochre: "#572900", brick: "#78000E", lake: "#062F4A", onFill: "#FFFFFF"
    })
    readonly property var night: ({
        paper: "#0D1418", card: "#162026", ink: "#F1F3EE", slate: "#BAC5C8",
        turf: "#74D6A9", ochre: "#F2B565", brick: "#FFA3A6", lake: "#93CBEE", onFill: "#0D1418"
    })

    // Never under or behind text: hairlines, washes and the tints of the drawing.
    readonly property var dayTints: ({
        hairline: "#CFCBBA", wash: "#E9E5D8", lakeWash: "#E3ECF2", skin: "#E9DCCD", skinDeep: "#D8C6B2", hair: "#6A5F56", hairLine: "#5B5048",
        shell: "#C9D2D3", shellDeep: "#A9B6B9", pad: "#F0E4BF", air: "#CFE1EC", glass: "#FFFFFF"
    })
    readonly property var sunTints: ({
        hairline: "#000000", wash: "#FFFFFF", lakeWash: "#FFFFFF", skin: "#FFFFFF", skinDeep: "#FFFFFF", hair: "#FFFFFF", hairLine: "#000000",
        shell: "#FFFFFF", shellDeep: "#FFFFFF", pad: "#FFFFFF", air: "#FFFFFF", glass: "#FFFFFF"
    })
    readonly property var nightTints: ({
        hairline: "#3A474E", wash: "#1E2A31", lakeWash: "#17303F", skin: "#453E37", skinDeep: "#57493D", hair: "#8C8178", hairLine: "#B0A59B",
        shell: "#2F3D44", shellDeep: "#43545C", pad: "#5A5132", air: "#27475A", glass: "#162026"
    })

    readonly property var words: mode === "sun" ? sun : mode === "night" ? night : day
    readonly property var tints: mode === "sun" ? sunTints : mode === "night" ? nightTints : dayTints

    readonly property color paper: words.paper
    readonly property color card: words.card
    readonly property color ink: words.ink
    readonly property color slate: words.slate
    readonly property color turf: words.turf
    readonly property color ochre: words.ochre
    readonly property color brick: words.brick
    readonly property color lake: words.lake
    readonly property color onFill: words.onFill
    readonly property color hairline: tints.hairline
    readonly property color wash: tints.wash
    readonly property color lakeWash: tints.lakeWash

    // B612, drawn to be read at a glance; loaded from the program, never from the system.
    readonly property string family: BundledFont.family

    readonly property int titleSize: Math.round((phone ? 28 : 34) * textScale)
    readonly property int headSize: Math.round((phone ? 21 : 24) * textScale)
    readonly property int bodySize: Math.round((phone ? 18 : 20) * textScale)
    readonly property int smallSize: Math.round((phone ? 16 : 17) * textScale)

    readonly property int grid: 8
    readonly property int gap: 16
    readonly property int margin: phone ? 16 : 24
    readonly property int radius: 14
    readonly property int touch: phone ? 56 : 72            // least side of anything touched
    readonly property int answerHeight: phone ? 64 : 110    // the main answers: at least 18 mm on a tablet

    readonly property real hairlineWidth: mode === "sun" ? 2 : 1
    readonly property real stroke: mode === "sun" ? 3 : 2               // frames of controls, icons
    readonly property real drawStroke: mode === "sun" ? 6 : 4.5         // outlines of the drawing, in its own units
    readonly property real focusWidth: 4

    readonly property bool stacks: textScale > 1.3          // beyond 130 % rows stack whatever the width

    function isPhone(width: real): bool { return width > 0 && width < 480 }
    function rowsStack(width: real): bool { return stacks || isPhone(width) }
    // The colour of a tone word: "plain", "snug", "see", "stop", "info".
    function tone(name: string): color {
        switch (name) {
        case "snug": return turf
        case "see": return ochre
        case "stop": return brick
        case "info": return lake
        case "quiet": return slate
        }
        return ink
    }
}
