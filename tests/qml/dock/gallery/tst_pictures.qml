// SPDX-License-Identifier: Apache-2.0
// Pictures of Dock and Book at the three sizes of glass, to be looked at; they are written where SNUGLINE_GALLERY says. Not a test of ctest.
import QtQuick
import QtTest
import Snugline.Tokens
import Snugline.Dock
import Snugline.Book
import Snugline.Models
import Snugline.Room

Item {
    id: root
    width: 1194
    height: 1194

    Room { id: room }
    Item {
        id: glass
        width: 390
        height: 844
        Binding { target: Theme; property: "phone"; value: Theme.isPhone(glass.width) }
        Loader { id: shown; anchors.fill: parent }
    }
    Component { id: dockScreen; DockScreen { model: room.dock; scan: room.scanner } }
    Component { id: bookScreen; BookScreen { roster: room.roster; units: room.units; settings: room.settings } }

    TestCase {
        name: "Pictures"
        when: windowShown

        readonly property var glasses: [[390, 844, "phone"], [834, 1194, "tablet"], [1194, 834, "wide"]]

        function initTestCase(): void {
            verify(room.begin())
            Theme.reducedMotion = true
            const names = [["57", "Okafor", "Dele"], ["12", "Marsh", "Teo"], ["88", "Lindqvist", "Bo"], ["4", "Reyes", "Ander"], ["73", "Tamm", "Sander"], ["21", "Boyd", "Kit"], ["00", "Vale", "Ines"]]
            for (const n of names)
                room.addAthlete(n[0], n[1], n[2])
            room.addUnit("H-0231", "L", 2025)
            room.addUnit("H-0118", "M", 2024)
            room.addUnit("H-0207", "M", 2025, "bare metal")
            room.addUnit("H-0164", "S", 2025)
            room.addUnit("H-0240", "XL", 2025)
            room.pair("H-0231", "57")
            room.pair("H-0164", "4")
        }
        function picture(name: string): void {
            for (const g of glasses) {
                glass.width = g[0]
                glass.height = g[1]
                waitForRendering(shown.item)
                wait(60)
                const image = grabImage(glass)
                image.save(room.galleryFolder() + "/" + name + "-" + g[2] + ".png")
            }
        }
        function show(component: Component): void {
            shown.sourceComponent = null
            shown.sourceComponent = component
            shown.item.forceActiveFocus()
        }
        function goTo(name: string): void {
            show(bookScreen)
            const stack = findChild(shown.item, "bookStack")
            stack.currentItem.chosen(name)
        }

        function test_dock(): void {
            show(dockScreen)
            picture("dock-empty")
            room.scan(shown.item, "H-0999")
            picture("dock-what")
            room.dock.chooseSheet(room.sheetHash("Alder A1"))
            picture("dock-what-sheet")
            room.dock.chooseSize("L")
            room.dock.chooseYear(2025, false)
            picture("dock-points")
            room.dock.allSound()
            picture("dock-sound")
            room.dock.sayFault(4, "bare metal")
            picture("dock-fault")
            room.dock.hold("", false)
            tryVerify(() => !room.dock.isBusy)
            picture("dock-held")
            room.scan(shown.item, "bad\u0001tag")
            picture("dock-refused")
            room.scan(shown.item, "H-0207")
            picture("dock-known")
            room.dock.putAside()
        }
        // Panels lie over the whole window, not over the glass.
        function test_panels(): void {
            glass.width = root.width
            glass.height = root.height
            show(dockScreen)
            room.scan(shown.item, "H-0231")
            room.dock.touchPoint(2)
            room.dock.touchPoint(2)
            waitForRendering(root)
            grabImage(root.Window.contentItem).save(room.galleryFolder() + "/dock-panel-fault.png")
            room.dock.closeFault()
            room.dock.allSound()
            findChild(shown.item, "hold").clicked()
            waitForRendering(root)
            grabImage(root.Window.contentItem).save(room.galleryFolder() + "/dock-panel-hold.png")
            room.dock.putAside()
        }
        function test_index(): void { show(bookScreen); picture("book-index") }
        function test_athletes(): void { goTo("athletes"); picture("book-athletes") }
        function test_helmets(): void { goTo("helmets"); picture("book-helmets") }
        function test_sheets(): void { goTo("sheets"); picture("book-sheets") }
        function test_settings(): void { goTo("settings"); picture("book-settings") }
        function test_form(): void {
            goTo("athletes")
            findChild(shown.item, "bookStack").currentItem.editAthlete("")
            picture("book-form")
        }
        function test_unit(): void {
            show(bookScreen)
            shown.item.showUnit(room.unitId("H-0231"))
            picture("book-unit")
            shown.item.showUnit(room.unitId("H-0207"))
            picture("book-unit-held")
            findChild(shown.item, "bookStack").currentItem.chooseAthlete()
            picture("book-pair")
        }
        function test_roster(): void {
            goTo("athletes")
            findChild(shown.item, "bookStack").currentItem.takeRosterIn()
            picture("book-roster")
            room.roster.intake.read(room.writeText("roster.csv", "number,last name,first name,head mm\n57,Okafor,Dele,575\n4,,Ander,\n12,Marsh,Teo,690\n22,Hale,Noor,\n"))
            picture("book-roster-read")
        }
    }
}
