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

    function test_a_scan_while_a_unit_is_on_the_table_does_not_replace_it(): void {
        scan("H-0301")
        touch(room.sheetHash("Alder A1"))
        scan("H-0302")
        compare(room.dock.serial, "H-0301")
        verify(room.dock.refusal.indexOf("H-0301") >= 0)
        touch("putAside")
        scan("H-0302")
        compare(room.dock.serial, "H-0302")
    }
}
