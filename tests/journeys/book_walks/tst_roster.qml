// SPDX-License-Identifier: Apache-2.0
// A roster is taken in from files good and bad, athletes are added and changed, helmets are given out, held and released: by touch.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Book
import Snugline.Models
import Snugline.Room

Item {
    id: root
    width: 834
    height: 1194

    Room { id: room }
    Component {
        id: bookScreen
        BookScreen { anchors.fill: parent; roster: room.roster; units: room.units; settings: room.settings }
    }

    TestCase {
        id: walk
        name: "BookWalks"
        when: windowShown

        property var screen: null

        function init(): void {
            failOnWarning(/.?/)
            verify(room.begin())
            Theme.reducedMotion = true
            screen = createTemporaryObject(bookScreen, root)
            verify(screen)
        }
        function cleanup(): void {
            if (screen)
                screen.destroy()
            screen = null
            wait(0)
        }
        function item(name: string): var {
            const tops = screen.Window.contentItem.children
            for (let i = tops.length - 1; i >= 0; --i) {
                const found = tops[i].visible ? findIn(tops[i], name) : null
                if (found)
                    return found
            }
            return null
        }
        function findIn(parent: Item, name: string): var {
            for (let i = 0; i < parent.children.length; ++i) {
                const child = parent.children[i]
                if (!child.visible)
                    continue
                if (child.objectName === name)
                    return child
                const deeper = findIn(child, name)
                if (deeper)
                    return deeper
            }
            return null
        }
        function page(): var { return findChild(screen, "bookStack").currentItem }
        // Everything is where it will be drawn.
        function settle(item: Item): void {
            if (isPolishScheduled(item))
                waitForItemPolished(item)
            for (let i = 0; i < item.children.length; ++i)
                settle(item.children[i])
        }
        function touch(name: string): void {
            tryVerify(() => item(name) !== null, 5000, "nothing named " + name)
            const target = item(name)
            tryVerify(() => target.enabled && target.width > 0, 5000, name + " cannot be touched")
            settle(screen)                // a finger comes after the eye
            for (let at = target; at; at = at.parent)
                if (at === page().scrollArea)
                    page().scrollArea.reveal(target)
            settle(screen)
            const sequence = touchEvent(target)
            sequence.press(0, target).commit()
            sequence.release(0, target).commit()
        }
        function write(name: string, words: string): void {
            tryVerify(() => item(name) !== null, 5000, "nothing named " + name)
            item(name).forceActiveFocus()
            item(name).clear()
            room.type(screen, words)
        }
        function read(path: string): void {
            touch("athletes")
            touch("roster")
            write("path", path)
            touch("read")
        }

        function test_a_roster_is_shown_before_it_is_written_and_taken_in_by_one_touch(): void {
            read(room.writeText("roster.csv", "Jersey,Last name,First name\r\n07,Boyd,Kit\r\n00,Tamm,Sander\r\n88,Lindqvist,Bo\r\n"))
            compare(room.roster.intake.added, 3)
            compare(room.athleteCount(), 0)
            touch("take")
            tryVerify(() => room.roster.intake.outcome.length > 0)
            compare(room.athleteCount(), 3)
            verify(item("outcome").visible)
        }

        function test_taking_the_same_roster_in_again_changes_nothing(): void {
            const path = room.writeText("roster.csv", "Jersey;Last name;First name\n07;Boyd;Kit\n12;Marsh;Teo\n")
            read(path)
            touch("take")
            tryVerify(() => room.roster.intake.outcome.length > 0)
            write("path", path)
            touch("read")
            compare(room.roster.intake.added, 0)
            compare(room.roster.intake.unchanged, 2)
            verify(!item("take").enabled)
            compare(room.athleteCount(), 2)
        }

        function test_bad_rows_stay_out_with_line_and_reason_and_good_rows_go_in(): void {
            read(room.writeText("roster.csv", "number,last name,first name,head mm\n57,Okafor,Dele,575\n4,,,\n12,Marsh,Teo,650\n"))
            const rows = room.roster.intake.rows
            verify(rows.some(r => r.kind === "refused" && r.line === "3" && r.why.length > 5), JSON.stringify(rows))
            verify(room.roster.intake.questioned >= 0)
            compare(room.roster.intake.refused, 1)
            touch("take")
            tryVerify(() => room.roster.intake.outcome.length > 0)
            compare(room.athleteCount(), 2)
        }

        function test_a_picture_is_refused_with_a_sentence_and_nothing_is_written(): void {
            read(room.writePicture("roster.csv"))
            verify(room.roster.intake.refusal.indexOf("roster.csv") >= 0, room.roster.intake.refusal)
            verify(room.roster.intake.refusal.indexOf("not text") >= 0, room.roster.intake.refusal)
            verify(item("refusal").visible)
            verify(!room.roster.intake.isRead)
            compare(room.athleteCount(), 0)
        }

        function test_a_file_that_is_not_there_is_named(): void {
            read("/nowhere/roster.csv")
            verify(room.roster.intake.refusal.indexOf("roster.csv") >= 0)
            verify(!room.roster.intake.isRead)
        }

        function test_an_athlete_is_added_and_changed(): void {
            touch("athletes")
            touch("add")
            write("jersey", "07")
            write("family", "Reyes")
            write("given", "Ander")
            touch("keep")
            tryCompare(room.roster, "total", 1)
            compare(room.roster.count, 1)
            touch("edit")
            write("jersey", "4")
            touch("keep")
            room.roster.search = "4"
            tryCompare(room.roster, "count", 1)
            compare(room.athleteCount(), 1)
        }

        function test_a_birth_year_that_is_none_is_refused_with_a_sentence(): void {
            touch("athletes")
            touch("add")
            write("family", "Reyes")
            write("birthYear", "20x6")
            touch("keep")
            verify(item("refusal").visible)
            compare(room.athleteCount(), 0)
        }

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

        function test_a_model_sheet_with_a_negative_size_is_refused_with_its_path(): void {
            touch("sheets")
            write("path", room.spoiltSheet("spoilt.json"))
            touch("adopt")
            verify(room.units.sheets.refusal.indexOf("spoilt.json#/sizes/0/low_um") >= 0, room.units.sheets.refusal)
            compare(room.units.sheets.sheets.length, 3)
        }

        function test_settings_are_kept_when_the_app_is_started_again(): void {
            touch("settings")
            touch("us")
            touch("night")
            touch("150")
            touch("short")
            compare(room.settings.units, SettingsModel.Us)
            screen.destroy()
            screen = null
            wait(0)
            verify(room.reopen())
            compare(room.settings.units, SettingsModel.Us)
            compare(room.settings.theme, SettingsModel.Night)
            compare(room.settings.textPercent, 150)
            verify(room.settings.namesAsInitials)
        }
    }
}
