// SPDX-License-Identifier: Apache-2.0
// Tags good and bad as a hand scanner types them.
import QtQuick
import Snugline.Models

DockWalk {
    name: "DockScans"

    function test_a_damaged_tag_says_why_it_is_refused_and_nothing_is_written_data(): var {
        return [
            { tag: "a control character", scanned: "H-02\u000731" },
            { tag: "a serial without its number of the model", scanned: "]d221X123" },
            { tag: "a wrong check digit", scanned: "]d2010730001100001621X1" },
            { tag: "more than 64 characters", scanned: "H".repeat(65) }
        ]
    }
    function test_a_damaged_tag_says_why_it_is_refused_and_nothing_is_written(data: var): void {
        scan(data.scanned)
        verify(room.dock.refusal.length > 20, data.tag)
        compare(room.dock.stage, DockModel.Waiting)
        compare(room.unitCount(), 0)
        verify(item("refusal").visible)
        scan("H-0001")
        compare(room.dock.serial, "H-0001")
        compare(room.dock.refusal, "")
    }

    function test_what_a_scanner_wraps_around_a_tag_is_taken_off(): void {
        scan("\u0002H-0007\u0003\t")
        compare(room.dock.serial, "H-0007")
    }

    function test_group_separators_typed_by_a_scanner_are_kept(): void {
        scan("]d20107300011000017" + "10LOT7\u001d21X77")
        compare(room.dock.refusal, "")
        compare(room.dock.serial, "X77")
    }

    function test_a_scan_while_a_unit_is_on_the_table_takes_it_off_and_loses_nothing(): void {
        scan("H-0301")
        touch(room.sheetHash("Alder A1"))
        scan("H-0302")
        compare(room.dock.serial, "H-0302")
        compare(room.dock.aside.length, 1)
        hide()
        verify(room.reopen())
        show()
        touch("putAside")
        verify(item("aside0").title === "H-0301")
        scan("H-0301")
        compare(room.dock.aside.length, 0)
        verify(room.dock.sheets.some(s => s.isChosen), "what was touched is there again")
        scan("H-0302")
        touch("putAside")
        touch("aside0")                          // by a touch too
        compare(room.dock.serial, "H-0301")
    }

    function test_after_a_scan_that_is_refused_the_helmet_before_is_off_the_table(): void {
        room.addUnit("H-0231", "L", 2025)
        scan("H-0231")
        scan("]d221X123")
        compare(room.dock.stage, DockModel.Waiting)
        verify(item("refusal").visible)
        compare(item("point0"), null)
        scan("H-0231")
        touch("point0")
        touch("point1")
        scan("]d221X123")
        compare(room.dock.stage, DockModel.Waiting)
        verify(item("refusal").text.indexOf("H-0231 is off the table") > 0, item("refusal").text)
        scan("H-0231")
        compare(room.dock.points.map(p => p.state).join(""), "1100000")
    }

    function test_a_scan_after_a_sheet_was_closed_is_read_and_one_while_it_is_open_too(): void {
        room.addUnit("H-0231", "L", 2025)
        room.addUnit("H-0232", "L", 2025)
        scan("H-0231")
        touch("point0")
        touch("point0")
        tryVerify(() => item("faults") !== null)
        touch("close")
        tryVerify(() => item("faults") === null)
        scan("H-0232")
        compare(room.dock.serial, "H-0232")
        touch("hold")
        tryVerify(() => item("holdWhere") !== null)
        scan("H-0231")
        compare(room.dock.serial, "H-0231")
        tryVerify(() => item("holdWhere") === null, 5000, "a sheet about another helmet")
        compare(room.unitState("H-0232"), "in-service")
    }

    function test_a_scan_that_may_be_a_slip_is_asked_about_and_a_known_one_is_not_data(): var {
        return [{ tag: "two characters", scanned: "H2" }, { tag: "one", scanned: "7" }, { tag: "signs", scanned: "--/" }, { tag: "a slash for a dash", scanned: "KX/0417", meant: "KX-0417" }]
    }
    function test_a_scan_that_may_be_a_slip_is_asked_about_and_a_known_one_is_not(data: var): void {
        scan(data.scanned)
        compare(room.dock.stage, DockModel.Waiting)
        verify(item("refusal").text.indexOf(data.scanned) >= 0, item("refusal").text)
        compare(room.dock.meant, data.meant ?? "")
        if (data.meant !== undefined) {
            touch("notice-act")
            compare(room.dock.serial, data.meant)
            touch("putAside")
            scan(data.scanned)
        }
        touch("asRead")
        compare(room.dock.serial, data.scanned)
        compare(room.dock.stage, DockModel.What)
        touch("putAside")
        room.addUnit(data.scanned, "L", 2025)
        scan(data.scanned)
        verify(room.dock.isKnown)
        compare(room.dock.refusal, "")
    }

    function test_tags_that_come_while_one_is_written_wait_their_turn(): void {
        takeNew("H-0101", "M", "2025")
        room.addUnit("H-0231", "L", 2025)
        scan("H-0102")
        touch("last")
        room.dock.putAllSoundInService()
        verify(room.dock.isBusy)
        scan("H-0231")
        tryVerify(() => !room.dock.isBusy && room.dock.serial === "H-0231")
        compare(room.unitState("H-0102"), "in-service")
    }
}
