// SPDX-License-Identifier: Apache-2.0
// Every part on one page, to be looked at.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts
import Snugline.Drawing

PageFrame {
    id: page
    property string mode: "day"
    property real scaled: 1
    Binding { target: Theme; property: "mode"; value: page.mode }
    Binding { target: Theme; property: "textScale"; value: page.scaled }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(page.width) }
    title: "Line"
    subtitle: "Wed 14 Oct, practice at 15:30"
    hasBack: true
    headerRight: BigButton { text: "4 °C, 180 m"; tone: "info"; sign: "water" }
    ListRow {
        Layout.fillWidth: true
        number: "57"; title: "Okafor, Dele"; detail: "Bare metal on the faceguard. Held 08:12 by KP"; note: "H-0231"; tagText: "Do not wear"; tagTone: "stop"; tagShape: "square"
        FitStrip { marks: ["snug", "snug", "over", "under", "fault", "unseen", "said-over", "snug", "said-under"] }
    }
    ListRow { Layout.fillWidth: true; number: "4"; title: "Reyes, Ander"; detail: "Break-in look, day 2 of 3"; note: "H-0164"; PointStrip { points: ["sound", "sound", "fault", "unseen", "sound", "sound", "sound"] } }
    Notice { Layout.fillWidth: true; kind: "stop"; text: "Line 14 of the roster has no last name; it was left out."; place: "roster.csv, line 14"; actionText: "Show line" }
    ChoiceRow { Layout.fillWidth: true; choices: [{ name: "mm", text: "mm" }, { name: "in", text: "inches" }]; current: "mm" }
    Stepper { Layout.fillWidth: true; label: "Brow gap"; value: 25; text: "25 mm" }
    TextEntry { Layout.fillWidth: true; label: "Serial tag"; hint: "Scan or type"; scanner: true; message: "This tag holds a control character." }
    Card { Layout.fillWidth: true; tone: "see"; Words { width: parent.width; text: "Crown air out, one to three pumps. Then see again: brow, ears, nape." } }
    ProgressStrip { Layout.fillWidth: true; text: "Reading the roster"; progress: 0.4 }
    Readout { Layout.fillWidth: true; value: "12.4"; unit: "kPa"; caption: "crown"; steadyText: "steady"; trend: "down" }
    Flow { Layout.fillWidth: true; spacing: 16; Tag { text: "In service"; tone: "snug"; shape: "dot" } BigButton { text: "Hold"; kind: "danger" } BigButton { text: "Skip"; kind: "quiet" } }
    LargeStrip { Layout.fillWidth: true; current: "ears"; places: PartWords.marks.map((m, i) => ({ name: m, text: PartWords.of(m), state: i === 2 ? "over" : i === 7 ? "unseen" : "snug", detail: "Seen 14 Oct 08:12 by KP" })) }
    foot: [
        UndoBar { Layout.fillWidth: true; text: "Ears: snug" },
        AnswerBar { Layout.fillWidth: true; answers: [{ name: "low", text: "Sits low" }, { name: "snug", text: "On the mark", kind: "primary" }, { name: "high", text: "Sits high" }] }
    ]
}
