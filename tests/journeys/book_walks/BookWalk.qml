// SPDX-License-Identifier: Apache-2.0
// What the walks in the Book share: the real pages over a real Book, touched by finger events.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Book
import Snugline.Room

TestCase {
    id: walk

    property alias room: theRoom
    property var screen: null

    function init(): void {
        failOnWarning(/.?/)
        verify(theRoom.begin())
        Theme.reducedMotion = true
        screen = createTemporaryObject(bookScreen, walk)
        verify(screen)
    }
    function cleanup(): void {
        if (screen)
            screen.destroy()
        screen = null
        wait(0)
    }
    // The app ended and started again.
    function startAgain(): void {
        screen.destroy()
        screen = null
        wait(0)
        verify(theRoom.reopen())
        screen = createTemporaryObject(bookScreen, walk)
        verify(screen)
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
    function findIn(parent: Item, name: string): var {
        for (let i = 0; i < parent.children.length; ++i) {
            const child = parent.children[i]
            if (!child.visible)
                continue
            if (child.objectName === name)
                return child
            const deeper = findIn(child, name)
            if (deeper)
                return deeper
        }
        return null
    }
    function page(): var { return findChild(screen, "bookStack").currentItem }
    // Everything is where it will be drawn.
    function settle(item: Item): void {
        if (isPolishScheduled(item))
            waitForItemPolished(item)
        for (let i = 0; i < item.children.length; ++i)
            settle(item.children[i])
    }
    function touch(name: string): void {
        tryVerify(() => item(name) !== null, 5000, "nothing named " + name)
        const target = item(name)
        tryVerify(() => target.enabled && target.width > 0, 5000, name + " cannot be touched")
        settle(screen.Window.contentItem)    // a finger comes after the eye
        for (let at = target; at; at = at.parent)
            if (at === page().scrollArea)
                page().scrollArea.reveal(target)
        settle(screen.Window.contentItem)
        settle(screen.Window.contentItem)    // what was polished may have moved what holds it
        const sequence = touchEvent(target)
        sequence.press(0, target).commit()
        sequence.release(0, target).commit()
    }
    function write(name: string, words: string): void {
        tryVerify(() => item(name) !== null, 5000, "nothing named " + name)
        item(name).forceActiveFocus()
        item(name).clear()
        room.type(screen, words)
    }

    when: windowShown
    visible: true
    width: 834
    height: 1194

    Room { id: theRoom }
    Component {
        id: bookScreen
        BookScreen { width: 834; height: 1194; roster: theRoom.roster; units: theRoom.units; settings: theRoom.settings; photos: theRoom.photos; unitCard: theRoom.unitCard }
    }
}
