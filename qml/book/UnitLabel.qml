// SPDX-License-Identifier: Apache-2.0
// The label of a helmet read again: one touch opens what it can say, one more is on disk. What was read before stays in the history.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Models

Item {
    id: label

    required property UnitPage unit

    implicitHeight: button.implicitHeight
    BigButton {
        id: button
        objectName: "readLabel"
        width: parent.width
        text: qsTr("Read the label again")
        enabled: !label.unit.isBusy
        onClicked: {
            label.unit.forgetRefusal()
            sheet.open()
        }
    }
    PullSheet {
        id: sheet
        objectName: "labelSheet"
        title: qsTr("What does the label say?")
        LabelChoice {
            objectName: "labelChoice"
            Layout.fillWidth: true
            years: label.unit.years
            isMissing: label.unit.isLabelMissing
            message: label.unit.refusal
            onYearChosen: (year, isMakersMark) => label.unit.readLabelYear(year, isMakersMark)
            onDateChosen: (isoDay, source) => label.unit.readLabelDate(isoDay, source)
            onMissingChosen: label.unit.readLabelMissing()
            onUnreadableChosen: label.unit.readLabelUnreadable()
        }
    }
    Connections {
        target: label.unit
        function onWritten(): void { sheet.close() }
    }
}
