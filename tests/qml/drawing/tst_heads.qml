// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Drawing

TestCase {
    id: testCase
    name: "Heads"
    when: windowShown
    visible: true
    width: 900
    height: 900

    function init(): void {
        failOnWarning(/.?/)
        Theme.reducedMotion = true
        Theme.phone = false
        Theme.mode = "day"
    }
    function cleanup(): void {
        Theme.reducedMotion = false
        Theme.phone = false
        Theme.mode = "day"
    }

    Component { id: profile; HeadProfile { width: 600; height: 640 } }
    Component { id: front; HeadFront { width: 600; height: 640 } }
    Component { id: unit; HelmetPoints { width: 600; height: 560 } }
    Component { id: looking; LookDrawing { width: 600; height: 640 } }
    Component { id: spy; SignalSpy { } }

    function touchAt(item: Item, at: point): void {
        const touch = touchEvent(item)
        touch.press(0, item, at.x, at.y).commit()
        touch.release(0, item, at.x, at.y).commit()
    }

    function test_dragging_the_front_edge_gives_millimetres_of_the_drawing(): void {
        const head = createTemporaryObject(profile, testCase, { browShown: true, browDraggable: true, browGap: 25.4, browText: "25 mm" })
        const released = createTemporaryObject(spy, testCase, { target: head, signalName: "browGapReleased" })
        head.browGapMoved.connect(mm => head.browGap = mm)
        waitForRendering(head)
        const at = head.placeAt("brow")
        const perMm = head.unitsPerMm * head.drawScale
        const touch = touchEvent(head)
        touch.press(0, head, at.x, at.y).commit()
        for (let step = 1; step <= 20; ++step)
            touch.move(0, head, at.x, at.y - step).commit()
        // The edge follows the finger: what was travelled since the drag began, in mm of the drawing, at 0.1 mm.
        fuzzyCompare(head.browGap, 25.4 + 20 / perMm, 0.11 + 8 / perMm)
        const mid = head.browGap
        for (let step = 21; step <= 40; ++step)
            touch.move(0, head, at.x, at.y - step).commit()
        fuzzyCompare(head.browGap - mid, 20 / perMm, 0.11)
        touch.release(0, head, at.x, at.y - 40).commit()
        compare(released.count, 1)
        compare(released.signalArguments[0][0], head.browGap)
        fuzzyCompare(head.placeAt("brow").y, at.y - (head.browGap - 25.4) * perMm, 0.5)
    }
    function test_a_drag_stops_at_the_ends_of_the_scale(): void {
        const head = createTemporaryObject(profile, testCase, { browShown: true, browDraggable: true })
        head.browGapMoved.connect(mm => head.browGap = mm)
        waitForRendering(head)
        const at = head.placeAt("brow")
        const touch = touchEvent(head)
        touch.press(0, head, at.x, at.y).commit()
        for (let step = 1; step <= 30; ++step)
            touch.move(0, head, at.x, at.y + step * 10).commit()
        compare(head.browGap, 0)
        for (let step = 30; step >= -60; --step)
            touch.move(0, head, at.x, Math.max(1, at.y + step * 10)).commit()
        verify(head.browGap > 40 && head.browGap <= 60, String(head.browGap))
        touch.release(0, head, at.x, 1).commit()
    }
    function test_the_front_edge_lies_where_the_gap_says_data(): var {
        return [0, 12, 19, 25.4, 32, 45, 60].map(mm => ({ tag: mm + " mm", mm: mm }))
    }
    function test_the_front_edge_lies_where_the_gap_says(row: var): void {
        const head = createTemporaryObject(profile, testCase, { browGap: row.mm })
        // The turn of the helmet about its pivot must bring the front edge to the same height as the ruler.
        const turn = head.tip(head.edgeY) * Math.PI / 180
        const y = head.pivot.y + (head.edge.x - head.pivot.x) * Math.sin(turn) + (head.edge.y - head.pivot.y) * Math.cos(turn)
        fuzzyCompare(y, head.browY - row.mm * head.unitsPerMm, 0.01)
    }
    function test_all_nine_marks_can_be_touched_on_the_profile_data(): var {
        return [{ tag: "tablet", width: 600, height: 640, phone: false }, { tag: "phone", width: 330, height: 330, phone: true }]
    }
    function test_all_nine_marks_can_be_touched_on_the_profile(at: var): void {
        Theme.phone = at.phone
        const head = createTemporaryObject(profile, testCase, { width: at.width, height: at.height, touchParts: PartWords.marks })
        const touched = createTemporaryObject(spy, testCase, { target: head, signalName: "partTouched" })
        waitForRendering(head)
        for (let i = 0; i < PartWords.marks.length; ++i) {
            touchAt(head, head.placeAt(PartWords.marks[i]))
            compare(touched.count, i + 1)
            compare(touched.signalArguments[i][0], PartWords.marks[i])
        }
    }
    function test_a_touch_near_a_place_means_the_nearest_and_far_from_all_means_none(): void {
        const head = createTemporaryObject(profile, testCase, { touchParts: ["crown", "chin"] })
        const touched = createTemporaryObject(spy, testCase, { target: head, signalName: "partTouched" })
        waitForRendering(head)
        const crown = head.placeAt("crown")
        touchAt(head, Qt.point(crown.x + 36, crown.y + 30))
        compare(touched.signalArguments[0][0], "crown")
        touchAt(head, Qt.point(head.width - 5, head.height - 5))
        compare(touched.count, 1)
    }
    function test_left_and_right_are_the_athletes_own(): void {
        const head = createTemporaryObject(front, testCase, { touchParts: ["jaw-left", "jaw-right"] })
        const touched = createTemporaryObject(spy, testCase, { target: head, signalName: "partTouched" })
        waitForRendering(head)
        verify(head.placeAt("jaw-left").x > head.placeAt("jaw-right").x)
        touchAt(head, head.placeAt("jaw-left"))
        compare(touched.signalArguments[0][0], "jaw-left")
        compare(findChild(head, "place-jaw-left").Accessible.name, "Left jaw pad")
    }
    function test_every_place_answers_the_keyboard_and_names_itself(): void {
        const head = createTemporaryObject(profile, testCase, { touchParts: ["ears"], findings: { "ears": "over" }, partTexts: { "ears": "Ears" } })
        const touched = createTemporaryObject(spy, testCase, { target: head, signalName: "partTouched" })
        const sign = findChild(head, "place-ears")
        compare(sign.Accessible.name, "Ears, over")
        compare(sign.Accessible.role, Accessible.Button)
        sign.forceActiveFocus()
        keyClick(Qt.Key_Space)
        keyClick(Qt.Key_Return)
        compare(touched.count, 2)
    }
    function test_the_seven_points_lie_apart_on_the_unit(): void {
        const item = createTemporaryObject(unit, testCase)
        const touched = createTemporaryObject(spy, testCase, { target: item, signalName: "partTouched" })
        waitForRendering(item)
        compare(PartWords.points.length, 7)
        for (let i = 0; i < 7; ++i) {
            touchAt(item, item.placeAt(PartWords.points[i]))
            compare(touched.signalArguments[i][0], PartWords.points[i])
        }
    }
    function test_the_three_views_of_a_look_hold_all_nine_marks_once(): void {
        const item = createTemporaryObject(looking, testCase)
        const touched = createTemporaryObject(spy, testCase, { target: item, signalName: "partTouched" })
        let all = []
        for (const view of ["front", "side", "hold"]) {
            item.view = view
            all = all.concat(item.touchParts)
        }
        compare(all.slice().sort(), PartWords.marks.slice().sort())
        compare(touched.count, 0)
    }
    function test_each_view_of_a_look_takes_its_three_marks_by_touch_once_data(): var {
        return [{ tag: "front" }, { tag: "side" }, { tag: "hold" }]
    }
    function test_each_view_of_a_look_takes_its_three_marks_by_touch_once(row: var): void {
        const item = createTemporaryObject(looking, testCase, { view: row.tag, findings: { "crown": "over" }, description: "Look" })
        verify(item as DrawnView)
        const touched = createTemporaryObject(spy, testCase, { target: item, signalName: "partTouched" })
        waitForRendering(item)
        for (let i = 0; i < 3; ++i) {
            touchAt(item, item.shown.placeAt(item.touchParts[i]))
            compare(touched.count, i + 1)
            compare(touched.signalArguments[i][0], item.touchParts[i])
        }
        compare(item.Accessible.name, "Look")
    }
    function test_a_part_that_the_sheet_lacks_is_not_drawn(): void {
        const full = createTemporaryObject(profile, testCase)
        waitForRendering(full)
        const before = grabImage(full)
        const bare = createTemporaryObject(profile, testCase, { hasFaceguard: false, hasCrownAir: false, hasJawAir: false, hasSideAir: false })
        full.visible = false
        waitForRendering(bare)
        verify(!grabImage(bare).equals(before))
    }
    function test_what_is_in_focus_is_drawn_otherwise_in_every_theme_data(): var {
        return [{ tag: "day" }, { tag: "sun" }, { tag: "night" }]
    }
    function test_what_is_in_focus_is_drawn_otherwise_in_every_theme(row: var): void {
        Theme.mode = row.tag
        const head = createTemporaryObject(profile, testCase)
        waitForRendering(head)
        const before = grabImage(head)
        head.focusPart = "jaw"
        waitForRendering(head)
        verify(!grabImage(head).equals(before))
    }
    function test_reduced_motion_keeps_the_drawing_still(): void {
        const head = createTemporaryObject(profile, testCase, { motion: "rock" })
        verify(!head.moves)
        compare(head.phase, 0)
        Theme.reducedMotion = false
        verify(head.moves)
        tryVerify(() => head.phase > 0)
        Theme.reducedMotion = true
        verify(!head.moves)
        tryCompare(head, "phase", 0)
    }
}
