// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Book
import Snugline.Models
import Snugline.Room
import "../dock/layout.js" as Layout

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
        Loader {
            id: shown
            anchors.fill: parent
            active: false
            sourceComponent: BookScreen { roster: room.roster; units: room.units; settings: room.settings }
        }
    }
    SignalSpy { id: opened; signalName: "openAthlete" }

    TestCase {
        name: "Book"
        when: windowShown

        readonly property var stack: findChild(shown.item, "bookStack")

        function init(): void {
            failOnWarning(/.?/)
            verify(room.begin())
            room.addAthlete("57", "Okafor-Lindqvist", "Bartholomew")
            room.addAthlete("07", "Boyd", "Kit")
            room.addUnit("H-0231", "L", 2025)
            room.addUnit("H-0118", "M", 2023, "bare metal on the lower bar")
            room.pair("H-0231", "57")
            shown.active = true
            opened.target = shown.item
            opened.clear()
        }
        function cleanup(): void {
            shown.active = false
            Theme.textScale = 1
        }
        function check(what: string): void {
            waitForRendering(glass)
            const troubles = Layout.troubles(shown.item, Theme.touch)
            compare(troubles.length, 0, what + ": " + troubles.join("; "))
        }

        function test_every_page_stands_within_the_glass_data(): var { return Layout.glasses() }
        function test_every_page_stands_within_the_glass(data: var): void {
            glass.width = data.width
            glass.height = data.height
            Theme.textScale = data.scale
            check("index")
            for (const name of ["athletes", "helmets", "sheets", "settings"]) {
                stack.currentItem.chosen(name)
                check(name)
                shown.item.goBack()
            }
            stack.currentItem.chosen("athletes")
            stack.currentItem.editAthlete("")
            check("form")
            shown.item.goBack()
            stack.currentItem.takeRosterIn()
            room.roster.intake.read(room.writeText("roster.csv", "number,last name,first name\n57,Okafor,Dele\n4,,Ander\n12,Marsh,Teo\n"))
            check("roster")
            shown.item.showUnit(room.unitId("H-0118"))
            check("unit on hold")
            stack.currentItem.chooseAthlete()
            check("pairing")
        }

        function test_an_athlete_of_the_list_opens_by_a_touch(): void {
            stack.currentItem.chosen("athletes")
            const list = findChild(stack.currentItem, "list")
            tryCompare(list, "count", 2)
            findChild(list.itemAtIndex(0), "athlete").clicked()
            compare(opened.count, 1)
        }

        function test_search_by_jersey_and_by_name_narrows_the_list(): void {
            room.roster.search = "57"
            compare(room.roster.count, 1)
            room.roster.search = "boy"
            compare(room.roster.count, 1)
            room.roster.search = "zzz"
            compare(room.roster.count, 0)
            room.roster.search = ""
            compare(room.roster.count, 2)
        }

        function test_a_word_is_typed_into_the_search_letter_by_letter_and_every_letter_arrives_data(): var {
            return [{ tag: "athletes", words: "boyd", list: () => room.roster }, { tag: "helmets", words: "0231", list: () => room.units }]
        }
        function test_a_word_is_typed_into_the_search_letter_by_letter_and_every_letter_arrives(data: var): void {
            stack.currentItem.chosen(data.tag)
            tryVerify(() => findChild(stack.currentItem, "search") !== null)
            const search = findChild(stack.currentItem, "search")
            const list = findChild(stack.currentItem, "list")
            search.forceActiveFocus()
            for (const letter of data.words) {
                room.type(shown.item, letter)
                waitForRendering(glass)       // the rows are others now
            }
            compare(data.list().search, data.words)
            compare(data.list().count, 1)
            list.currentIndex = 0             // by the arrow keys
            search.forceActiveFocus()
            room.type(shown.item, "x")
            waitForRendering(glass)
            room.type(shown.item, "y")
            compare(data.list().search, data.words + "xy")
            data.list().search = ""
        }

        function test_filters_count_and_narrow_the_helmets(): void {
            const names = room.units.filters.map(f => f.count)
            compare(names.join(","), "2,1,1,1,1,1")
            room.units.filter = UnitsModel.OnHold
            compare(room.units.count, 1)
            room.units.filter = UnitsModel.All
        }

        function test_the_way_back_leads_to_the_page_before(): void {
            stack.currentItem.chosen("helmets")
            shown.item.showUnit(room.unitId("H-0231"))
            compare(stack.depth, 3)
            shown.item.goBack()
            shown.item.goBack()
            compare(stack.depth, 1)
        }
    }
}
