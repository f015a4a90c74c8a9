// SPDX-License-Identifier: Apache-2.0
// The doors, with what waits behind each.
import QtQuick
import QtQuick.Layouts
import Snugline.Drawing
import Snugline.Models
import Snugline.Parts
import Snugline.Tokens

PageFrame {
    id: page

    required property Shell shell
    readonly property DoorsModel doors: shell.doors
    signal go(string screen, string what)
    signal say()

    title: doors.team
    subtitle: doors.heading
    headerRight: BigButton {
        objectName: "door-people"
        text: page.shell.lock.hasCodes ? qsTr("People") : page.doors.holder
        detail: page.shell.lock.hasCodes ? "" : page.doors.holderDetail
        onClicked: page.go("people", "")
    }

    WidePanel {
        objectName: "door-line"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(page.doorHeight, implicitHeight)
        title: qsTr("Line")
        detail: page.doors.lineWaiting
        detailTone: "see"
        more: page.doors.lineWorst
        onClicked: page.go("line", "")
        HeadProfile { anchors.fill: parent; showsLiner: false }
    }
    WidePanel {
        objectName: "door-say"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(page.doorHeight, implicitHeight)
        title: qsTr("Say")
        detail: page.doors.sayWaiting
        onClicked: page.say()
        HeadFront { anchors.fill: parent; namesSides: false; showsLiner: false }
    }
    WidePanel {
        objectName: "door-dock"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.max(page.doorHeight, implicitHeight)
        title: qsTr("Dock")
        detail: Bearer.isStaff ? page.doors.dockWaiting : Bearer.staffOnly
        enabled: Bearer.isStaff
        onClicked: page.go("dock", "")
        HelmetPoints { anchors.fill: parent; touchParts: [] }
    }
    WidePanel {
        id: bookDoor
        objectName: "door-book"
        Layout.fillWidth: true
        title: qsTr("Book")
        detail: page.doors.bookWaiting
        onClicked: page.go("book", "")
    }
    foot: BigButton {
        objectName: "door-join"
        Layout.fillWidth: true
        visible: page.shell.phone.mayJoin
        kind: "quiet"
        text: qsTr("Your own phone? Join as an athlete")
        onClicked: page.go("phone-join", "")
    }

    readonly property real doorHeight: Math.max(Theme.answerHeight, Math.min(420, (scrollArea.height - bookDoor.implicitHeight - 3 * Theme.gap) / 3 - Theme.grid))
}
