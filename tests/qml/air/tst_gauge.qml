// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Air
import Snugline.Parts
import Snugline.Tokens

TestCase {
    id: testCase
    name: "Gauge"
    when: windowShown
    visible: true
    width: 834
    height: 900

    function init(): void { failOnWarning(/.?/) }

    Component {
        id: gaugePart
        QtObject {
            property string stage: "live"
            property string value: "20.3"
            property string unit: "kPa"
            property string unitCode: "kpa"
            property string trend: "up"
            property string trendWords: "Rising"
            property string steadyWords: ""
            property string gaugeName: "Bench gauge 0142"
            property string facts: "Battery 84 %"
            property string state: ""
            property bool isTrouble: false
            property string refusal: ""
            property string zeroHint: "First the zero"
            property bool canTake: false
        }
    }
    Component { id: facePart; GaugeReadout { width: 500; takeText: "Record this reading" } }
    Component {
        id: plotPart
        AirPlot {
            width: 500
            height: 340
            unit: "kPa"
            heights: [{ at: 0, text: "16" }, { at: 1, text: "24" }]
            times: [{ at: 0, text: "1 Sep" }, { at: 1, text: "14 Oct" }]
            raw: [{ x: 0, y: 1, run: 0 }, { x: 0.4, y: 0.5, run: 0 }, { x: 0.6, y: 0.9, run: 1 }, { x: 1, y: 0, run: 1 }]
            carried: [{ x: 0, y: 1, run: 0 }, { x: 0.4, y: 0.8, run: 0 }, { x: 0.6, y: 0.9, run: 1 }, { x: 1, y: 0.7, run: 1 }]
            refills: [0.5]
            legend: ({ raw: "As read", carried: "Carried", refill: "Refilled", slope: "" })
            description: "Loses 1.2 kPa a week"
        }
    }
    Component { id: whyPart; WhyLines { width: 500; why: ({ sentence: "Crown air about 6 kPa down", parts: [{ title: "Now", lines: [{ name: "Temperature", value: "4 °C", how: "Outside" }] }], advice: "Bring it to room temperature" }) } }
    Component { id: spy; SignalSpy { } }

    function touchOn(item: Item): void {
        const touch = touchEvent(item)
        touch.press(0, item).commit()
        touch.release(0, item).commit()
    }
    function faceWith(given: var): var {
        const gauge = createTemporaryObject(gaugePart, testCase, given)
        const face = createTemporaryObject(facePart, testCase, { gauge: gauge })
        waitForRendering(face)
        return { face: face, gauge: gauge }
    }

    function test_a_value_that_moves_cannot_be_taken_and_a_steady_one_can(): void {
        const both = faceWith({})
        const taken = createTemporaryObject(spy, testCase, { target: both.face, signalName: "taken" })
        touchOn(findChild(both.face, "take"))
        compare(taken.count, 0)
        both.gauge.trend = both.gauge.trendWords = ""
        both.gauge.steadyWords = "Steady"
        both.gauge.canTake = true
        touchOn(findChild(both.face, "take"))
        compare(taken.count, 1)
        compare(findChild(both.face, "readout").steadyText, "Steady")
    }
    function test_before_the_zero_no_value_is_shown_and_what_the_zero_is_for_is_said(): void {
        const both = faceWith({ stage: "zero", canTake: true })
        const zero = createTemporaryObject(spy, testCase, { target: both.face, signalName: "zeroWanted" })
        verify(!findChild(both.face, "readout").visible)
        verify(findChild(both.face, "zero-hint").visible)
        touchOn(findChild(both.face, "zero"))
        compare(zero.count, 1)
    }
    function test_a_refusal_stands_in_words_and_no_value_beside_it(): void {
        const both = faceWith({ value: "", refusal: "The gauge sent 3 bytes where a reading has 4. No value is taken." })
        compare(findChild(both.face, "readout").value, "")
        verify(findChild(both.face, "refusal").visible)
        verify(!findChild(both.face, "take").enabled)
    }
    function test_the_unit_is_one_touch(): void {
        const both = faceWith({})
        const chosen = createTemporaryObject(spy, testCase, { target: both.face, signalName: "unitChosen" })
        touchOn(findChild(both.face, "psi"))
        compare(chosen.signalArguments[0][0], "psi")
    }
    function test_without_a_gauge_one_can_be_chosen_and_nothing_is_taken(): void {
        const face = createTemporaryObject(facePart, testCase)
        const wanted = createTemporaryObject(spy, testCase, { target: face, signalName: "chooseWanted" })
        waitForRendering(face)
        verify(!findChild(face, "take").visible)
        touchOn(findChild(face, "choose-gauge"))
        compare(wanted.count, 1)
    }
    function test_a_plot_breaks_its_lines_at_a_refill_and_says_in_words_what_it_shows(): void {
        const plot = createTemporaryObject(plotPart, testCase)
        waitForRendering(plot)
        compare(plot.lines(plot.carried).split("M").length - 1, 2)
        compare(plot.marks().split("V").length - 1, 1)
        compare(plot.Accessible.name, "Loses 1.2 kPa a week")
        compare(plot.py(1), plot.roof)
        compare(plot.px(1), plot.width - Theme.gap)
    }
    function test_a_plot_of_nothing_and_of_one_reading_draws_without_a_warning(): void {
        waitForRendering(createTemporaryObject(plotPart, testCase, { raw: [], carried: [], refills: [], heights: [], times: [] }))
        waitForRendering(createTemporaryObject(plotPart, testCase, { raw: [{ x: 0.5, y: 0.5, run: 0 }], carried: [], width: 200, height: 120 }))
    }
    function test_an_arithmetic_shows_every_line_and_an_empty_one_nothing(): void {
        const why = createTemporaryObject(whyPart, testCase)
        waitForRendering(why)
        verify(why.implicitHeight > 100)
        waitForRendering(createTemporaryObject(whyPart, testCase, { why: {} }))
    }
}
