// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Drawing

TestCase {
    id: testCase
    name: "Strips"
    when: windowShown
    visible: true
    width: 600
    height: 300

    function init(): void {
        failOnWarning(/.?/)
        Theme.mode = "day"
    }
    function cleanup(): void { Theme.mode = "day" }

    Component { id: fit; FitStrip { } }
    Component { id: points; PointStrip { } }
    Component { id: large; LargeStrip { width: 560; places: PartWords.marks.map((m, i) => ({ name: m, text: m, state: i === 1 ? "over" : "snug", detail: "Seen 08:12 by KP" })) } }
    Component { id: spy; SignalSpy { } }

    // What stands at place i: is it painted on the baseline, above it, below it, in the middle of the place?
    function look(strip: Item, i: int): var {
        const shot = grabImage(strip)
        const cell = strip.width / 9
        const x = Math.round(cell * (i + 0.5))
        const painted = (px, py) => Math.abs(shot.red(px, py) - 255) + Math.abs(shot.green(px, py) - 255) + Math.abs(shot.blue(px, py) - 255) > 90
        const middle = strip.height / 2
        return { center: painted(x, middle), above: painted(x, middle - 13), below: painted(x, middle + 13), edge: painted(x + 2, middle - 13) || painted(x - 3, middle - 13) }
    }

    function test_each_state_has_its_own_shape_without_colour(): void {
        const strip = createTemporaryObject(fit, testCase, { marks: ["snug", "over", "under", "fault", "unseen", "said-over", "said-under", "snug", "snug"] })
        waitForRendering(strip)
        const snug = look(strip, 0)
        verify(snug.center && !snug.above && !snug.below)
        const over = look(strip, 1)
        verify(over.above && !over.below)
        const under = look(strip, 2)
        verify(under.below && !under.above)
        const fault = look(strip, 3)
        verify(fault.center && !fault.above && !fault.below)
        const unseen = look(strip, 4)
        verify(!unseen.center && !unseen.above && !unseen.below)
        const said = look(strip, 5)
        verify(!said.above && said.edge && !said.below)
    }
    function test_the_strip_is_126_by_44_and_says_its_places(): void {
        const strip = createTemporaryObject(fit, testCase, { marks: ["over"] })
        compare(strip.implicitWidth, 126)
        compare(strip.implicitHeight, 44)
        verify(strip.Accessible.name.indexOf("over") > 0)
        strip.description = "Brow high, all else snug"
        compare(strip.Accessible.name, "Brow high, all else snug")
        compare(strip.Accessible.role, Accessible.Graphic)
    }
    function test_a_touchable_strip_is_one_target_for_finger_and_keys(): void {
        const strip = createTemporaryObject(points, testCase, { touchable: true, points: ["sound", "fault"], x: 100, y: 100 })
        const touched = createTemporaryObject(spy, testCase, { target: strip, signalName: "touched" })
        const touch = touchEvent(strip)
        touch.press(0, strip).commit()
        touch.release(0, strip).commit()
        compare(touched.count, 1)
        strip.forceActiveFocus()
        keyClick(Qt.Key_Space)
        compare(touched.count, 2)
        compare(strip.Accessible.role, Accessible.Button)
    }
    function test_a_change_of_a_mark_or_of_the_theme_repaints(): void {
        const strip = createTemporaryObject(fit, testCase, { marks: ["snug"] })
        waitForRendering(strip)
        verify(look(strip, 0).center)
        strip.marks = ["over"]
        tryVerify(() => look(strip, 0).above)
    }
    function test_a_place_of_the_large_strip_names_itself_when_touched(): void {
        const strip = createTemporaryObject(large, testCase)
        const touched = createTemporaryObject(spy, testCase, { target: strip, signalName: "placeTouched" })
        waitForRendering(strip)
        const ears = findChild(strip, "place-ears")
        verify(ears.height >= Theme.touch)
        const touch = touchEvent(ears)
        touch.press(0, ears).commit()
        touch.release(0, ears).commit()
        compare(touched.signalArguments[0][0], "ears")
        ears.forceActiveFocus()
        keyClick(Qt.Key_Return)
        compare(touched.count, 2)
        compare(ears.Accessible.name, "ears, over")
        strip.current = "ears"
        compare(strip.open.detail, "Seen 08:12 by KP")
    }
    function test_sixty_strips_paint_each_only_once_while_they_stand_still(): void {
        const strip = createTemporaryObject(fit, testCase, { marks: ["snug", "over"] })
        waitForRendering(strip)
        const before = strip.paints
        strip.x = 20
        waitForRendering(testCase)
        compare(strip.paints, before)
        strip.marks = ["under"]
        tryCompare(strip, "paints", before + 1)
    }
}
