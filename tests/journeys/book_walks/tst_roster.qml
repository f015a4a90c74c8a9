// SPDX-License-Identifier: Apache-2.0
// A roster is taken in from files good and bad, athletes are added and changed, sheets are refused, settings are kept: by touch.
import QtQuick
import Snugline.Models

BookWalk {
    name: "BookRoster"

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
        verify(item("rosterUndo").visible)
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

    function test_a_roster_is_taken_back_whole_by_one_touch_also_after_a_restart(): void {
        read(room.writeText("roster.csv", "Jersey,Last name,First name\n07,Boyd,Kit\n00,Tamm,Sander\n"))
        touch("take")
        tryVerify(() => room.roster.intake.outcome.length > 0)
        const words = room.roster.intake.lastWords
        verify(words.indexOf("roster.csv") >= 0, words)
        startAgain()
        touch("athletes")
        compare(room.roster.intake.lastWords, words)
        touch("undo")
        tryVerify(() => room.athleteCount() === 0)
        compare(room.roster.intake.lastWords, "")
        verify(item("undo") === null)
    }

    function test_undo_names_the_last_act_of_the_roster_and_not_an_older_one(): void {
        read(room.writeText("roster.csv", "Jersey,Last name,First name\n07,Boyd,Kit\n"))
        touch("take")
        tryVerify(() => room.roster.intake.outcome.length > 0)
        touch("back")
        touch("add")
        write("jersey", "44")
        write("family", "Reyes")
        touch("keep")
        tryCompare(room.roster, "total", 2)
        verify(room.roster.intake.lastWords.indexOf("44 Reyes") >= 0, room.roster.intake.lastWords)
        touch("undo")
        tryCompare(room.roster, "total", 1)
        compare(room.roster.intake.lastWords, "")
    }

    function test_a_roster_is_not_taken_back_once_somebody_on_it_has_a_helmet(): void {
        read(room.writeText("roster.csv", "Jersey,Last name,First name\n07,Boyd,Kit\n"))
        touch("take")
        tryVerify(() => room.roster.intake.outcome.length > 0)
        room.addUnit("H-0231", "M", 2026)
        room.pair("H-0231", "07")
        touch("undo")
        tryVerify(() => room.roster.intake.refusal.length > 0)
        compare(room.athleteCount(), 1)
        verify(item("undo") === null)
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

    function test_each_question_of_a_roster_is_answered_in_its_row(): void {
        read(room.writeText("roster.csv", "number,last name,first name,birth year,head mm\n57,Okafor,Dele,2010,575\n12,Marsh,Teo,2012,650\n12,Boyd,Kit,2011,560\n"))
        compare(room.roster.intake.unanswered, 3)
        compare(item("take").kind, "plain")             // what nobody answered is not the main act's to save
        const asked = room.roster.intake.rows.filter(r => r.question.length > 0)
        compare(asked.length, 3)
        for (const row of asked) {
            tryVerify(() => item("answers " + row.question) !== null)
            const chip = findIn(item("answers " + row.question), row.question.indexOf("head") > 0 ? "as-written" : "left-out")
            const sequence = touchEvent(chip)
            sequence.press(0, chip).commit()
            sequence.release(0, chip).commit()
            settle(screen.Window.contentItem)
        }
        compare(room.roster.intake.unanswered, 0)
        compare(item("take").kind, "primary")
        touch("take")
        tryVerify(() => room.roster.intake.outcome.length > 0)
        compare(room.athleteCount(), 3)
        room.roster.search = "12"
        compare(room.roster.count, 0)                   // neither has the number that both were written with
        room.roster.search = ""
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
