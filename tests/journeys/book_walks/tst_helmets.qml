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

    function test_a_card_that_is_printed_says_where_it_lies_and_is_opened(): void {
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("printCard")
        tryVerify(() => item("cardPlace") !== null)
        verify(item("cardPlace").place.indexOf(".pdf") > 0 && item("cardPlace").place.indexOf("opens") > 0, item("cardPlace").place)
        compare(room.openedPapers().length, 1)
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
        compare(item("release"), null)    // the point stands at fault
        verify(item("rule").visible)
        page().touched = "faceguard"
        touch("seenSound")
        tryVerify(() => item("release") !== null)
        verify(!item("release").enabled)
        write("why", "new faceguard")
        touch("release")
        tryVerify(() => !room.units.page.isHeld)
        touch("hold")
        touch("shell")
        touch("hands")
        tryVerify(() => room.units.page.isHeld)
        compare(item("release"), null)
        verify(item("rule").text.indexOf("recertif") > 0)
    }

    function test_the_last_act_on_a_helmet_is_named_as_in_its_history_and_taken_back(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        touch("hold")
        touch("shell")
        touch("hands")
        tryVerify(() => room.units.page.isHeld && room.units.page.lastWords.length > 0)
        tryCompare(room.units.page.history[0], "words", room.units.page.lastWords)
        touch("undo")
        tryVerify(() => !room.units.page.isHeld)
        compare(room.units.page.wearers.length, 1)      // only the last
        tryCompare(room.units.page, "lastWords", "")
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
        verify(!item("return-save").enabled)
        touch("by-firm")
        touch("faceguard replaced")
        touch("cleaned-yes")
        verify(!item("return-save").enabled)    // a firm's work stands on paper
        write("return-paper", "note 7")
        touch("return-save")
        tryVerify(() => room.units.page.points.every(p => p.state === 0))
        tryVerify(() => room.units.page.history.some(f => f.words.indexOf("the firm") > 0 && f.words.indexOf("faceguard") > 0))
    }

    function test_certification_is_never_drawn_sound_over_a_lapsed_label(): void {
        room.addUnit("H-0231", "L", 2022)
        screen.showUnit(room.unitId("H-0231"))
        compare(room.units.page.points.find(p => p.code === "certification").state, 2)
        verify(item("do-not-wear").visible)
        verify(room.units.page.isHeld)
        compare(item("release"), null)    // the label is not good today
    }

    function test_a_held_helmet_that_stays_with_its_athlete_is_asked_for_until_it_is_in_hand(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        compare(room.units.page.statusWords, "In service, with 57 Okafor, Dele")
        touch("hold")
        touch("warning-label")
        touch("athlete")
        tryVerify(() => room.units.page.isHeld)
        verify(room.units.page.statusWords.indexOf("still with 57 Okafor, Dele") > 0, room.units.page.statusWords)
        touch("in-hand")
        tryVerify(() => room.units.page.statusWords.indexOf("in our hands") > 0)
        compare(item("in-hand"), null)
    }

    function test_a_good_helmet_has_a_plain_way_back_to_the_shelf(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        touch("to-shelf")
        tryVerify(() => room.units.page.wearers.length === 0)
        compare(room.units.page.statusWords, "In service, on the shelf")
        compare(room.units.page.standing, "in-service")
    }

    function test_whoever_has_another_helmet_is_asked_where_that_is(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        room.addUnit("H-0232", "L", 2025)
        screen.showUnit(room.unitId("H-0231"))
        touch("pair")
        touch("candidate0")
        tryVerify(() => room.units.page.wearers.length === 1)
        screen.showUnit(room.unitId("H-0232"))
        touch("pair")
        touch("candidate0")
        touch("athlete")
        tryVerify(() => room.units.page.wearers.length === 1)
        screen.showUnit(room.unitId("H-0231"))
        compare(room.units.page.statusWords, "In service, still with 57 Okafor, Dele")
        touch("in-hand")
        tryVerify(() => room.units.page.statusWords === "In service, on the shelf")
    }

    function test_a_fault_seen_needs_no_reason_to_be_put_on_hold_again(): void {
        room.addUnit("H-0231", "L", 2025, "bare metal")
        screen.showUnit(room.unitId("H-0231"))
        compare(room.units.page.standing, "on-hold")
        compare(Object.keys(room.units.page.knownCause).length, 0)
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
}
