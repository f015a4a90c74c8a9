// SPDX-License-Identifier: Apache-2.0
// The board: lanes with their counts, a row for each athlete with the reason in words, the strip and what to do.
import QtQuick
import QtQuick.Layouts
import Snugline.Air
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property LineModel line: shell.line
    readonly property real above: top.height + Theme.gap + (shell.guide.trouble.length > 0 ? Theme.touch * 2 : 0) + (line.betweenWords.length > 0 ? between.height + Theme.gap : 0) + (line.clockWords.length > 0 ? clocks.height + Theme.gap : 0) + (shell.unwell.waitingWords.length > 0 ? waiting.height + Theme.gap : 0)
    signal go(string screen, string what)

    // Whoever comes back from a row finds the list where it was.
    function leave(screen: string, what: string): void {
        const top = board.indexAt(0, board.contentY)
        line.keepPlace(top, top < 0 ? 0 : board.contentY - board.itemAtIndex(top).y)
        go(screen, what)
    }
    Component.onCompleted: {
        const kept = line.keptEntry()
        if (kept >= 0) {
            board.forceLayout()
            board.positionViewAtIndex(kept, ListView.Beginning)
            board.contentY = Math.max(board.originY, Math.min(board.contentY + line.keptBeyond(), board.originY + Math.max(0, board.contentHeight - board.height)))
        }
        line.keepPlace(-1, 0)
    }
    function act(athlete: string, code: string): void {
        if (code === "choose")
            leave("swap", athlete)
        else if (code === "athlete" || code === "close")
            leave("athlete", athlete)
        else
            shell.guide.start(athlete, code)
    }

    title: qsTr("Line")
    subtitle: line.heading
    hasBack: true

    Connections {
        target: page.shell.guide
        function onBegun(): void { page.leave("guide", "") }
    }

    Notice {
        Layout.fillWidth: true
        kind: "attention"
        text: page.shell.guide.trouble
        actionText: qsTr("Understood")
        onActed: page.shell.guide.dismissTrouble()
    }
    // Side by side where there is room, so that the lanes get the height.
    GridLayout {
        id: top
        Layout.fillWidth: true
        columns: page.width >= 700 && !Theme.stacks ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        WeatherChip {
            id: chip
            objectName: "weather-chip"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            figures: page.shell.weather.figures
            words: page.shell.weather.words
            old: page.shell.weather.isOld
            onStepped: by => page.shell.weather.step(by)
            onOpened: {
                if (!weatherSheet.item)
                    weatherSheet.setSource(Qt.resolvedUrl("WeatherSheet.qml"), { "weather": page.shell.weather })
                weatherSheet.item["open"]()
            }
        }
        Loader {
            id: lineCheck
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            active: page.line.lineCheckWords.length > 0
            visible: active
            sourceComponent: BigButton {
                objectName: "line-check"
                sign: "list"
                text: qsTr("Line check")
                detail: page.line.lineCheckWords
                onClicked: page.go("line-check", "")
            }
        }
    }
    Loader {                              // by its name: what it is made of is read when it is first wanted, not with the board
        id: weatherSheet
        visible: false
    }
    Component.onDestruction: shell.weather.flush()
    Notice { id: waiting; objectName: "unnamed"; Layout.fillWidth: true; kind: "stop"; text: page.shell.unwell.waitingWords; actionText: qsTr("See athlete now"); onActed: page.go("unnamed", page.shell.unwell.waitingAbout) }
    Notice { id: between; objectName: "between"; Layout.fillWidth: true; kind: "inform"; text: page.line.betweenWords; actionText: qsTr("Season"); onActed: page.go("book", "") }
    Notice { id: clocks; objectName: "clocks"; Layout.fillWidth: true; kind: "attention"; text: page.line.clockWords }
    Words {
        Layout.fillWidth: true
        visible: page.line.isEmpty
        text: qsTr("Nobody is on the roster yet. Take one in under Book, Athletes.")
    }
    ListView {
        id: board
        objectName: "board"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(Theme.touch * 3, page.scrollArea.height - page.above)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        spacing: Theme.grid
        model: page.line
        reuseItems: true
        cacheBuffer: 400
        delegate: Loader {
            id: entry
            required property string kind
            required property string lane
            required property string tone
            required property string title
            required property bool isOpen
            required property string athleteId
            required property string jersey
            required property string name
            required property string reason
            required property string more
            required property var strip
            required property var points
            required property string serial
            required property string action
            required property string actionCode
            width: board.width
            sourceComponent: kind === "lane" ? laneEntry : rowEntry
            // One that waits for its next use is read out by nobody.
            ListView.onPooled: visible = false
            ListView.onReused: visible = true

            Component {
                id: laneEntry
                LaneHead {
                    title: entry.title
                    empty: entry.reason
                    tone: entry.tone
                    isOpen: entry.isOpen
                    isGroup: entry.lane === "weather"
                    objectName: "lane-" + entry.lane
                    onToggled: page.line.toggleLane(entry.lane)
                }
            }
            Component {
                id: rowEntry
                BoardRow {
                    jersey: entry.jersey
                    name: entry.name
                    reason: entry.reason
                    more: entry.more
                    strip: entry.strip
                    serial: entry.serial
                    deed: entry.action
                    isMain: entry.lane !== "nothing-due"
                    onOpened: page.leave("athlete", entry.athleteId)
                    onActed: page.act(entry.athleteId, entry.actionCode)
                }
            }
        }
    }
    foot: GridLayout {
        id: acts
        readonly property bool under: page.phone && Theme.textScale > 1.3    // large words side by side would break within a word
        Layout.fillWidth: true
        columns: under ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.grid
        BigButton {
            objectName: "start-line"
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            visible: page.line.walkWords.length > 0
            kind: "primary"
            large: true
            text: qsTr("Start the line")
            detail: page.line.walkWords
            onClicked: {
                page.line.startWalk()
                page.go("turn", "")
            }
        }
        BigButton {
            objectName: "jersey-number"
            leftPadding: page.phone ? Theme.grid / 2 : Theme.gap
            rightPadding: leftPadding
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            large: !acts.under
            text: page.phone ? qsTr("Number") : qsTr("Jersey number")
            onClicked: page.go("jersey", "")
        }
    }
}
