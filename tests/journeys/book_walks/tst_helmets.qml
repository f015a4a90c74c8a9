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
        write("where", "the firm")
        touch("to-repair")
        tryVerify(() => room.units.page.statusWords.indexOf("repair") > 0)
        touch("to-back")
        tryVerify(() => room.units.page.points.every(p => p.state === 0))
    }
}
