// SPDX-License-Identifier: Apache-2.0
// After a hold at the Dock a photo of it is offered, never asked for; after anything else it is not.
import QtQuick
import QtTest

DockWalk {
    id: offer
    name: "DockPhotoOffer"

    SignalSpy { id: asked; target: offer.screen; signalName: "addPhoto" }

    function init(): void {
        failOnWarning(/.?/)
        verify(room.begin())
        show()
        screen.takesPhotos = true
        asked.clear()
    }
    function test_a_held_helmet_may_be_photographed_and_the_scanning_goes_on_without(): void {
        takeNew("H-0300", "L", "2025")
        compare(findChild(screen, "photoOfLast").visible, false)
        scan("H-0231")
        touch("last")
        touch("allSound")
        touch("point4")
        tryVerify(() => item("bare metal") !== null)
        touch("bare metal")
        tryVerify(() => room.dock.faultOpen === -1)
        touch("hold")
        settled()
        tryVerify(() => findChild(screen, "photoOfLast").visible)
        touch("photoOfLast")
        compare(asked.count, 1)
        compare(asked.signalArguments[0][0], room.unitId("H-0231"))
        // The photo begins at the hold that was just made.
        room.photos.beginAtLastHold(room.unitId("H-0231"))
        verify(room.photos.holdWords.length > 0)
        scan("H-0300")
        compare(findChild(screen, "photoOfLast").visible, false)
    }
}
