// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Parts

TestCase {
    id: testCase
    name: "Buttons"
    when: windowShown
    visible: true
    width: 800
    height: 600

    function init(): void {
        failOnWarning(/.?/)
        Theme.textScale = 1
        Theme.phone = false
        Theme.mode = "day"
    }
    function cleanup(): void {
        Theme.textScale = 1
        Theme.phone = false
        Theme.mode = "day"
    }

    Component { id: button; BigButton { text: "On the mark"; x: 20; y: 20 } }
    Component { id: answers; AnswerBar { width: 780; answers: [{ name: "low", text: "Sits low" }, { name: "snug", text: "On the mark" }, { name: "high", text: "Sits high" }] } }
    Component { id: choices; ChoiceRow { width: 500; choices: [{ name: "mm", text: "mm" }, { name: "in", text: "inches" }] } }
    Component { id: icon; IconStroke { side: 96; width: 96; height: 96; weight: 8 } }
    Component { id: scrolled; Flickable { width: 300; height: 100; contentHeight: 600; BigButton { text: "On the mark" } } }
    Component { id: spy; SignalSpy { } }

    function test_a_button_answers_a_finger_and_the_keyboard(): void {
        const item = createTemporaryObject(button, testCase)
        const clicks = createTemporaryObject(spy, testCase, { target: item, signalName: "clicked" })
        const touch = touchEvent(item)
        touch.press(0, item, item.width / 2, item.height / 2).commit()
        verify(item.down)
        touch.release(0, item, item.width / 2, item.height / 2).commit()
        compare(clicks.count, 1)
        item.forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_Space)
        compare(clicks.count, 2)
        keyClick(Qt.Key_Return)
        compare(clicks.count, 3)
        keyClick(Qt.Key_Enter)
        compare(clicks.count, 4)
    }
    function test_a_finger_that_slides_off_a_button_does_not_press_it(): void {
        const item = createTemporaryObject(button, testCase)
        const clicks = createTemporaryObject(spy, testCase, { target: item, signalName: "clicked" })
        const touch = touchEvent(item)
        touch.press(0, item, 10, 10).commit()
        touch.move(0, item, 10, item.height + 200).commit()
        touch.release(0, item, 10, item.height + 200).commit()
        compare(clicks.count, 0)
    }
    function test_a_button_that_is_switched_off_or_hidden_under_the_finger_is_not_pressed_data(): var {
        return [{ tag: "off", property: "enabled" }, { tag: "hidden", property: "visible" }]
    }
    function test_a_button_that_is_switched_off_or_hidden_under_the_finger_is_not_pressed(row: var): void {
        const item = createTemporaryObject(button, testCase)
        const clicks = createTemporaryObject(spy, testCase, { target: item, signalName: "clicked" })
        const touch = touchEvent(item)
        touch.press(0, item, 10, 10).commit()
        item[row.property] = false
        verify(!item.down)
        item[row.property] = true
        touch.release(0, item, 10, 10).commit()
        compare(clicks.count, 0)
    }
    function test_a_list_that_moves_under_the_finger_takes_the_press_away(): void {
        const list = createTemporaryObject(scrolled, testCase)
        const item = list.contentItem.children[0]
        const clicks = createTemporaryObject(spy, testCase, { target: item, signalName: "clicked" })
        mousePress(item, 10, 60)
        verify(item.down)
        for (let y = 50; y >= -80; y -= 10)
            mouseMove(item, 10, 60 + (y - 60) / 2)
        verify(list.moving)
        verify(!item.down)
        mouseRelease(list, 10, 10)
        compare(clicks.count, 0)
    }
    function test_the_frame_of_the_keyboard_shows_where_tab_came_and_not_where_a_finger_was(): void {
        const item = createTemporaryObject(button, testCase)
        mouseClick(item)
        verify(item.activeFocus)
        verify(!item.visualFocus)
        item.focus = false
        item.forceActiveFocus(Qt.TabFocusReason)
        verify(item.visualFocus)
        item.focus = false
        verify(!item.visualFocus)
    }
    function test_an_icon_is_painted_where_its_strokes_are_and_an_unknown_one_not_at_all(): void {
        const sign = createTemporaryObject(icon, testCase, { name: "inform", color: "#000000" })
        const dark = (x, y) => grabImage(sign).red(x, y) < 100
        // A circle of radius 10 round the middle of 24 units, drawn on 96 px.
        tryVerify(() => dark(8, 48))
        verify(dark(88, 48))
        verify(dark(48, 88))
        verify(!dark(28, 28))
        compare(createTemporaryObject(icon, testCase, { name: "none such" }).strokes, "")
    }
    function test_a_button_names_itself_with_both_lines(): void {
        const item = createTemporaryObject(button, testCase, { detail: "25 mm" })
        compare(item.Accessible.name, "On the mark. 25 mm")
        compare(item.Accessible.role, Accessible.Button)
    }
    function test_no_touch_target_is_smaller_than_the_least_side_data(): var {
        return [{ tag: "tablet", phone: false, least: 72 }, { tag: "phone", phone: true, least: 56 }]
    }
    function test_no_touch_target_is_smaller_than_the_least_side(row: var): void {
        Theme.phone = row.phone
        const item = createTemporaryObject(button, testCase, { text: "1" })
        verify(item.width >= row.least)
        verify(item.height >= row.least)
    }
    function test_a_button_grows_with_its_text_data(): var {
        return [{ tag: "100", scale: 1 }, { tag: "130", scale: 1.3 }, { tag: "200", scale: 2 }]
    }
    function test_a_button_grows_with_its_text(row: var): void {
        Theme.textScale = row.scale
        const item = createTemporaryObject(button, testCase, { width: 160, text: "Another size, smaller", detail: "then see again: brow, ears, nape" })
        item.height = item.implicitHeight
        waitForRendering(item)
        verify(item.contentItem.implicitHeight + item.topPadding + item.bottomPadding <= item.height)
    }
    function test_answers_stand_side_by_side_and_stack_when_their_words_do_not_fit(): void {
        const bar = createTemporaryObject(answers, testCase)
        verify(!bar.stacked)
        compare(bar.buttonAt(0).y, bar.buttonAt(2).y)
        verify(bar.buttonAt(0).height >= 110)
        bar.width = 340
        verify(bar.stacked)
        compare(bar.buttonAt(2).width, 340)
        verify(bar.buttonAt(2).y + bar.buttonAt(2).height <= bar.implicitHeight)
        bar.width = 780
        Theme.textScale = 2
        verify(bar.stacked)
    }
    function test_an_answer_carries_its_name_and_none_is_preselected(): void {
        const bar = createTemporaryObject(answers, testCase)
        const answered = createTemporaryObject(spy, testCase, { target: bar, signalName: "answered" })
        for (let i = 0; i < 3; ++i) {
            verify(!bar.buttonAt(i).activeFocus)
            verify(!bar.buttonAt(i).isFilled)
        }
        const touch = touchEvent(bar.buttonAt(1))
        touch.press(0, bar.buttonAt(1)).commit()
        touch.release(0, bar.buttonAt(1)).commit()
        compare(answered.count, 1)
        compare(answered.signalArguments[0][0], "snug")
        compare(answered.signalArguments[0][1], 1)
    }
    function test_a_choice_says_what_was_touched_and_leaves_the_state_to_its_owner(): void {
        const row = createTemporaryObject(choices, testCase)
        const chosen = createTemporaryObject(spy, testCase, { target: row, signalName: "chosen" })
        verify(!row.buttonAt(0).Accessible.checked)
        mouseClick(row.buttonAt(1))
        compare(chosen.signalArguments[0][0], "in")
        verify(!row.buttonAt(1).Accessible.checked)
        row.current = "in"
        verify(row.buttonAt(1).Accessible.checked)
        compare(row.buttonAt(1).sign, "check")
        compare(row.buttonAt(1).Accessible.role, Accessible.RadioButton)
    }
}
