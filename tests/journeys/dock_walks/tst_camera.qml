// SPDX-License-Identifier: Apache-2.0
// The camera as a scanner, scanners that type otherwise, tags that mean several helmets, labels to print: by touch.
import QtQuick
import QtTest
import Snugline.Models

DockWalk {
    name: "DockCamera"

    function test_a_known_clean_unit_before_the_camera_takes_two_touches(): void {
        room.addUnit("H-0231", "L", 2025)
        touch("cameraOn")
        room.showPicture()
        room.showTag("H-0231")
        compare(room.dock.stage, DockModel.Points)
        touches = 0
        touch("allSound")
        touch("inService")
        compare(touches, 2)
        settled()
        compare(room.unitState("H-0231"), "in-service")
    }

    function test_a_tag_that_stays_in_view_counts_once_and_again_after_it_was_away(): void {
        room.addUnit("H-0231", "L", 2025)
        touch("cameraOn")
        room.showTag("H-0231")
        room.dock.putAside()   // in between two frames, which a touch of the moving clock is not
        for (let i = 0; i < 20; ++i) {
            room.passMs(300)
            room.showTag("H-0231")
        }
        compare(room.dock.stage, DockModel.Waiting)
        room.passMs(1500)
        room.showTag("H-0231")
        compare(room.dock.stage, DockModel.Points)
    }

    function test_without_a_camera_the_screen_says_so_and_the_typed_field_works_data(): var {
        return [{ tag: "none", words: "no camera" }, { tag: "forbidden", words: "may not be used" }, { tag: "busy", words: "Another program" }, { tag: "failed", words: "stopped" }]
    }
    function test_without_a_camera_the_screen_says_so_and_the_typed_field_works(data: var): void {
        room.addUnit("H-0231", "L", 2025)
        touch("cameraOn")
        room.cameraIs(data.tag)
        verify(item("cameraTrouble").text.indexOf(data.words) >= 0, item("cameraTrouble").text)
        scan("H-0231")
        compare(room.dock.stage, DockModel.Points)
    }

    function test_a_damaged_tag_says_so_once_it_stays(): void {
        touch("cameraOn")
        room.showDamagedTag()
        verify(!item("cameraTrouble"))
        for (let i = 0; i < 6; ++i) {
            room.passMs(250)
            room.showDamagedTag()
        }
        verify(item("cameraTrouble").text.indexOf("cannot be read") > 0)
        room.showTag("H-1")
        verify(!item("cameraTrouble"))
    }

    function test_the_camera_is_let_go_when_the_screen_goes(): void {
        touch("cameraOn")
        verify(room.scanner.isOn)
        hide()
        verify(!room.scanner.isOn)
    }

    function test_a_scanner_on_another_keyboard_is_noticed_and_read_as_meant(): void {
        room.addUnit("]d201073000110000172" + "1KX-0417", "L", 2025)
        scan("+d20107300011000017" + "21KXß0417")
        compare(room.dock.stage, DockModel.Waiting)
        verify(item("refusal").text.indexOf("German") > 0)
        compare(room.dock.meant, "]d2010730001100001721KX-0417")
        touch("notice-act")
        compare(room.dock.stage, DockModel.Points)
        verify(room.dock.isKnown)
    }

    function test_a_scanner_that_ends_with_tab_or_with_nothing_is_read_too_data(): var {
        return [{ tag: "tab", end: "\t" }, { tag: "nothing", end: "" }]
    }
    function test_a_scanner_that_ends_with_tab_or_with_nothing_is_read_too(data: var): void {
        room.addUnit("H-0231", "L", 2025)
        room.type(screen, "H-0231" + data.end)
        tryVerify(() => room.dock.stage === DockModel.Points, 2000)
    }

    function test_a_serial_of_two_helmets_asks_which_one(): void {
        room.addUnit("]d201073000110000172" + "1KX-7", "L", 2025)
        room.addUnit("]d201089040002100372" + "1KX-7", "M", 2025)
        scan("kx-7")
        compare(room.dock.stage, DockModel.Waiting)
        compare(room.dock.asked.length, 2)
        touch("asked1")
        compare(room.dock.stage, DockModel.Points)
        compare(room.dock.unitId, room.dock.unitId)
        verify(room.dock.isKnown)
        const chosen = room.dock.unitId
        touch("allSound")
        touch("inService")
        settled()
        compare(room.unitCount(), 2)
        verify(chosen.length > 0)
        scan("kx-7")
        touch("askedNew")
        compare(room.dock.stage, DockModel.What)
    }

    function test_one_of_our_labels_with_a_slip_is_refused(): void {
        touch("labels")
        touch("labels-24")
        tryVerify(() => room.printedSerials().length === 24)
        verify(item("sheetWords").text.indexOf(".pdf") > 0)
        touch("close")
        tryVerify(() => item("labelCounts") === null)
        const serial = room.printedSerials()[3]
        scan(serial.slice(0, -1) + (serial.endsWith("A") ? "B" : "A"))
        verify(item("refusal").text.indexOf("last letter") > 0)
        scan(serial)
        compare(room.dock.stage, DockModel.What)
        compare(room.dock.serial, serial)
        // The next sheet goes on where this one ended.
        verify(room.scanner.nextSerial > room.printedSerials()[23])
    }

    function test_two_hundred_units_in_one_go_take_no_memory_but_what_the_book_holds(): void {
        room.addUnit("H-1000", "L", 2025)
        takeNew("H-1001", "L", "2025")
        let before = 0
        for (let n = 1002; n < 1202; ++n) {
            if (n === 1052)
                before = room.memoryKib()
            scan("H-" + n)
            compare(room.dock.stage, DockModel.What)
            room.dock.asTheLast()
            room.dock.putAllSoundInService()
            settled()
        }
        compare(room.dock.count, 201)
        compare(room.dock.inServiceCount, 201)
        // 150 helmets; the Book keeps two records of each (its own and the screens') and its log.
        const each = (room.memoryKib() - before) / 150
        console.info("memory for each helmet taken in: " + each.toFixed(1) + " KiB")
        verify(each < 24, each + " KiB for each helmet")
    }
}
