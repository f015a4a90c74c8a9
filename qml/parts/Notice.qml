// SPDX-License-Identifier: Apache-2.0
// A sentence about something that went wrong or should be known: what, where, and if wanted one thing to do.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

Rectangle {
    id: notice

    property string kind: "inform"        // "inform", "attention", "stop", "good"
    property string text: ""              // what, a whole sentence
    property string place: ""             // where: file, line, unit
    property string actionText: ""
    readonly property string tone: kind === "stop" ? "stop" : kind === "attention" ? "see" : kind === "good" ? "snug" : "info"

    signal acted()

    visible: text.length > 0
    implicitWidth: 320
    implicitHeight: line.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.card
    border.width: Theme.stroke
    border.color: Theme.tone(tone)
    Accessible.role: Accessible.AlertMessage
    Accessible.name: place.length > 0 ? text + " " + place : text

    Loader {                              // most notices have nothing to say
        id: line
        active: notice.text.length > 0
        x: Theme.gap
        y: Theme.gap
        width: notice.width - 2 * Theme.gap
        sourceComponent: RowLayout {
            spacing: Theme.gap
            IconStroke {
                Layout.alignment: Qt.AlignTop
                name: notice.kind === "good" ? "check" : notice.kind
                color: Theme.tone(notice.tone)
            }
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 4
                Words { Layout.fillWidth: true; text: notice.text; tone: notice.tone; bold: true; Accessible.ignored: true }
                Words { Layout.fillWidth: true; visible: text.length > 0; text: notice.place; size: "small"; tone: "quiet"; Accessible.ignored: true }
                BigButton {
                    objectName: "notice-act"
                    Layout.topMargin: Theme.grid
                    visible: text.length > 0
                    text: notice.actionText
                    onClicked: notice.acted()
                }
            }
        }
    }
}
