// SPDX-License-Identifier: Apache-2.0
// A pull sheet: at its place the first time, and the keyboard where it was when it goes.
import QtQuick
import QtQuick.Layouts
import QtTest
import Snugline.Tokens
import Snugline.Parts

TestCase {
    id: testCase
    name: "Sheet"
    when: windowShown
    visible: true
    width: 800
    height: 900

    property string typed: ""

    function init(): void {
        failOnWarning(/.?/)
        Theme.reducedMotion = false
        typed = ""
    }
    function cleanup(): void { Theme.reducedMotion = true }

    Component {
        id: page
        FocusScope {
            width: 800
            height: 900
            property alias sheet: shown
            property alias field: before
            TextInput { id: before; focus: true; width: 200; height: 40 }
            PullSheet {
                id: shown
                title: "Hold this helmet"
                Words { Layout.fillWidth: true; text: "A long sentence that wraps into several lines on a glass as wide as this one is, so that its height is known only once its width is. ".repeat(4) }
                Repeater { model: 5; BigButton { Layout.fillWidth: true; text: "Answer" } }
                onKeyPressed: event => { testCase.typed += event.text; event.accepted = true }
            }
        }
    }

    function test_a_sheet_stands_at_the_foot_and_shows_all_the_first_time_that_it_opens(): void {
        const item = createTemporaryObject(page, testCase)
        item.sheet.open()
        tryVerify(() => item.sheet.opened)
        tryVerify(() => item.sheet.drop === 0)
        const glass = item.sheet.parent
        compare(item.sheet.y + item.sheet.height, glass.height)
        compare(item.sheet.height, item.sheet.implicitHeight)
        verify(item.sheet.height > 400 && item.sheet.height < glass.height, item.sheet.height)
        item.sheet.close()
    }
    function test_the_keyboard_is_where_it_was_when_a_sheet_goes(): void {
        const item = createTemporaryObject(page, testCase)
        item.field.forceActiveFocus()
        item.sheet.open()
        tryVerify(() => item.sheet.opened)
        keyClick("a")
        compare(typed, "a")                       // what nothing in the sheet takes is handed on
        compare(item.field.text, "")
        item.sheet.close()
        tryVerify(() => !item.sheet.visible)
        keyClick("b")
        compare(item.field.text, "b")
    }
    function test_a_sheet_that_fills_keeps_its_height_whatever_stands_in_it(): void {
        const item = createTemporaryObject(page, testCase)
        item.sheet.fills = true
        item.sheet.open()
        tryVerify(() => item.sheet.opened)
        compare(item.sheet.height, item.sheet.parent.height - Theme.touch)
        item.sheet.close()
    }
}
