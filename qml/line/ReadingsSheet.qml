// SPDX-License-Identifier: Apache-2.0
// The readings of one measuring: any of them is set aside with its reason, and counts again at a touch.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PullSheet {
    id: sheet

    required property AthleteModel athlete
    property var readings: []
    property string chosen: ""            // whose reason is asked for

    title: chosen.length > 0 ? qsTr("Why is it set aside?") : qsTr("Touch the reading that is wrong")
    onAboutToShow: chosen = ""

    Repeater {
        model: sheet.chosen.length > 0 ? [] : sheet.readings
        BigButton {
            required property var modelData
            objectName: "reading-" + modelData.text
            Layout.fillWidth: true
            text: modelData.text
            detail: modelData.isAside ? qsTr("%1. Touch: it counts again").arg(modelData.detail) : ""
            onClicked: {
                if (!modelData.isAside) {
                    sheet.chosen = modelData.name
                    return
                }
                sheet.close()
                sheet.athlete.countAgain(modelData.name)
            }
        }
    }
    Repeater {
        model: sheet.chosen.length > 0 ? sheet.athlete.asideReasons : []
        BigButton {
            required property var modelData
            objectName: "aside-" + modelData.name
            Layout.fillWidth: true
            text: modelData.text
            onClicked: {
                const reading = sheet.chosen
                sheet.close()
                sheet.athlete.setAside(reading, modelData.name)
            }
        }
    }
    Words { Layout.fillWidth: true; text: qsTr("It stays in the record and counts for nothing."); size: "small"; tone: "quiet" }
}
