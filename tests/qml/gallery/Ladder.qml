// SPDX-License-Identifier: Apache-2.0
// The step list pulled up over a page, and the keypad.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts

PageFrame {
    id: page
    property string mode: "day"
    property real scaled: 1
    property bool opened: false
    Binding { target: Theme; property: "mode"; value: page.mode }
    Binding { target: Theme; property: "textScale"; value: page.scaled }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(page.width) }
    Binding { target: Theme; property: "reducedMotion"; value: true }
    title: "Jersey number"
    hasBack: true
    Keypad { Layout.alignment: Qt.AlignHCenter; Layout.preferredWidth: Math.min(760, page.width - 2 * Theme.margin); label: "Jersey number"; text: "07"; fractions: ["1/8", "1/4", "3/8", "1/2"]; units: [{ name: "mm", text: "mm" }, { name: "in", text: "in" }]; unit: "in"; message: "Nobody wears 07." }
    WidePanel { Layout.fillWidth: true; title: "Line"; detail: "12 to see before 15:30"; detailTone: "see"; more: "4 °C, 180 m" }
    PullSheet {
        id: sheet
        title: "Steps"
        visible: page.opened
        Repeater {
            model: ["hair", "size", "brow", "ears", "nape", "chin"].map((n, i) => ({ name: n, text: n, state: i < 2 ? "done" : i === 4 ? "fault" : "open" }))
            LadderStep { Layout.fillWidth: true; now: index === 2 }
        }
    }
}
