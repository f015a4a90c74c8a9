// SPDX-License-Identifier: Apache-2.0
// Navigation and tokens only. A screen of the Line has `required property Shell shell`, may have `property string what` (an id), and says
// where to go by signals: go(screen, what) puts a screen on top, replace(screen, what) takes its place, back() takes it away,
// home(screen) starts a new trail. Dock and Book get their own models and say done(), openAthlete(id), openUnit(id).
import QtQuick
import Snugline.Models
import Snugline.Parts
import Snugline.Say
import Snugline.Tokens

FocusScope {
    id: main

    required property Shell shell
    property var trail: [{ screen: "doors", what: "" }]
    readonly property var place: trail[trail.length - 1]
    // An athlete's own phone is nothing but that.
    readonly property string wall: shell.phone.isJoined ? "phone" : shell.lock.wall    // what stands between the trail and whoever holds the glass
    readonly property string screen: wall.length > 0 ? wall : isSwitching ? "switch" : place.screen
    readonly property QtObject screenItem: isSwitching ? switchLoader.item : screenLoader.item
    readonly property var places: ({
        "doors": "Line/Doors.qml", "line": "Line/Line.qml", "jersey": "Line/Jersey.qml", "turn": "Line/Turn.qml",
        "athlete": "Line/Athlete.qml", "tape": "Line/Tape.qml", "shelf": "Line/Shelf.qml", "swap": "Line/Swap.qml", "guide": "Line/Guide.qml",
        "verdict": "Line/Verdict.qml", "people": "Line/People.qml", "line-check": "Line/LineCheck.qml", "code": "Line/Code.qml",
        "first": "Line/First.qml", "recovery": "Line/RecoverySheet.qml", "record": "Line/Record.qml", "privacy": "Line/Privacy.qml",
        "warning-text": "Line/WarningText.qml",
        "phone-join": "Say/PhoneJoin.qml", "dock": "Dock/DockScreen.qml", "book": "Book/BookScreen.qml",
        "photo": "Book/PhotoPage.qml"
    })

    // replace: the screen on top goes away for it.
    function go(screen: string, what: string, replace: bool): void {
        const kept = replace ? trail.slice(0, -1) : trail
        // The same screen twice is one: going to the Line from a verdict leads back to it, not on top of it.
        const at = kept.findIndex(t => t.screen === screen && t.what === what)
        trail = (at >= 0 ? kept.slice(0, at) : kept).concat([{ screen: screen, what: what }])
        show()
    }
    function back(): void {
        if (trail.length > 1)
            trail = trail.slice(0, -1)
        show()
    }
    function home(screen: string): void {
        trail = screen === "doors" ? [{ screen: "doors", what: "" }] : [{ screen: "doors", what: "" }, { screen: screen, what: "" }]
        show()
    }
    function show(): void {
        if (wall === "phone")
            return screenLoader.setSource(Qt.resolvedUrl("Say/PhoneScreen.qml"), { "phone": shell.phone, "focus": true })
        if (!shell.isOpen)
            return
        if (wall === "say")
            return screenLoader.setSource(Qt.resolvedUrl("Say/SayScreen.qml"), { "say": shell.say, "focus": true })
        if (wall === "locked")
            return screenLoader.setSource(Qt.resolvedUrl("Say/Locked.qml"), { "lock": shell.lock, "recovery": shell.recovery, "focus": true })
        if (wall === "sign")
            return screenLoader.setSource(Qt.resolvedUrl("Say/ReadAndSign.qml"), { "warning": shell.warning, "lock": shell.lock, "focus": true })
        screenLoader.setSource(Qt.resolvedUrl(places[place.screen]), given())
        if (place.screen === "book" && place.what.length > 0)
            screenLoader.item["showUnit"](place.what)
    }
    function given(): var {
        if (place.screen === "dock")
            return { "model": shell.dock, "scan": shell.scan, "takesPhotos": shell.photos.canTake, "focus": true }
        if (place.screen === "photo")
            return { "photos": shell.photos, "focus": true }
        if (place.screen === "book")
            return { "roster": shell.roster, "units": shell.units, "settings": shell.settings, "gauge": shell.gauge, "season": shell.season, "warning": shell.warning, "phones": shell.phones, "photos": shell.photos, "scan": shell.scan, "unitCard": shell.unitCard, "focus": true }
        return place.what.length > 0 ? { "shell": shell, "focus": true, "what": place.what } : { "shell": shell, "focus": true }
    }
    function open(): void {
        if (!shell.isOpen && wall !== "phone" || screenLoader.item)
            return
        if (shell.startScreen === "guide")
            trail = [{ screen: "doors", what: "" }, { screen: "line", what: "" }, { screen: "guide", what: "" }]
        else if (shell.startScreen === "first")
            trail = [{ screen: "first", what: "" }]
        show()
    }

    // From Say nobody comes back to where the last one was: whoever has the code begins at the doors.
    function openSay(): void {
        if (!shell.lock.openSay())
            return go("people", "say", false)
        shell.say.begin()
        trail = [{ screen: "doors", what: "" }]
    }
    onWallChanged: {
        isSwitching = false
        if (screenLoader.item)
            show()
    }

    property bool isSwitching: false      // somebody else takes the glass: their code stands over the page, which stays as it is
    Binding { target: Bearer; property: "initials"; value: main.wall.length === 0 && main.shell.lock.hasCodes ? main.shell.doors.holder : "" }
    Connections {
        target: Bearer
        function onWanted(): void { main.startSwitch() }
    }
    Connections {
        target: main.shell.lock
        function onOpened(): void { main.isSwitching = false }
    }
    function startSwitch(): void { isSwitching = true }
    function endSwitch(): void {
        isSwitching = false
        screenLoader.forceActiveFocus()
    }

    focus: true
    implicitWidth: 834
    implicitHeight: 1194
    Component.onCompleted: open()

    Connections {
        target: main.shell
        function onStateChanged(): void { main.open() }
    }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(main.width) }
    Binding { target: Theme; property: "mode"; value: main.shell.settings.theme === SettingsModel.Sun ? "sun" : main.shell.settings.theme === SettingsModel.Night ? "night" : "day" }
    Binding { target: Theme; property: "textScale"; value: main.shell.settings.textPercent / 100 }
    Binding { target: Theme; property: "reducedMotion"; value: main.shell.settings.reducedMotion }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Loader {
        id: screenLoader
        anchors.fill: parent
        anchors.topMargin: trouble.visible ? trouble.height + 2 * Theme.grid : 0
        focus: !main.isSwitching
        enabled: !main.isSwitching
        visible: !main.isSwitching
    }
    Loader {
        id: switchLoader
        anchors.fill: parent
        active: main.isSwitching
        focus: main.isSwitching
        sourceComponent: SwitchHolder { focus: true; lock: main.shell.lock; onBack: main.endSwitch() }
        onLoaded: forceActiveFocus()
    }
    Connections {
        target: screenLoader.item
        ignoreUnknownSignals: true
        function onGo(screen: string, what: string): void { main.go(screen, what, false) }
        function onReplace(screen: string, what: string): void { main.go(screen, what, true) }
        function onHome(screen: string): void { main.home(screen) }
        function onBack(): void { main.back() }
        function onDone(): void { main.back() }
        function onLeave(): void { main.shell.lock.leaveSay() }
        function onSay(): void { main.openSay() }
        function onOpenAthlete(athlete: string): void { main.go("athlete", athlete, false) }
        function onAddPhoto(unit: string): void {
            main.shell.photos.beginAtLastHold(unit)
            main.go("photo", "", false)
        }
        function onOpenUnit(unit: string): void { main.go("book", unit, false) }
    }
    PointHandler {
        acceptedButtons: Qt.AllButtons
        onActiveChanged: main.shell.lock.touched()
    }
    Notice {
        id: trouble
        x: Theme.margin
        y: Theme.grid
        width: parent.width - 2 * Theme.margin
        kind: "attention"
        text: main.wall.length > 0 ? "" : main.shell.trouble
        actionText: qsTr("Understood")
        onActed: main.shell.dismissTrouble()
    }
    Notice {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.margin, 640)
        kind: "stop"
        text: main.shell.failure
    }
}
