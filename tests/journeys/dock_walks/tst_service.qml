// SPDX-License-Identifier: Apache-2.0
// What the Dock offers as its main answer, and what it never takes over from the helmet before.
import QtQuick
import Snugline.Models

DockWalk {
    name: "DockService"

    function test_the_one_before_is_offered_in_one_sitting_only_and_is_never_the_main_answer(): void {
        room.addUnit("H-0050", "L", 2024)                 // by another hand, not at this table
        scan("H-0101")
        compare(room.dock.offer, "")
        touch("putAside")
        takeNew("H-0101", "M", "2025")
        scan("H-0102")
        verify(item("last").text.indexOf("H-0101") > 0)
        compare(item("last").kind, "plain")
        verify(item("last").detail.indexOf("size M") > 0, item("last").detail)
        touch("putAside")
        room.pass(121)
        scan("H-0102")
        compare(room.dock.offer, "")
        compare(item("last"), null)
    }

    function test_in_service_is_filled_only_when_every_point_was_checked_and_says_how_many_were_not(): void {
        takeNew("H-0230", "L", "2025")
        scan("H-0231")
        touch("last")
        compare(item("allSoundInService").kind, "primary")      // it names all that it saves, and the helmet was just scanned
        verify(item("allSoundInService").detail.indexOf("seven") > 0)
        touch("point0")
        compare(item("allSoundInService"), null)
        verify(!item("inService").enabled && item("inService").kind === "plain")
        for (const point of ["point1", "point2", "point4"])
            touch(point)
        verify(item("inService").enabled)                       // the four that service needs
        compare(item("inService").kind, "plain")
        compare(item("inService").detail.indexOf("3 point"), 0)
        for (const point of ["point3", "point5", "point6"])
            touch(point)
        compare(item("inService").kind, "primary")
        compare(item("inService").detail, "")
        touch("inService")
        settled()
        scan("H-0231")
        touch("point0")                                         // seen before: it may go in, and what was not looked at now is said
        verify(item("inService").enabled)
        compare(item("inService").kind, "plain")
        compare(item("inService").detail.indexOf("6 point"), 0)
        touch("putAside")
        scan("H-0231")
        hide()
        verify(room.reopen())
        show()
        compare(room.dock.serial, "H-0231")
        compare(item("allSoundInService"), null)                // it lay there: who knows which one is in hand now
        verify(item("inService").kind === "plain")
        scan("H-0231")
        compare(item("allSoundInService").kind, "primary")
    }

    function test_a_lapsed_label_never_goes_in_service_with_one_touch(): void {
        room.addUnit("H-0104", "M", 2022)
        scan("H-0104")
        compare(item("allSoundInService"), null)
        verify(!item("inService").enabled)
    }

    function test_a_label_that_cannot_be_read_is_an_answer_of_its_own_and_holds_the_unit(): void {
        scan("H-0105")
        touch(room.sheetHash("Alder A1"))
        touch("M")
        touch("unreadable")
        compare(room.dock.stage, DockModel.Points)
        verify(room.dock.labelWords.indexOf("cannot be read") > 0, room.dock.labelWords)
        compare(item("allSoundInService"), null)
        touch("allSound")
        verify(!room.dock.isInServiceOpen)
        hide()
        verify(room.reopen())
        show()
        verify(room.dock.isLabelUnreadable && !room.dock.isLabelMissing)
        touch("hold")
        settled()
        compare(room.unitState("H-0105"), "held: label unreadable")
        compare(room.labelOf("H-0105"), "unreadable")
    }
}
