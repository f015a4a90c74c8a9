// SPDX-License-Identifier: Apache-2.0
// A model sheet is copied, changed, seen to change exactly the rows that the board changes, kept, put back; broken files are taken in.
import QtQuick

BookWalk {
    name: "BookSheets"

    function field(path: string): var { return item(path) }
    function step(path: string, name: string): void {
        tryVerify(() => field(path) !== null, 5000, "no field " + path)
        touchAt(findIn(field(path), "step" + name))
    }
    function touchAt(target: Item): void {
        verify(target)
        page().scrollArea.reveal(target)
        settle(screen.Window.contentItem)
        settle(screen.Window.contentItem)
        const sequence = touchEvent(target)
        sequence.press(0, target).commit()
        sequence.release(0, target).commit()
    }
    function type(path: string, words: string): void {
        tryVerify(() => field(path) !== null, 5000, "no field " + path)
        touchAt(findIn(field(path), "figure"))
        tryVerify(() => findIn(field(path), "typed") !== null)
        const typed = findIn(field(path), "typed")
        typed.forceActiveFocus()
        typed.clear()
        room.scan(screen, words)
    }
    function section(name: string): void {
        touch("rail")
        touch("step-" + name)
        tryVerify(() => editor.section === name)
    }
    function team(): void {
        for (const [number, serial, year] of [["57", "H-0231", 2025], ["7", "H-0232", 2026], ["12", "H-0233", 2025]]) {
            room.addAthlete(number, "Okafor", "Dele")
            room.addUnit(serial, "M", year)
            room.pair(serial, number)
        }
        room.addUnit("H-0240", "L", 2025)
    }
    function openAlder(): void {
        touch("sheets")
        touch("sheet0")
        tryVerify(() => room.units.sheets.page.name === "Alder A1")
    }
    readonly property var editor: room.units?.sheets.editor ?? null

    function test_a_change_names_exactly_the_rows_that_the_board_changes_and_is_put_back(): void {
        team()
        room.beginFit("12")
        const months = room.standingMonths("H-0231")
        const before = room.rows()
        openAlder()
        touch("change")
        tryVerify(() => editor.isOpen)
        verify(!item("next").enabled)               // nothing is changed yet
        step("/sizes/2/low_um", "1")
        section("limits")
        type("/certification_months", "12")
        compare(field("/certification_months").message, "")
        touch("next")
        tryVerify(() => editor.differences.length === 2)
        compare(editor.athletes.length, 3)
        compare(room.standingMonths("H-0231"), months)      // nothing is kept yet
        const named = editor.athletes.filter(one => one.changesRow).map(one => one.number).sort()
        verify(item("openChecks").text.length > 0)
        touch("keepSheet")
        tryVerify(() => !editor.isOpen && room.standingMonths("H-0231") === 12)
        const after = room.rows()
        compare(Object.keys(before).filter(number => before[number] !== after[number]).sort(), named)
        verify(named.includes("57") && !named.includes("7"))
        compare(room.openCheckMonths("12"), months)          // began on the sheet before, and goes on by it
        tryVerify(() => page().title === "Alder A1" && room.units.sheets.page.history.length === 2)
        compare(room.units.sheets.page.history[0].lines.length, 2)

        startAgain()
        compare(room.standingMonths("H-0231"), 12)
        compare(room.openCheckMonths("12"), months)
        touch("sheets")
        compare(room.units.sheets.sheets.length, 3)
        compare(room.units.sheets.earlier.length, 1)
        touch("earlier0")
        touch("putBack")
        tryVerify(() => editor.differences.length === 2)
        touch("keepSheet")
        tryVerify(() => room.standingMonths("H-0231") === months)
        compare(room.rows(), before)
        compare(room.units.sheets.earlier.length, 1)
    }

    function test_what_was_kept_is_undone_by_one_touch(): void {
        team()
        const months = room.standingMonths("H-0231")
        openAlder()
        touch("change")
        section("limits")
        step("/certification_months", "1")
        touch("next")
        touch("keepSheet")
        tryVerify(() => room.standingMonths("H-0231") === months + 1)
        touch("undo")
        tryVerify(() => room.standingMonths("H-0231") === months)
    }

    function test_undo_names_what_was_kept_last_and_not_a_sheet_dropped_before(): void {
        team()
        openAlder()
        touch("change")
        section("limits")
        step("/certification_months", "1")
        touch("back")
        touch("back")
        touch("drop")
        verify(editor.droppedWords.length > 0)
        write("path", room.sheetPath("../more_sheets/dogwood-d4"))
        touch("adopt")
        tryVerify(() => room.units.sheets.lastWords.length > 0)
        compare(editor.droppedWords, "")
        touch("undo")
        tryVerify(() => room.units.sheets.sheets.length === 3)
        verify(!editor.isOpen)
    }

    function test_the_page_of_another_sheet_offers_no_undo_of_this_one(): void {
        team()
        openAlder()
        touch("change")
        section("limits")
        step("/certification_months", "1")
        touch("next")
        touch("keepSheet")
        tryVerify(() => room.units.sheets.lastWords.length > 0)
        verify(item("undo") !== null)
        touch("back")
        touch("sheet1")
        tryVerify(() => room.units.sheets.page.name === "Brant B2")
        verify(item("undo") === null)
    }

    function test_a_copy_under_a_name_of_its_own_is_a_new_model(): void {
        openAlder()
        touch("copy")
        tryVerify(() => editor.isOpen)
        verify(!editor.isWhole)
        write("/name", "Alder A2")
        tryVerify(() => editor.isWhole)
        compare(item("/id").text, "alder-a2")
        touch("next")
        touch("keepSheet")
        tryVerify(() => room.units.sheets.sheets.length === 4)
        verify(room.sheetHash("Alder A2").length > 0)
    }

    function test_a_new_model_asks_whether_it_has_air_and_pads_and_twelve_twice_are_twenty_four(): void {
        touch("sheets")
        touch("newSheet")
        tryVerify(() => editor.isOpen)
        const state = name => editor.sections.find(one => one.name === name).state
        compare(state("air"), "open")
        compare(state("pads"), "open")
        section("air")
        touch("no-air")
        tryVerify(() => state("air") === "done")
        section("pads")
        touch("no-pads:jaw")
        compare(state("pads"), "open")
        startAgain()                                    // what is not said yet is not said after a restart either
        touch("sheets")
        touch("goOn")
        compare(state("air"), "done")
        compare(state("pads"), "open")
        touch("no-pads:crown")
        tryVerify(() => state("pads") === "done")
        section("limits")
        step("/certification_months", "12")
        step("/certification_months", "12")
        compare(field("/certification_months").text, "24")
    }

    function test_a_size_that_helmets_have_cannot_go(): void {
        team()
        openAlder()
        touch("change")
        touch("remove-size:2")
        touch("next")
        tryVerify(() => editor.barred.length > 0)
        verify(!item("keepSheet").enabled)
        verify(item("barred").text.indexOf("M") > 0)
    }

    function test_a_slip_stands_beside_its_value_and_what_is_half_written_comes_back(): void {
        openAlder()
        touch("change")
        type("/sizes/2/low_um", "5510 mm")
        verify(field("/sizes/2/low_um").message.length > 0)
        verify(!editor.isWhole)
        startAgain()
        touch("sheets")
        touch("goOn")
        tryVerify(() => editor.isOpen)
        verify(field("/sizes/2/low_um").message.length > 0)
        touch("next")                               // leads to what is to be put right
        type("/sizes/2/low_um", "558.8 mm")
        tryVerify(() => editor.isWhole)
        compare(field("/sizes/2/low_um").text, "22 in")
    }

    function test_broken_files_are_refused_with_every_path_and_can_be_put_right_here(): void {
        touch("sheets")
        for (const [name, text] of [["cut.json", "{\"format\": 1"], ["list.json", "[]"], ["empty.json", ""], ["later.json", "{\"format\": 2}"]]) {
            write("path", room.writeText(name, text))
            touch("adopt")
            verify(room.units.sheets.refusal.indexOf(name) >= 0, room.units.sheets.refusal)
            verify(!room.units.sheets.canMend)
        }
        write("path", room.spoiltSheet("spoilt.json"))
        touch("adopt")
        verify(room.units.sheets.refusal.indexOf("spoilt.json#/sizes/0/low_um") >= 0, room.units.sheets.refusal)
        touch("mend")
        tryVerify(() => editor.isOpen)
        type("/sizes/0/low_um", "501 mm")
        tryVerify(() => editor.isWhole)
        touch("next")
        tryVerify(() => editor.differences.length === 1)
        touch("keepSheet")
        tryVerify(() => !editor.isOpen)
        compare(room.units.sheets.sheets.length, 3)
    }

    function test_a_file_of_a_model_that_counts_shows_what_it_changes_first(): void {
        team()
        touch("sheets")
        write("path", room.changedSheet("alder-2.json", 12))
        touch("adopt")
        tryVerify(() => page().title === "What it changes")
        tryVerify(() => editor.differences.length === 1)
        verify(editor.athletes.length > 0)
        touch("keepSheet")
        tryVerify(() => room.standingMonths("H-0231") === 12)
        write("path", room.changedSheet("alder-3.json", 12))
        touch("adopt")
        verify(room.units.sheets.remark.length > 0 && !editor.isOpen)      // says the same
    }
}
