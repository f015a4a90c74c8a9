// SPDX-License-Identifier: Apache-2.0
// Another person takes the glass: their code, over the page that stays as it is below.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts

PageFrame {
    id: page

    required property LockModel lock

    title: qsTr("Who takes over?")
    subtitle: qsTr("%1 signs until then. The page stays as it is.").arg(Bearer.initials)
    showsBearer: false
    hasBack: true
    onBack: lock.forget()
    Component.onCompleted: lock.ask("")

    CodePad {
        objectName: "switch-pad"
        focus: true
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        Layout.alignment: Qt.AlignHCenter
        lock: page.lock
        enterText: qsTr("Take over")
    }
    foot: BigButton {
        objectName: "switch-lock"
        Layout.fillWidth: true
        text: qsTr("Lock now")
        onClicked: page.lock.lock()
    }
}
