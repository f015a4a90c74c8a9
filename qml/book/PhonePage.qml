// SPDX-License-Identifier: Apache-2.0
// A code that joins a phone to this athlete only, drawn to be scanned and written to be typed. It leaves the glass with the page.
import QtQuick
import QtQuick.Layouts
import QtQuick.Shapes
import Snugline.Tokens
import Snugline.Parts
import Snugline.Models

PageFrame {
    id: page

    required property PhonesModel phones
    property string athleteId: ""

    readonly property int modules: page.phones.matrix.length
    readonly property int margin: 4        // modules left free around it (ISO/IEC 18004)

    function pathOf(rows: var): string {
        let path = ""
        for (let y = 0; y < rows.length; ++y) {
            for (let x = 0; x < rows[y].length; ++x) {
                if (rows[y][x] === "1")
                    path += "M" + x + " " + y + "h1v1h-1z"
            }
        }
        return path
    }

    title: qsTr("Phone of their own")
    subtitle: page.phones.who
    hasBack: true
    Component.onCompleted: page.phones.open(page.athleteId)
    Component.onDestruction: page.phones.close()

    Notice { objectName: "refusal"; Layout.fillWidth: true; kind: "stop"; text: page.phones.refusal }
    Notice { objectName: "remark"; Layout.fillWidth: true; kind: "good"; text: page.phones.remark }
    Words { objectName: "phone-state"; Layout.fillWidth: true; text: page.phones.state }
    Rectangle {
        id: square
        objectName: "join-square"
        visible: page.modules > 0
        Layout.alignment: Qt.AlignHCenter
        Layout.preferredWidth: Math.min(page.width - 2 * Theme.margin, 420)
        Layout.preferredHeight: width
        radius: Theme.radius
        color: Qt.rgba(1, 1, 1, 1)          // a code is dark on light in every theme
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The code as a square to scan")
        Shape {
            readonly property real unit: square.width / Math.max(1, page.modules + 2 * page.margin)
            x: unit * page.margin
            y: x
            width: page.modules
            height: page.modules
            transform: Scale { xScale: square.width / Math.max(1, page.modules + 2 * page.margin); yScale: xScale }
            ShapePath {
                strokeWidth: -1
                fillColor: Qt.rgba(0, 0, 0, 1)
                PathSvg { path: page.pathOf(page.phones.matrix) }
            }
        }
    }
    Words { objectName: "join-letters"; Layout.fillWidth: true; visible: text.length > 0; text: page.phones.code; bold: true; horizontalAlignment: Text.AlignHCenter }
    Words {
        Layout.fillWidth: true
        text: qsTr("Show it to this athlete only: whoever has it can speak for them. It joins one phone; a new code lets the phone before it go.")
        tone: "quiet"
        size: "small"
    }
    foot: ColumnLayout {
        Layout.fillWidth: true
        spacing: Theme.grid
        BigButton {
            objectName: "invite"
            Layout.fillWidth: true
            large: true
            kind: "primary"
            text: qsTr("Show a new code")
            enabled: !page.phones.isBusy
            onClicked: page.phones.invite()
        }
        BigButton {
            objectName: "let-go"
            Layout.fillWidth: true
            visible: page.phones.hasPhone
            text: qsTr("Take nothing more from that phone")
            enabled: !page.phones.isBusy
            onClicked: page.phones.letGo()
        }
    }
}
