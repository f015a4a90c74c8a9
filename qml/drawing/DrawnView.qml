// SPDX-License-Identifier: Apache-2.0
// What all drawings of head and helmet share: the model sheet's parts, what is highlighted, what was found, what can be touched.
// The drawing is made in its own units (field) and scaled to fit; a subclass gives the places as name -> [x, y].
import QtQuick

Item {
    id: view

    // Which parts exist: the model sheet decides, the caller sets.
    property bool hasCrownAir: true
    property bool hasSideAir: true
    property bool hasJawAir: true
    property bool hasFaceguard: true
    property bool hasWarningLabel: true
    property bool hasRecertLabel: true
    property int strapPoints: 4           // 4 or 6
    property string hair: "dry"           // "dry", "wet", "short"
    property bool helmetOn: true
    property bool showsLiner: true        // shell drawn open, so that pads and bladders show

    property string focusPart: ""         // mark, point, part or port drawn strong
    property var findings: ({})           // name -> "snug", "over", "under", "fault", "unseen", "said-over" ...
    property var touchParts: []           // names that can be touched
    property var partTexts: ({})          // name -> own word, for screen readers
    property string motion: ""            // "tape", "pump", "twist", "rock" or none; plays once, at most 2 s
    property string description: ""       // the drawing in words

    signal partTouched(string name)

    property size field: Qt.size(600, 620)
    property var places: ({})             // name -> [x, y] in field units
    readonly property real drawScale: Math.max(0.01, Math.min(width / field.width, height / field.height))

    implicitWidth: 300
    implicitHeight: 310
    Accessible.role: Accessible.Graphic
    Accessible.name: description
}
