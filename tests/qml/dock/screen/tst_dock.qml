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

        // Where each answer of a page stands on the glass.
        function places(names: var): string {
            waitForRendering(glass)
            waitForRendering(glass)
            return names.map(name => {
                const target = findChild(shown.item, name)
                const at = target.mapToItem(glass, 0, 0)
                return name + " " + Math.round(at.x) + " " + Math.round(at.y) + " " + Math.round(target.width) + " " + Math.round(target.height)
            }).join(", ")
        }
        function test_nothing_moves_under_a_thumb_while_the_points_are_checked_data(): var { return Layout.glasses() }
        function test_nothing_moves_under_a_thumb_while_the_points_are_checked(data: var): void {
            glass.width = data.width
            glass.height = data.height
            Theme.textScale = data.scale
            room.scan(shown.item, "H-0231")
            const tiles = ["allSound", "point0", "point1", "point2", "point3", "point4", "point5", "point6", "hold"]
            const before = places(tiles)
            for (let i = 0; i < 7; ++i) {
                room.dock.touchPoint(i)
                compare(places(tiles), before, "point " + i + " sound")
            }
            room.dock.sayFault(4, "bare metal")
            compare(places(tiles), before, "a fault is named")
            const serving = findChild(shown.item, "answers").children[1]
            const at = serving.mapToItem(glass, 0, 0)
            room.dock.putAside()
            room.scan(shown.item, "H-0231")
            waitForRendering(glass)
            compare(serving.mapToItem(glass, 0, 0), at)          // whatever its words are
            compare(serving.height, findChild(shown.item, "hold").height)
        }
        function test_nothing_moves_under_a_thumb_while_it_is_said_what_a_helmet_is_data(): var { return Layout.glasses().filter(g => g.scale === 1) }
        function test_nothing_moves_under_a_thumb_while_it_is_said_what_a_helmet_is(data: var): void {
            glass.width = data.width
            glass.height = data.height
            room.scan(shown.item, "H-0998")
            room.dock.chooseSheet(room.sheetHash("Alder A1"))
            room.dock.chooseSize("L")
            room.dock.chooseYear(2025, false)
            room.dock.allSound()
            room.dock.putInService()
            tryVerify(() => room.dock.stage === DockModel.Waiting && !room.dock.isBusy)
            room.scan(shown.item, "H-0999")
            const sheet = room.sheetHash("Alder A1")
            const at = () => ["last", sheet, "earlier"].map(name => {
                waitForRendering(glass)
                waitForRendering(glass)
                return findChild(shown.item, name).mapToItem(glass, 0, 0).y
            })
            const before = at()
            room.dock.chooseSheet(sheet)
            const chosen = at()
            compare(chosen[0], before[0])
            compare(chosen[1], before[1])
            // The tick of what is chosen may wrap its words on a phone: a hair, far below what a thumb covers.
            verify(Math.abs(chosen[2] - before[2]) <= Theme.grid, "a sheet is chosen: " + before + " " + chosen)
            findChild(shown.item, "label").allYears = true
            compare(at(), chosen, "earlier years show")
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
