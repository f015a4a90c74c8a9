// SPDX-License-Identifier: Apache-2.0
// The frame of every screen: header with title, subtitle, way back and a slot at the right; an edge slot (step ladder); a drawing;
// content; and a bar at the foot for the answers. Portrait stacks them; landscape puts the drawing left and content and answers right.
// Only content scrolls, never sideways; where even that leaves no room (small phone, large text) the whole page does. content and foot are columns: children use Layout.fillWidth.
import QtQuick
import QtQuick.Layouts
import Snugline.Parts
import Snugline.Tokens

FocusScope {
    id: page

    property string title: ""
    property string subtitle: ""
    property bool hasBack: false
    property string backText: qsTr("Back")
    property alias headerRight: right.data
    property alias edge: edgeSlot.data
    property alias drawing: drawingSlot.data
    default property alias content: area.content
    property alias foot: footColumn.data
    property bool showsDrawing: true      // false: the drawing steps back and its place goes to the content
    property real fixedDrawing: 0         // in portrait: a height that follows neither words nor answers; 0 for none
    property real drawingShare: 0.55      // of the height between header and answers, in portrait
    property bool steadyFoot: false       // where the page is higher than the glass its foot stands as low for little content as for much
    property bool holdsStill: false       // the drawing keeps its share whatever the content comes to: keys in the content stay where they are
    property alias scrollArea: area
    property bool showsBearer: true       // who holds the glass, in the corner; one touch hands it over
    readonly property bool hasBearer: showsBearer && Bearer.initials.length > 0

    signal back()

    readonly property bool phone: Theme.isPhone(width)
    readonly property bool hasDrawing: showsDrawing && drawingSlot.children.length > 0
    readonly property bool hasEdge: edgeSlot.children.length > 0
    readonly property bool landscape: width > height && width >= 640
    readonly property bool split: landscape && hasDrawing
    // What the step ladder should look like here: bind StepLadder.layout to it.
    readonly property string edgeLayout: width < 700 || Theme.stacks && width < 1000 ? "indicator" : landscape && width >= 1100 ? "list" : "rail"
    readonly property bool edgeOnTop: edgeLayout === "indicator"
    readonly property real edgeTopHeight: hasEdge && edgeOnTop ? edgeSlot.children[0].implicitHeight : 0
    readonly property real edgeWidth: hasEdge && !edgeOnTop ? (edgeLayout === "rail" ? Theme.touch : 196) + Theme.gap : 0
    // The indicator's frame is drawn slimmer than what may be touched: the rest is the gap above and below it.
    readonly property real bodyTop: header.y + header.height + (edgeTopHeight > 0 ? edgeTopHeight : Theme.gap)
    readonly property real bodyLeft: Theme.margin + edgeWidth
    readonly property real bodyWidth: width - bodyLeft - Theme.margin
    readonly property real usualContent: (hasDrawing && !split ? 64 : 160) * Theme.textScale
    readonly property real leastContent: steadyFoot ? usualContent : Math.min(area.contentHeight, usualContent)
    readonly property real leastDrawing: hasDrawing && !split ? fixedDrawing > 0 ? fixedDrawing + Theme.gap : (Theme.stacks ? 220 : 140) + Theme.gap : 0
    readonly property real pageHeight: Math.max(height, bodyTop + leastDrawing + leastContent + footHeight + Theme.margin)
    readonly property real bodyHeight: Math.max(0, pageHeight - bodyTop - Theme.margin)
    readonly property real columnGap: Theme.margin
    readonly property real drawingWidth: split ? Math.floor((bodyWidth - columnGap) * 0.58) : bodyWidth
    readonly property real footHeight: footColumn.implicitHeight > 0 ? footColumn.implicitHeight + Theme.gap : 0
    readonly property real above: Math.max(0, bodyHeight - footHeight)

    Keys.onEscapePressed: event => { if (hasBack) back(); else event.accepted = false }
    Keys.onBackPressed: event => { if (hasBack) back(); else event.accepted = false }
    Accessible.role: Accessible.Pane
    Accessible.name: title

    Rectangle { anchors.fill: parent; color: Theme.paper }

    Flickable {
        id: whole
        objectName: "whole"
        anchors.fill: parent
        contentWidth: width
        contentHeight: page.pageHeight
        interactive: page.pageHeight > page.height
        flickableDirection: Flickable.VerticalFlick
        boundsBehavior: Flickable.StopAtBounds

        GridLayout {
            id: header
            readonly property bool narrow: page.phone || Theme.textScale > 1.3 && page.width < 900
            x: Theme.margin
            y: Theme.margin
            width: page.width - 2 * Theme.margin
            readonly property bool under: narrow && right.implicitWidth > Theme.touch * 1.3   // what is wider than an icon gets its own row
            columns: (under ? 2 : 3) + (page.hasBearer ? 1 : 0)
            columnSpacing: page.phone ? Theme.grid : Theme.gap
            rowSpacing: Theme.grid
            BigButton {
                objectName: "back"
                visible: page.hasBack
                sign: "back"
                spokenName: page.backText
                Layout.alignment: Qt.AlignTop
                Layout.row: 0
                Layout.column: 0
                onClicked: page.back()
            }
            // A plain column: what wraps in it is as high as it is, at once.
            Column {
                id: naming
                Layout.fillWidth: true
                Layout.row: 0
                Layout.column: page.hasBack ? 1 : 0
                Layout.columnSpan: page.hasBack ? 1 : 2
                spacing: 2
                Heading { width: naming.width; text: page.title; most: page.phone && right.visible && !header.under ? Theme.headSize : Theme.titleSize }
                Words { width: naming.width; visible: text.length > 0; text: page.subtitle; size: "small"; tone: "quiet" }
            }
            BigButton {
                objectName: "bearer"
                visible: page.hasBearer
                Layout.alignment: Qt.AlignTop
                Layout.column: header.columns - 1
                Layout.row: 0
                leftPadding: Theme.grid
                rightPadding: Theme.grid
                font.pixelSize: Theme.smallSize
                text: Bearer.initials
                spokenName: qsTr("%1 signs here. Somebody else takes over").arg(Bearer.initials)
                onClicked: Bearer.wanted()
            }
            Row {
                id: right
                visible: children.length > 0
                Layout.row: header.under ? 1 : 0
                Layout.column: header.under ? 0 : 2
                Layout.columnSpan: header.under ? header.columns : 1
                Layout.alignment: header.under ? Qt.AlignLeft : Qt.AlignRight | Qt.AlignTop
                spacing: Theme.grid
            }
        }
        Item {
            id: edgeSlot
            x: Theme.margin
            y: header.y + header.height + (page.edgeOnTop ? 0 : Theme.gap)
            width: page.edgeOnTop ? page.width - 2 * Theme.margin : page.edgeWidth - Theme.gap
            height: !page.hasEdge ? 0 : page.edgeOnTop ? page.edgeTopHeight : page.bodyHeight
        }
        Item {
            id: drawingSlot
            visible: page.hasDrawing
            x: page.bodyLeft
            y: page.bodyTop
            width: page.drawingWidth
            // In portrait the content under the drawing gets what it needs first, down to drawingShare for the drawing.
            height: page.split ? page.bodyHeight : page.fixedDrawing > 0 ? page.fixedDrawing : page.holdsStill ? page.above * page.drawingShare : Math.max(page.leastDrawing - Theme.gap, Math.min(page.above - page.leastContent - Theme.gap, Math.max(page.above * page.drawingShare, page.above - area.contentHeight - Theme.gap)))
        }
        ScrollArea {
            id: area
            inset: Theme.grid
            x: (page.split ? page.bodyLeft + page.drawingWidth + page.columnGap : page.bodyLeft) - inset
            y: page.hasDrawing && !page.split ? page.bodyTop + drawingSlot.height + Theme.gap : page.bodyTop
            width: page.width - x - Theme.margin + inset
            height: Math.max(0, page.pageHeight - Theme.margin - page.footHeight - y)
        }
        ColumnLayout {
            id: footColumn
            x: area.x + area.inset
            y: page.pageHeight - Theme.margin - implicitHeight
            width: area.width - 2 * area.inset
            spacing: Theme.grid
        }
    }
}
