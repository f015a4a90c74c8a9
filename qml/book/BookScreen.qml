// SPDX-License-Identifier: Apache-2.0
// The Book: athletes, helmets, model sheets, settings. A stack of pages; the way back always leads to where one came from.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Models

FocusScope {
    id: book

    required property RosterModel roster
    required property UnitsModel units
    required property SettingsModel settings
    property SeasonModel season: null
    property PhonesModel phones: null
    property PhotoModel photos: null
    property UnitCard unitCard: null
    property ScanModel scan: null         // none in a program without a camera
    property GaugeModel gauge: null       // none in a program without Bluetooth

    property WarningModel warning: null
    signal openAthlete(string athleteId)
    signal go(string screen, string what)
    signal done()

    readonly property var pages: ({ athletes: athletesPage, form: formPage, roster: rosterPage, helmets: helmetsPage, unit: unitPage,
                                    pair: pairPage, sheets: sheetsPage, settings: settingsPage,
                                    air: airPage, gauge: gaugePage, season: seasonPage, matching: matchingPage, plan: planPage, lanes: lanesPage,
                                    notices: noticesPage, sharing: sharingPage, phone: phonePage,
                                    photo: photoPage, "photo-shown": photoShownPage,
                                    sheet: sheetPage, sheetEdit: sheetEditPage, sheetChange: sheetChangePage,
                                    collect: collectPage, missing: missingPage, turn: turnPage, next: nextPage, past: pastPage, "past-season": pastSeasonPage })

    function showUnit(unitId: string): void {
        book.units.page.open(unitId)
        if (book.settings.bookTrail.split("/").pop() !== "unit")
            book.push("unit", {})
    }
    // From elsewhere in the app: its way back leads there, past the pages that lie below.
    function showOnlyUnit(unitId: string): void {
        book.showUnit(unitId)
        book.floor = stack.depth
    }
    function push(name: string, given: var): void {
        stack.push(book.pages[name], given)
        book.settings.bookTrail += (book.settings.bookTrail.length > 0 ? "/" : "") + name
        stack.currentItem.forceActiveFocus()
    }
    function goBack(): void {
        book.settings.bookTrail = book.settings.bookTrail.split("/").slice(0, -1).join("/")
        if (stack.depth > book.floor) {
            stack.pop()
        } else {
            book.leaving = book.floor > 1     // what lies below is as it was left
            book.done()
        }
        if (stack.currentItem)
            stack.currentItem.forceActiveFocus()
    }
    // An athlete's page lies over the Book: coming back leads to the page that was left.
    function leaveFor(athleteId: string): void {
        book.leaving = true
        book.openAthlete(athleteId)
    }
    function leaveForScreen(screen: string): void {
        book.leaving = true
        book.go(screen, "")
    }
    property bool leaving: false
    property int floor: 1                 // as deep as it was come in
    Component.onCompleted: {
        for (const name of book.settings.bookTrail.split("/").filter(n => n.length > 0))
            stack.push(book.pages[name])
    }
    Component.onDestruction: {
        if (!book.leaving)
            book.settings.bookTrail = ""
    }

    StackView {
        id: stack
        objectName: "bookStack"
        anchors.fill: parent
        focus: true
        initialItem: indexPage
        pushEnter: null
        pushExit: null
        popEnter: null
        popExit: null
    }

    Component {
        id: indexPage
        BookIndex {
            roster: book.roster
            units: book.units
            settings: book.settings
            season: book.season
            unsignedWords: book.warning?.openWords ?? ""
            phones: book.phones
            onBack: book.goBack()
            onChosen: name => book.push(name, {})
        }
    }
    Component {
        id: athletesPage
        AthletesPage {
            roster: book.roster
            unsignedWords: book.warning?.openWords ?? ""
            onBack: book.goBack()
            onOpenAthlete: id => book.leaveFor(id)
            onEditAthlete: id => book.push("form", { athleteId: id })
            onTakeRosterIn: book.push("roster", {})
        }
    }
    Component { id: formPage; AthleteForm { roster: book.roster; hasPhones: book.phones !== null; onBack: book.goBack(); onOpenPhone: id => book.push("phone", { athleteId: id }) } }
    Component { id: rosterPage; RosterPage { intake: book.roster.intake; onBack: book.goBack() } }
    Component {
        id: helmetsPage
        HelmetsPage {
            units: book.units
            onBack: book.goBack()
            onOpenUnit: id => book.showUnit(id)
            onOpenNotices: book.push("notices", {})
        }
    }
    Component {
        id: unitPage
        UnitScreen {
            unit: book.units.page
            onBack: book.goBack()
            onOpenAthlete: id => book.leaveFor(id)
            onChooseAthlete: book.push("pair", {})
            photos: book.photos
            card: book.unitCard
            onAddPhoto: hold => {
                book.photos.begin(book.units.page.unitId, hold)
                book.push("photo", {})
            }
            onOpenPhoto: fact => book.push("photo-shown", { fact: fact })
            onOpenAir: {
                book.units.air.open(book.units.page.unitId)
                book.push("air", {})
            }
        }
    }
    Component { id: pairPage; PairPage { unit: book.units.page; onBack: book.goBack() } }
    Component {
        id: sheetsPage
        SheetsPage {
            sheets: book.units.sheets
            onBack: book.goBack()
            onOpenSheet: hash => { book.units.sheets.page.open(hash); book.push("sheet", {}) }
            onWrite: book.push("sheetEdit", {})
            onShowChange: book.push("sheetChange", {})
        }
    }
    Component { id: sheetPage; SheetScreen { sheets: book.units.sheets; onBack: book.goBack(); onWrite: book.push("sheetEdit", {}); onShowChange: book.push("sheetChange", {}) } }
    Component { id: sheetEditPage; SheetEditScreen { editor: book.units.sheets.editor; onBack: book.goBack(); onShowChange: book.push("sheetChange", {}) } }
    Component { id: sheetChangePage; SheetChangeScreen { editor: book.units.sheets.editor; onBack: book.goBack(); onOpenAthlete: id => book.leaveFor(id); onOpenUnit: id => book.showUnit(id) } }
    Connections {
        target: book.units.sheets.editor
        // Kept: back to where the sheet is shown or listed.
        function onKept(): void {
            while (["sheetEdit", "sheetChange"].includes(book.settings.bookTrail.split("/").pop()))
                book.goBack()
        }
    }
    Component { id: settingsPage; SettingsPage { settings: book.settings; hasGauge: book.gauge !== null; onBack: book.goBack(); onOpenGauge: book.push("gauge", {}); onOpenScreen: screen => book.leaveForScreen(screen) } }
    Component { id: sharingPage; SharingPage { phones: book.phones; onBack: book.goBack() } }
    Component { id: phonePage; PhonePage { phones: book.phones; onBack: book.goBack() } }
    Component { id: seasonPage; SeasonPage { season: book.season; settings: book.settings; onBack: book.goBack(); onOpenAthlete: id => book.leaveFor(id); onChosen: name => book.push(name, {}) } }
    Component { id: matchingPage; MatchingPage { matching: book.season.matching; onBack: book.goBack(); onOpenAthlete: id => book.leaveFor(id) } }
    Component { id: planPage; PlanPage { plan: book.season.plan; onBack: book.goBack() } }
    Component { id: lanesPage; LanesPage { lanes: book.season.lanes; onBack: book.goBack() } }
    Component { id: collectPage; CollectPage { collect: book.season.collect; scan: book.scan; onBack: book.goBack(); onOpenUnit: id => book.showUnit(id); onOpenMissing: book.push("missing", {}) } }
    Component { id: missingPage; MissingPage { collect: book.season.collect; onBack: book.goBack(); onOpenUnit: id => book.showUnit(id); onOpenAthlete: id => book.leaveFor(id) } }
    Component { id: turnPage; SeasonTurnPage { turn: book.season.turn; onBack: book.goBack(); onOpenAthlete: id => book.leaveFor(id); onOpenMissing: book.push("missing", {}); onOpenNext: book.push("next", {}) } }
    Component { id: nextPage; SeasonOpenPage { turn: book.season.turn; onBack: book.goBack() } }
    Component { id: pastPage; PastSeasonsPage { past: book.season.past; onBack: book.goBack(); onChosen: season => { book.season.past.choose(season); book.push("past-season", {}) } } }
    Component { id: pastSeasonPage; PastSeasonPage { past: book.season.past; onBack: book.goBack(); onOpenUnit: id => book.showUnit(id); onOpenAthlete: id => book.leaveFor(id) } }
    Component { id: airPage; AirPage { air: book.units.air; gauge: book.gauge; onBack: book.goBack(); onChooseGauge: book.push("gauge", {}) } }
    Component {
        id: noticesPage
        NoticePage {
            notices: book.units.notices
            onBack: book.goBack()
            onOpenUnit: id => book.showUnit(id)
        }
    }
    Component { id: photoPage; PhotoPage { photos: book.photos; onDone: book.goBack() } }
    Component { id: photoShownPage; PhotoShown { unit: book.units.page; album: book.photos.album; onBack: book.goBack() } }
    Component { id: gaugePage; GaugePage { gauge: book.gauge; onBack: book.goBack() } }
}
