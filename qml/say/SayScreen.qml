// SPDX-License-Identifier: Apache-2.0
// The athletes' door: number, where, how, done. One page for each step; nothing of a step is left when it goes.
import QtQuick
import Snugline.Models

FocusScope {
    id: screen

    required property SayModel say
    // The way to the staff's side, through a code.
    signal leave()

    readonly property var pages: ({ "number": number, "who": who, "where": where, "words": words, "said": said, "stop": stop })

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: screen.pages[screen.say.step] ?? number
    }
    // Any touch shows that somebody is there; it is passed on.
    PointHandler {
        acceptedButtons: Qt.AllButtons
        onActiveChanged: if (active) screen.say.touched()
    }
    Keys.onPressed: event => {
        screen.say.touched()
        // The keys of the device lead nowhere from here.
        event.accepted = event.key === Qt.Key_Back || event.key === Qt.Key_Escape
        if (event.accepted && screen.say.step !== "number")
            screen.say.walkAway()
    }
    Component { id: number; SayNumber { say: screen.say; onLeave: screen.leave() } }
    Component { id: who; SayWho { say: screen.say } }
    Component { id: where; SayWhere { say: screen.say } }
    Component { id: words; SayWords { say: screen.say } }
    Component { id: said; SaySaid { say: screen.say } }
    Component { id: stop; SayStop { say: screen.say } }
}
