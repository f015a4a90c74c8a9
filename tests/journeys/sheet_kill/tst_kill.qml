// SPDX-License-Identifier: Apache-2.0
// Run twice by sheet_kill.cpp: the first process writes a sheet, keeps it, puts the old one back, and dies where SNUGLINE_DIE_AT says; the
// second one starts in the same folder.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Book
import Snugline.Room

Item {
    id: root
    width: 834
    height: 1194

    Room { id: room }
    Component { id: bookScreen; BookScreen { width: 834; height: 1194; roster: room.roster; units: room.units; settings: room.settings } }

    TestCase {
        name: "SheetKill"
        when: windowShown

        property var screen: null
        readonly property int dieAt: room.setting("SNUGLINE_DIE_AT")
        readonly property var editor: room.units?.sheets.editor ?? null

        function show(): void {
            Theme.reducedMotion = true
            screen = createTemporaryObject(bookScreen, root)
            verify(screen)
        }
        function settle(item: Item): void {
            if (isPolishScheduled(item))
                waitForItemPolished(item)
            for (let i = 0; i < item.children.length; ++i)
                settle(item.children[i])
        }
        function shown(): Item { return findChild(screen, "bookStack").currentItem }
        function touch(name: string): void {
            tryVerify(() => findChild(shown(), name) !== null && findChild(shown(), name).visible && findChild(shown(), name).enabled, 5000, name)
            const target = findChild(shown(), name)
            settle(screen)
            for (let at = target; at; at = at.parent)
                if (at === shown().scrollArea)
                    shown().scrollArea.reveal(target)
            settle(screen)
            settle(screen)
            const sequence = touchEvent(target)
            sequence.press(0, target).commit()
            sequence.release(0, target).commit()
        }

        function test_life(): void {
            failOnWarning(/.?/)
            if (room.setting("SNUGLINE_SECOND_LIFE") === 1)
                secondLife()
            else
                firstLife()
        }
        function firstLife(): void {
            verify(room.begin())
            room.addAthlete("57", "Okafor", "Dele")
            room.addUnit("H-0231", "M", 2025)
            room.pair("H-0231", "57")
            room.beginFit("57")
            compare(room.openCheckMonths("57"), 24)
            show()
            touch("sheets")
            touch("sheet0")
            touch("change")
            tryVerify(() => editor.isOpen)
            editor.section = "limits"
            touch("step-12")
            tryVerify(() => editor.isDifferent)
            if (dieAt === 1)
                room.die()
            touch("next")
            touch("keepSheet")
            tryVerify(() => room.standingMonths("H-0231") === 12)
            if (dieAt === 2)
                room.die()
            touch("undo")
            tryVerify(() => room.standingMonths("H-0231") === 24)
            room.die()
            fail("still alive")
        }
        function secondLife(): void {
            verify(room.resume())
            compare(room.standingMonths("H-0231"), dieAt === 2 ? 12 : 24)
            compare(room.openCheckMonths("57"), 24)
            compare(editor.isOpen, dieAt === 1)
            show()
            touch("sheets")
            compare(room.units.sheets.earlier.length, dieAt === 2 ? 1 : 0)
            if (dieAt !== 1)
                return
            touch("goOn")
            touch("next")
            touch("keepSheet")
            tryVerify(() => room.standingMonths("H-0231") === 12)
            compare(room.openCheckMonths("57"), 24)
        }
    }
}
