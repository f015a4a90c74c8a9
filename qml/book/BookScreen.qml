// SPDX-License-Identifier: Apache-2.0
// The Book: athletes, helmets, model sheets, settings. A stack of pages; the way back always leads to where one came from.
import QtQuick
import QtQuick.Controls.Basic
import Snugline.Tokens
import Snugline.Models

FocusScope {
    id: book

    required property RosterModel roster
    required property UnitsModel units
    required property SettingsModel settings

    signal openAthlete(string athleteId)
    signal done()

    // From elsewhere in the app: the page of one helmet, over the list of helmets.
    function showUnit(unitId: string): void {
        book.units.page.open(unitId)
        if (!(stack.currentItem instanceof UnitScreen))
            stack.push(unitPage)
    }
    function showSettings(): void {
        if (!(stack.currentItem instanceof SettingsPage))
            stack.push(settingsPage)
    }
    function goBack(): void {
        if (stack.depth > 1)
            stack.pop()
        else
            book.done()
        if (stack.currentItem)
            stack.currentItem.forceActiveFocus()
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
            onBack: book.goBack()
            onChosen: name => stack.push(name === "athletes" ? athletesPage : name === "helmets" ? helmetsPage : name === "sheets" ? sheetsPage : settingsPage)
        }
    }
    Component {
        id: athletesPage
        AthletesPage {
            roster: book.roster
            onBack: book.goBack()
            onOpenAthlete: id => book.openAthlete(id)
            onEditAthlete: id => stack.push(formPage, { athleteId: id })
            onTakeRosterIn: stack.push(rosterPage)
        }
    }
    Component {
        id: formPage
        AthleteForm { roster: book.roster; onBack: book.goBack() }
    }
    Component {
        id: rosterPage
        RosterPage { intake: book.roster.intake; onBack: book.goBack() }
    }
    Component {
        id: helmetsPage
        HelmetsPage {
            units: book.units
            onBack: book.goBack()
            onOpenUnit: id => book.showUnit(id)
        }
    }
    Component {
        id: unitPage
        UnitScreen {
            unit: book.units.page
            onBack: book.goBack()
            onOpenAthlete: id => book.openAthlete(id)
            onChooseAthlete: stack.push(pairPage)
        }
    }
    Component {
        id: pairPage
        PairPage { unit: book.units.page; onBack: book.goBack() }
    }
    Component {
        id: sheetsPage
        SheetsPage { sheets: book.units.sheets; onBack: book.goBack() }
    }
    Component {
        id: settingsPage
        SettingsPage { settings: book.settings; onBack: book.goBack() }
    }
}
