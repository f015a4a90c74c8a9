// SPDX-License-Identifier: Apache-2.0
// Helmets arrive: what each takes, what is held and why, undo, and starting again.
import QtQuick
import Snugline.Models

DockWalk {
    name: "DockIntake"

    function test_a_clean_arrival_of_a_known_unit_is_two_touches_after_the_scan(): void {
        room.addUnit("H-0231", "L", 2025)
        scan("H-0231")
        verify(room.dock.isKnown)
        touches = 0
        touch("allSound")
        touch("inService")
        settled()
        compare(touches, 2)
        compare(room.unitState("H-0231"), "in-service")
        compare(room.dock.count, 1)
    }

    function test_a_new_unit_like_the_one_before_is_two_touches_after_the_scan(): void {
        takeNew("H-0101", "M", "2025")
        scan("H-0102")
        compare(room.dock.stage, DockModel.What)
        verify(room.dock.offer.length > 0)
        verify(!room.dock.isWhatComplete, "an offer is not a choice")
        touches = 0
        touch("last")
        for (const point of room.dock.points)
            compare(point.state, 0)           // no point is ever taken over
        touch("allSoundInService")
        settled()
        compare(touches, 2)
        compare(room.unitState("H-0102"), "in-service")
        compare(room.labelOf("H-0102"), "label 2025")
    }

    function test_nothing_is_preselected_on_a_new_unit(): void {
        scan("H-0500")
        for (const list of [room.dock.sheets, room.dock.sizes])
            for (const entry of list)
                verify(!entry.isChosen)
        for (const year of room.dock.years)
            verify(!year.isRecertified && !year.isMark)
        for (const point of room.dock.points)
            compare(point.state, 0)
    }

    function test_a_fault_holds_the_unit_with_the_words_of_the_finder(): void {
        takeNew("H-0101", "M", "2025")
        scan("H-0103")
        touch("last")
        touch("allSound")
        touch("point4")
        tryVerify(() => room.dock.faultOpen === 4)
        tryVerify(() => item("bare metal") !== null)
        touch("bare metal")
        compare(room.dock.points[4].state, 2)
        verify(!room.dock.isInServiceOpen)
        tryVerify(() => room.dock.faultOpen === -1)
        touch("hold")
        settled()
        compare(room.unitState("H-0103"), "held: faceguard bare metal")
        compare(room.dock.heldCount, 1)
    }

    function test_a_lapsed_label_shows_its_span_and_holds_the_unit(): void {
        scan("H-0104")
        touch(room.sheetHash("Alder A1"))
        touch("M")
        touch("2024")
        verify(room.dock.labelWords.indexOf("between") > 0, room.dock.labelWords)
        verify(room.dock.labelWords.indexOf("judged by the earlier") > 0, room.dock.labelWords)
        touch("allSound")
        verify(!room.dock.isInServiceOpen)
        touch("hold")
        settled()
        compare(room.unitState("H-0104"), "held: label lapsed")
    }

    function test_the_label_of_a_known_unit_is_read_again_at_the_table(): void {
        room.addUnit("H-0231", "L", 2023)
        scan("H-0231")
        touch("change")
        verify(item("sheets") === null)   // what it is, is known
        touch("2026")
        verify(room.dock.isLabelRead && room.dock.isLabelGood, room.dock.labelWords)
        touch("allSound")
        touch("inService")
        settled()
        compare(room.unitState("H-0231"), "in-service")
        scan("H-0231")
        verify(room.dock.labelWords.indexOf("2026") > 0, room.dock.labelWords)
    }

    function test_a_unit_without_a_fault_is_held_only_with_a_reason_and_says_where_it_is(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        room.pair("H-0231", "57")
        scan("H-0231")
        touch("allSound")
        touch("hold")
        tryVerify(() => item("to be cleaned") !== null)
        verify(!item("hands").enabled)
        touch("to be cleaned")
        touch("athlete")
        settled()
        compare(room.unitState("H-0231"), "held: other to be cleaned")
        scan("H-0231")
        verify(room.dock.due.some(words => words.indexOf("still with the athlete") > 0), room.dock.due.join("; "))
    }

    function test_undo_takes_the_last_arrival_back_whole(): void {
        takeNew("H-0101", "M", "2025")
        compare(room.unitCount(), 1)
        touch("undo")
        tryVerify(() => !room.dock.isBusy)
        compare(room.unitCount(), 0)
        compare(room.dock.count, 0)
        compare(room.dock.lastWords, "")
    }

    function test_twenty_scans_with_known_ones_repeats_and_bad_tags(): void {
        for (let i = 1; i <= 4; ++i)
            room.addUnit("K-" + i, "L", 2025)
        room.addUnit("K-5", "L", 2025, "bent bar")
        takeNew("N-1", "M", "2025")                                     // 1
        const scans = ["N-2", "K-1", "N-3", "N-2", "K-2", "]d221X", "N-4", "K-5", "K-3", "N-5", "N-5", "bad\u0001tag", "N-6", "K-4", "K-1", "N-7", "N-8", "N-9", "N-10"]
        compare(scans.length + 1, 20)
        let refused = 0
        for (const text of scans) {
            scan(text)
            if (room.dock.refusal.length > 0) {
                ++refused
                continue
            }
            if (room.dock.stage === DockModel.What)
                touch("last")
            touch("allSound")
            if (room.dock.isInServiceOpen) {
                touch("inService")
            } else {
                touch("hold")
            }
            settled()
        }
        compare(refused, 2)
        compare(room.unitCount(), 15)
        for (let i = 1; i <= 10; ++i)
            compare(room.unitState("N-" + i), "in-service")
        for (let i = 1; i <= 4; ++i)
            compare(room.unitState("K-" + i), "in-service")
        compare(room.unitState("K-5"), "held: faceguard bent bar")
        compare(room.dock.count, 15)
        compare(room.dock.heldCount, 1)
    }

    function test_started_again_in_the_middle_nothing_is_lost(): void {
        takeNew("H-0101", "M", "2025")
        scan("H-0102")
        touch("last")
        touch("allSound")
        touch("point2")
        tryVerify(() => item("crack") !== null)
        touch("crack")
        hide()
        verify(room.reopen())
        show()
        compare(room.unitState("H-0101"), "in-service")
        compare(room.dock.stage, DockModel.Points)
        compare(room.dock.serial, "H-0102")
        compare(room.dock.points[2].state, 2)
        compare(room.dock.points[6].state, 1)
        compare(room.dock.count, 1)
        touch("hold")
        settled()
        compare(room.unitState("H-0102"), "held: shell crack")
    }
}
