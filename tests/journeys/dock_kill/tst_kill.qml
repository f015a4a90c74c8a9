// SPDX-License-Identifier: Apache-2.0
// Run twice by dock_kill.cpp: the first process takes helmets in and dies after the touch that SNUGLINE_DIE_AT counts; the second one
// starts in the same folder and finds every answer again, in the Book or on the table, never in both.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Dock
import Snugline.Models
import Snugline.Room

Item {
    id: root
    width: 834
    height: 1194

    Room { id: room }
    Component { id: dockScreen; DockScreen { anchors.fill: parent; model: room.dock } }

    TestCase {
        name: "DockKill"
        when: windowShown

        property var screen: null
        readonly property int dieAt: room.setting("SNUGLINE_DIE_AT")
        property int touches: 0

        function show(): void {
            Theme.reducedMotion = true
            screen = createTemporaryObject(dockScreen, root)
            verify(screen)
            screen.forceActiveFocus()
        }
        // Everything is where it will be drawn.
        function settle(item: Item): void {
            if (isPolishScheduled(item))
                waitForItemPolished(item)
            for (let i = 0; i < item.children.length; ++i)
                settle(item.children[i])
        }
        function touch(name: string): void {
            tryVerify(() => findChild(screen, name) !== null && findChild(screen, name).visible, 5000, name)
            const target = findChild(screen, name)
            screen.scrollArea.reveal(target)
            settle(screen)
            const sequence = touchEvent(target)
            sequence.press(0, target).commit()
            sequence.release(0, target).commit()
            counted()
        }
        function counted(): void {
            if (++touches === dieAt)
                room.die()
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
            show()
            room.scan(screen, "H-0101")
            counted()                                   // 1
            touch(room.sheetHash("Alder A1"))           // 2
            touch("M")                                  // 3
            touch("2025")                               // 4
            touch("allSound")                           // 5
            touch("inService")                          // 6: at once, the write may still be on its way
            tryVerify(() => room.dock.stage === DockModel.Waiting)
            counted()                                   // 7
            room.scan(screen, "H-0102")
            counted()                                   // 8
            touch("last")                               // 9
            room.dock.sayFault(2, "crack")
            counted()                                   // 10
            touch("hold")                               // 11
            tryVerify(() => room.dock.stage === DockModel.Waiting)
            counted()                                   // 12
            fail("still alive")
        }
        function secondLife(): void {
            verify(room.resume())
            show()
            const first = room.unitState("H-0101")
            const onTable = room.dock.stage === DockModel.Waiting ? "" : room.dock.serial
            compare(onTable === "H-0101", dieAt < 6 || dieAt === 6 && first === "", "the first one is on the table until it is in the Book")
            compare(first, dieAt < 6 || dieAt === 6 && onTable === "H-0101" ? "" : "in-service")
            if (onTable === "H-0101") {
                compare(room.dock.sheets.some(s => s.isChosen), dieAt >= 2)
                compare(room.dock.sizes.some(s => s.isChosen), dieAt >= 3)
                compare(room.dock.years.some(y => y.isRecertified), dieAt >= 4)
                compare(room.dock.points.every(p => p.state === 1), dieAt >= 5)
            }
            if (dieAt >= 8 && dieAt <= 10)
                compare(onTable, "H-0102")
            if (dieAt === 10)
                compare(room.dock.points[2].words.indexOf("crack") > 0, true)
            if (dieAt >= 12)
                compare(room.unitState("H-0102"), "held: shell crack")
            if (dieAt === 11)
                verify(onTable === "H-0102" || room.unitState("H-0102") === "held: shell crack")
        }
    }
}
