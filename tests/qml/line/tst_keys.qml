// SPDX-License-Identifier: Apache-2.0
// No key and no answer moves under the thumb, whatever is typed, said or asked next; and what stands is made once for each answer.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Line
import Snugline.Ground

Item {
    id: root
    width: 1200
    height: 1200

    Ground { id: ground }
    Item {
        id: glass
        width: 390
        height: 844
        Binding { target: Theme; property: "phone"; value: Theme.isPhone(glass.width) }
        Loader { id: shown; anchors.fill: parent; focus: true }
    }
    Component { id: tape; Tape { shell: ground.shell; what: ground.athlete("57") } }
    Component { id: jersey; Jersey { shell: ground.shell } }
    Component { id: guide; Guide { shell: ground.shell } }
    Component { id: spy; SignalSpy {} }

    TestCase {
        name: "Keys"
        when: windowShown

        function init(): void {
            failOnWarning(/.?/)
            Theme.reducedMotion = true
            verify(ground.begin())
        }
        function cleanup(): void {
            shown.sourceComponent = undefined
            ground.end()
        }
        function show(screen: Component): void {
            shown.sourceComponent = undefined
            shown.sourceComponent = screen
            shown.item.forceActiveFocus()
            waitForRendering(glass, 500)
        }
        function glasses(): var {
            return [{ tag: "phone", width: 390, height: 844 }, { tag: "small phone", width: 360, height: 640 },
                    { tag: "phone held sideways", width: 844, height: 390 }, { tag: "tablet", width: 834, height: 1194 },
                    { tag: "tablet held sideways", width: 1194, height: 834 }]
        }
        function set(data: var): void {
            glass.width = data.width
            glass.height = data.height
        }
        // Where each of these stands on the glass.
        function places(names: var): string {
            waitForRendering(glass, 500)
            return names.map(name => {
                const item = findChild(shown.item, name)
                verify(item !== null, name)
                const at = item.mapToItem(glass, 0, 0)
                return name + " " + Math.round(at.x) + "," + Math.round(at.y) + " " + Math.round(item.width) + "x" + Math.round(item.height)
            }).join("; ")
        }
        function read(digits: string): void {
            const pad = findChild(shown.item, "tape-pad")
            pad.text = digits
            pad.enter()
            tryCompare(ground.shell.athlete, "isBusy", false)
        }
        function begin(jersey: string, kind: string): void {
            ground.shell.guide.start(ground.athlete(jersey), kind)
            verify(ground.settled())
        }

        function test_no_key_of_the_tape_moves_data(): var { return glasses() }
        function test_no_key_of_the_tape_moves(data: var): void {
            set(data)
            show(tape)
            const keys = ["key-1", "key-5", "key-0", "key-1/8", "key-enter", "tape-done", "set-aside"]
            const before = places(keys)
            findChild(shown.item, "tape-pad").press("2")
            compare(places(keys), before)
            read("2")                     // no head: refused
            verify(findChild(shown.item, "pad-note").text.length > 0)
            compare(places(keys), before)
            read("22 1/8")
            compare(places(keys), before)
            read("23 1/8")                // an inch more: questioned
            verify(ground.shell.athlete.tapeDoubt.length > 0)
            compare(places(keys), before)
            read("22 1/8")
            compare(places(keys), before)
            ground.shell.athlete.setAside(ground.shell.athlete.readings[1].name, "misread")
            tryCompare(ground.shell.athlete, "isBusy", false)
            compare(places(keys), before)
        }

        function test_a_reading_is_questioned_set_aside_and_counted_again_by_touch(): void {
            set({ width: 834, height: 1194 })
            show(tape)
            const athlete = ground.shell.athlete
            read("22 1/8")
            const sized = athlete.sizes.length
            verify(sized > 0)
            read("23 1/8")
            verify(athlete.tapeDoubt.indexOf("1 in more") > 0, athlete.tapeDoubt)
            compare(athlete.sizes.length, 0)
            verify(athlete.tapeNote.length > 0)
            mouseClick(findChild(shown.item, "set-aside"))
            const sheet = findChild(shown.item, "readings-sheet")
            tryCompare(sheet, "opened", true)
            compare(sheet.readings.map(r => r.text).join(), "22 1/8 in,23 1/8 in")
            findChild(sheet.contentItem, "reading-23 1/8 in").clicked()
            waitForRendering(glass, 500)
            findChild(sheet.contentItem, "aside-misread").clicked()
            tryCompare(sheet, "opened", false)
            tryVerify(() => athlete.readings.filter(r => r.isAside).length === 1)
            compare(athlete.sizes.length, sized)
            mouseClick(findChild(shown.item, "set-aside"))
            tryCompare(sheet, "opened", true)
            findChild(sheet.contentItem, "reading-23 1/8 in").clicked()
            tryVerify(() => athlete.readings.filter(r => r.isAside).length === 0)
            compare(athlete.sizes.length, 0)
        }

        function test_no_key_of_the_jersey_pad_moves_data(): var { return glasses() }
        function test_no_key_of_the_jersey_pad_moves(data: var): void {
            set(data)
            show(jersey)
            const keys = ["key-1", "key-8", "key-0", "key-erase"]
            const before = places(keys)
            for (const query of ["8", "88", "888", ""]) {
                ground.shell.line.query = query
                compare(places(keys), before, query)
            }
        }

        function test_all_snug_stays_under_the_thumb_from_view_to_view_data(): var { return glasses() }
        function test_all_snug_stays_under_the_thumb_from_view_to_view(data: var): void {
            set(data)
            begin("88", "look")
            show(guide)
            const before = places(["all-snug"])
            ground.answer("all-snug")
            compare(places(["all-snug"]), before)
            ground.answer("all-snug")
            compare(places(["all-snug"]), before)
            ground.answer("all-snug")
            compare(places(["all-sound"]).replace("all-sound", "all-snug"), before)
        }

        function test_snug_stays_under_the_thumb_from_mark_to_mark_data(): var { return glasses() }
        function test_snug_stays_under_the_thumb_from_mark_to_mark(data: var): void {
            set(data)
            begin("57", "first")
            show(guide)
            ground.answer("wet")
            ground.answer("no-gauge")
            const before = places(["snug"])
            for (let i = 0; i < 8; ++i) {
                ground.answer("snug")
                compare(places(["snug"]), before, ground.shell.guide.title)
            }
        }

        function test_the_keys_of_a_gauge_do_not_move_data(): var { return glasses() }
        function test_the_keys_of_a_gauge_do_not_move(data: var): void {
            set(data)
            begin("57", "first")
            show(guide)
            ground.answer("wet")
            ground.shell.guide.choose("air-crown")
            const keys = ["key-1", "key-5", "key-0", "entry-minus", "entry-plus"]
            const before = places(keys)
            ground.shell.guide.typeEntry("2.9")
            compare(places(keys), before)
            ground.shell.guide.typeEntry("99")   // no bladder reads that
            verify(ground.shell.guide.entry.message.length > 0)
            compare(places(keys), before)
        }

        // Each move used to make every question, answer and drawing of the page anew.
        function test_the_brow_is_dragged_without_making_the_page_anew(): void {
            set({ width: 834, height: 1194 })
            begin("57", "first")
            ground.answer("wet")
            ground.answer("no-gauge")
            show(guide)
            const model = ground.shell.guide
            model.moveGap(30)
            const answer = findChild(shown.item, "gap")
            const made = createTemporaryObject(spy, root, { target: model, signalName: "changed" })
            const moved = createTemporaryObject(spy, root, { target: model, signalName: "gapChanged" })
            for (let mm = 31; mm <= 45; ++mm)
                model.moveGap(mm)
            compare(made.count, 0)
            verify(moved.count > 5)
            compare(findChild(shown.item, "gap"), answer)
            verify(answer.text.indexOf(model.gapText) > 0, answer.text)
            compare(answer.detail, "Sits high")
            model.moveGap(25)
            compare(answer.detail, "On the mark")
            ground.answer("gap")
            compare(model.title.length > 0, true)
        }

        function test_one_answer_makes_one_page(): void {
            set({ width: 834, height: 1194 })
            begin("88", "look")
            show(guide)
            const made = createTemporaryObject(spy, root, { target: ground.shell.guide, signalName: "changed" })
            ground.answer("all-snug")
            compare(made.count, 1)
            ground.shell.guide.undo()
            verify(ground.settled())
            compare(made.count, 2)
        }
    }
}
