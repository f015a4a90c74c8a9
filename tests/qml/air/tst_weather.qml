// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Air
import Snugline.Parts
import Snugline.Tokens

TestCase {
    id: testCase
    name: "Weather"
    when: windowShown
    visible: true
    width: 834
    height: 900

    function init(): void {
        failOnWarning(/.?/)
        Theme.textScale = 1
        Theme.phone = false
    }
    function cleanup(): void { Theme.textScale = 1 }

    Component { id: chipPart; WeatherChip { width: 500; figures: "4 °C, 180 m"; words: "Outside, home field" } }
    Component {
        id: stepperPart
        FigureStepper {
            width: 700
            label: "Temperature"
            text: "4 °C"
            typedLabel: "Temperature in °C"
            steps: [{ name: "-5", text: "−5" }, { name: "-1", text: "−1" }, { name: "1", text: "+1" }, { name: "5", text: "+5", enabled: false }]
        }
    }
    Component { id: spy; SignalSpy { } }

    function touchOn(item: Item): void {
        const touch = touchEvent(item)
        touch.press(0, item).commit()
        touch.release(0, item).commit()
    }

    function test_one_touch_makes_it_colder_or_warmer_and_the_middle_opens_the_rest(): void {
        const chip = createTemporaryObject(chipPart, testCase)
        const stepped = createTemporaryObject(spy, testCase, { target: chip, signalName: "stepped" })
        const opened = createTemporaryObject(spy, testCase, { target: chip, signalName: "opened" })
        waitForRendering(chip)
        touchOn(findChild(chip, "colder"))
        touchOn(findChild(chip, "warmer"))
        touchOn(findChild(chip, "weather"))
        compare(stepped.signalArguments.map(a => a[0]), [-1, 1])
        compare(opened.count, 1)
    }
    function test_the_chip_is_named_for_a_screen_reader_and_works_by_keys(): void {
        const chip = createTemporaryObject(chipPart, testCase)
        const opened = createTemporaryObject(spy, testCase, { target: chip, signalName: "opened" })
        const middle = findChild(chip, "weather")
        compare(middle.Accessible.name, "Weather. 4 °C, 180 m. Outside, home field")
        middle.forceActiveFocus()
        keyClick(Qt.Key_Return)
        keyClick(Qt.Key_Space)
        compare(opened.count, 2)
    }
    function test_weather_not_noted_is_asked_for_in_another_colour_and_in_words(): void {
        const chip = createTemporaryObject(chipPart, testCase, { figures: "", words: "Weather not noted" })
        verify(chip.asks)
        compare(String(chip.frame), String(Theme.ochre))
    }
    function test_every_step_is_one_touch_and_an_end_is_not_touched(): void {
        const stepper = createTemporaryObject(stepperPart, testCase)
        const stepped = createTemporaryObject(spy, testCase, { target: stepper, signalName: "stepped" })
        waitForRendering(stepper)
        for (const name of ["step-5", "step-1", "step1", "step5"])
            touchOn(findChild(stepper, name))
        compare(stepped.signalArguments.map(a => a[0]), ["-5", "-1", "1"])
    }
    function test_touching_the_figure_lets_it_be_typed_and_says_what_is_wrong(): void {
        const stepper = createTemporaryObject(stepperPart, testCase)
        const typed = createTemporaryObject(spy, testCase, { target: stepper, signalName: "typed" })
        waitForRendering(stepper)
        touchOn(findChild(stepper, "figure"))
        verify(stepper.typing)
        for (const key of ["9", "9"])
            keyClick(key)
        keyClick(Qt.Key_Return)
        compare(typed.signalArguments[0][0], "99")
        stepper.message = "Air where helmets are lies between −60 °C and 60 °C."
        compare(findChild(stepper, "typed").message, stepper.message)
        keyClick(Qt.Key_Escape)
        verify(!stepper.typing)
    }
    function test_nothing_is_narrower_than_a_finger_and_nothing_runs_out_of_the_part_data(): var {
        const rows = []
        for (const width of [328, 358, 500, 700])
            for (const scale of [1, 1.5, 2])
                rows.push({ tag: width + " at " + scale, width: width, scale: scale })
        return rows
    }
    function test_nothing_is_narrower_than_a_finger_and_nothing_runs_out_of_the_part(data: var): void {
        Theme.phone = data.width < 400
        Theme.textScale = data.scale
        const stepper = createTemporaryObject(stepperPart, testCase, { width: data.width, text: "−12 °C" })
        waitForRendering(stepper)
        for (const name of ["figure", "step-5", "step-1", "step1", "step5"]) {
            const item = findChild(stepper, name)
            const at = item.mapToItem(stepper, 0, 0)
            verify(at.x >= 0 && at.x + item.width <= stepper.width + 0.5, name + " at " + at.x + " + " + item.width)
            verify(item.width >= Theme.touch && item.height >= Theme.touch, name)
            verify(at.y + item.height <= stepper.height + 0.5, name)
        }
    }
}
