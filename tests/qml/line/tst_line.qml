// SPDX-License-Identifier: Apache-2.0
// The screens of the Line at the sizes they are made for: nothing cut off, nothing too small, every control with a name and in reach of
// the keyboard.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Line
import Snugline.Ground
import "layout.js" as Layout

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
    Component { id: doors; Doors { shell: ground.shell } }
    Component { id: line; Line { shell: ground.shell } }
    Component { id: jersey; Jersey { shell: ground.shell } }
    Component { id: turn; Turn { shell: ground.shell } }
    Component { id: people; People { shell: ground.shell } }
    Component { id: athlete; Athlete { shell: ground.shell; what: ground.athlete("88") } }
    Component { id: tape; Tape { shell: ground.shell; what: ground.athlete("57") } }
    Component { id: guide; Guide { shell: ground.shell } }
    Component { id: verdict; Verdict { shell: ground.shell } }

    TestCase {
        name: "Line"
        when: windowShown

        function init(): void {
            failOnWarning(/.?/)
            Theme.reducedMotion = true
            verify(ground.begin())
        }
        function cleanup(): void {
            shown.sourceComponent = undefined
            ground.end()
            Theme.textScale = 1
            Theme.mode = "day"
        }
        function show(screen: Component): void {
            shown.sourceComponent = undefined
            shown.sourceComponent = screen
            verify(shown.item !== null)
            shown.item.forceActiveFocus()
        }
        function check(what: string): void {
            const troubles = Layout.troublesOnceLaidOut(() => waitForRendering(glass, 500), shown.item, Theme.touch)
            compare(troubles.length, 0, what + ": " + troubles.join("; "))
        }
        function begin(jersey: string, kind: string): void {
            ground.shell.guide.start(ground.athlete(jersey), kind)
            verify(ground.settled())
        }
        function set(data: var): void {
            glass.width = data.width
            glass.height = data.height
            Theme.textScale = data.scale
        }

        function test_the_board_and_what_lies_around_it_data(): var { return Layout.glasses() }
        function test_the_board_and_what_lies_around_it(data: var): void {
            set(data)
            show(doors)
            check("doors")
            show(line)
            check("line")
            show(jersey)
            check("jersey")
            ground.shell.line.query = "8"
            check("jersey found")
            show(people)
            check("people")
            show(athlete)
            check("athlete")
            show(tape)
            check("tape")
            ground.shell.line.startWalk()
            show(turn)
            check("turn")
        }

        function test_every_question_of_a_first_fit_data(): var { return Layout.glasses() }
        function test_every_question_of_a_first_fit(data: var): void {
            set(data)
            begin("57", "first")
            show(guide)
            const model = ground.shell.guide
            check("hair")
            ground.answer("wet")
            check("starting air")
            model.choose("air-crown")
            check("gauge")
            model.typeEntry("3.1")
            check("gauge read")
            model.stepBack()
            model.stepBack()
            ground.answer("set")
            check("brow")
            model.moveGap(40)
            check("brow dragged")
            ground.answer("gap")
            check("seat it again")
            ground.answer("over")
            check("advice")
            model.openGauge()
            check("gauge after a change")
            ground.answer("pumps-2")
            for (const name of ["brow", "ears", "nape", "chin", "straps"]) {
                check(name)
                ground.answer("snug")
            }
            check("jaw")
            ground.answer("over")
            check("jaw side")
            model.stepBack()
            for (const name of ["jaw", "crown", "sides", "hold"]) {
                check(name)
                ground.answer("snug")
            }
            check("points")
            model.choose("faceguard")
            check("a point")
            model.answer("fault")
            check("a fault")
            model.stepBack()
            model.stepBack()
            model.readGauge()
            check("which bladder")
            model.choose("port-sides")
            check("the gauge alone")
            model.stepBack()
            model.stepBack()
            ground.answer("all-sound")
            compare(model.stage, "verdict")
            show(verdict)
            check("verdict")
        }

        function test_a_question_of_the_sheet_data(): var { return Layout.glasses() }
        function test_a_question_of_the_sheet(data: var): void {
            verify(ground.begin("more_sheets/dogwood-d4.json"))
            set(data)
            begin("57", "first")
            show(guide)
            ground.answer("wet")
            check("air and pads")
            ground.shell.guide.choose("pad-jaw-left")
            check("thicknesses")
            ground.shell.guide.choose("step-2")
            verify(ground.settled())
            check("air and pads, one chosen")
            ground.answer("no-gauge")
            for (let i = 0; i < 9; ++i)
                ground.answer("snug")
            compare(ground.shell.guide.stage, "question")
            check("question")
            ground.answer("no")
            check("points after it")
            ground.answer("all-sound")
            compare(ground.shell.guide.verdict.verdict, "do-not-wear")
            verify(ground.shell.guide.verdict.reasons.some(r => r.indexOf("faceguard") >= 0), JSON.stringify(ground.shell.guide.verdict.reasons))
            show(verdict)
            check("verdict")
        }

        function test_a_look_and_the_stop_data(): var { return Layout.glasses() }
        function test_a_look_and_the_stop(data: var): void {
            set(data)
            begin("88", "look")
            show(guide)
            for (const view of ["front", "side", "hold"]) {
                check(view)
                ground.answer("all-snug")
            }
            check("points")
            ground.shell.guide.sayUnwell()
            verify(ground.settled())
            check("stop")
        }

        // What a screen reader says and what Tab reaches: every control once, in the order they stand in.
        function test_tab_reaches_every_control_data(): var {
            return [{ tag: "doors", screen: doors }, { tag: "line", screen: line }, { tag: "jersey", screen: jersey }, { tag: "people", screen: people },
                    { tag: "athlete", screen: athlete }, { tag: "tape", screen: tape },
                    { tag: "guide", screen: guide, kind: "first" }]
        }
        function test_tab_reaches_every_control(data: var): void {
            set({ width: 834, height: 1194, scale: 1 })
            if (data.kind)
                begin("57", data.kind)
            show(data.screen)
            waitForRendering(glass, 500)
            const wanted = Layout.controls(shown.item, [])
            verify(wanted.length > 0)
            const reached = []
            let first = null
            for (let i = 0; i < wanted.length * 2 + 6; ++i) {
                keyClick(Qt.Key_Tab)
                const at = root.Window.activeFocusItem
                if (at === first)
                    break
                first = first ?? at
                reached.push(at)
            }
            for (const control of wanted)
                verify(reached.indexOf(control) >= 0, Layout.nameOf(control) + " is out of reach of Tab")
        }

        function test_the_keys_of_a_gauge_can_be_typed_on_a_keyboard(): void {
            set({ width: 834, height: 1194, scale: 1 })
            begin("57", "first")
            show(guide)
            ground.answer("wet")
            ground.shell.guide.choose("air-crown")
            waitForRendering(glass, 500)
            for (const key of ["2", ".", "8"])
                keyClick(key)
            compare(ground.shell.guide.entry.value, "2.80")
            mouseClick(findChild(shown.item, "entry-minus"))
            compare(ground.shell.guide.entry.value, "2.70")
            compare(findChild(shown.item, "entry-pad").text, "")
            mouseClick(findChild(shown.item, "entry-unit"))
            compare(ground.shell.guide.entry.unit, "kPa")
        }
        function test_themes_keep_every_word_on_its_ground_data(): var { return [{ tag: "sun" }, { tag: "night" }] }
        function test_themes_keep_every_word_on_its_ground(data: var): void {
            set({ width: 390, height: 844, scale: 1 })
            Theme.mode = data.tag
            show(line)
            check("line")
            begin("57", "first")
            show(guide)
            check("guide")
        }
    }
}
