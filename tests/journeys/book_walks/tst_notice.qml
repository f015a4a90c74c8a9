// SPDX-License-Identifier: Apache-2.0
// A notice of a maker holds helmets: by touch.
import QtQuick

BookWalk {
    name: "BookNotice"

    function test_a_notice_holds_what_it_means_shows_it_before_and_is_taken_back(): void {
        room.addAthlete("57", "Okafor", "Dele")
        for (const serial of ["H-0231", "H-0232", "H-0233", "K-0001"])
            room.addUnit(serial, "L", 2025)
        screen.showUnit(room.unitId("H-0232"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        screen.push("notices", {})
        verify(!item("keepNotice").enabled)
        write("noticeText", "clips may open in the cold")
        write("serialFrom", "H-0232")
        write("serialTo", "H-0299")
        compare(item("preview").text, "2 helmet(s), 1 on heads")  // the room speaks without its catalogue
        touch("showMeant")
        touch("keepNotice")
        tryVerify(() => room.units.notices.kept.length === 1)
        compare(room.units.notices.kept[0].units.length, 2)
        compare(room.units.notices.preview, "")
        screen.showUnit(room.unitId("H-0233"))
        tryVerify(() => room.units.page.isHeld)
        write("why", "clips replaced")
        touch("release")
        tryVerify(() => room.units.notices.kept[0].units.length === 1)
        screen.goBack()
        touch("kept")
        touch("noticeUndo")
        touch("undo")
        tryVerify(() => room.units.notices.kept.length === 0)
        screen.showUnit(room.unitId("H-0232"))
        tryVerify(() => !room.units.page.isHeld)
    }
}
