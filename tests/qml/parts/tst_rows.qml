// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtTest
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing

TestCase {
    id: testCase
    name: "Rows"
    when: windowShown
    visible: true
    width: 1200
    height: 900

    function init(): void {
        failOnWarning(/.?/)
        Theme.textScale = 1
        Theme.phone = false
        Theme.reducedMotion = true
    }
    function cleanup(): void {
        Theme.textScale = 1
        Theme.phone = false
        Theme.reducedMotion = false
    }

    Component {
        id: listRow
        ListRow {
            width: 780; number: "57"; title: "Okafor, Dele"; detail: "Bare metal on the faceguard. Held 08:12 by KP"; note: "H-0231"; tagText: "Do not wear"
            FitStrip { objectName: "strip"; marks: ["snug"] }
        }
    }
    Component {
        id: columnsChart
        Columns {
            width: 360
            columns: [{ label: "3 Aug", words: "2 and 1", parts: [{ value: 2, kind: "full", tone: "stop" }, { value: 1, kind: "striped", tone: "see" }] },
                      { label: "10 Aug", words: "none", parts: [{ value: 0, kind: "full", tone: "stop" }] },
                      { label: "17 Aug", words: "3 and 3", parts: [{ value: 3, kind: "dotted", tone: "info" }, { value: 3, kind: "hollow", tone: "snug" }] }]
            chosen: 1
        }
    }
    Component { id: undoBar; UndoBar { width: 400 } }
    Component { id: notice; Notice { width: 400; kind: "stop"; text: "Line 14 has no last name."; place: "roster.csv, line 14"; actionText: "Show line" } }
    Component {
        id: ladder
        StepLadder { width: 360; height: 72; current: 1; steps: [{ name: "hair", text: "Hair", state: "done" }, { name: "brow", text: "Brow", state: "open" }, { name: "ears", text: "Ears", state: "again" }] }
    }
    Component {
        id: pageFrame
        PageFrame {
            id: framed
            title: "Brow gap"; subtitle: "88 Lindqvist"; hasBack: true
            edge: StepLadder { objectName: "ladder"; layout: framed.edgeLayout; anchors.fill: parent; steps: [{ name: "brow", text: "Brow", state: "open" }]; current: 0 }
            drawing: HeadProfile { objectName: "drawing"; anchors.fill: parent }
            Words { objectName: "words"; Layout.fillWidth: true; text: "Athlete looks straight ahead, chin strap done up. Drag the front edge to where it sits." }
            foot: AnswerBar { objectName: "answers"; Layout.fillWidth: true; answers: [{ name: "low", text: "Sits low" }, { name: "snug", text: "On the mark" }, { name: "high", text: "Sits high" }] }
        }
    }
    Component { id: spy; SignalSpy { } }

    function everythingFits(item: Item): string {
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i]
            if (!child.visible)
                continue
            if (child instanceof Text && (child.truncated || child.paintedWidth > child.width + 1 || child.paintedHeight > child.height + 1))
                return "cut off: " + child.text
            const inner = everythingFits(child)
            if (inner.length > 0)
                return inner
        }
        return ""
    }

    function test_a_row_is_one_target_with_a_whole_name(): void {
        const row = createTemporaryObject(listRow, testCase)
        const clicks = createTemporaryObject(spy, testCase, { target: row, signalName: "clicked" })
        const touch = touchEvent(row)
        touch.press(0, row).commit()
        touch.release(0, row).commit()
        row.forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_Return)
        compare(clicks.count, 2)
        compare(row.Accessible.name, "57. Okafor, Dele. Bare metal on the faceguard. Held 08:12 by KP. Do not wear. H-0231")
    }
    function test_a_row_stacks_on_a_phone_and_with_large_text_data(): var {
        return [{ tag: "tablet", width: 780, scale: 1, stacked: false }, { tag: "phone", width: 358, scale: 1, stacked: true },
                { tag: "large text", width: 780, scale: 1.4, stacked: true }, { tag: "twice the text on a phone", width: 328, scale: 2, stacked: true }]
    }
    function test_a_row_stacks_on_a_phone_and_with_large_text(at: var): void {
        Theme.textScale = at.scale
        const row = createTemporaryObject(listRow, testCase, { width: at.width })
        row.height = Qt.binding(() => row.implicitHeight)
        waitForRendering(row)
        compare(row.stacked, at.stacked)
        compare(everythingFits(row), "")
        const strip = findChild(row, "strip")
        const corner = strip.mapToItem(row, strip.width, strip.height)
        verify(corner.x <= row.width && corner.y <= row.height, corner.x + " " + corner.y)
    }
    function test_a_row_may_turn_from_wide_to_narrow_and_back(): void {
        const row = createTemporaryObject(listRow, testCase, { width: 0 })
        row.height = Qt.binding(() => row.implicitHeight)
        for (const width of [358, 780, 358]) {
            row.width = width
            waitForRendering(row)
            compare(row.stacked, width < 480)
            compare(everythingFits(row), "")
        }
    }
    function test_undo_says_what_was_done_and_takes_it_back(): void {
        const bar = createTemporaryObject(undoBar, testCase)
        verify(!bar.visible)
        bar.show("Ears: snug")
        verify(bar.visible)
        compare(bar.Accessible.name, "Ears: snug")
        const undone = createTemporaryObject(spy, testCase, { target: bar, signalName: "undone" })
        waitForRendering(bar)
        mouseClick(findChild(bar, "undo"))
        compare(undone.count, 1)
        bar.hide()
        verify(!bar.visible)
        compare(bar.implicitHeight, 0)
    }
    function test_a_notice_says_what_and_where(): void {
        const item = createTemporaryObject(notice, testCase)
        compare(item.Accessible.name, "Line 14 has no last name. roster.csv, line 14")
        compare(item.Accessible.role, Accessible.AlertMessage)
        item.text = ""
        verify(!item.visible)
    }
    function test_the_ladder_indicator_opens_the_list_with_one_touch(): void {
        const item = createTemporaryObject(ladder, testCase)
        const touched = createTemporaryObject(spy, testCase, { target: item, signalName: "stepTouched" })
        compare(item.place, "2 of 3")
        mouseClick(findChild(item, "indicator"))
        const sheet = findChild(item, "sheet")
        tryVerify(() => sheet.opened)
        const step = findChild(sheet.contentItem, "step-ears")
        compare(step.Accessible.name, "Ears, see again")
        tryVerify(() => step.width > 200)
        verify(step.mapToItem(null, 0, step.height).y <= testCase.height)
        verify(step.height >= 56)
        mouseClick(step)
        compare(touched.signalArguments[0][0], "ears")
        tryVerify(() => !sheet.visible)
    }
    function test_a_page_keeps_drawing_words_and_answers_apart_data(): var {
        let all = []
        for (const size of [[360, 640], [390, 844], [834, 1194], [1194, 834], [1366, 1024]])
            for (const scale of [1, 1.3, 2])
                all.push({ tag: size.join("x") + " at " + scale, width: size[0], height: size[1], scale: scale })
        return all
    }
    function test_a_page_keeps_drawing_words_and_answers_apart(at: var): void {
        Theme.textScale = at.scale
        Theme.phone = Theme.isPhone(at.width)
        const page = createTemporaryObject(pageFrame, testCase, { width: at.width, height: at.height })
        waitForRendering(page)
        const drawing = findChild(page, "drawing")
        const answers = findChild(page, "answers")
        const top = drawing.mapToItem(page, 0, 0)
        const foot = answers.mapToItem(page, 0, 0)
        verify(drawing.width > 100 && drawing.height > 60, drawing.width + " x " + drawing.height)
        verify(top.x >= 0 && top.x + drawing.width <= page.width)
        verify(foot.y + answers.height <= page.pageHeight, "answers end at " + (foot.y + answers.height))
        if (at.scale === 1)
            compare(page.pageHeight, page.height)      // at plain text size nothing but content scrolls, even on the smallest phone
        if (page.split)
            verify(top.x + drawing.width <= foot.x)
        else
            verify(top.y + drawing.height <= foot.y, "drawing ends at " + (top.y + drawing.height) + ", answers start at " + foot.y)
        verify(page.scrollArea.contentWidth <= page.scrollArea.width)
        compare(everythingFits(answers), "")
    }
    function test_a_page_goes_back_by_button_and_by_escape(): void {
        const page = createTemporaryObject(pageFrame, testCase, { width: 834, height: 800 })
        const backs = createTemporaryObject(spy, testCase, { target: page, signalName: "back" })
        waitForRendering(page)
        mouseClick(findChild(page, "back"))
        page.forceActiveFocus()
        keyClick(Qt.Key_Escape)
        compare(backs.count, 2)
        compare(findChild(page, "back").Accessible.name, "Back")
    }

    function test_a_column_is_chosen_by_touch_and_by_keys(): void {
        const chart = createTemporaryObject(columnsChart, testCase)
        const picked = createTemporaryObject(spy, testCase, { target: chart, signalName: "picked" })
        compare(chart.most, 6)
        compare(chart.boxes.length, 4)
        mouseClick(chart, chart.edge + chart.pace * 2.5, 100)
        compare(picked.signalArguments[0][0], 2)
        mouseClick(chart, 0, 100)
        compare(picked.signalArguments[1][0], 0)
        keyClick(Qt.Key_Right)
        compare(picked.signalArguments[2][0], 2)
        chart.chosen = 2
        keyClick(Qt.Key_Right)
        compare(picked.signalArguments[3][0], 2)
    }
    function test_the_parts_of_a_column_stand_on_one_another(): void {
        const chart = createTemporaryObject(columnsChart, testCase)
        const [first, second] = chart.boxes
        compare(first.y + first.high, chart.roof + chart.plotHeight)
        compare(second.y + second.high, first.y)
        fuzzyCompare(first.high, 2 * second.high, 0.001)
    }
}
