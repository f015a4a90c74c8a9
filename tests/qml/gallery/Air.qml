// SPDX-License-Identifier: Apache-2.0
// Weather, gauge and plot with made-up values.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Parts
import Snugline.Tokens

Rectangle {
    id: root
    property string mode: "day"
    property real textScale: 1
    color: Theme.paper
    Binding { target: Theme; property: "mode"; value: root.mode }
    Binding { target: Theme; property: "textScale"; value: root.textScale }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(root.width) }
    ScrollArea {
        anchors.fill: parent
        anchors.margins: Theme.margin
        WeatherChip { Layout.fillWidth: true; figures: "4 °C, 180 m"; words: "Outside, home field" }
        WeatherChip { Layout.fillWidth: true; words: "Weather not noted" }
        WeatherChip { Layout.fillWidth: true; figures: "39 °F, 591 ft"; words: "In the truck, Pine Ridge field, noted yesterday. 3 helmets not judged"; old: true }
        FigureStepper {
            Layout.fillWidth: true
            label: "Temperature where the helmets are"
            text: "−4 °C"
            steps: [{ name: "-5", text: "−5" }, { name: "-1", text: "−1" }, { name: "+1", text: "+1" }, { name: "+5", text: "+5" }]
        }
        FigureStepper {
            Layout.fillWidth: true
            label: "Elevation"
            text: "5,280 ft"
            steps: [{ name: "-500", text: "−500" }, { name: "-50", text: "−50" }, { name: "+50", text: "+50" }, { name: "+500", text: "+500", enabled: false }]
        }
        GaugeReadout { Layout.fillWidth: true; takeText: "Take this reading"; gauge: ({ stage: "live", value: "20.3", unit: "kPa", trend: "up", trendWords: "Rising", gaugeName: "Bench gauge 0142", facts: "Battery 84 %, sensor 19 °C", unitCode: "kpa" }) }
        GaugeReadout { Layout.fillWidth: true; takeText: "Take this reading"; gauge: ({ stage: "live", value: "2.94", unit: "psi", steadyWords: "Steady", gaugeName: "Bench gauge 0142", unitCode: "psi", canTake: true }) }
        AirPlot {
            Layout.fillWidth: true
            unit: "kPa"
            heights: [{ at: 0.1, text: "16" }, { at: 0.5, text: "20" }, { at: 0.9, text: "24" }]
            times: [{ at: 0, text: "1 Sep" }, { at: 0.5, text: "22 Sep" }, { at: 1, text: "14 Oct" }]
            raw: [{ x: 0, y: 0.8, run: 0 }, { x: 0.1, y: 0.62, run: 0 }, { x: 0.25, y: 0.66, run: 0 }, { x: 0.4, y: 0.3, run: 0 }, { x: 0.55, y: 0.7, run: 1 }, { x: 0.7, y: 0.4, run: 1 }, { x: 0.85, y: 0.35, run: 1 }, { x: 1, y: 0.1, run: 1 }]
            carried: [{ x: 0, y: 0.78, run: 0 }, { x: 0.1, y: 0.72, run: 0 }, { x: 0.25, y: 0.68, run: 0 }, { x: 0.4, y: 0.6, run: 0 }, { x: 0.55, y: 0.78, run: 1 }, { x: 0.7, y: 0.72, run: 1 }, { x: 0.85, y: 0.66, run: 1 }, { x: 1, y: 0.6, run: 1 }]
            refills: [0.5]
            slopes: [{ x1: 0, y1: 0.79, x2: 0.4, y2: 0.61, low1: 0.82, low2: 0.56, high1: 0.76, high2: 0.66 }, { x1: 0.55, y1: 0.78, x2: 1, y2: 0.6, low1: 0.82, low2: 0.55, high1: 0.75, high2: 0.66 }]
            legend: ({ raw: "As read", carried: "Carried to 20 °C at sea level", refill: "Refilled", slope: "Leak, with its 95 % band" })
        }
        WhyLines {
            Layout.fillWidth: true
            why: ({ sentence: "Crown air about 6 kPa down at 4 °C", parts: [{ title: "When it was set", lines: [{ name: "Read on the gauge", value: "20.0 kPa", how: "Typed, 2 Oct 16:20" }, { name: "Temperature", value: "21 °C" }] }], advice: "Bring the helmet to room temperature before changing its air.", caution: "The instructions of the helmet's maker come first." })
        }
    }
}
