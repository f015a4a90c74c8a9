// SPDX-License-Identifier: Apache-2.0
// Helmets are given out, held, released, read again, repaired: by touch.
import QtQuick

BookWalk {
    name: "BookHelmets"

    function test_a_helmet_is_given_out_and_given_back(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        tryVerify(() => room.units.page.candidates.length === 1)
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        touch("unpair")
        tryVerify(() => room.units.page.wearers.length === 0)
    }

    function test_a_held_helmet_is_not_given_out_and_the_sentence_says_why(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025, "bare metal")
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.refusal.length > 0)
        compare(room.units.page.wearers.length, 0)
        verify(item("refusal").visible)
    }

    function test_a_hold_is_released_with_words_and_a_shell_hold_is_not(): void {
        room.addUnit("H-0231", "L", 2025, "bare metal")
        screen.showUnit(room.unitId("H-0231"))
        verify(!item("release").enabled)
        write("why", "new faceguard")
        touch("release")
        tryVerify(() => !room.units.page.isHeld)
        touch("hold")
        touch("shell")
        touch("hands")
        tryVerify(() => room.units.page.isHeld)
        compare(item("release"), null)
        verify(item("rule").text.indexOf("repair") > 0)
    }

    function test_a_label_is_read_again_by_year_and_by_a_date_on_paper(): void {
        room.addUnit("H-0231", "L", 2023)
        screen.showUnit(room.unitId("H-0231"))
        verify(!room.units.page.isLabelGood)
        touch("readLabel")
        touch("2025")
        tryVerify(() => room.units.page.isLabelGood)
        tryVerify(() => item("labelSheet") === null && item("years") === null)
        touch("readLabel")
        touch("date")
        write("certifiedOn", "2025-13-40")
        write("source", "the firm's list")
        touch("useDate")
        tryVerify(() => room.units.page.refusal.length > 0)
        write("certifiedOn", "2025-03-14")
        write("source", "the firm's list")
        touch("useDate")
        tryVerify(() => room.units.page.labelWords.indexOf("14 Mar 2025") >= 0)
    }

    function test_one_point_is_seen_again_on_the_page_of_the_helmet(): void {
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        page().touched = "faceguard"
        touch("seenFault")
        touch("bare metal")
        tryVerify(() => room.units.page.isHeld)
        compare(room.units.page.points.find(p => p.code === "faceguard").state, 2)
        compare(room.units.page.points.find(p => p.code === "shell").state, 1)
        touch("seenSound")
        tryVerify(() => room.units.page.points.find(p => p.code === "faceguard").state === 1)
        verify(room.units.page.isHeld)    // a hold ends by its release
    }

    function test_a_helmet_sent_to_repair_comes_back_open(): void {
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("to-repair")
        write("where", "the firm")
        touch("why-faceguard")
        tryVerify(() => room.units.page.statusWords.indexOf("repair") > 0)
        touch("to-back")
        tryVerify(() => room.units.page.points.every(p => p.state === 0))
        tryVerify(() => room.units.page.history.some(f => f.words.indexOf("the firm") > 0 && f.words.indexOf("faceguard") > 0))
    }

    function test_a_replaced_part_reopens_marks_of_whoever_wears_the_helmet(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        touch("changePart")
        write("partWords", "snaps worn")
        touch("part-chin-strap")
        tryVerify(() => room.units.page.history.some(f => f.words === "Chin strap replaced: snaps worn"))
        tryVerify(() => item("partSheet") === null && item("parts") === null)
    }

    function test_a_shelf_is_kept_and_offered_for_the_next_helmet(): void {
        room.addUnit("H-0231", "L", 2025)
        room.addUnit("H-0232", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        write("shelf", "Shelf 3")
        touch("keepShelf")
        tryVerify(() => room.units.page.shelf === "Shelf 3")
        screen.showUnit(room.unitId("H-0232"))
        touch("shelf-Shelf 3")
        tryVerify(() => room.units.page.shelf === "Shelf 3")
    }

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
