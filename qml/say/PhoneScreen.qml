// SPDX-License-Identifier: Apache-2.0
// Snugline on an athlete's own phone: what comes next and what came of it, and the steps of Say behind it. Nothing else is here.
import QtQuick
import Snugline.Models

FocusScope {
    id: screen

    required property PhoneModel phone
    readonly property SayModel say: phone.say
    readonly property var pages: ({ "where": where, "words": words, "said": said, "stop": stop })

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: screen.pages[screen.say.step] ?? home
    }
    PointHandler {
        acceptedButtons: Qt.AllButtons
        onActiveChanged: if (active) screen.say.touched()
    }
    Component { id: home; PhoneHome { own: screen.phone } }
    Component { id: where; SayWhere { say: screen.say } }
    Component { id: words; SayWords { say: screen.say } }
    Component { id: said; SaySaid { say: screen.say } }
    Component { id: stop; SayStop { say: screen.say } }
}
