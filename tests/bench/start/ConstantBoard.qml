// SPDX-License-Identifier: Apache-2.0
// The Line's screen drawn from constants: what a start would cost if there were no Book, no log and no rules behind it.
import QtQuick
import QtQuick.Layouts
import Snugline.Line
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    readonly property alias rows: board.count

    title: "Line"
    subtitle: "Wed 14 Oct, practice at 15:30"
    hasBack: true
    width: 834
    height: 1194

    Rectangle { parent: page; z: -1; anchors.fill: parent; color: Theme.paper }

    ListView {
        id: board
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(Theme.touch * 3, page.scrollArea.height)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.grid
        model: 40
        reuseItems: true
        cacheBuffer: 400
        delegate: Loader {
            id: entry
            required property int index
            width: board.width
            sourceComponent: index === 0 || index === 5 || index === 18 ? laneEntry : rowEntry

            Component {
                id: laneEntry
                LaneHead {
                    title: entry.index === 0 ? "Do not wear, 4" : entry.index === 5 ? "See before practice, 12" : "Weekly look, 15"
                    tone: entry.index === 0 ? "stop" : "plain"
                }
            }
            Component {
                id: rowEntry
                BoardRow {
                    jersey: String(10 + entry.index)
                    name: "Madrigueiro, Deniz"
                    reason: "Weekly look late, 8 days since the last"
                    more: "and 1 more"
                    strip: [1, 1, 1, 1, 1, 1, 1, 1, 1]
                    serial: "B200010"
                    deed: "Look"
                }
            }
        }
    }
    foot: RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap
        BigButton { Layout.fillWidth: true; Layout.preferredWidth: 2; kind: "primary"; large: true; text: "Start the line"; detail: "12 before practice" }
        BigButton { Layout.fillWidth: true; Layout.preferredWidth: 1; large: true; text: "Jersey number" }
    }
}
