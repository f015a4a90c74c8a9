// SPDX-License-Identifier: Apache-2.0
// What the walks at the Dock share: the real screen over a real Book, touched by finger events and scanned at by a hand scanner.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Dock
import Snugline.Models
import Snugline.Room

TestCase {
    id: walk

    property alias room: theRoom
    property Item screen: null
    property int touches: 0

    when: windowShown
    visible: true
    width: 834
    height: 1194

    Room { id: theRoom }
    Component { id: dockScreen; DockScreen { width: 834; height: 1194; model: theRoom.dock; scan: theRoom.scanner } }

    function init(): void {
        failOnWarning(/.?/)
        verify(room.begin())
        show()
    }
    function cleanup(): void { hide() }
    function show(): void {
        Theme.reducedMotion = true
        screen = createTemporaryObject(dockScreen, walk)
        verify(screen)
        screen.forceActiveFocus()
        touches = 0
    }
    function hide(): void {
        if (screen)
            screen.destroy()
        screen = null
        wait(0)
    }
    function item(name: string): var {
        const tops = screen.Window.contentItem.children
        for (let i = tops.length - 1; i >= 0; --i) {
            const found = tops[i].visible ? findIn(tops[i], name) : null
            if (found)
                return found
        }
        return null
    }
    // The first one that shows. Popups live in the overlay, beside the screen.
    function findIn(parent: Item, name: string): var {
        for (let i = 0; i < parent.children.length; ++i) {
            const child = parent.children[i]
            if (child.objectName === name && child.visible)
                return child
            const deeper = findIn(child, name)
            if (deeper)
                return deeper
        }
        return null
    }
    // Everything is where it will be drawn.
    function settle(item: Item): void {
        if (isPolishScheduled(item))
            waitForItemPolished(item)
        for (let i = 0; i < item.children.length; ++i)
            settle(item.children[i])
    }
    function touch(name: string): void {
        const target = item(name)
        verify(target, "nothing named " + name)
        tryVerify(() => target.visible && target.enabled && target.width > 0, 5000, name + " cannot be touched")
        const area = screen.scrollArea
        if (isInside(target, area))
            area.reveal(target)
        settle(screen.Window.contentItem)
        settle(screen.Window.contentItem)    // what was polished may have moved what holds it
        const sequence = touchEvent(target)
        sequence.press(0, target).commit()
        sequence.release(0, target).commit()
        ++touches
    }
    function isInside(item: Item, ancestor: Item): bool {
        for (let at = item; at; at = at.parent)
            if (at === ancestor)
                return true
        return false
    }
    function scan(text: string): void { room.scan(screen, text) }
    function settled(): void { tryVerify(() => !room.dock.isBusy && room.dock.stage === DockModel.Waiting, 5000, "the unit is not off the table") }
    // Sheet, size and label, then the seven points, as on the first unit of a day.
    function takeNew(serial: string, size: string, year: string): void {
        scan(serial)
        compare(room.dock.stage, DockModel.What)
        touch(room.sheetHash("Alder A1"))
        touch(size)
        touch(year)
        compare(room.dock.stage, DockModel.Points)
        touch("allSound")
        touch("inService")
        settled()
    }
}
