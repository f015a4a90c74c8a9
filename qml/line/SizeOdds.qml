// SPDX-License-Identifier: Apache-2.0
// The sizes of one model with the odds that this head takes them: a bar and a number for each.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

ColumnLayout {
    id: view

    property var size: ({})

    spacing: Theme.grid / 2
    Words { Layout.fillWidth: true; Layout.topMargin: Theme.grid; text: (view.size.model ?? "") + ": " + (view.size.text ?? ""); bold: true }
    Words { Layout.fillWidth: true; text: view.size.note ?? ""; size: "small"; tone: "quiet" }
    Repeater {
        model: view.size.odds ?? []
        RowLayout {
            id: line
            required property var modelData
            Layout.fillWidth: true
            spacing: Theme.gap
            Words { Layout.preferredWidth: Theme.bodySize * 2.5; text: line.modelData.size; size: "small" }
            Item {
                Layout.fillWidth: true
                implicitHeight: 12
                Rectangle { width: parent.width; height: 1; anchors.verticalCenter: parent.verticalCenter; color: Theme.hairline }
                Rectangle { width: Math.max(line.modelData.share > 0.005 ? 3 : 0, parent.width * line.modelData.share); height: 12; radius: 3; color: Theme.ink }
            }
            Words { Layout.preferredWidth: Theme.bodySize * 4.4; text: line.modelData.percent; size: "small"; horizontalAlignment: Text.AlignRight }
        }
    }
}
