// SPDX-License-Identifier: Apache-2.0
// A spare on the sideline, by touch, at the sizes the Line is made for.
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
    Component { id: swap; Swap { shell: ground.shell; what: ground.athlete("88") } }

    TestCase {
        name: "Swap"
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
        }
        function show(screen: Component): void {
            shown.sourceComponent = undefined
            shown.sourceComponent = screen
            verify(shown.item !== null)
            shown.item.forceActiveFocus()
        }
        function check(what: string): void {
            waitForRendering(glass, 500)
            const troubles = Layout.troubles(shown.item, Theme.touch)
            compare(troubles.length, 0, what + ": " + troubles.join("; "))
        }
        function set(data: var): void {
            glass.width = data.width
            glass.height = data.height
            Theme.textScale = data.scale
        }
        function named(parent: Item, name: string): var {
            if (!parent.visible)
                return null
            if (parent.objectName === name)
                return parent
            for (let i = 0; i < parent.children.length; ++i) {
                const found = named(parent.children[i], name)
                if (found)
                    return found
            }
            return null
        }
        function touch(name: string): void {
            tryVerify(() => named(shown.item, name) !== null, 5000, "nothing named " + name)
            const target = named(shown.item, name)
            waitForRendering(glass, 300)
            shown.item.scrollArea.reveal(target)
            waitForRendering(glass, 100)
            const sequence = touchEvent(target)
            sequence.press(0, target).commit()
            sequence.release(0, target).commit()
        }

        function test_a_swap_on_the_sideline_data(): var { return Layout.glasses() }
        function test_a_swap_on_the_sideline(data: var): void {
            set(data)
            const old = ground.wornBy("88")
            verify(old.length > 0)
            verify(ground.addSpare("SPARE-2", "bare metal"))
            show(swap)
            check("no spare")
            verify(named(shown.item, "none") !== null)
            verify(ground.shell.swap.notOffered.some(w => w.indexOf("on hold") > 0), ground.shell.swap.notOffered.join("; "))
            verify(ground.addSpare("SPARE-1"))
            check("one spare")
            compare(ground.shell.swap.offers.length, 1)
            // Nothing is preselected: without a reason a touch on the spare does nothing.
            touch("spare-SPARE-1")
            compare(ground.wornBy("88"), old)
            touch("chin-strap")
            check("a reason")
            // And where the old one is.
            touch("spare-SPARE-1")
            compare(ground.wornBy("88"), old)
            touch("hands")
            check("where it is")
            touch("spare-SPARE-1")
            tryVerify(() => ground.shell.guide.stage === "hair" || ground.shell.guide.title.length > 0)
            compare(ground.wornBy("88"), "SPARE-1")
            compare(ground.holdsOf(old), 1)
            compare(ground.shell.guide.athleteId, ground.athlete("88"))
        }
    }
}
