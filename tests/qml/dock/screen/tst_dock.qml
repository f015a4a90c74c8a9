// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Dock
import Snugline.Models
import Snugline.Room
import "../layout.js" as Layout

Item {
    id: root
    width: 1200
    height: 1200

    Room { id: room }
    Item {
        id: glass
        width: 390
        height: 844
        Binding { target: Theme; property: "phone"; value: Theme.isPhone(glass.width) }
        Loader { id: shown; anchors.fill: parent; active: false; sourceComponent: DockScreen { model: room.dock } }
    }

    TestCase {
        name: "Dock"
        when: windowShown

        function init(): void {
            failOnWarning(/.?/)
            verify(room.begin())
            room.addAthlete("57", "Okafor", "Dele")
            room.addUnit("H-0231", "L", 2025, "bare metal on the lower bar")
            shown.active = true
            shown.item.forceActiveFocus()
        }
        function cleanup(): void {
            shown.active = false
            Theme.textScale = 1
            Theme.mode = "day"
        }
        function check(what: string): void {
            waitForRendering(glass)
            const troubles = Layout.troubles(shown.item, Theme.touch)
            compare(troubles.length, 0, what + ": " + troubles.join("; "))
        }

        function test_every_step_stands_within_the_glass_data(): var { return Layout.glasses() }
        function test_every_step_stands_within_the_glass(data: var): void {
            glass.width = data.width
            glass.height = data.height
            Theme.textScale = data.scale
            check("empty")
            room.scan(shown.item, "H-0999")
            room.dock.chooseSheet(room.sheetHash("Alder A1"))
            check("what it is")
            room.dock.chooseSize("L")
            room.dock.chooseYear(2025, false)
            check("seven points")
            room.dock.allSound()
            room.dock.sayFault(4, "bare metal")
            check("a fault")
            room.dock.putAside()
            room.scan(shown.item, "H-0231")
            check("a known unit")
            room.dock.putAside()
            room.scan(shown.item, "bad\u0001tag")
            check("a refusal")
        }

        function test_keys_typed_anywhere_on_the_page_land_in_the_scan_field(): void {
            room.scan(shown.item, "H-0001")
            room.dock.putAside()
            findChild(shown.item, "back").forceActiveFocus()
            room.scan(shown.item, "H-0002")
            compare(room.dock.serial, "H-0002")
        }

        function test_a_tile_says_its_point_its_state_and_what_to_look_for(): void {
            room.scan(shown.item, "H-0231")
            const tile = findChild(shown.item, "point0")
            verify(tile.Accessible.name.indexOf("Certification") === 0)
            verify(tile.Accessible.name.indexOf("Not seen") > 0)
            room.dock.touchPoint(0)
            verify(tile.Accessible.name.indexOf("Sound") > 0)
        }

        function test_a_tile_is_worked_by_the_keyboard(): void {
            room.scan(shown.item, "H-0231")
            const tile = findChild(shown.item, "point0")
            tile.forceActiveFocus()
            keyClick(Qt.Key_Space)
            compare(room.dock.points[0].state, 1)
        }
    }
}
