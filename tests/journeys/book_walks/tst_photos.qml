// SPDX-License-Identifier: Apache-2.0
// A photo of a fault: asked for, looked at, kept plain, shown, altered, removed; by touch, through the real pages to the disk and back.
import QtQuick
import Snugline.Book

BookWalk {
    id: journey
    name: "BookPhotos"

    property string file: ""              // what the system's dialog would hand over

    Component {
        id: quickChooser
        QtObject {
            signal chosen(string file)
            function open(): void { chosen(journey.file) }
        }
    }

    function hold(): void {
        room.addUnit("H-0231", "L", 2025, "bare metal")
        screen.showUnit(room.unitId("H-0231"))
    }
    function chooseFile(path: string): void {
        journey.file = path
        findChild(page(), "chooser").sourceComponent = quickChooser
        touch("chooseFile")
        tryVerify(() => !room.photos.isMaking)
    }
    function keepOne(): void {
        touch("photoOfHold")
        chooseFile(room.writeCameraPicture("camera.jpg", 2400, 1800))
        tryVerify(() => room.photos.isPicked)
        touch("keep")
        tryVerify(() => room.units.page.photos.length === 1)
    }
    function restart(): void {
        screen.destroy()
        screen = null
        wait(0)
        verify(room.reopen())
        screen = createTemporaryObject(bookScreenAgain, journey)
        screen.showUnit(room.unitId("H-0231"))
    }
    Component {
        id: bookScreenAgain
        BookScreen { width: 834; height: 1194; roster: journey.room.roster; units: journey.room.units; settings: journey.room.settings; photos: journey.room.photos }
    }

    function test_a_picture_of_a_camera_is_kept_without_place_or_maker_upright_and_stands_after_a_restart(): void {
        hold()
        touch("photoOfHold")
        verify(item("caution").text.indexOf("no person") > 0)
        verify(item("photoHold").text.length > 0)
        compare(item("keepAnswers"), null)
        const source = room.writeCameraPicture("camera.jpg", 2400, 1800)
        verify(room.holdsBytes(source, "Maker of camera") && room.holdsBytes(source, "Exif") && room.holdsBytes(source, "behind the gym"))
        chooseFile(source)
        tryVerify(() => room.photos.isPicked)
        compare(room.photoFiles().length, 0)          // nothing before it was looked at
        verify(item("askedPerson").visible)
        compare(item("photoPoint"), null)             // the hold says what it shows
        write("photoWords", "left side")
        touch("keep")
        tryVerify(() => room.units.page.photos.length === 1)
        const files = room.photoFiles()
        compare(files.length, 1)
        compare(room.plainSize(files[0]), Qt.size(1200, 1600))
        verify(!room.holdsBytes(files[0], "Maker of camera") && !room.holdsBytes(files[0], "Exif") && !room.holdsBytes(files[0], "behind the gym"))
        verify(item("photoKept").text.indexOf("H-0231") > 0)
        tryVerify(() => item("thumbView").isShown)
        restart()
        compare(room.units.page.photos.length, 1)
        compare(room.units.page.photos[0].title, "Faceguard: left side")
        tryVerify(() => item("historyThumb") !== null)
        touch("historyThumb")
        tryVerify(() => item("largeView").isShown)
        screen.destroy()
        screen = null
        wait(0)
        room.close()
        compare(room.verified(), "ok, 1 photos")
    }

    function test_a_picture_with_somebody_in_it_is_thrown_away_and_leaves_nothing(): void {
        hold()
        touch("addPhoto")
        chooseFile(room.writeCameraPicture("camera.jpg", 400, 300))
        tryVerify(() => room.photos.isPicked)
        touch("throw")
        tryVerify(() => !room.photos.isPicked)
        verify(item("caution").visible)
        compare(room.photoFiles().length, 0)
        compare(room.units.page.photos.length, 0)
    }

    function test_the_camera_shows_takes_and_keeps_with_the_point_that_was_touched(): void {
        hold()
        touch("addPhoto")
        touch("camera")
        tryVerify(() => room.photos.isSeeing)
        room.showHelmet()
        tryVerify(() => item("takenView").isShown)
        verify(item("cautionAtCamera").visible)
        touch("take")
        tryVerify(() => room.photos.isPicked)
        verify(!room.photos.isOn)
        touch("shell")
        touch("keep")
        tryVerify(() => room.units.page.photos.length === 1)
        compare(room.units.page.photos[0].title, "Shell")
        compare(room.plainSize(room.photoFiles()[0]), Qt.size(320, 240))
    }

    function test_what_is_no_picture_or_too_large_is_refused_with_a_sentence_and_the_page_goes_on(): void {
        hold()
        touch("addPhoto")
        for (const bad of [room.writeText("notes.jpg", "not a picture"), room.writeText("empty.jpg", ""), "file:///nowhere/at-all.jpg"]) {
            chooseFile(bad)
            tryVerify(() => room.photos.refusal.length > 0)
            verify(item("refusal").visible)
            verify(!room.photos.isPicked)
        }
        compare(room.photoFiles().length, 0)
        chooseFile(room.writePicture("fine.png"))
        tryVerify(() => room.photos.isPicked)
        compare(room.photos.refusal, "")
        // The same picture twice is said.
        touch("keep")
        tryVerify(() => room.units.page.photos.length === 1)
        touch("addPhoto")
        chooseFile(room.writePicture("fine.png"))
        tryVerify(() => room.photos.isPicked)
        touch("keep")
        tryVerify(() => room.photos.refusal.indexOf("H-0231") > 0)
        compare(room.units.page.photos.length, 1)
    }

    function test_an_altered_photo_is_not_shown_and_says_so_and_verify_names_it(): void {
        hold()
        keepOne()
        room.spoil(room.photoFiles()[0])
        restart()
        tryVerify(() => item("thumb") !== null && item("thumb").words.length > 0)
        verify(!item("thumbView").isShown)
        touch("thumb")
        tryVerify(() => item("photoTrouble").text.indexOf("altered") > 0)
        compare(item("largeView"), null)
        screen.destroy()
        screen = null
        wait(0)
        room.close()
        compare(room.verified(), "altered H-0231")
    }

    function test_the_card_of_a_helmet_holds_its_photo_and_names_no_athlete(): void {
        room.addAthlete("57", "Okafor", "Dele")
        room.addUnit("H-0231", "L", 2025)
        room.pair("H-0231", "57")
        screen.showUnit(room.unitId("H-0231"))
        touch("addPhoto")
        chooseFile(room.writeCameraPicture("camera.jpg", 400, 300))
        tryVerify(() => room.photos.isPicked)
        touch("shell")
        touch("keep")
        tryVerify(() => room.units.page.photos.length === 1)
        touch("printCard")
        tryVerify(() => item("cardPlace") !== null && item("cardPlace").visible)
        verify(room.printed().some(p => p.startsWith("picture: Shell")))
        verify(room.printed().some(p => p.indexOf("H-0231") > 0))
        verify(!room.printed().some(p => p.indexOf("Okafor") >= 0))
        room.spoil(room.photoFiles()[0])
        touch("printCard")
        tryVerify(() => room.printed().some(p => p.startsWith("words: Shell") && p.indexOf("altered") > 0))
    }

    function test_a_removed_photo_is_gone_from_the_disk_and_the_history_says_so(): void {
        hold()
        keepOne()
        touch("thumb")
        touch("removePhoto")
        tryVerify(() => item("removeForGood") !== null)
        compare(room.photoFiles().length, 1)          // asked first: this cannot be undone
        touch("removeForGood")
        tryVerify(() => room.units.page.photos.length === 0)
        compare(room.photoFiles().length, 0)
        tryVerify(() => page().objectName !== "" || item("addPhoto") !== null)
        tryVerify(() => room.units.page.history.some(h => h.words.indexOf("its file deleted") > 0))
        screen.destroy()
        screen = null
        wait(0)
        room.close()
        compare(room.verified(), "ok, 0 photos")
    }
}
