// SPDX-License-Identifier: Apache-2.0
// A person's code: set for the first time or anew, or asked for when the glass changes hands.
import QtQuick
import QtQuick.Layouts
import Snugline.Models
import Snugline.Parts
import Snugline.Say

PageFrame {
    id: page

    required property Shell shell
    required property string what         // the person
    readonly property LockModel lock: shell.lock
    signal go(string screen, string what)

    title: lock.isSetting ? lock.isRepeating ? qsTr("The same code again") : qsTr("New code") : qsTr("Code")
    subtitle: lock.isSetting ? qsTr("%1: %2 to %3 digits").arg(lock.person).arg(lock.leastDigits).arg(lock.mostDigits) : lock.person
    hasBack: true
    onBack: lock.forget()
    // Where the glass was locked meanwhile, the code is asked for anew.
    readonly property bool isCovered: Glass.isCovered
    property bool waits: false
    onIsCoveredChanged: {
        if (isCovered)
            waits = true
        else
            Qt.callLater(() => {
                waits = false
                lock.ask(what)
            })
    }
    Component.onCompleted: lock.ask(what)

    CodePad {
        objectName: "code-pad"
        focus: true
        Layout.fillWidth: true
        Layout.maximumWidth: 640
        Layout.alignment: Qt.AlignHCenter
        lock: page.lock
        enterText: page.lock.isSetting ? page.lock.isRepeating ? qsTr("Set this code") : qsTr("Go on") : qsTr("Take over")
    }
    Words {
        Layout.fillWidth: true
        visible: page.lock.isSetting
        size: "small"
        tone: "quiet"
        text: qsTr("With a code set, Snugline locks when nobody touches it, and athletes cannot leave Say. Nobody can read a code again: keep it where only you find it.")
    }
    Connections {
        target: page.lock
        function onOpened(): void { if (!page.waits) page.back() }
        function onCodeSet(): void { page.back() }
    }
}
