// SPDX-License-Identifier: Apache-2.0
// The size bands of a sheet under one another on one scale: overlaps filled, gaps dashed, and both in words. bands: [{ name, words, join,
// isGap, isOverlap, from, to, joinFrom, joinTo }], places as shares of the width.
import QtQuick
import Snugline.Tokens
import Snugline.Parts

Column {
    id: chart

    property var bands: []
    readonly property real names: Math.min(width / 4, 84 * Theme.textScale)
    readonly property real room: width - names
    readonly property real thick: 20 * Math.min(Theme.textScale, 1.5)

    spacing: Theme.grid
    Repeater {
        model: chart.bands.length
        Column {
            id: row
            required property int index
            readonly property var band: chart.bands[index] ?? ({ name: "", words: "", join: "", isGap: false, isOverlap: false, from: 0, to: 0, joinFrom: 0, joinTo: 0 })
            objectName: "band" + index
            width: chart.width
            spacing: 2
            Accessible.role: Accessible.StaticText
            Accessible.name: [row.band.name, row.band.words, row.band.join].filter(words => words.length > 0).join(", ")
            Item {
                width: parent.width
                height: Math.max(chart.thick, name.implicitHeight)
                Words { id: name; width: chart.names - Theme.grid; anchors.verticalCenter: parent.verticalCenter; text: row.band.name; bold: true; Accessible.ignored: true }
                Rectangle {                   // where heads may be
                    x: chart.names
                    width: chart.room
                    height: Theme.hairlineWidth
                    anchors.verticalCenter: parent.verticalCenter
                    color: Theme.hairline
                }
                Rectangle {
                    x: chart.names + chart.room * row.band.from
                    width: Math.max(3, chart.room * (row.band.to - row.band.from))
                    height: chart.thick
                    anchors.verticalCenter: parent.verticalCenter
                    radius: 3
                    color: "transparent"
                    border.width: Theme.stroke
                    border.color: Theme.ink
                }
                Rectangle {                   // shared with the band above
                    visible: row.band.isOverlap
                    x: chart.names + chart.room * row.band.joinFrom
                    width: Math.max(3, chart.room * (row.band.joinTo - row.band.joinFrom))
                    height: chart.thick
                    anchors.verticalCenter: parent.verticalCenter
                    radius: 3
                    color: Theme.ink
                }
                Repeater {                    // between the bands: nobody's
                    model: row.band.isGap ? Math.max(1, Math.floor(chart.room * (row.band.joinTo - row.band.joinFrom) / 8)) : 0
                    Rectangle {
                        required property int index
                        x: chart.names + chart.room * row.band.joinFrom + 8 * index
                        width: 3
                        height: chart.thick
                        anchors.verticalCenter: parent.verticalCenter
                        color: Theme.brick
                    }
                }
            }
            Words {
                x: chart.names
                width: chart.room
                text: row.band.join.length > 0 ? qsTr("%1. %2", "a band of sizes, how it meets the one before").arg(row.band.words).arg(row.band.join) : row.band.words
                size: "small"
                tone: row.band.isGap ? "see" : "quiet"
                Accessible.ignored: true
            }
        }
    }
}
