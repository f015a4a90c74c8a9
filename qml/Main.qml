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
    property bool isSwitching: false      // somebody else takes the glass: their code stands over the page
    property bool isFirst: false          // nobody is in the Book yet
    // What lies over the page of the trail. The page stays as it is, with all that was touched and typed in it.
    readonly property string cover: wall.length > 0 ? wall : isSwitching ? "switch" : isFirst && place.screen !== "phone-join" ? "first" : ""
    readonly property string screen: cover.length > 0 ? cover : place.screen
    readonly property QtObject screenItem: (cover.length === 0 ? pageLayer : wall.length > 0 ? wallLayer : isSwitching ? switchLayer : firstLayer).item
    readonly property var places: ({
        "doors": "Line/Doors.qml", "line": "Line/Line.qml", "jersey": "Line/Jersey.qml", "turn": "Line/Turn.qml",
        "athlete": "Line/Athlete.qml", "tape": "Line/Tape.qml", "swap": "Line/Swap.qml", "guide": "Line/Guide.qml",
        "verdict": "Line/Verdict.qml", "people": "Line/People.qml", "line-check": "Line/LineCheck.qml", "code": "Line/Code.qml",
        "recovery": "Line/RecoverySheet.qml", "record": "Line/Record.qml", "privacy": "Line/Privacy.qml",
        "warning-text": "Line/WarningText.qml", "unnamed": "Line/Unnamed.qml",
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
        pageLayer.setSource(Qt.resolvedUrl(places[place.screen]), given())
        if (place.screen === "book" && place.what.length > 0)
            pageLayer.item["showOnlyUnit"](place.what)
    }
    function showWall(): void {
        const walls = {
            "phone": ["Say/PhoneScreen.qml", { "phone": shell.phone, "focus": true }],
            "say": ["Say/SayScreen.qml", { "say": shell.say, "focus": true }],
            "locked": ["Say/Locked.qml", { "lock": shell.lock, "recovery": shell.recovery, "focus": true }],
            "sign": ["Say/ReadAndSign.qml", { "warning": shell.warning, "lock": shell.lock, "focus": true }]
        }
        if (wall.length === 0)
            wallLayer.source = ""
        else
            wallLayer.setSource(Qt.resolvedUrl(walls[wall][0]), walls[wall][1])
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
    // The page is made when nothing is locked for the first time; from then on it is only covered.
    function open(): void {
        if (!shell.isOpen || wall.length > 0 || pageLayer.item)
            return
        if (shell.startScreen === "guide")
            trail = [{ screen: "doors", what: "" }, { screen: "line", what: "" }, { screen: "guide", what: "" }]
        isFirst = shell.startScreen === "first"
        show()
    }
    function openSay(): void {
        if (!shell.lock.openSay())
            return go("people", "say", false)
        shell.say.begin()
    }
    onWallChanged: {
        isSwitching = false
        showWall()
        open()
    }

    Binding { target: Glass; property: "isCovered"; value: main.cover.length > 0 }
    Binding { target: Bearer; property: "initials"; value: main.wall.length === 0 && main.shell.lock.hasCodes ? main.shell.doors.holder : "" }
    Binding { target: Bearer; property: "staffOnly"; value: main.shell.rights.staffOnly }
    Binding { target: Bearer; property: "adminOnly"; value: main.shell.rights.adminOnly }
    Connections {
        target: Bearer
        function onWanted(): void { main.isSwitching = true }
    }
    Connections {
        target: main.shell.lock
        function onOpened(): void { main.isSwitching = false }
    }

    focus: true
    implicitWidth: 834
    implicitHeight: 1194
    Component.onCompleted: {
        showWall()
        open()
    }

    Connections {
        target: main.shell
        function onStateChanged(): void { main.open() }
    }
    Binding { target: Theme; property: "phone"; value: Theme.isPhone(main.width) }
    Binding { target: Theme; property: "mode"; value: main.shell.settings.theme === SettingsModel.Sun ? "sun" : main.shell.settings.theme === SettingsModel.Night ? "night" : "day" }
    Binding { target: Theme; property: "textScale"; value: main.shell.settings.textPercent / 100 }
    Binding { target: Theme; property: "reducedMotion"; value: main.shell.settings.reducedMotion }

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Item {
        id: glass
        objectName: "glass"
        anchors.fill: parent
        anchors.topMargin: trouble.visible ? trouble.height + 2 * Theme.grid : 0
    }
    // One layer; only the topmost is shown and live. The others keep all that they hold and come back as they were; what is not visible no
    // eye, touch, key or screen reader finds. None leaves the window: a Shape that comes back to one may crash (Qt 6.4 takes a new node at
    // the address of the old one for the old one).
    component Layer: Loader {
        required property Item room
        required property bool isTop
        parent: room
        width: room.width
        height: room.height
        visible: isTop
        enabled: isTop
        focus: isTop
        onIsTopChanged: if (isTop) forceActiveFocus()
    }
    Layer { id: pageLayer; room: glass; isTop: main.cover.length === 0 }
    Layer {
        id: firstLayer
        room: glass
        isTop: main.cover === "first"
        readonly property bool isWanted: main.isFirst
        onIsWantedChanged: isWanted ? setSource(Qt.resolvedUrl("Line/First.qml"), { "shell": main.shell, "focus": true }) : source = ""
    }
    Layer {
        id: switchLayer
        room: glass
        isTop: main.cover === "switch"
        active: main.isSwitching
        sourceComponent: SwitchHolder { focus: true; lock: main.shell.lock; onBack: main.isSwitching = false }
    }
    Layer { id: wallLayer; room: glass; isTop: main.wall.length > 0 }
    Connections {
        target: pageLayer.item
        ignoreUnknownSignals: true
        function onGo(screen: string, what: string): void { main.go(screen, what, false) }
        function onReplace(screen: string, what: string): void { main.go(screen, what, true) }
        function onHome(screen: string): void { main.home(screen) }
        function onBack(): void { main.back() }
        function onDone(): void { main.back() }
        function onSay(): void { main.openSay() }
        function onOpenAthlete(athlete: string): void { main.go("athlete", athlete, false) }
        function onAddPhoto(unit: string): void {
            main.shell.photos.beginAtLastHold(unit)
            main.go("photo", "", false)
        }
        function onOpenUnit(unit: string): void { main.go("book", unit, false) }
    }
    Connections {
        target: firstLayer.item
        ignoreUnknownSignals: true
        function onGo(screen: string, what: string): void { main.go(screen, what, false) }
        function onHome(screen: string): void { main.isFirst = false }
    }
    Connections {
        target: wallLayer.item
        ignoreUnknownSignals: true
        function onLeave(): void { main.shell.lock.leaveSay() }
        function onSay(): void { main.openSay() }
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
