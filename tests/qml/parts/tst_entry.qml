// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Parts

TestCase {
    id: testCase
    name: "Entry"
    when: windowShown
    visible: true
    width: 800
    height: 900

    function init(): void { failOnWarning(/.?/) }

    Component { id: keypad; Keypad { width: 360; label: "Jersey number" } }
    Component { id: textEntry; TextEntry { width: 360; label: "Serial tag"; scanner: true; focus: true } }
    Component { id: stepperPart; Stepper { width: 360; value: 25; from: 0; to: 27; step: 1; label: "Brow gap"; text: value + " mm" } }
    Component { id: spy; SignalSpy { } }

    function touchOn(item: Item): void {
        const touch = touchEvent(item)
        touch.press(0, item).commit()
        touch.release(0, item).commit()
    }

    function test_a_jersey_number_keeps_its_zeros(): void {
        const pad = createTemporaryObject(keypad, testCase)
        const entered = createTemporaryObject(spy, testCase, { target: pad, signalName: "entered" })
        waitForRendering(pad)
        touchOn(findChild(pad, "key-0"))
        touchOn(findChild(pad, "key-7"))
        compare(pad.text, "07")
        touchOn(findChild(pad, "key-enter"))
        compare(entered.signalArguments[0][0], "07")
    }
    function test_the_last_figure_can_be_taken_back_and_nothing_cannot_be_entered(): void {
        const pad = createTemporaryObject(keypad, testCase)
        const entered = createTemporaryObject(spy, testCase, { target: pad, signalName: "entered" })
        verify(!findChild(pad, "key-enter").enabled)
        pad.forceActiveFocus()
        keyClick("8")
        keyClick("8")
        compare(pad.text, "88")
        keyClick(Qt.Key_Backspace)
        compare(pad.text, "8")
        touchOn(findChild(pad, "key-erase"))
        compare(pad.text, "")
        keyClick(Qt.Key_Return)
        compare(entered.count, 0)
    }
    function test_a_second_decimal_point_and_figures_beyond_the_length_are_not_taken(): void {
        const pad = createTemporaryObject(keypad, testCase, { allowDecimal: true, maximumLength: 5 })
        for (const key of ["5", "7", ".", ".", "4", "9"])
            pad.press(key)
        compare(pad.text, "57.49".slice(0, 5))
    }
    function test_a_fraction_key_sets_a_space_after_the_whole_inches(): void {
        const pad = createTemporaryObject(keypad, testCase, { fractions: ["1/8", "5/8"], maximumLength: 6 })
        for (const key of ["2", "2", "5/8"])
            pad.press(key)
        compare(pad.text, "22 5/8")
    }
    function test_a_second_fraction_takes_the_place_of_the_first_and_is_erased_as_one(): void {
        const pad = createTemporaryObject(keypad, testCase, { fractions: ["1/8", "5/8"], allowDecimal: true, maximumLength: 6 })
        for (const key of ["2", "2", "5/8", "1/8", "3", "."])
            pad.press(key)
        compare(pad.text, "22 1/8")
        pad.press("erase")
        compare(pad.text, "22")
        pad.press("erase")
        compare(pad.text, "2")
        pad.text = ""
        for (const key of ["5/8", "1/8"])
            pad.press(key)
        compare(pad.text, "1/8")
        pad.text = "22.5"
        pad.press("1/8")
        compare(pad.text, "22.5")
    }
    function test_no_key_moves_when_something_is_wrong(): void {
        const pad = createTemporaryObject(keypad, testCase, { width: 360, label: "Reading in inches" })
        const at = () => [findChild(pad, "key-5").mapToItem(pad, 0, 0).y, findChild(pad, "key-enter").y, pad.implicitHeight].join()
        const before = at()
        for (const message of ["Nobody wears 07.", "A very long sentence about what is wrong with the number on this pad, and what to do about it now."]) {
            pad.message = message
            compare(at(), before)
            compare(findChild(pad, "pad-note").text, message)
        }
        pad.message = ""
        compare(at(), before)
    }
    function test_the_pad_says_its_label_and_value(): void {
        const pad = createTemporaryObject(keypad, testCase)
        verify(pad.keyHeight >= Theme.touch)
        compare(findChild(pad, "key-erase").Accessible.name, "Erase last")
    }
    function test_a_scan_is_accepted_and_the_next_scan_replaces_it(): void {
        const entry = createTemporaryObject(textEntry, testCase)
        const accepted = createTemporaryObject(spy, testCase, { target: entry, signalName: "accepted" })
        entry.forceActiveFocus()
        for (const key of ["A", "B", "1"])
            keyClick(key)
        keyClick(Qt.Key_Return)
        compare(accepted.signalArguments[0][0].toUpperCase(), "AB1")
        for (const key of ["C", "2"])
            keyClick(key)
        keyClick(Qt.Key_Return)
        compare(accepted.signalArguments[1][0].toUpperCase(), "C2")
    }
    function test_steps_go_by_touch_and_arrow_keys_and_stop_at_the_ends(): void {
        const stepper = createTemporaryObject(stepperPart, testCase)
        const moved = createTemporaryObject(spy, testCase, { target: stepper, signalName: "moved" })
        stepper.moved.connect(v => stepper.value = v)
        touchOn(findChild(stepper, "plus"))
        compare(stepper.value, 26)
        stepper.forceActiveFocus()
        keyClick(Qt.Key_Right)
        compare(stepper.value, 27)
        keyClick(Qt.Key_Right)
        compare(moved.count, 2)
        touchOn(findChild(stepper, "minus"))
        compare(stepper.value, 26)
        compare(stepper.Accessible.name, "Brow gap 26 mm")
        compare(stepper.Accessible.role, Accessible.SpinBox)
    }
}
