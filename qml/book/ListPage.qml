// SPDX-License-Identifier: Apache-2.0
// A page that is one long list under whatever the caller puts on top of it. Only the list scrolls; rows are made as they come into view.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens
import Snugline.Parts

PageFrame {
    id: page

    property alias rows: list.model
    property alias delegate: list.delegate
    property Component head: null          // scrolls with the list
    property string emptyText: ""
    readonly property real rowWidth: Math.max(0, list.width - 12)      // leaves the place mark its room

    property bool scrolled: false

    hasBack: true

    ListView {
        id: list
        objectName: "list"
        Layout.fillWidth: true
        Layout.preferredHeight: page.scrollArea.height
        clip: true
        spacing: Theme.grid
        boundsBehavior: Flickable.StopAtBounds
        keyNavigationEnabled: true
        cacheBuffer: 400
        currentIndex: -1
        onMovementStarted: page.scrolled = true
        header: FocusScope {
            width: page.rowWidth
            // A current row takes the keyboard with each new list: none while somebody types above it.
            onActiveFocusChanged: if (activeFocus) list.currentIndex = -1
            // The head grows after the list was placed; it is looked at from its top until somebody scrolls.
            onHeightChanged: if (!page.scrolled) Qt.callLater(list.positionViewAtBeginning)
            implicitHeight: topLoader.height + (topLoader.height > 0 ? Theme.gap : 0) + (none.visible ? none.height + Theme.gap : 0)
            Loader { id: topLoader; width: parent.width; sourceComponent: page.head }
            Words { id: none; y: topLoader.height + Theme.gap; width: parent.width; visible: list.count === 0 && text.length > 0; text: page.emptyText; tone: "quiet" }
        }
        Rectangle {
            parent: list
            visible: list.contentHeight > list.height
            anchors.right: parent.right
            width: 4
            radius: 2
            color: Theme.slate
            y: list.visibleArea.yPosition * list.height
            height: list.visibleArea.heightRatio * list.height
        }
    }
}
