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
        width: 834
        height: 1194
        Binding { target: Theme; property: "phone"; value: Theme.isPhone(glass.width) }
        Loader {
            id: shown
            anchors.fill: parent
            active: false
            sourceComponent: BookScreen { roster: room.roster; units: room.units; settings: room.settings; gauge: room.gauge }
        }
    }

    TestCase {
        name: "Air"
        when: windowShown

        readonly property var stack: findChild(shown.item, "bookStack")
        readonly property UnitAir air: room.units ? room.units.air : null

        function init(): void {
            failOnWarning(/.?/)
            verify(room.begin())
            room.settings.units = SettingsModel.Metric
            room.noteWeather(21, 180)
            room.addUnit("H-0231", "L", 2025)
            glass.width = 834
            glass.height = 1194
            shown.active = true
            shown.item.showUnit(room.unitId("H-0231"))
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
        function touch(name: string): void {
            const item = findChild(stack.currentItem, name)
            verify(item, name)
            item.clicked()
        }
        function openAir(): void {
            touch("air")
            compare(air.title, "H-0231")
        }
        function take(words: string, head: string, deed: string): void {
            touch(head)
            touch(deed)
            findChild(stack.currentItem, "typed-air").text = words
            touch("record-typed")
            tryCompare(air, "isBusy", false)
        }

        function test_a_reading_is_typed_and_nothing_is_preselected(): void {
            openAir()
            compare(findChild(stack.currentItem, "leak").text, "Not measured yet.")
            findChild(stack.currentItem, "typed-air").text = "20.5"
            verify(!findChild(stack.currentItem, "record-typed").enabled)
            take("20.5", "off", "read")
            compare(air.doneWords, "Crown recorded: 20.5 kPa")
            compare(air.readings.length, 1)
            compare(air.readings[0].raw, "20.5 kPa")
            compare(stack.currentItem.head, "")
            touch("undo")
            tryVerify(() => air.readings.length === 0)
        }
        function test_what_cannot_be_a_reading_is_refused_in_words(): void {
            openAir()
            take("250", "off", "read")
            compare(air.readings.length, 0)
            verify(findChild(stack.currentItem, "air-trouble").text.indexOf("between") > 0)
            take("soft", "on", "refill")
            verify(air.trouble.indexOf("20.5 kPa") > 0)
            compare(air.readings.length, 0)
        }
        function test_too_few_readings_give_no_leak_and_five_give_it_with_its_interval(): void {
            openAir()
            for (const value of ["20.0", "18.9", "18.1", "16.8"]) {
                take(value, "off", "read")
                room.pass(7 * 24 * 60)
                room.noteWeather(21, 180)
            }
            verify(air.leakWords.indexOf("too few") > 0, air.leakWords)
            verify(!air.isLeaking)
            take("16.0", "off", "read")
            verify(air.leakWords.indexOf("95 %") > 0, air.leakWords)
            verify(air.hasPlot)
            compare(air.plot.slopes.length, 1)
            compare(air.plot.carried.length, 5)
        }
        function test_a_gauge_is_chosen_zeroed_and_its_reading_recorded_with_its_name(): void {
            openAir()
            touch("choose-gauge")
            touch("scan")
            touch("found-Bench gauge")
            compare(room.gauge.stage, "zero")
            room.holdGauge(99187)
            touch("zero")
            compare(room.gauge.stage, "live")
            shown.item.goBack()
            room.sendGauge("abc")
            verify(findChild(stack.currentItem, "refusal").text.indexOf("3 bytes") > 0)
            room.holdGauge(119187)
            touch("off")
            touch("read")
            touch("take")
            tryCompare(air, "isBusy", false)
            compare(air.readings[0].raw, "20.0 kPa")
            verify(air.readings[0].how.indexOf("Bench gauge 0142") > 0)
        }
        function test_an_open_air_that_cannot_be_is_asked_about(): void {
            touch("air")
            touch("choose-gauge")
            room.gauge.scan()
            room.gauge.choose("one")
            room.holdGauge(119187)
            touch("zero")
            compare(room.gauge.stage, "zero")
            verify(findChild(stack.currentItem, "zero-doubt").visible)
            room.gauge.zeroAnyway()
            compare(room.gauge.stage, "live")
        }
        function test_both_pages_stand_within_the_glass_data(): var { return Layout.glasses() }
        function test_both_pages_stand_within_the_glass(data: var): void {
            glass.width = data.width
            glass.height = data.height
            Theme.textScale = data.scale
            openAir()
            for (const value of ["20.0", "18.9", "18.1", "16.8", "16.0"]) {
                take(value, "off", "read")
                room.pass(7 * 24 * 60)
                room.noteWeather(21, 180)
            }
            touch("numbers")
            check("air")
            touch("choose-gauge")
            check("no gauge")
            touch("scan")
            check("found")
            room.gauge.choose("one")
            room.holdGauge(99187)
            check("zero")
            room.gauge.zero()
            room.holdGauge(119187)
            check("live")
            shown.item.goBack()
            check("air with a gauge")
        }
    }
}
