// SPDX-License-Identifier: Apache-2.0
// The way of a head that hurts, on every page where an athlete may stand: one touch stops, and the board shows it from then on.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts

BigButton {
    objectName: "red-way"
    Layout.fillWidth: true
    kind: "danger"
    text: qsTr("Headache? Dizzy? Took a hit?")
}
