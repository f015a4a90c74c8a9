// SPDX-License-Identifier: Apache-2.0
// The camera from the driver's frame to the helmet on the table: the app's own eye, with frames pushed into its sink.
import QtQuick
import QtTest
import Snugline.Models
import "../dock_walks"

DockWalk {
    name: "DockFrames"

    function begin(): void {
        hide()
        verify(room.haveFrames(true))
        verify(room.begin())
        show()
    }
    function cleanup(): void {
        hide()
        room.haveFrames(false)
    }

    function test_a_frame_becomes_the_helmet_on_the_table_data(): var {
        return [{ tag: "NV12", turns: 0 }, { tag: "YUYV", turns: 0 }, { tag: "YUV420P", turns: 1 }, { tag: "BGRA8888", turns: 3 }]
    }
    function test_a_frame_becomes_the_helmet_on_the_table(data: var): void {
        begin()
        room.addUnit("H-0231", "L", 2025)
        touch("cameraOn")
        room.pushFrame("H-0231", data.tag, data.turns)
        tryVerify(() => room.dock.stage === DockModel.Points, 5000)
        compare(room.dock.serial, "H-0231")
        verify(room.dock.isKnown)
        touches = 0
        touch("allSound")
        touch("inService")
        compare(touches, 2)
        settled()
        compare(room.unitState("H-0231"), "in-service")
    }

    function test_a_camera_that_ends_says_so_and_works_again_after_off_and_on(): void {
        begin()
        room.addUnit("H-0231", "L", 2025)
        touch("cameraOn")
        room.pushFrame("x".repeat(5000), "NV12")    // no code holds that: grey ground alone
        tryVerify(() => room.scanner.isSeeing, 5000)
        room.endFrames()
        verify(item("cameraTrouble").text.indexOf("stopped") > 0)
        touch("cameraOff")
        touch("cameraOn")
        room.pushFrame("H-0231", "NV12")
        tryVerify(() => room.dock.stage === DockModel.Points, 5000)
    }
}
