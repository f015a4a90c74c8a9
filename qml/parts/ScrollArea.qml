// SPDX-License-Identifier: Apache-2.0
// Scrolls up and down only; children go into a column as wide as the area (use Layout.fillWidth). No hover, a thin place mark at the right.
import QtQuick
import QtQuick.Layouts
import Snugline.Tokens

Flickable {
    id: area

    default property alias content: column.data
    property real spacing: Theme.gap
    property real inset: 0                // room at both sides for focus frames and the place mark
    readonly property Item focused: Window.activeFocusItem

    contentWidth: width
    contentHeight: column.implicitHeight
    implicitHeight: column.implicitHeight
    flickableDirection: Flickable.VerticalFlick
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    interactive: contentHeight > height

    // The keyboard never goes where it cannot be seen.
    onFocusedChanged: {
        for (let item = focused; item; item = item.parent)
            if (item === column) {
                reveal(focused)
                return
            }
    }

    // Brings an item into view.
    function reveal(item: Item): void {
        const top = item.mapToItem(column, 0, 0).y
        if (!interactive)
            return
        if (top < contentY)
            contentY = Math.max(0, top - Theme.gap)
        else if (top + item.height > contentY + height)
            contentY = Math.max(0, Math.min(contentHeight - height, top + item.height - height + Theme.gap))
    }

    ColumnLayout {
        id: column
        x: area.inset
        width: area.width - 2 * area.inset
        spacing: area.spacing
    }
    Rectangle {
        parent: area
        visible: area.interactive
        anchors.right: parent.right
        width: 4
        radius: 2
        color: Theme.slate
        y: area.visibleArea.yPosition * area.height
        height: area.visibleArea.heightRatio * area.height
    }
}
