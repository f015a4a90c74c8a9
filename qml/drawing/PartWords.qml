// SPDX-License-Identifier: Apache-2.0
// Names of marks, points and drawn parts for those who hear the screen; a caller's own word goes before.
pragma Singleton
import QtQuick

QtObject {
    readonly property var marks: ["brow", "ears", "nape", "chin", "straps", "jaw", "crown", "sides", "hold"]
    readonly property var points: ["certification", "warning-label", "shell", "hardware", "faceguard", "liner", "chin-strap"]

    function of(name: string, own: var): string {
        if (own && own[name])
            return own[name]
        switch (name) {
        case "brow": return qsTr("Brow, front edge of the shell")
        case "ears": return qsTr("Ear opening")
        case "ears-left": return qsTr("Left ear opening")
        case "ears-right": return qsTr("Right ear opening")
        case "nape": return qsTr("Nape, back edge of the shell")
        case "chin": return qsTr("Chin cup")
        case "straps": return qsTr("Straps")
        case "straps-left": return qsTr("Left straps")
        case "straps-right": return qsTr("Right straps")
        case "jaw": return qsTr("Jaw pad")
        case "jaw-left": return qsTr("Left jaw pad")
        case "jaw-right": return qsTr("Right jaw pad")
        case "crown": return qsTr("Crown")
        case "sides": return qsTr("Sides and back")
        case "sides-left": return qsTr("Left side")
        case "sides-right": return qsTr("Right side")
        case "hold": return qsTr("Hold, the whole helmet")
        case "certification": return qsTr("Certification label")
        case "warning-label": return qsTr("Exterior warning label")
        case "shell": return qsTr("Shell")
        case "hardware": return qsTr("Hardware")
        case "faceguard": return qsTr("Faceguard")
        case "liner": return qsTr("Liner")
        case "chin-strap": return qsTr("Chin strap")
        case "port-crown": return qsTr("Air port, crown")
        case "port-sides": return qsTr("Air port, sides")
        case "port-jaw-left": return qsTr("Air port, left jaw pad")
        case "port-jaw-right": return qsTr("Air port, right jaw pad")
        }
        return name
    }
    function state(code: string): string {
        switch (code) {
        case "snug": return qsTr("snug")
        case "sound": return qsTr("sound")
        case "over": return qsTr("over")
        case "under": return qsTr("under")
        case "fault": return qsTr("fault")
        case "said-over": return qsTr("athlete says tight")
        case "said-under": return qsTr("athlete says loose")
        case "said-fault": return qsTr("athlete says broken")
        }
        return qsTr("not seen")
    }
}
