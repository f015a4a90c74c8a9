// SPDX-License-Identifier: Apache-2.0
// NFC tags at the Dock, by touch, from the bytes of the tag to the helmet in the Book.
import QtQuick
import QtTest
import Snugline.Models

DockWalk {
    name: "DockNfc"

    function test_a_known_clean_unit_held_to_the_device_takes_two_touches(): void {
        room.addUnit("H-0231", "L", 2025)
        touch("nfcOn")
        verify(item("nfcWords").text.indexOf("Hold this device to the tag") === 0)
        room.holdTag("text", "H-0231")
        compare(room.dock.stage, DockModel.Points)
        verify(room.dock.isKnown)
        touches = 0
        touch("allSound")
        touch("inService")
        compare(touches, 2)
        settled()
        compare(room.unitState("H-0231"), "in-service")
    }

    function test_a_new_helmet_with_a_digital_link_is_taken_in_and_is_there_after_a_restart(): void {
        touch("nfcOn")
        room.holdTag("address", "example.org/01/07300011000017/21/KX-0417")
        compare(room.dock.stage, DockModel.What)
        compare(room.dock.serial, "KX-0417")
        touch(room.sheetHash("Alder A1"))
        touch("L")
        touch("2025")
        touch("allSound")
        touch("inService")
        settled()
        compare(room.unitState("KX-0417"), "in-service")
        hide()
        verify(room.reopen())
        compare(room.unitState("KX-0417"), "in-service")
    }

    function test_a_tag_that_stays_counts_once_and_again_after_it_was_away(): void {
        room.addUnit("H-0231", "L", 2025)
        touch("nfcOn")
        room.holdTag("text", "H-0231")
        room.dock.putAside()   // in between two frames, which a touch of the moving clock is not
        for (let i = 0; i < 5; ++i) {
            room.passMs(300)
            room.holdTag("text", "H-0231")
        }
        compare(room.dock.stage, DockModel.Waiting)
        room.passMs(1500)
        room.holdTag("text", "H-0231")
        compare(room.dock.stage, DockModel.Points)
    }

    function test_of_several_records_the_serial_is_found_behind_the_website(): void {
        room.addUnit("H-0231", "L", 2025)
        touch("nfcOn")
        room.holdTags(["picture", "x", "address", "example.org/care", "utf16", "H-0231"])
        compare(room.dock.stage, DockModel.Points)
        compare(room.dock.serial, "H-0231")
    }

    function test_a_tag_that_is_no_serial_says_why_data(): var {
        return [{ tag: "nothing", words: "empty" }, { tag: "poster", words: "smart poster" }, { tag: "picture", words: "something else" },
                { tag: "latin", text: "caf\u00e9", words: "damaged" }, { tag: "cut", words: "cut short" }, { tag: "long", words: "too long" },
                { tag: "text", text: "(21)7", words: "Refused" }]
    }
    function test_a_tag_that_is_no_serial_says_why(data: var): void {
        touch("nfcOn")
        room.holdTag(data.tag, data.text ?? "")
        compare(room.dock.stage, DockModel.Waiting)
        verify(item("nfcTrouble").text.indexOf(data.words) >= 0, item("nfcTrouble").text)
        room.holdTag("text", "H-1")
        verify(!item("nfcTrouble"))
        compare(room.dock.stage, DockModel.What)
    }

    function test_a_tag_or_a_reader_that_fails_says_so_and_the_field_works_data(): var {
        return [{ tag: "unformatted", words: "never written" }, { tag: "gone", words: "Hold it still" }, { tag: "unreadable", words: "does not answer" },
                { tag: "switched", state: "off", words: "turned off" }, { tag: "stopped", state: "failed", words: "stopped" }]
    }
    function test_a_tag_or_a_reader_that_fails_says_so_and_the_field_works(data: var): void {
        room.addUnit("H-0231", "L", 2025)
        touch("nfcOn")
        if (data.state)
            room.nfcIs(data.state)
        else
            room.holdBadTag(data.tag)
        verify(item("nfcTrouble").text.indexOf(data.words) >= 0, item("nfcTrouble").text)
        scan("H-0231")
        compare(room.dock.stage, DockModel.Points)
    }

    function test_without_a_reader_there_is_nothing_to_touch_and_the_screen_says_so(): void {
        hide()
        room.haveNfc(false)
        verify(room.begin())
        show()
        room.haveNfc(true)
        verify(!item("nfcOn"))
        verify(item("intro").text.indexOf("does not read NFC") > 0)
    }

    function test_the_reader_is_let_go_by_touch_and_when_the_screen_goes(): void {
        touch("nfcOn")
        touch("nfcOff")
        verify(!room.scanner.nfc.isOn)
        touch("nfcOn")
        verify(room.scanner.nfc.isOn)
        hide()
        verify(!room.scanner.nfc.isOn)
    }
}
