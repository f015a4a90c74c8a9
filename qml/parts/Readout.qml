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

    implicitWidth: Math.max(figures.implicitWidth, below.implicitWidth)
    implicitHeight: figures.height + below.height
    Accessible.role: Accessible.StaticText
    Accessible.name: [caption, value, unit, steadyText].filter(s => s.length > 0).join(" ")

    Row {
        id: figures
        anchors.horizontalCenter: parent.horizontalCenter
        spacing: Theme.grid
        Words { id: number; text: readout.value.length > 0 ? readout.value : "\u2013"; size: "title"; font.pixelSize: Theme.titleSize * 1.6; wrapMode: Text.NoWrap; Accessible.ignored: true }
        Words { text: readout.unit; size: "head"; tone: "quiet"; wrapMode: Text.NoWrap; anchors.baseline: number.baseline; Accessible.ignored: true }
        IconStroke { visible: name.length > 0; name: readout.trend; anchors.verticalCenter: number.verticalCenter }
    }
    Row {
        id: below
        anchors.horizontalCenter: parent.horizontalCenter
        y: figures.height
        spacing: Theme.grid
        IconStroke { visible: readout.steadyText.length > 0; name: "check"; side: 20; color: Theme.turf; anchors.verticalCenter: parent.verticalCenter }
        Words { text: readout.steadyText; visible: text.length > 0; size: "small"; tone: "snug"; bold: true; wrapMode: Text.NoWrap; Accessible.ignored: true }
        Words { text: readout.caption; visible: text.length > 0; size: "small"; tone: "quiet"; wrapMode: Text.NoWrap; Accessible.ignored: true }
    }
}
