// SPDX-License-Identifier: Apache-2.0
// A big number with its unit, a trend and a mark when it stands still: a gauge, a temperature. All words come in.
import QtQuick
import Snugline.Tokens

Item {
    id: readout

    property string value: ""             // "" shows a dash
    property string unit: ""
    property string caption: ""
    property string trend: ""             // "up", "down" or none
    property string steadyText: ""        // said when still; empty while it moves

    function joined(words: var): string { return words.filter(word => word.length > 0).join(" ") }

    implicitWidth: Math.max(figures.implicitWidth, 120)
    implicitHeight: figures.implicitHeight + below.implicitHeight    // however small a long number is set: what stands below does not move
    Accessible.role: Accessible.StaticText
    Accessible.name: joined([caption, value, unit, steadyText])

    Row {
        id: figures
        x: (readout.width - width * scale) / 2
        y: implicitHeight * (1 - scale) / 2
        spacing: Theme.grid
        scale: readout.width > 0 ? Math.min(1, readout.width / implicitWidth) : 1
        transformOrigin: Item.TopLeft
        Words { id: number; text: readout.value.length > 0 ? readout.value : "\u2013"; size: "title"; font.pixelSize: Theme.titleSize * 1.6; wrapMode: Text.NoWrap; Accessible.ignored: true }
        Words { text: readout.unit; size: "head"; tone: "quiet"; wrapMode: Text.NoWrap; anchors.baseline: number.baseline; Accessible.ignored: true }
        IconStroke { visible: name.length > 0; name: readout.trend; anchors.verticalCenter: number.verticalCenter }
    }
    Column {
        id: below
        width: readout.width
        y: figures.implicitHeight
        Row {
            anchors.horizontalCenter: parent.horizontalCenter
            visible: readout.steadyText.length > 0
            spacing: Theme.grid
            IconStroke { name: "check"; side: 20; color: Theme.turf; anchors.verticalCenter: parent.verticalCenter }
            Words { text: readout.steadyText; size: "small"; tone: "snug"; bold: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
        }
        Words { width: parent.width; horizontalAlignment: Text.AlignHCenter; text: readout.caption; visible: text.length > 0; size: "small"; tone: "quiet"; Accessible.ignored: true }
    }
}
