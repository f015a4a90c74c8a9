// SPDX-License-Identifier: Apache-2.0
// Walking the line: whose turn it is. Nothing is begun before the athlete stands there.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property LineModel line: shell.line
    readonly property var row: line.walkRow
    readonly property bool isSomebody: row.jersey !== undefined
    signal go(string screen, string what)

    title: isSomebody ? qsTr("Next in line") : qsTr("The line is through")
    subtitle: line.walkLeft
    hasBack: true
    backText: qsTr("End the line")
    Component.onDestruction: if (!keeps) line.endWalk()
    property bool keeps: false
    function act(): void {
        const code = row.actionCode
        if (code === "choose" || code === "athlete" || code === "close") {
            keeps = true
            go(code === "choose" ? "shelf" : "athlete", row.athleteId)
        } else if (code === undefined || code.length === 0) {
            line.walkOn()
        } else {
            shell.guide.start(row.athleteId, code)
        }
    }

    Connections {
        target: page.shell.guide
        function onBegun(): void {
            page.keeps = true
            page.go("guide", "")
        }
    }
    Notice { Layout.fillWidth: true; kind: "attention"; text: page.shell.guide.trouble }
    Card {
        Layout.fillWidth: true
        visible: page.isSomebody
        ColumnLayout {
            width: parent.width
            spacing: Theme.grid
            Words { Layout.fillWidth: true; text: page.row.jersey ?? ""; size: "title"; font.pixelSize: Theme.titleSize * 3; horizontalAlignment: Text.AlignHCenter }
            Heading { Layout.fillWidth: true; text: page.row.name ?? ""; horizontalAlignment: Text.AlignHCenter }
            Words { Layout.fillWidth: true; text: page.row.reason ?? ""; tone: page.row.tone ?? "plain"; horizontalAlignment: Text.AlignHCenter }
            FitStrip { Layout.alignment: Qt.AlignHCenter; Layout.topMargin: Theme.gap; implicitWidth: 252; implicitHeight: 88; marks: page.row.strip ?? [] }
            Words { Layout.fillWidth: true; text: page.row.serial ?? ""; tone: "quiet"; horizontalAlignment: Text.AlignHCenter }
        }
    }
    Words { Layout.fillWidth: true; visible: !page.isSomebody; text: qsTr("Nobody is left to see in this lane.") }

    foot: RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap
        BigButton {
            objectName: "turn-skip"
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: page.isSomebody
            large: true
            leftPadding: Theme.grid / 2
            rightPadding: leftPadding
            text: qsTr("Not here")
            onClicked: page.line.walkOn()
        }
        BigButton {
            objectName: "turn-start"
            Layout.fillHeight: true
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            kind: "primary"
            large: true
            text: !page.isSomebody ? qsTr("Back to the board") : page.row.action.length > 0 ? page.row.action : qsTr("Next")
            onClicked: page.isSomebody ? page.act() : page.back()
        }
    }
}
