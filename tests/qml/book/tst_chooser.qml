// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Book
import Snugline.Room

Item {
    id: root
    width: 834
    height: 1194

    Room { id: room }
    Loader {
        id: shown
        anchors.fill: parent
        active: false
        sourceComponent: BookScreen { roster: room.roster; units: room.units; settings: room.settings }
    }

    TestCase {
        name: "Chooser"
        when: windowShown

        function test_a_file_is_asked_for_by_the_systems_dialog_when_it_is_first_wanted(): void {
            failOnWarning(/.?/)
            verify(room.begin())
            shown.active = true
            const stack = findChild(shown.item, "bookStack")
            stack.currentItem.chosen("athletes")
            stack.currentItem.takeRosterIn()
            const chooser = findChild(stack.currentItem, "chooser")
            compare(chooser.item, null)
            stack.currentItem.choose()
            verify(chooser.item)
            tryCompare(chooser.item, "visible", true)
            chooser.item.close()
            shown.active = false
        }
    }
}
